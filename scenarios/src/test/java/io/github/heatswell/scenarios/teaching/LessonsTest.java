package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.cli.CommandFactory;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The course keeps its promises: nothing it says is written down beforehand. */
class LessonsTest {

    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir
    private Path folder;

    static List<Lesson> lessons() {
        return Lessons.all();
    }

    private static LessonRun run(Lesson lesson) {
        return Lessons.run(lesson);
    }

    @Test
    void idsAreUnique() {
        List<String> ids = lessons().stream().map(Lesson::id).toList();
        assertEquals(ids.size(), new HashSet<>(ids).size());
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyExpectationHolds(Lesson lesson) {
        assertEquals(List.of(), run(lesson).refuted());
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyNoticeReadsInBothSystemsOfUnits(Lesson lesson) {
        assertFalse(run(lesson).notice().isEmpty());
        for (Statement statement : run(lesson).notice()) {
            for (UnitSystem units : UnitSystem.values()) {
                String text = statement.text(units);
                assertFalse(text.contains("NaN") || text.contains("Infinity") || text.contains("{}"), text);
                assertTrue(text.endsWith("."), text);
            }
        }
    }

    /** With other houses every statement says something else; what stays the same would have been written beforehand. */
    @ParameterizedTest
    @MethodSource("lessons")
    void noNoticeIsWrittenBeforehand(Lesson lesson) {
        List<RunResult> others = lesson.houses().stream()
                .map(one -> altered(one.scenario()).simulation().run())
                .toList();
        List<Statement> before = run(lesson).notice();
        List<Statement> after = new LessonRun(lesson, others).notice();
        for (int i = 0; i < before.size(); i++) {
            assertNotEquals(before.get(i).text(UnitSystem.SI), after.get(i).text(UnitSystem.SI));
        }
    }

    private static Scenario altered(Scenario scenario) {
        Scenario altered = scenario;
        for (String change : List.of(
                "supply.water=4 degC",
                "supply.pressure=3.1 bar",
                "heater.set-point=64 degC",
                "heater.input=6 kW",
                "tank.volume=173 L",
                "relief[0].opens=6.3 bar",
                "relief[0].reseats=5.2 bar",
                "relief[0].opens-at=94 degC",
                "heater.cut-out=78 degC",
                "site.altitude=800 m",
                "piping[0].wall=1.6 mm",
                "vessel.volume=10.5 L",
                "vessel.precharge=2.3 bar")) {
            altered = changedIfPossible(altered, Change.of(change));
        }
        return altered;
    }

    /** A change that makes no sense in a house, such as another charge of a vessel it has not got, is left out. */
    private static Scenario changedIfPossible(Scenario scenario, Change change) {
        boolean cutOut = change.field().equals("heater.cut-out");
        boolean hasCutOut = scenario.system().heater().cutOut().isPresent();
        boolean tAndP = !scenario.system().reliefValves().isEmpty()
                && scenario.system().reliefValves().get(0).setTemperature().isPresent();
        if (cutOut && !hasCutOut || change.field().equals("relief[0].opens-at") && !tAndP) {
            return scenario;
        }
        try {
            return scenario.with(List.of(change));
        } catch (InvalidScenarioException e) {
            return scenario;
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void whatIsToBeTriedRunsAndShowsWhatIsClaimed(Lesson lesson) {
        RunResult tried = lesson.others().get(Lesson.TRIED).simulation().run();
        assertTrue(
                lesson.tryIt().shows().holds(run(lesson)),
                lesson.id() + ": "
                        + lesson.tryIt().shows().words().in(run(lesson)).text(UnitSystem.SI));
        boolean hazard = tried.hazard().isPresent()
                || Findings.of(tried.summary()).stream().anyMatch(found -> found.severity() == Severity.HAZARD);
        assertEquals(hazard, hazardous(lesson.tryIt().command(UnitSystem.SI)));
        List<Change> typed = changesOf(words(lesson.tryIt().command(UnitSystem.SI)));
        int own = typed.size() - lesson.tryIt().changes().size();
        assertEquals(lesson.tryIt().changes(), typed.subList(own, typed.size()), "the command says the same");
        RunResult run = Catalogue.read(lesson.tryIt().house().scenario().name())
                .with(typed)
                .simulation()
                .run();
        assertEquals(
                new RunFigures(tried).peak(),
                new RunFigures(run).peak(),
                1e-6,
                "the command runs the house of the page");
        assertEquals(
                new RunFigures(tried).relieved(),
                new RunFigures(run).relieved(),
                1e-12,
                "the command runs the house of the page");
    }

    /** Every case comes from a bundled scenario, so that a reader can run it himself. */
    @ParameterizedTest
    @MethodSource("lessons")
    void everyCaseHasItsCommand(Lesson lesson) {
        for (Lesson.House one : lesson.houses()) {
            List<String> words = words(one.command(List.of(), UnitSystem.SI));
            assertEquals(one.scenario().name(), words.get(2));
            assertEquals(one.scenario().changes(), changesOf(words));
        }
    }

    private static List<Change> changesOf(List<String> words) {
        List<Change> changes = new ArrayList<>();
        for (int i = 3; i < words.size(); i += 2) {
            assertEquals("--set", words.get(i));
            changes.add(Change.of(words.get(i + 1)));
        }
        return changes;
    }

    /** Runs a command and says whether it ended in a hazard; any other trouble is a failure. */
    private boolean hazardous(String command) {
        List<String> arguments = new ArrayList<>(words(command));
        assertEquals("heatswell", arguments.remove(0));
        arguments.addAll(List.of("--out", folder.toString()));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = CommandFactory.heatswell(new PrintWriter(out), new PrintWriter(err))
                .execute(arguments.toArray(String[]::new));
        boolean hazard = out.toString().contains("HAZARD");
        assertEquals(hazard, status != 0, command + "\n" + err);
        assertEquals("", err.toString());
        return hazard;
    }

    private static List<String> words(String command) {
        return WORD.matcher(command).results().map(LessonsTest::word).toList();
    }

    private static String word(MatchResult match) {
        return match.group(1) == null ? match.group(2) : match.group(1);
    }

    @Test
    void everyStepOfASliderMakesAHouse() {
        List<Lesson> moved =
                lessons().stream().filter(one -> one.slider().isPresent()).toList();
        assertFalse(moved.isEmpty());
        for (Lesson lesson : moved) {
            LessonSlider slider = lesson.slider().orElseThrow();
            List<Scenario> houses = slider.scenarios();
            assertEquals(slider.values().size(), houses.size());
            double[] values =
                    slider.values().stream().mapToDouble(Double::parseDouble).toArray();
            double[] rising = values.clone();
            Arrays.sort(rising);
            assertTrue(Arrays.equals(values, rising), lesson.id());
            slider.values()
                    .forEach(
                            value -> assertTrue(Lessons.moved(slider).get(value).end() > 0));
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void theAnswerKeyHasAnAnswerForEveryReading(Lesson lesson) {
        List<Measure> answers = run(lesson).answers();
        assertEquals(lesson.readings().size(), answers.size());
        for (int i = 0; i < answers.size(); i++) {
            assertEquals(
                    lesson.readings().get(i).answer().in(run(lesson)),
                    answers.get(i).value());
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void theRunShowsOneOfTheOptions(Lesson lesson) {
        assertTrue(run(lesson).outcome() >= 0);
    }
}

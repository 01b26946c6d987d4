package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the lessons compare and count follows from their runs, and predictions can be missed. */
class ClaimsTest {

    /** Words that compare or count; a sentence with one of them is checked against the runs, or it may not stand there. */
    private static final Pattern COMPARES = Pattern.compile(
            "(?i)\\b(more|less|fewer|larger|smaller|higher|lower|hotter|cooler|colder|faster|slower|sooner|longer|shorter|later"
                    + "|earlier|than|twice|half|third|quarter|fifth|tenth|times|thousand|same|equal|nearly|hardly|most|least"
                    + "|lowest|highest|heaviest|largest|smallest|far (?:above|below|too|higher|less)|always|never|nothing"
                    + "|two|three|four|five|ten|hundred|saves|enough)\\b");

    /** Set phrases that compare nothing of a run. */
    private static final Pattern PHRASES =
            Pattern.compile("(?i)nothing is wasted|do not notice a litre or two|as well as|T&P");

    /** Houses unlike those of the lessons: ice-cold and warm water, little and much heat, a low supply, cooling tanks. */
    private static final List<RunResult> STRANGERS = List.of(
            stranger("ferry-cottage"),
            stranger("ferry-cottage", "supply.water=2 degC", "heater.set-point=20 degC"),
            stranger("ferry-cottage", "supply.water=30 degC", "supply.arrangement=check-valve"),
            stranger(
                    "ferry-cottage",
                    "supply.arrangement=check-valve",
                    "heater.input=40 kW",
                    "heater.set-point=85 degC",
                    "run.duration=15 min"),
            stranger("ferry-cottage", "start.water=60 degC", "heater.set-point=30 degC"),
            stranger("orchard-lodge-vessel", "supply.pressure=0.3 bar"),
            stranger("weir-house-mixed", "supply.water=35 degC"),
            stranger("kiln-house-runaway"),
            stranger("orchard-lodge-vessel"),
            stranger("quarry-row"),
            stranger("orchard-lodge"));

    static List<Lesson> lessons() {
        return Lessons.all();
    }

    private static LessonRun run(Lesson lesson) {
        return Lessons.run(lesson);
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void whatComparesIsChecked(Lesson lesson) {
        List<String> unchecked = lesson.claims().stream()
                .filter(claim -> claim.check().isEmpty())
                .map(claim -> String.join("#", claim.words().in(run(lesson)).parts()))
                .filter(text ->
                        COMPARES.matcher(PHRASES.matcher(text).replaceAll("")).find())
                .toList();
        assertEquals(List.of(), unchecked);
    }

    /** Titles, questions and cautions are not checked against runs, so they compare nothing with figures. */
    @ParameterizedTest
    @MethodSource("lessons")
    void whatIsNotCheckedHasNoFigures(Lesson lesson) {
        for (String text : List.of(lesson.title(), lesson.aim(), lesson.question(), lesson.checkQuestion())) {
            assertFalse(text.isBlank(), lesson.id());
            assertTrue(text.chars().noneMatch(Character::isDigit), text);
        }
    }

    /**
     * A check that holds whatever the runs show would check nothing. Runs in the wrong order, all of one house, or cut off
     * must break it, unless it is about properties of water or about other runs that it makes itself.
     */
    @ParameterizedTest
    @MethodSource("lessons")
    void checksFailWhereRunsShowSomethingElse(Lesson lesson) {
        LessonRun right = run(lesson);
        List<LessonRun> wrong = others(right);
        List<String> toothless = lesson.claims().stream()
                .filter(claim -> claim.check().isPresent())
                .filter(claim -> wrong.stream().allMatch(other -> holds(claim, other)))
                .map(claim -> claim.words().in(right).text(UnitSystem.SI))
                .toList();
        assertEquals(List.of(), toothless);
    }

    /** What has not even the events that a check asks for does not bear it out. */
    private static boolean holds(Lesson.Claim claim, LessonRun run) {
        try {
            return claim.holds(run);
        } catch (RuntimeException e) {
            return false;
        }
    }

    private static List<LessonRun> others(LessonRun right) {
        int count = right.results().size();
        List<LessonRun> others = new ArrayList<>();
        List<RunResult> reversed = new ArrayList<>(right.results());
        Collections.reverse(reversed);
        others.add(new LessonRun(right.lesson(), reversed));
        List<RunResult> turned = new ArrayList<>(right.results());
        Collections.rotate(turned, 1);
        others.add(new LessonRun(right.lesson(), turned));
        right.results().forEach(one -> others.add(new LessonRun(right.lesson(), Collections.nCopies(count, one))));
        STRANGERS.forEach(one -> others.add(new LessonRun(right.lesson(), Collections.nCopies(count, one))));
        return others;
    }

    private static RunResult stranger(String name, String... changes) {
        return Catalogue.read(name)
                .with(Stream.of(changes).map(Change::of).toList())
                .simulation()
                .run();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void everyWrongOptionHasAReplyOfItsOwn(Lesson lesson) {
        Set<String> replies = new HashSet<>();
        List<Lesson.Option> options = lesson.prediction().options();
        for (int i = 0; i < options.size(); i++) {
            assertEquals(
                    i == run(lesson).outcome(),
                    options.get(i).reply().isEmpty(),
                    options.get(i).text());
            options.get(i)
                    .reply()
                    .ifPresent(reply ->
                            assertTrue(replies.add(reply.words().in(run(lesson)).text(UnitSystem.SI)), "said twice"));
        }
    }

    /** Nobody can find the right option by its length: it hardly ever is the longest, and never by much. */
    @Test
    void theRightOptionIsNotTheLongest() {
        int longest = 0;
        for (Lesson lesson : lessons()) {
            List<Integer> lengths = lesson.prediction().options().stream()
                    .map(option -> option.text().length())
                    .toList();
            int right = run(lesson).outcome();
            int others = IntStream.range(0, lengths.size())
                    .filter(i -> i != right)
                    .map(lengths::get)
                    .max()
                    .orElseThrow();
            assertTrue(lengths.get(right) < 1.2 * others, lesson.prediction().toString());
            longest += lengths.get(right) > others ? 1 : 0;
        }
        assertTrue(longest <= lessons().size() / 3 + 1, longest + " of the right options are the longest");
    }

    /** Nobody can find the right option by its place: no place is right most of the time, none three times running. */
    @Test
    void theRightOptionChangesItsPlace() {
        List<Integer> places = lessons().stream().map(one -> run(one).outcome()).toList();
        for (int place = 0; place < 3; place++) {
            int wanted = place;
            long count = places.stream().filter(one -> one == wanted).count();
            assertTrue(count >= 3 && count <= 7, "place " + place + " is right in " + count + " lessons: " + places);
        }
        for (int i = 2; i < places.size(); i++) {
            assertTrue(
                    !places.get(i).equals(places.get(i - 1)) || !places.get(i).equals(places.get(i - 2)),
                    "three times running: " + places);
        }
    }

    /** No round of two, three or four places is gone through twice. */
    @Test
    void thePlacesOfTheRightOptionsFollowNoRound() {
        List<Integer> places = lessons().stream().map(one -> run(one).outcome()).toList();
        for (int round = 2; round <= 4; round++) {
            int repeated = 0;
            for (int i = round; i < places.size(); i++) {
                repeated = places.get(i).equals(places.get(i - round)) ? repeated + 1 : 0;
                assertTrue(repeated < round, "a round of " + round + ": " + places);
            }
        }
    }

    /** The words of the right option that the other options have not, and that are no everyday words. */
    @ParameterizedTest
    @MethodSource("lessons")
    void titlesAndQuestionsDoNotTellTheOutcome(Lesson lesson) {
        String shown = (lesson.title() + " " + lesson.question() + " "
                        + lesson.prediction().question())
                .toLowerCase(java.util.Locale.ROOT);
        Set<String> telling =
                Set.of("slowly", "steepens", "drips all the same", "rigid", "years later", "no room", "quarter");
        Stream<String> told = telling.stream().filter(shown::contains);
        assertEquals(List.of(), told.toList());
    }

    /** What is left over can be worked out on the board from the numbers that stand there, or it is said to be about so much. */
    @ParameterizedTest
    @CsvSource({
        "open-to-the-mains, 2, 0, 2",
        "closing-the-system, 3, 0, 3",
        "what-the-valve-releases, 2, 0, 3",
        "drop-by-drop, 0, 2, 4"
    })
    void aRemainderAddsUpOrIsCalledAbout(String lesson, int sentence, int whole, int left) {
        Statement said = run(Lessons.named(lesson)).notice().get(sentence);
        boolean about = said.parts().get(left).matches("(?s).*\\babout\\s");
        for (UnitSystem units : UnitSystem.values()) {
            List<Double> shown = said.measures().stream()
                    .map(measure -> Double.parseDouble(measure.text(units).split(" ")[0]))
                    .toList();
            double parts = shown.subList(whole + 1, left + 1).stream()
                    .mapToDouble(Double::doubleValue)
                    .sum();
            assertEquals(
                    shown.get(whole), parts, about ? 0.0151 : 0.0049, said.text(units)); // three roundings, or none
        }
    }

    /** One law of precharge loss in the lesson and in the outlook: validation against the closed form of its differential equation. */
    @Test
    void aChargeFadesAsInTheOutlook() {
        Lesson lesson = Lessons.named("the-vessel-over-the-years");
        List<Double> precharges = lesson.houses().stream()
                .map(house -> new VesselFigures(run(lesson).house(house.name())).precharge())
                .toList();
        double supply = new RunFigures(run(lesson).results().get(0)).supply();
        String text = run(lesson).notice().get(1).text(UnitSystem.SI);
        for (int i = 1; i <= 2; i++) {
            double years = (precharges.get(0) - precharges.get(i)) / (PrechargeLoss.USUAL * supply);
            assertTrue(text.contains(Decimals.fixed(years, 0) + " "), text);
        }
        assertTrue(lesson.formula().text().contains("p_0 - k p_s n"));
    }

    /** The file of the house and the text of the lesson name one ratio of plastic to copper pipe. */
    @Test
    void oneRatioOfPlasticToCopper() {
        LessonRun run = run(Lessons.named("steel-copper-plastic"));
        double copper = run.results().get(2).system().piping().get(0).compliance();
        double plastic = run.results().get(3).system().piping().get(0).compliance();
        String times = Math.round(plastic / copper) + " times as much";
        assertTrue(run.notice().get(4).text(UnitSystem.SI).contains(times));
        assertTrue(Catalogue.text("orchard-lodge-pex").contains(times));
    }

    /** The slider asks what the text asks: its value of the text's supply is the text's house. */
    @Test
    void sliderAndTextOfTheHighSupplyAgree() {
        Lesson lesson = Lessons.named("high-supply-pressure");
        LessonSlider slider = lesson.slider().orElseThrow();
        RunResult last =
                Lessons.moved(slider).get(slider.values().get(slider.values().size() - 1));
        assertEquals(
                new RunFigures(run(lesson).results().get(1)).relieved(),
                new RunFigures(last).relieved(),
                1e-12); // the same run
        RunResult usual = Lessons.moved(slider).get(slider.values().get(2));
        assertEquals(
                new RunFigures(run(lesson).results().get(0)).peak(),
                new RunFigures(usual).peak(),
                1e-6); // the same run
    }
}

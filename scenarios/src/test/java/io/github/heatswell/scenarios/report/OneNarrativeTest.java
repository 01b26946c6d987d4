package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Regression: screen, page, picture and summary of the same runs say the same, each with its own characters and units. */
class OneNarrativeTest {

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

    static Stream<Scenario> scenarios() {
        return Stream.of(
                Catalogue.read("orchard-lodge"),
                Catalogue.read("quarry-row"),
                Catalogue.read("kiln-house-cut-out"),
                Catalogue.read("mill-cottage-dripping-tap"),
                // more than two weeks, which the picture shows day by day
                Catalogue.read("heron-hill-year").with(List.of(Change.of("run.duration=20d"))));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void aRunHasOneHeadline(Scenario scenario) throws IOException {
        RunResult run = scenario.simulation().run();
        RunFindings findings = RunFindings.of(run);
        Chart chart = Chart.of(run, scenario.doubts(), UnitSystem.SI);
        String picture = chart.headline();
        Results report = report(scenario, findings, chart);
        String screen = screen(report.content(CommandResult.onScreen(UnitSystem.SI)));
        assertTrue(screen.contains(" " + ascii(picture) + ". "), picture + " is not on the screen: " + screen);
        assertEquals(picture + ".", answer(report.content(CommandResult.onPage(UnitSystem.SI))));
        assertTrue(summary(scenario, findings).contains("\"headline\" : \"" + picture + "\""), picture);
    }

    @Test
    void aHazardIsToldInTheSameWords() throws IOException {
        Scenario scenario = Catalogue.read("quarry-row");
        RunResult run = scenario.simulation().run();
        RunFindings findings = RunFindings.of(run);
        String told =
                findings.narrative(scenario.doubts()).hazard().orElseThrow().text(UnitSystem.SI);
        StringBuilder svg = new StringBuilder();
        Chart chart = Chart.of(run, scenario.doubts(), UnitSystem.SI);
        chart.writeSvg(svg);
        assertTrue(oneLine(svg.toString()).contains("Hazard: " + told), "the picture: " + told);
        String screen = screen(report(scenario, findings, chart).content(CommandResult.onScreen(UnitSystem.SI)));
        assertTrue(screen.startsWith("HAZARD: " + ascii(told)), screen);
        assertTrue(summary(scenario, findings).contains("\"sentence\" : \"" + told + "\""), "the finding: " + told);
    }

    @Test
    void aComparisonHasOneVerdict() throws IOException {
        List<NamedRun> runs = Stream.of("orchard-lodge", "orchard-lodge-vessel", "quarry-row")
                .map(name ->
                        new NamedRun(name, Catalogue.read(name).simulation().run()))
                .toList();
        List<NamedSummary> all = runs.stream().map(NamedRun::summary).toList();
        Chart chart = Chart.comparing(runs, all, UnitSystem.SI);
        ComparisonReport report = new ComparisonReport(runs, all, chart);
        String screen = screen(report.content(CommandResult.onScreen(UnitSystem.SI)));
        assertTrue(screen.contains(ascii(chart.headline()) + "."), screen);
        assertEquals(chart.headline() + ".", answer(report.content(CommandResult.onPage(UnitSystem.SI))));
    }

    /** Something of a house, and what it does: the words of which a sentence about a run is made. */
    private static final Pattern TELLS =
            Pattern.compile("\\b(valve|pressure|vessel|water|run|tank|supply|heater|peak)s?"
                    + " (opens?|discharges?|releases?|drips?|peaks?|reach(es)?|stays?|keeps?|exceeds?|falls?|boils?|ends?|leaks?"
                    + "|trips?|chatters?|is (full|blocked|shut|stuck)|rises?)\\b");

    /**
     * Texts that say of no run what it came to: keys and captions of pictures, the name of an event, the message of a failed
     * computation, how a page's balance is to be read, what is odd in the
     * numbers of a log, and what a fitter must do.
     */
    private static final Set<String> EXPLAINS = Set.of(
            "rising hatch: the relief valve drips",
            "valve drips here",
            "falling hatch: the run ends at the tank\u2019s test pressure; the peak is at least ",
            "the peak reaches the relief valve\u2019s set pressure, ",
            ": the run ends",
            " Smaller vessels peak above the top of the picture.",
            "Gauge pressure on the worst day of each month above, and what the relief valves discharge below.",
            "relief valve chatters",
            "the run ends early: ",
            "Unaccounted for: %.0e of the mass that moved and %.0e of the energy; a sound run stays below %.0e. The",
            "The relief valve stays as it is: same place, same setting, same size, its outlet open and leading where",
            "The pressure rises by ",
            "The water reaches ",
            " relief valve opens,");

    @Test
    void nobodyElseSaysWhatARunCameTo() throws IOException {
        Map<String, List<String>> told = new TreeMap<>();
        Set<String> unused = new TreeSet<>(EXPLAINS);
        int files = 0;
        for (String tree : List.of("core", "charts", "scenarios")) {
            try (Stream<Path> sources = Files.walk(Path.of("..", tree, "src", "main", "java"))) {
                for (Path source : sources.filter(OneNarrativeTest::isLookedAt).toList()) {
                    files++;
                    List<String> texts = LITERAL.matcher(
                                    Files.readString(source).replaceAll("(?s)/\\*.*?\\*/|//[^\\n]*", ""))
                            .results()
                            .map(literal -> literal.group(1))
                            .filter(text -> TELLS.matcher(text).find())
                            .toList();
                    unused.removeAll(texts);
                    if (!EXPLAINS.containsAll(texts)) {
                        told.put(source.getFileName().toString().replace(".java", ""), texts);
                    }
                }
            }
        }
        assertTrue(files > 300, files + " files seen");
        assertEquals(Map.of(), told);
        assertEquals(Set.of(), unused, "exempt, but nothing says it");
        assertTrue(TELLS.matcher("the relief valve opens after ").find());
    }

    /** All but what tells of runs, of causes in a house and how to check it, and what asks, teaches or explains a file. */
    private static boolean isLookedAt(Path path) {
        String name = path.toString().replace('\\', '/');
        return name.endsWith(".java")
                && Stream.of("assessment", "narrative", "diagnosis", "checksheet", "system", "interview", "file", "cli")
                        .noneMatch(part -> name.contains("/" + part + "/"));
    }

    private static Results report(Scenario scenario, RunFindings findings, Chart chart) {
        Check nothing = new Check(List.of(), List.of(), List.of(), Optional.empty());
        return new Results(
                scenario, findings, new Advice(nothing, Optional.empty(), Optional.empty(), Balances.NONE), chart);
    }

    private static String screen(Document content) {
        return oneLine(Report.of(content, Balances.NONE).text());
    }

    private static String summary(Scenario scenario, RunFindings findings) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SummaryJson.of(scenario, findings).write(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The answer of a page, without the quantities in the other unit system. */
    private static String answer(Document page) {
        String answer = page.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Block.Paragraph.class::isInstance)
                .map(Block.Paragraph.class::cast)
                .filter(paragraph -> paragraph.tone() == Block.Tone.ANSWER)
                .map(Block.Paragraph::text)
                .findFirst()
                .orElseThrow();
        return answer.replace('\u00a0', ' ').replaceAll(" \\(-?\\d[^()]*\\)", "");
    }

    private static String oneLine(String text) {
        return text.replaceAll("<[^>]*>|\\s+", " ").replaceAll(" +", " ");
    }

    private static String ascii(String words) {
        return words.replace("\u00b0", "deg").replace('\u201c', '"').replace('\u201d', '"');
    }
}

package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Reports in a browser: they fit a phone, a tablet and paper, ask for nothing and complain of nothing. Skipped where there is
 * no browser, unless the system property {@code browser.required} is true.
 */
@Order(1)
class BrowserTest {

    /** A phone, a tablet, and the width of A4 at 96 dots an inch (px). */
    private static final int[] WIDTHS = {360, 768, 794};

    /** No vessel on sale is enough unless the reducing valve is turned down, which is said on every paper. */
    private static final String LOWERED = """
            title: Cedar lane, reducing valve set too high
            question: My T&P valve drips at night. Which expansion tank cures it?
            site: { place: us-ipc }
            supply: { arrangement: reducing-valve, pressure: 120 psi, water: 48 degF, reducing-valve: { set: 75 psi } }
            tank: { volume: 75 gal, material: steel, working-pressure: 150 psi }
            heater: { energy: gas, input: 76000 Btu/h, set-point: 140 degF }
            piping:
              - { material: copper, outside-diameter: 0.875 in, wall: 0.045 in, length: 70 ft }
            relief: [{ name: T&P valve, opens: 150 psi, opens-at: 210 degF }]
            draws: us-medium
            """;

    /** Two valves, each by its name, and what the UK asks of the work: the longest of the fitter's sheets. */
    private static final String UNVENTED = """
            site: { place: uk }
            supply: { arrangement: reducing-valve, pressure: 4.8 bar, water: 9 degC, reducing-valve: { set: 3 bar } }
            tank: { volume: 210 L, material: stainless-steel, working-pressure: 7 bar }
            heater: { energy: electric, input: 20 kW, set-point: 60 degC, cut-out: 85 degC }
            relief:
              - { name: expansion valve, opens: 6 bar, kind: expansion-valve }
              - { name: temperature and pressure valve, opens: 7 bar, opens-at: 90 degC }
            vessel: { volume: 24 L, precharge: 3.3 bar }
            """;

    /** Two hazards, and no way for the water but the relief valve. */
    private static final String STUCK = """
            question: It boils. Does the T&P valve hold?
            site: { place: us-ipc }
            supply: { arrangement: check-valve, pressure: 60 psi, water: 50 degF }
            tank: { volume: 50 gal, material: steel, working-pressure: 150 psi }
            heater: { energy: gas, input: 40000 Btu/h, set-point: 140 degF, thermostat: stuck }
            relief: [{ name: T&P valve, opens: 150 psi, opens-at: 210 degF }]
            run: { duration: 3 h }
            """;

    private static final Pattern FINDING = Pattern.compile("<li>(.*?)</li>", Pattern.DOTALL);

    @TempDir
    Path folder;

    private static Browser browser;

    @BeforeAll
    static void start(@TempDir Path profile) throws IOException {
        browser = Browser.start(profile);
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void reportsFitEveryWidth() throws Exception {
        List<String> pages = new ArrayList<>();
        pages.add(Pages.ofRun("orchard-lodge-vessel", UnitSystem.SI, folder));
        pages.add(Pages.ofRun("quarry-row", UnitSystem.US, folder));
        pages.add(Pages.ofComparison(List.of("orchard-lodge", "orchard-lodge-vessel", "quarry-row"), folder));
        pages.add(Pages.ofOutlook("orchard-lodge-vessel", UnitSystem.SI, folder));
        DiagnosisAnswer logged = Diagnoses.of("orchard-lodge-vessel", "vessel.condition=isolated", folder);
        pages.add(Pages.ofDiagnosis(logged, UnitSystem.SI, folder));
        pages.add(Pages.ofDiagnosis(logged, UnitSystem.US, folder));
        VesselAnswer sized =
                VesselChoice.of(ScenarioReader.read("lane", LOWERED)).build().answer();
        String sizing = Pages.text(new SizingReport(sized, UnitSystem.US).content(CommandResult.onPage(UnitSystem.US)));
        pages.add(sizing);
        pages.add(Pages.text(Samples.ordinary(UnitSystem.SI)));
        assertFits(pages);
        assertPapers(sizing);
        assertPapers(pages.get(0));
        // nothing is handed over alone: the answer with its picture, and what it rests on, the numbers of the years too
        assertSheets(pages.get(3), "A4", 2, 2);
        assertSheets(pages.get(3), "letter", 2, 2);
        String alike = Pages.ofComparison(List.of("orchard-lodge-pex", "orchard-lodge-vessel"), folder);
        assertSheets(alike, "A4", 1, 1);
        assertSheets(alike, "letter", 1, 1);
    }

    /** Regression: the tag stood alone on a sheet, and so did the cautions of a house with hazards. */
    @Test
    void nothingShortStandsAloneOnASheet() throws Exception {
        HotWaterSystem house = ScenarioReader.read("elm", UNVENTED).system();
        RunResult run = Simulation.of(house, Duration.ofMinutes(1)).run();
        SizingTarget target = SizingTarget.builder(house)
                .vesselRating(Pressure.gauge(10, PressureUnit.BAR))
                .build();
        SizingResult sizing = VesselSizing.builder(house, target)
                .precharge(VesselSizing.Precharge.STATIC)
                .build()
                .size();
        QuantityFormat shown = CommandResult.onPage(UnitSystem.SI);
        Document.Section fitter =
                FitterPaper.of(run, sizing, FitterPaper.State.TO_BUY, shown).section(shown);
        Document.Section answer = Document.answer("", "It is.", List.of());
        assertSheets(Pages.text(Document.of("Elm", "", List.of(), List.of(answer, fitter), shown)), "letter", 2, 2);
        Scenario stuck = ScenarioReader.read("stuck", STUCK);
        ResultFolder.at(folder.resolve("stuck"))
                .write(Results.of(stuck, stuck.simulation().run(), UnitSystem.US));
        assertSheets(Files.readString(folder.resolve("stuck/report.html")), "letter", 2, 2);
    }

    @Test
    void hostileTextsFitAndDoNothing() throws Exception {
        List<String> pages = new ArrayList<>();
        for (String text : Samples.HOSTILE) {
            pages.add(Pages.text(Samples.saying(text)));
        }
        assertFits(pages);
    }

    /** The measuring itself: it sees what is too wide, what is asked for, and what goes wrong. */
    @Test
    void whatIsTooWideOrReachesOutIsFound() throws Exception {
        String page = Pages.text(Samples.ordinary(UnitSystem.SI));
        String wide = page.replace("<main>", "<main><p style=\"width:900px\">wide</p>");
        String reaching = page.replace("<main>", "<main><img src=\"missing.png\" alt=\"\" />");
        List<String> seen = measured(List.of(wide, reaching));
        assertTrue(seen.stream().anyMatch(line -> line.startsWith("page-0.html at 360: P")), seen::toString);
        assertTrue(seen.stream().anyMatch(line -> line.contains("missing.png")), seen::toString);
        String failing = page.replace("<main>", "<main><script>throw new Error('went wrong')</script>");
        assertThrows(AssertionError.class, () -> measured(List.of(failing)));
    }

    @Test
    void longReportsPrintWhole() throws Exception {
        String comparison = Pages.ofComparison(List.of("orchard-lodge", "quarry-row"), folder);
        assertSheets(comparison, "A4", 2, 5);
        String hostile = Pages.text(Samples.saying("W".repeat(200) + " " + "word ".repeat(160)));
        assertSheets(hostile, "letter", 8, 40);
    }

    /** The answer is one sheet, and so is each of the papers behind it: five in all, on either paper. */
    private void assertPapers(String page) throws Exception {
        assertEquals(
                4,
                Pattern.compile("<section class=\"paper")
                        .matcher(page)
                        .results()
                        .count());
        assertSheets(page, "A4", 5, 5);
        assertSheets(page, "letter", 5, 5);
    }

    private void assertSheets(String page, String paper, int fewest, int most) throws Exception {
        Path file = folder.resolve("sheet.html");
        Files.writeString(
                file,
                page.replaceFirst("@page \\{ size: \\w+; }", "").replace("@page {", "@page { size: " + paper + ";"));
        String pdf = new String(browser.print(file), StandardCharsets.ISO_8859_1);
        long sheets =
                Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(pdf).results().count();
        assertTrue(sheets >= fewest && sheets <= most, paper + ": " + sheets + " sheets");
        assertTrue(
                pdf.contains(paper.equals("A4") ? "/MediaBox [0 0 594.95996 841.91998]" : "/MediaBox [0 0 612 792]"),
                paper);
    }

    private void assertFits(List<String> pages) throws Exception {
        assertEquals(List.of(), measured(pages));
    }

    /** What is wrong with pages at all widths: what sticks out, and what they ask for. */
    private List<String> measured(List<String> pages) throws Exception {
        StringBuilder frames = new StringBuilder();
        for (int i = 0; i < pages.size(); i++) {
            Files.writeString(folder.resolve("page-" + i + ".html"), pages.get(i));
            for (int width : WIDTHS) {
                frames.append("<iframe src=\"page-")
                        .append(i)
                        .append(".html\" style=\"border:0;height:800px;width:")
                        .append(width)
                        .append("px\"></iframe>\n");
            }
        }
        Path wrapper = folder.resolve("wrapper.html");
        Files.writeString(wrapper, script().replace("FRAMES", frames));
        Browser.Outcome outcome = browser.load(wrapper);
        assertEquals(List.of(), outcome.console());
        assertTrue(outcome.page().contains("measured " + pages.size() * WIDTHS.length + " pages"), outcome.page());
        return FINDING.matcher(outcome.page())
                .results()
                .map((MatchResult result) -> result.group(1))
                .toList();
    }

    private static String script() throws IOException {
        try (var in = BrowserTest.class.getResourceAsStream("measure.html")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

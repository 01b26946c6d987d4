package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.diagnosis.Cause;
import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.Evidence;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.Misfit;
import io.github.heatswell.diagnosis.Parameter;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Regression: what a diagnosis says and what it leaves unsaid, for results made by hand. */
class DiagnosisReportTest {

    private static final Scenario OPEN_ENDED = Catalogue.read("orchard-lodge");
    private static final Misfit SERIOUS = new Misfit(3, 0, 0, 0, 1, 100, List.of());
    private static final Misfit NONE = new Misfit(1, 0, 0, 0, 1, 100, List.of());
    private static final String WARMTH =
            "How warm the tank was at the first reading is not known: it was assumed cold, or warmer where that fits better. For a"
                    + " surer answer, take readings starting from a cold tank, or write into the file how warm it was (start.water).";

    private static PressureLog.Builder log() {
        return PressureLog.builder(new double[] {0, 60, 120, 180, 240}, new double[] {4e5, 7e5, 10.3e5, 9.4e5, 9.6e5})
                .uncertainty(5_000);
    }

    private static HypothesisFit fit(Cause cause, double criterion, double weight, Misfit misfit) {
        return fit(cause, criterion, weight, misfit, List.of());
    }

    private static HypothesisFit fit(
            Cause cause, double criterion, double weight, Misfit misfit, List<Evidence> evidence, Estimate... found) {
        return new HypothesisFit(
                cause,
                "",
                Optional.empty(),
                5,
                criterion,
                weight,
                List.of(found),
                0,
                Optional.of(misfit),
                evidence,
                OPEN_ENDED.system(),
                List.of(4.2e5, 6.8e5, 10.5e5, 9.6e5, 9.4e5),
                HypothesisFit.Course.NONE);
    }

    private static DiagnosisAnswer answer(Scenario house, PressureLog log, HypothesisFit... fits) {
        return new DiagnosisAnswer(
                house,
                OwnersReadings.none(),
                Optional.of(log),
                new DiagnosisResult(List.of(fits), 5, 5_000, new Balances(0, 1), Optional.empty(), List.of()),
                Optional.empty());
    }

    private static String report(DiagnosisAnswer answer) {
        return report(answer, CommandResult.onScreen(UnitSystem.SI)).text().replaceAll("\\s+", " ");
    }

    private static Report report(DiagnosisAnswer answer, QuantityFormat shown) {
        return Report.of(
                new DiagnosisReport(answer, Optional.empty(), Optional.empty()).content(shown), answer.balances());
    }

    /** Regression: the picture of readings was a third of a printed sheet wide, its names too small to read. */
    @Test
    void thePictureOfReadingsTakesTheWidthOfAPrintedSheet() throws IOException {
        DiagnosisAnswer answer = answer(OPEN_ENDED, log().build(), fit(Cause.AS_DESCRIBED, 0, 0.9, NONE));
        Chart chart = Chart.of(DiagnosisReport.logged(answer, answer.log().orElseThrow()), UnitSystem.SI);
        String page = Pages.text(new DiagnosisReport(answer, Optional.of(chart), Optional.empty())
                .content(CommandResult.onPage(UnitSystem.SI)));
        Matcher wide = Pattern.compile("svg\\[aria-label\\^=\"([^\"]+)\"\\] \\{ max-height: none !important; \\}")
                .matcher(page);
        assertTrue(wide.find(), "no picture is as wide as the sheet");
        assertTrue(page.contains("aria-label=\"" + wide.group(1)), wide.group(1));
    }

    /** Regression: after readings that speak against the vessel the next command sized the house as though it worked. */
    @Test
    void theNextCommandSizesForAVesselThatDoesNotWork() {
        Scenario vessel = Catalogue.read("orchard-lodge-vessel");
        HypothesisFit small = fit(Cause.VESSEL_SMALL, 1, 0.4, NONE);
        NextStep open = DiagnosisReport.answer(
                        answer(vessel, log().build(), fit(Cause.PRECHARGE_LOW, 0, 0.55, NONE), small), UnitSystem.SI)
                .report()
                .get()
                .next()
                .orElseThrow();
        List<Change> full = List.of(new Change("vessel.condition", "waterlogged"));
        assertEquals(new NextStep("size", full), open);
        NextStep decided = DiagnosisReport.answer(
                        answer(vessel, log().build(), fit(Cause.VESSEL_WATERLOGGED, 0, 0.95, NONE)), UnitSystem.SI)
                .report()
                .get()
                .next()
                .orElseThrow();
        assertEquals(new NextStep("size", full, 0, Optional.of(Cause.VESSEL_WATERLOGGED)), decided);
    }

    /** Regression: a row of pressure and temperature was counted as two readings, and 25 rows as 50. */
    @Test
    void readingsAreCountedByTheirKind() throws IOException {
        double none = Double.NaN;
        PressureLog log = log().temperature(290, none, 300, none, 310)
                .burner(false, true, true, false, false)
                .build();
        DiagnosisAnswer answer = new DiagnosisAnswer(
                OPEN_ENDED,
                OwnersReadings.none(),
                Optional.of(log),
                new DiagnosisResult(
                        List.of(fit(Cause.AS_DESCRIBED, 0, 1, NONE)),
                        9,
                        5_000,
                        new Balances(0, 1),
                        Optional.empty(),
                        List.of()),
                Optional.empty());
        String text = cells(answer);
        assertTrue(text.contains("Readings used 5 of pressure, 3 of temperature, how long the heater"), text);
        String plain = cells(answer(OPEN_ENDED, log().build(), fit(Cause.AS_DESCRIBED, 0, 1, NONE)));
        assertTrue(plain.contains("Readings used 5 of pressure Length"), plain);
    }

    /** Regression: too hot water, of which the caution warns, was not among the causes listed. */
    @Test
    void aHazardThatIsNotRuledOutIsListedHoweverFar() throws IOException {
        HypothesisFit hot = fit(Cause.WATER_TOO_HOT, 30, 1e-6, SERIOUS);
        HypothesisFit leak = fit(Cause.LEAK, 0, 0.1, SERIOUS);
        DiagnosisAnswer answer =
                answer(OPEN_ENDED, log().build(), leak, leak, leak, leak, leak, leak, leak, leak, leak, hot);
        String text = report(answer);
        String listed = cells(answer);
        assertTrue(listed.contains("The heater heats the water hotter than described under 5 %"), listed);
        String caution =
                "Not ruled out by these readings: the heater heats the water hotter than described. Hold a thermometer,";
        assertTrue(text.contains("CAUTION: " + caution), text);
        String json = json(answer).replaceAll("\\s+", " ");
        assertTrue(json.contains("\"cautions\" : [ \"" + caution), json);
    }

    /** Whether a log was understood is a doubt and no hazard: it follows the verdict, which rests on it. */
    @Test
    void aDoubtAboutTheLogStandsNextToTheVerdict() throws IOException {
        DiagnosisAnswer sure = answer(OPEN_ENDED, log().build(), fit(Cause.AS_DESCRIBED, 0, 1, NONE));
        OwnersReadings doubted = new OwnersReadings(
                Optional.empty(),
                OwnersReadings.none().spots(),
                Optional.empty(),
                Optional.empty(),
                List.of("Are these psi?"),
                List.of());
        DiagnosisAnswer answer =
                new DiagnosisAnswer(sure.scenario(), doubted, sure.log(), sure.result(), Optional.empty());
        Document content = new DiagnosisReport(answer, Optional.empty(), Optional.empty())
                .content(CommandResult.onPage(UnitSystem.SI));
        assertEquals(List.of(), content.alarms());
        List<Block> said = content.sections().get(0).blocks();
        assertEquals(Block.Tone.ANSWER, ((Block.Paragraph) said.get(0)).tone());
        assertEquals(new AlarmNote("CHECK FIRST", "Are these psi?"), said.get(1));
        String page = Pages.text(content);
        assertFalse(page.contains("Hazards and limits exceeded"), page);
        assertTrue(report(answer).contains("CHECK FIRST: Are these psi?"), report(answer));
    }

    @Test
    void whatNothingExplainsIsNoHazardAndNotSure() {
        DiagnosisAnswer nothing = answer(
                OPEN_ENDED,
                log().burner(true, true, true, true, true).build(),
                fit(Cause.RELIEF_OPENS_HIGH, 0, 0.99996, SERIOUS),
                fit(Cause.AS_DESCRIBED, 30, 0.00004, SERIOUS));
        String text = report(nothing);
        assertFalse(text.contains("HAZARD"), text);
        assertFalse(report(nothing, CommandResult.onScreen(UnitSystem.SI)).isHazard());
        assertTrue(text.contains("These readings don't settle it: none of the causes"), text);
        assertFalse(text.contains("explained best"), text);
        assertTrue(
                text.contains("The relief valve opens at a higher pressure than nearly all 0.2 bar described"), text);
        assertTrue(
                report(nothing, CommandResult.onScreen(UnitSystem.SI))
                                .text()
                                .lines()
                                .count()
                        <= 40,
                text);
        assertFalse(text.contains("Everything is as described"), "the screen has what has some weight: " + text);
        assertTrue(text.contains("Not ruled out by these readings: the relief valve opens at a higher"), text);
        assertFalse(text.contains("not at all"), "the log shows that it opens: " + text);
        assertTrue(text.contains("Watch the gauge during a heat-up"), text);
    }

    /** Regression: the page sold an expansion vessel where its own table found none large enough before the supply is lowered. */
    @Test
    void aVesselThatNoneOnSaleIsComesAfterALowerSupply() {
        String house = """
                supply: { arrangement: reducing-valve, pressure: 8 bar, water: 10 degC, reducing-valve: { set: %s } }
                tank:   { volume: 200 L, material: steel }
                heater: { energy: electric, input: 3 kW, set-point: 60 degC }
                relief:
                  - { opens: 7 bar }
                """;
        HypothesisFit described = fit(Cause.AS_DESCRIBED, 0, 1, NONE);
        PressureLog heated = log().burner(false, true, true, true, true).build();
        String first = "no vessel on the list keeps a heat-up below the limit of ";
        String high = said(answer(ScenarioReader.read("high", house.formatted("5 bar")), heated, described));
        assertTrue(
                high.contains("nowhere to go. First have the supply pressure lowered, then fit an expansion vessel."),
                high);
        assertTrue(high.contains(first) && high.contains("First have the reducing valve set lower: "), high);
        String low = said(answer(ScenarioReader.read("low", house.formatted("2 bar")), heated, described));
        assertTrue(low.contains("Fit an expansion vessel.") && !low.contains(first), low);
    }

    private static String said(DiagnosisAnswer answer) {
        Optional<Statement> first = DiagnosisReport.supplyFirst(answer, new Balances.Count());
        Document content =
                new DiagnosisReport(answer, Optional.empty(), first).content(CommandResult.onScreen(UnitSystem.SI));
        return Report.of(content, answer.balances()).text().replaceAll("\\s+", " ");
    }

    @Test
    void aValveThatNoLogSawOpenMayNotOpenAtAll() {
        HypothesisFit high = fit(Cause.RELIEF_OPENS_HIGH, 0, 0.9, NONE);
        String text = report(answer(OPEN_ENDED, log().build(), high));
        assertTrue(text.startsWith("HAZARD: The readings point to this: the relief valve opens at a higher"), text);
        assertTrue(text.contains("than described, or not at all."), text);
    }

    @Test
    void theWarmthOfTheTankIsAskedFor() throws IOException {
        HypothesisFit described = fit(Cause.AS_DESCRIBED, 0, 0.9, NONE);
        DiagnosisAnswer untold = answer(OPEN_ENDED, log().build(), described);
        assertTrue(page(untold).contains(WARMTH));
        assertTrue(json(untold).contains("\"start_remark\" : \"" + WARMTH + "\""), json(untold));

        DiagnosisAnswer logged =
                answer(OPEN_ENDED, log().temperature(290, 300, 310, 320, 330).build(), described);
        Scenario told = OPEN_ENDED.with(List.of(Change.of("start.water=50 degC")));
        for (DiagnosisAnswer known : List.of(logged, answer(told, log().build(), described))) {
            assertFalse(report(known).contains("How warm"));
            assertFalse(page(known).contains("How warm"));
            assertTrue(json(known).contains("\"start_remark\" : \"\""));
        }
    }

    private static String json(DiagnosisAnswer answer) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DiagnosisJson.of(answer).write(out);
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The words of the page, without its marks. */
    private static String cells(DiagnosisAnswer answer) throws IOException {
        return page(answer).replaceAll("<[^>]*>", " ").replaceAll("[\\s\\u00a0\\u202f]+", " ");
    }

    private static String page(DiagnosisAnswer answer) throws IOException {
        StringBuilder out = new StringBuilder();
        HtmlPage.write(
                new DiagnosisReport(answer, Optional.empty(), Optional.empty())
                        .content(CommandResult.onPage(UnitSystem.SI)),
                out);
        return out.toString();
    }

    /** A range as wide as before is no finding, and "between 13 % and 1212 %" is none that a person could use. */
    @Test
    void aNumberThatReadingsDoNotTellHasNoRange() {
        Estimate rate =
                new Estimate(Parameter.HEATING_RATE, 1.44, 0.7, 1.6, Estimate.Standing.AS_DESCRIBED, Optional.empty());
        DiagnosisAnswer answer = answer(OPEN_ENDED, log().build(), fit(Cause.LEAK, 0, 0.5, NONE, List.of(), rate));
        assertEquals(
                List.of(
                        "Heating rate relative to the description",
                        "these readings do not say",
                        "hardly narrower than assumed"),
                new DiagnosisTables(answer, QuantityFormat.ascii(UnitSystem.SI))
                        .estimates()
                        .findFirst()
                        .orElseThrow()
                        .rows()
                        .get(0));
    }

    /** Regression: ten causes at 12 % each looked like a measurement. */
    @Test
    void manyCausesAlikeAreNotToldApart() {
        HypothesisFit[] four = Stream.of(Cause.LEAK, Cause.TRAPPED_AIR, Cause.AS_DESCRIBED, Cause.PRECHARGE_LOW)
                .map(cause -> fit(cause, 0, 0.249, NONE))
                .toArray(HypothesisFit[]::new);
        assertEquals("not told apart", weight(four));
        assertEquals("25 %", weight(four[0], four[1], four[2], fit(Cause.PRECHARGE_LOW, 0.1, 0.23, NONE)));
    }

    private static String weight(HypothesisFit... fits) {
        return new DiagnosisCells(answer(OPEN_ENDED, log().build(), fits).result(), QuantityFormat.ascii(UnitSystem.SI))
                .weight(fits[0]);
    }

    @Test
    void readingsThatAreNotExplainedAreSaid() {
        Misfit.Stray low = new Misfit.Stray(3_600, 3.2e5, 5e5, false, false);
        Misfit two = new Misfit(1, 0, 0, 0, 1, 10, List.of(new Misfit.Stray(60, 4e5, 3e5, false, false), low));
        String text = report(answer(OPEN_ENDED, log().build(), fit(Cause.AS_DESCRIBED, 0, 0.9, two)));
        assertTrue(text.contains("These readings don't settle it: none of the causes considered explains them."), text);
        assertTrue(
                text.contains(
                        "2 of 10 readings are not explained. The furthest off: 1 h after the first reading, the gauge showed"),
                text);
        assertTrue(text.contains("Next, read the plates of tank, heater and relief valve again"), text);
        assertFalse(text.contains("agree"), text);
    }

    /** Regression: a cause with nothing against it stood as good as ruled out. */
    @Test
    void aCauseThatFitsAsWellButAssumesMoreIsNotRuledOut() throws IOException {
        Evidence fits = new Evidence(Evidence.Part.RISE, Optional.empty(), 0, 5, 0, 0.5, false);
        Evidence misses = new Evidence(Evidence.Part.RISE, Optional.empty(), 0, 5, 1e4, 30, true);
        String page = page(answer(
                OPEN_ENDED,
                log().build(),
                fit(Cause.AS_DESCRIBED, 0, 0.97, NONE, List.of(fits)),
                fit(Cause.TRAPPED_AIR, 8, 0.02, NONE, List.of(fits)),
                fit(Cause.LEAK, 30, 0.01, NONE, List.of(misses)),
                fit(Cause.WATER_TOO_HOT, 30, 0.01, NONE, List.of(misses))));
        assertTrue(
                page.contains(
                        "The heater heats the water hotter than described, unlikely by the pressure; only a thermometer rules it out"),
                page);
        assertTrue(page.contains("Air is trapped in the piping, not needed to explain the readings"), page);
        assertTrue(
                page.contains("Against it: nothing but that a cause which assumes less explains the readings too."),
                page);
        assertTrue(page.contains("Water is lost at a tap or elsewhere, as good as ruled out"), page);
    }

    /** Where nothing fits no cause has 95 %, and weights are said to be a comparison only, on the screen and on the page. */
    @Test
    void whereNothingExplainsTheReadingsWeightsOnlyCompare() throws IOException {
        DiagnosisAnswer none = answer(
                OPEN_ENDED, log().build(), fit(Cause.LEAK, 0, 0.97, SERIOUS), fit(Cause.TRAPPED_AIR, 1, 0.03, SERIOUS));
        for (String text : List.of(report(none), page(none))) {
            assertTrue(text.contains("none explains the readings, so the weights only compare them"), text);
            assertTrue(text.contains("Best fit: water is lost"), text);
            assertFalse(text.contains("about equally"), text);
            assertTrue(text.contains("Causes, the greatest weight first"), text);
            assertFalse(text.contains("ikeliest") || text.contains("closest") || text.contains("95 %"), text);
        }
        assertTrue(report(answer(OPEN_ENDED, log().build(), fit(Cause.LEAK, 0, 0.97, NONE)))
                .contains("Causes, the likeliest first"));
    }
}

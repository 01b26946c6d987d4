package io.github.heatswell.scenarios.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.PressureGauge;
import io.github.heatswell.checksheet.Reading;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.AlarmNote;
import io.github.heatswell.scenarios.report.Check;
import io.github.heatswell.scenarios.report.ReportContent;
import io.github.heatswell.scenarios.report.ReportPage;
import io.github.heatswell.scenarios.report.SizeRow;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What goes into the printed report of runs and sizings. */
class PageTest {

    @Test
    void theCheckSheetIsThatOfTheHouseWithTheToleranceOfGaugeAndHouse() throws IOException {
        Scenario scenario = Catalogue.read("orchard-lodge-vessel");
        Check check = page(scenario, UnitSystem.SI).check().orElseThrow();
        List<Reading> expected =
                CheckProcedure.of(scenario.system()).simulate(scenario.system()).readings();
        assertEquals(6, check.readings().size());
        for (int i = 0; i < 6; i++) {
            var line = check.readings().get(i);
            double gauge = line.expectedGauge().orElseThrow();
            assertEquals(expected.get(i).expectedGauge(), gauge);
            double error = PressureGauge.dial().error();
            assertTrue(line.lowestGauge().orElseThrow() <= gauge - error, line.when());
            assertTrue(line.highestGauge().orElseThrow() >= gauge + error, line.when());
        }
        assertTrue(check.steps().stream().anyMatch(step -> step.contains("77\u00a0L (20.3\u00a0gal)")));
        assertTrue(check.remarks().contains("No relief valve is expected to give off water."));
        assertTrue(
                check.remarks().get(0).startsWith("This sheet is for the house with a vessel of 12"),
                check.remarks().get(0));
    }

    /** Cold and at rest the gauge shows the supply, so nine of ten readings lie within 0.9 of half an even range. */
    @Test
    void theToleranceIsThatOfTheUncertaintiesGiven() throws IOException {
        Scenario scenario =
                Catalogue.read("orchard-lodge-vessel").with(List.of(Change.of("supply.pressure=4.0 bar to 4.4 bar")));
        var cold =
                page(scenario, UnitSystem.SI).check().orElseThrow().readings().get(0);
        double expected = Math.hypot(0.9 * 0.2e5, PressureGauge.dial().error());
        // A quantile of 128 samples of an even spread is right to a hundredth of its range.
        assertEquals(4.2e5 - expected, cold.lowestGauge().orElseThrow(), 0.01 * 0.4e5);
        assertEquals(4.2e5 + expected, cold.highestGauge().orElseThrow(), 0.01 * 0.4e5);
    }

    @Test
    void aHouseThatEndsInAHazardGetsNoCheckSheetButTheReason() throws IOException {
        for (String name : List.of("quarry-row", "kiln-house-blocked")) {
            ReportContent content = page(Catalogue.read(name), UnitSystem.US);
            Check check = content.check().orElseThrow();
            assertTrue(check.readings().isEmpty() && check.steps().isEmpty());
            assertTrue(check.remarks().get(0).contains("Leave the heater off"));
            assertTrue(content.alarms().get(0).word().startsWith("HAZARD"));
        }
    }

    /** What can hurt people is said before everything else, once. */
    @Test
    void gravestFindingsStandAmongTheAlarms() throws IOException {
        ReportContent content = page(Catalogue.read("kiln-house-blocked"), UnitSystem.SI);
        List<String> alarms = content.alarms().stream().map(AlarmNote::text).toList();
        assertEquals(alarms.size(), alarms.stream().distinct().count());
        assertTrue(alarms.size() > 1, alarms.toString());
        assertFalse(content.findings().isEmpty());
        assertTrue(content.findings().stream()
                .allMatch(finding -> !finding.source().isBlank()));
    }

    @Test
    void everySizeIsListedWithTheRunAfterIt() throws IOException {
        VesselAnswer answer =
                VesselChoice.of(Catalogue.read("orchard-lodge")).build().answer();
        RunChart chart = RunChart.of(answer.asItIs(), UnitSystem.SI);
        ReportContent content = SizingPage.of(answer, UnitSystem.SI).content(chart);
        List<SizeRow> sizes = content.options().sizes();
        assertEquals(answer.sizing().nominal().size(), sizes.size());
        assertEquals(3, content.options().formulas().size());
        assertEquals(2, content.options().costs().size());
        assertEquals(0, content.options().costs().get(1).yearlyWater());
        assertTrue(content.commissioning());
        StringBuilder page = new StringBuilder();
        ReportPage.write(content, page);
        assertTrue(page.indexOf("over 20\u00a0bar") > 0, "a size that is far too small is not said to hold");
        assertTrue(page.indexOf("331.15 K = 58\u00a0\u00b0C") > 0, "a temperature is no difference");
        assertTrue(page.indexOf("49\u00a0K (88.2\u00a0\u00b0F)") > 0, "a difference is no temperature");
    }

    private static ReportContent page(Scenario scenario, UnitSystem units) throws IOException {
        RunResult result = scenario.simulation().run();
        RunPage page = new RunPage(scenario, units);
        Advice advice = Advice.of(scenario, Findings.of(result.summary(), Unknowns.of(scenario)), page.shown());
        return page.content(RunFindings.of(result), advice, RunChart.of(result, units));
    }
}

package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReportTest {

    @Test
    void aReportSaysWhatHappenedAndHowMuchRoomWasLeft() {
        String report = report("orchard-lodge-vessel", UnitSystem.SI);
        assertLines(
                report,
                "Orchard lodge with a 12 L vessel charged to the supply pressure",
                "  start             4.2 bar  9 degC",
                "  peak             6.02 bar  after 1 h 30 min",
                "  relief set          7 bar  expansion valve: 0.98 bar left",
                "  tank limit         10 bar  working pressure: 3.98 bar left",
                "  relieved              0 L  expansion valve, stayed shut",
                "  vessel             3.12 L  the most water it held",
                "  relief[0].character  modulating");
    }

    @Test
    void aHazardComesFirstThenAWarning() {
        String report = report("quarry-row", UnitSystem.SI);
        assertTrue(
                report.startsWith("HAZARD: After 27 min 12 s the pressure reaches 16 bar. A tank is tested up to\n"),
                report);
        assertTrue(report.indexOf("WARNING: Working pressure exceeded") < report.indexOf("Quarry row"));
        assertLines(
                report,
                "  run           27 min 12 s  ended by the hazard",
                "  relief set           none  no relief valve is described",
                "  tank limit          8 bar  working pressure: passed by 8 bar");
    }

    @Test
    void usUnitsAreAsComplete() {
        String report = report("orchard-lodge", UnitSystem.US);
        assertLines(
                report,
                "  start            60.9 psi  48.2 degF",
                "  peak            101.5 psi  after 10 min 16 s",
                "  hottest        136.4 degF  after 1 h 30 min",
                "  relief set      101.5 psi  expansion valve: reached",
                "  relieved         0.83 gal  expansion valve, opened once");
    }

    @Test
    void whatWentInAndOutIsSaidDeviceByDevice() {
        String report = report("mill-cottage-dripping-tap", UnitSystem.SI);
        assertLines(
                report,
                "  drawn               346 L  hot water, 69 draws",
                "  delivered        17.5 kWh  heat at the taps, above cold water",
                "  leaked              389 L  by taps that drip and other leaks");
        assertLines(
                report("kiln-house-blocked", UnitSystem.SI),
                "  relieved              0 L  T&P valve, which is blocked");
        assertLines(
                report("mill-cottage-worn-seat", UnitSystem.SI),
                "  relieved           20.9 L  safety valve, by its worn seat");
        assertLines(report("tannery-yard-bypass", UnitSystem.SI), "  went back          2.61 L  to the mains");
    }

    @Test
    void aValveThatRunsOnFedWaterIsSaidTo() {
        for (String name :
                List.of("mill-cottage-high-street", "mill-cottage-stuck-open", "mill-cottage-night-street")) {
            assertTrue(report(name, UnitSystem.SI).contains("The valve runs on water fed by the supply"), name);
        }
        for (String name : List.of("mill-cottage", "orchard-lodge", "tannery-yard")) {
            assertFalse(report(name, UnitSystem.SI).contains("fed by the supply"), name);
        }
    }

    @Test
    void drawsThatFellShortAreCounted() {
        assertTrue(report("mill-cottage", UnitSystem.SI)
                .contains("5 draws were not fully served: the water was cooler than wanted at the tap."));
        assertFalse(report("birch-street-day", UnitSystem.US).contains("not fully served"));
        String cold = Catalogue.text("weir-house-day")
                .replace("water: 58 degC", "water: 12 degC")
                .replace("input: 3 kW", "input: 0.05 kW");
        Scenario scenario = ScenarioReader.read("cold", cold);
        String report = RunReport.of(
                        scenario, RunFindings.of(scenario.simulation().run()), Balances.NONE, UnitSystem.SI)
                .text();
        assertTrue(report.contains("not fully served: the next draw began before the heat asked for"), report);
    }

    /** A valve above the tank sees less, so the limit at the drain cock is higher. */
    @Test
    void theLowestSetPressureIsTheOneThatIsReachedFirst() {
        assertLines(report("beacon-tower", UnitSystem.SI), "  relief set        7.5 bar  cellar valve: 0.06 bar left");
    }

    @Test
    void whatIsAssumedIsSaid() {
        assertLines(
                report("ridge-house", UnitSystem.US),
                "  tank.working-pressure       10 bar",
                "  piping                      none");
    }

    @Test
    void everyReportEndsWithACaution() {
        String end = report("ferry-cottage", UnitSystem.SI);
        assertTrue(end.endsWith(Caution.text()));
        assertEquals("""
                Caution: hot water scalds. Never plug, cap or downsize a temperature and
                pressure relief valve. Before any work turn the heater off and let it cool.
                This is a model: local code and a licensed professional decide.
                """, Caution.text());
    }

    @Test
    void aComparisonIsOneTable() {
        List<NamedRun> runs = List.of(named("orchard-lodge"), named("orchard-lodge-vessel"), named("quarry-row"));
        String report = ComparisonReport.of(
                        runs, runs.stream().map(NamedRun::summary).toList(), UnitSystem.SI)
                .text();
        assertTrue(report.startsWith("HAZARD in quarry-row: After 27 min 12 s the pressure reaches 16 bar."), report);
        assertLines(
                report,
                "                                 peak         after   relieved  relief set",
                "orchard-lodge                   7 bar   10 min 16 s     3.14 L  reached",
                "orchard-lodge-vessel         6.02 bar    1 h 30 min        0 L  0.98 bar left",
                "quarry-row                     16 bar   27 min 12 s        0 L  none");
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void reportsArePlainTextOfEightyColumns(UnitSystem units) {
        for (String name : Catalogue.names()) {
            String report = report(name, units);
            report.lines().forEach(line -> assertTrue(line.length() < 80 && line.equals(line.stripTrailing()), line));
            assertTrue(report.chars().allMatch(c -> c == '\n' || c >= 32 && c < 127), report);
        }
    }

    private static void assertLines(String report, String... lines) {
        for (String line : lines) {
            assertTrue(report.lines().anyMatch(line::equals), line + "\nis not in\n" + report);
        }
    }

    private static String report(String name, UnitSystem units) {
        Scenario scenario = Catalogue.read(name);
        return RunReport.of(scenario, RunFindings.of(scenario.simulation().run()), Balances.NONE, units)
                .text();
    }

    private static NamedRun named(String name) {
        return new NamedRun(name, Catalogue.read(name).simulation().run());
    }
}

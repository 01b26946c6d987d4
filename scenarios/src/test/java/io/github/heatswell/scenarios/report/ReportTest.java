package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReportTest {

    @Test
    void aReportSaysWhatHappenedAndHowMuchRoomWasLeft() {
        String report = report("orchard-lodge-vessel", UnitSystem.SI);
        assertLines(
                report,
                "Orchard lodge with a 12 L vessel charged to the supply pressure",
                "  Start  4.2 bar  9 degC",
                "  Peak  6.02 bar  after 1 h 30 min",
                "  Relief set  7 bar  expansion valve: 0.98 bar left",
                "  Tank limit  10 bar  working pressure: 3.98 bar left",
                "  Discharged  0 L  expansion valve, stayed shut",
                "  Vessel  3.12 L  the most water it held");
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
                "  Run  27 min 12 s  ended by the hazard",
                "  Relief set  none  no relief valve is described",
                "  Tank limit  8 bar  working pressure: exceeded by 8 bar");
    }

    @Test
    void usUnitsAreAsComplete() {
        String report = report("orchard-lodge", UnitSystem.US);
        assertLines(
                report,
                "  Start  61 psi  48 degF",
                "  Peak  102 psi  after 10 min 16 s",
                "  Hottest  136 degF  after 1 h 30 min",
                "  Relief set  102 psi  expansion valve: reached",
                "  Discharged  0.83 gal  expansion valve, opened once");
    }

    /** The question of a bundled house is in the reader's words; an owner's stays as written. */
    @Test
    void aBundledQuestionIsAskedInTheReadersWords() {
        String report = report("mill-cottage-overcharged-vessel", UnitSystem.US).replaceAll("\\s+", " ");
        assertTrue(
                report.contains("What if the expansion tank is charged to 97 psi in a house with a 58 psi supply?"),
                report);
        Scenario owned = Catalogue.read("mill-cottage").with(List.of(Change.of("question=Is the vessel too small?")));
        assertTrue(Pages.onScreen(owned, owned.simulation().run(), UnitSystem.US)
                .text()
                .contains("Is the vessel too small?"));
    }

    /** Regression: two tables of field paths and every caution's advice pushed the answer off the screen. */
    @Test
    void theScreenHoldsWhatMattersNow() {
        String report = report("ridge-house", UnitSystem.US);
        assertFalse(report.contains("tank.w") || report.contains("piping  "), report);
        assertTrue(
                report.contains(" that the file does not give are assumed") && report.contains("report.html lists"),
                report);
        assertTrue(report.lines().count() < 60, report);
    }

    @Test
    void whatWentInAndOutIsSaidDeviceByDevice() {
        String report = report("mill-cottage-dripping-tap", UnitSystem.SI);
        assertLines(
                report,
                "  Drawn  353 L  hot water, 69 draws",
                "  Delivered  17.5 kWh  heat at the taps, above cold water",
                "  Leaked  389 L  through dripping taps and other leaks");
        assertLines(report("kiln-house-blocked", UnitSystem.SI), "  Discharged  0 L  T&P valve, which is blocked");
        assertLines(
                report("mill-cottage-worn-seat", UnitSystem.SI),
                "  Discharged  21 L  safety valve, through its worn seat");
        assertLines(report("tannery-yard-bypass", UnitSystem.SI), "  Went back  2.61 L  to the mains");
    }

    @Test
    void aValveThatRunsOnFedWaterIsSaidTo() {
        for (String name : List.of("mill-cottage-high-mains", "mill-cottage-stuck-open", "mill-cottage-night-mains")) {
            assertTrue(report(name, UnitSystem.SI).contains("The valve runs on water from the supply"), name);
        }
        for (String name : List.of("mill-cottage", "orchard-lodge", "tannery-yard")) {
            assertFalse(report(name, UnitSystem.SI).contains("fed by the supply"), name);
        }
    }

    /** Regression: what the interview makes the owner ask is answered by its first word. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mill-cottage              | heating | Yes, as described: the heated water has nowhere else to go. The relief valve opens
            mill-cottage-night-mains | heating | No: in the house as described, something else makes it run.
            mill-cottage-night-mains | night   | The supply, as described: it opens the valve on its own.
            orchard-lodge-vessel      | night   | No: the house as described does not drip.
            mill-cottage              | always  | Yes, but not all the time
            orchard-lodge-vessel      | always  | No: in the house as described a sound valve stays shut.
            orchard-lodge-vessel      | no      | Yes: as described, the valve stays shut.
            mill-cottage              | no      | No: as described, the house drips.
            """)
    void theOwnersQuestionIsAnsweredByItsFirstWord(String name, String seen, String answer) {
        String question = Map.of(
                        "heating", "The relief valve drips during heat-up. Is it thermal expansion?",
                        "night", "The relief valve drips at night. Is it the supply pressure, or thermal expansion?",
                        "always", "The relief valve drips all the time. Would an undamaged one drip?",
                        "no", "The relief valve is dry. Does the simulation agree?")
                .get(seen);
        Scenario asked = Catalogue.read(name).with(List.of(new Change("question", question)));
        String text = Pages.onScreen(asked, asked.simulation().run(), UnitSystem.SI)
                .text()
                .replaceAll("\\s+", " ");
        assertTrue(text.contains(question + " " + answer), text);
    }

    @Test
    void drawsThatFellShortAreCounted() {
        assertTrue(report("mill-cottage", UnitSystem.SI)
                .contains("3 draws were not fully served: the water was cooler than wanted at the tap."));
        assertFalse(report("birch-street-day", UnitSystem.US).contains("not fully served"));
        String cold = Catalogue.text("weir-house-day")
                .replace("water: 58 degC", "water: 12 degC")
                .replace("input: 3 kW", "input: 0.05 kW");
        Scenario scenario = ScenarioReader.read("cold", cold);
        String report = Pages.onScreen(scenario, scenario.simulation().run(), UnitSystem.SI)
                .text();
        assertTrue(report.contains("not fully served: the next draw began before the heat asked for"), report);
    }

    /** A valve above the tank sees less, so the limit at the drain cock is higher. */
    @Test
    void theLowestSetPressureIsTheOneThatIsReachedFirst() {
        assertLines(report("beacon-tower", UnitSystem.SI), "  Relief set  7.5 bar  cellar valve: 0.06 bar left");
        String birch = report("birch-street-day", UnitSystem.US).replaceAll("\\s+", " ");
        assertTrue(birch.contains("Relief set 152 psi T&P valve, as seen at the drain valve:"), birch);
    }

    /** A run that nobody set the length of was not asked for. */
    @Test
    void aRunSaysWhoseLengthItHas() {
        Scenario given = Catalogue.read("orchard-lodge");
        String asked =
                Pages.onScreen(given, given.simulation().run(), UnitSystem.SI).text();
        assertTrue(asked.contains("as specified") && !asked.contains("by default"), asked);
        Scenario silent =
                ScenarioReader.read("silent", Catalogue.text("orchard-lodge").replace("duration: 4 h, ", ""));
        String free =
                Pages.onScreen(silent, silent.simulation().run(), UnitSystem.SI).text();
        assertTrue(free.contains("by default") && !free.contains("as specified"), free);
    }

    @Test
    void everyReportEndsWithACaution() {
        String end = report("ferry-cottage", UnitSystem.SI);
        assertTrue(end.endsWith(Document.cautionInShort()));
        assertEquals("""
                Caution: hot water scalds. Never plug, cap or downsize a temperature and
                pressure relief valve. Before any work turn the heater off and let it cool.
                This is a model: local code and a licensed professional decide.
                """, Document.cautionInShort());
    }

    @Test
    void aComparisonIsOneTable() {
        List<NamedRun> runs = List.of(named("orchard-lodge"), named("orchard-lodge-vessel"), named("quarry-row"));
        Chart chart = Chart.comparing(runs, UnitSystem.SI);
        String report = Report.of(
                        new ComparisonReport(
                                        runs,
                                        runs.stream().map(NamedRun::summary).toList(),
                                        chart)
                                .content(CommandResult.onScreen(UnitSystem.SI)),
                        Balances.NONE)
                .text();
        assertTrue(report.startsWith("HAZARD in quarry-row: After 27 min 12 s the pressure reaches 16 bar."), report);
        assertLines(
                report,
                "  Run                       Peak        After  Discharged  relief set",
                "  orchard-lodge            7 bar  10 min 16 s      3.14 L  reached",
                "  orchard-lodge-vessel  6.02 bar   1 h 30 min         0 L  0.98 bar left",
                "  quarry-row              16 bar  27 min 12 s         0 L  no relief valve");
    }

    /** Braces mark the places of quantities in findings; a name may have them too. */
    @Test
    void aNameMayHaveBraces() {
        Scenario scenario = Catalogue.read("orchard-lodge").with(List.of(new Change("relief[0].name", "a {} b")));
        String report = Pages.onScreen(scenario, scenario.simulation().run(), UnitSystem.SI)
                .text();
        assertTrue(report.contains("'a {} b', set to 7 bar, opened once"), report);
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

    /** How wide a column is depends on what else is in it. */
    private static void assertLines(String report, String... lines) {
        for (String line : lines) {
            assertTrue(
                    report.lines().map(ReportTest::narrow).anyMatch(narrow(line)::equals),
                    line + "\nis not in\n" + report);
        }
    }

    private static String narrow(String line) {
        return line.replaceAll("(?<=\\S) {2,}", "  ");
    }

    private static String report(String name, UnitSystem units) {
        Scenario scenario = Catalogue.read(name);
        return Pages.onScreen(scenario, scenario.simulation().run(), units).text();
    }

    private static NamedRun named(String name) {
        return new NamedRun(name, Catalogue.read(name).simulation().run());
    }
}

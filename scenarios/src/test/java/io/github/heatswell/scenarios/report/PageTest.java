package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.checksheet.CheckProcedure;
import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.checksheet.UncertainCheck;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What goes into the printed report of runs and sizings. */
class PageTest {

    @Test
    void theCheckSheetIsThatOfTheHouseWithTheToleranceOfGaugeAndHouse() throws IOException {
        Scenario scenario = Catalogue.read("orchard-lodge-vessel");
        Check check = check(scenario, UnitSystem.SI);
        List<CheckSheet.Reading> expected =
                CheckProcedure.of(scenario.system()).simulate(scenario.system()).readings();
        assertEquals(6, check.readings().size());
        for (int i = 0; i < 6; i++) {
            var line = check.readings().get(i);
            double gauge = line.expectedGauge();
            assertEquals(expected.get(i).expectedGauge(), gauge);
            double error = UncertainCheck.Gauge.dialFor(6e5, UnitSystem.SI).error();
            assertTrue(line.lowestGauge() <= gauge - error, line.when());
            assertTrue(line.highestGauge() >= gauge + error, line.when());
        }
        assertTrue(check.steps().stream().anyMatch(step -> step.contains("77\u00a0L")));
        assertTrue(check.remarks()
                .contains(
                        "No relief valve is expected to discharge after the draw. The heat-up of the cold tank before it expands more"
                                + " water, so a valve may drip then."));
        assertTrue(
                check.remarks().get(0).startsWith("This sheet is for the house with a vessel of 12"),
                check.remarks().get(0));
    }

    /** Cold and at rest the gauge shows the supply, so nine of ten readings lie within 0.9 of half an even range. */
    @Test
    void theToleranceIsThatOfTheUncertaintiesGiven() throws IOException {
        Scenario scenario =
                Catalogue.read("orchard-lodge-vessel").with(List.of(Change.of("supply.pressure=4.0 bar to 4.4 bar")));
        var cold = check(scenario, UnitSystem.SI).readings().get(0);
        double expected = Math.hypot(
                0.9 * 0.2e5, UncertainCheck.Gauge.dialFor(6e5, UnitSystem.SI).error());
        // A quantile of 128 samples of an even spread is right to a hundredth of its range.
        assertEquals(4.2e5 - expected, cold.lowestGauge(), 0.01 * 0.4e5);
        assertEquals(4.2e5 + expected, cold.highestGauge(), 0.01 * 0.4e5);
    }

    @Test
    void aHouseThatEndsInAHazardGetsNoCheckSheetButTheReason() throws IOException {
        for (String name : List.of("quarry-row", "kiln-house-blocked")) {
            Document content = page(Catalogue.read(name), UnitSystem.US);
            Check check = check(Catalogue.read(name), UnitSystem.US);
            assertTrue(check.readings().isEmpty() && check.steps().isEmpty());
            assertTrue(check.remarks().get(0).contains("Leave the heater off"));
            assertTrue(content.alarms().get(0).word().startsWith("HAZARD"));
            assertTrue(content.sections().stream().noneMatch(one -> one.form() == Document.Form.PAPER));
            assertTrue(Pages.onPage(content.sections().get(0)).stream()
                    .anyMatch(block -> block.toString().contains("There is no check sheet")));
        }
    }

    /** What can hurt people is said before everything else, once. */
    @Test
    void gravestFindingsStandAmongTheAlarms() throws IOException {
        Document content = page(Catalogue.read("kiln-house-blocked"), UnitSystem.SI);
        List<String> alarms = content.alarms().stream().map(AlarmNote::text).toList();
        assertEquals(alarms.size(), alarms.stream().distinct().count());
        assertTrue(alarms.size() > 1, alarms.toString());
        List<Block> findings = Pages.onPage(section(content, "Findings")).stream()
                .filter(Block.FoundRule.class::isInstance)
                .toList();
        assertFalse(findings.isEmpty());
        for (Block block : findings) {
            assertTrue(((Block.FoundRule) block)
                    .entries().stream()
                            .anyMatch(entry -> entry.name().equals("Source")
                                    && !entry.text().isBlank()));
        }
    }

    /** The verdict alone is set large; what it rests on follows in plain words, before what is not known. */
    @Test
    void theVerdictOfASizingIsOneSentence() throws IOException {
        for (String name : List.of("orchard-lodge", "orchard-lodge-vessel", "orchard-lodge-two-vessels")) {
            VesselAnswer answer = VesselChoice.of(Catalogue.read(name)).build().answer();
            Document content = new SizingReport(answer, UnitSystem.SI).content(CommandResult.onPage(UnitSystem.SI));
            List<Block.Paragraph> said = section(content, "The answer").blocks().stream()
                    .filter(Block.Paragraph.class::isInstance)
                    .map(Block.Paragraph.class::cast)
                    .toList();
            assertEquals(Block.Tone.ANSWER, said.get(0).tone());
            assertEquals(
                    1,
                    said.get(0).text().split("[.](?= |$)").length,
                    said.get(0).text());
            assertTrue(
                    said.stream().skip(1).noneMatch(paragraph -> paragraph.tone() == Block.Tone.ANSWER),
                    said.toString());
            assertEquals(Block.Tone.PLAIN, said.get(1).tone());
            assertTrue(
                    said.get(1).text().contains("sampled houses"), said.get(1).text());
        }
    }

    /** Typed in the folder of the file, it makes the page of this very house: its changes and units go along. */
    @Test
    void theReportNamesTheCommandThatMakesALivePageOfTheHouse() throws IOException {
        Scenario changed = Catalogue.read("orchard-lodge")
                .with(List.of(Change.of("vessel.volume=12 L"), Change.of("vessel.precharge=4.2 bar")))
                .in(UnitSystem.US);
        assertEquals(
                "heatswell page orchard-lodge --set \"vessel.volume=12 L\" --set \"vessel.precharge=4.2 bar\" --units us",
                live(page(changed, UnitSystem.US)));
        VesselAnswer answer =
                VesselChoice.of(Catalogue.read("orchard-lodge")).build().answer();
        assertEquals(
                "heatswell page orchard-lodge",
                live(new SizingReport(answer, UnitSystem.SI).content(CommandResult.onPage(UnitSystem.SI))));
    }

    private static String live(Document document) {
        return Pages.onPage(section(document, "Inputs and assumptions")).stream()
                .filter(Block.Formula.class::isInstance)
                .map(block -> ((Block.Formula) block).expression())
                .collect(Collectors.joining("; "));
    }

    @Test
    void everySizeIsListedWithTheRunAfterIt() throws IOException {
        VesselAnswer answer =
                VesselChoice.of(Catalogue.read("orchard-lodge")).build().answer();
        Document content = new SizingReport(answer, UnitSystem.SI).content(CommandResult.onPage(UnitSystem.SI));
        List<Block> options = Pages.onPage(section(content, "Sizes, alternatives and cost"));
        assertEquals(
                answer.sizing().nominal().size(), ((Grid) options.get(0)).rows().size());
        assertEquals(3, options.stream().filter(Block.Formula.class::isInstance).count());
        Grid choices = options.stream()
                .filter(Grid.class::isInstance)
                .map(Grid.class::cast)
                .filter(grid -> grid.caption().startsWith("What you can do"))
                .findFirst()
                .orElseThrow();
        assertEquals("0\u00a0m\u00b3", choices.rows().get(1).get(3));
        section(content, "For the fitter: the expansion vessel");
        StringBuilder page = new StringBuilder();
        HtmlPage.write(content, page);
        assertTrue(page.indexOf("would drip") > 0, "a size that is far too small is not said to hold");
        assertTrue(page.indexOf(">58\u00a0\u00b0C<") > 0, "a temperature is no difference");
        assertTrue(page.indexOf(">49\u00a0K<") > 0, "a difference is no temperature");
    }

    /** Regression: the appendix had the sizes at the supply that is to be changed, none of which is enough, and not at that advised. */
    @Test
    void theAppendixHasTheSizesAtTheSupplyThatIsAdvised() {
        VesselAnswer answer = VesselChoice.of(
                        Catalogue.read("ridge-house").with(List.of(Change.of("supply.pressure=79 psi"))))
                .build()
                .answer();
        QuantityFormat shown = CommandResult.onPage(UnitSystem.US);
        Document content = new SizingReport(answer, UnitSystem.US).content(shown);
        List<Block> printed = Pages.onPage(section(content, "Sizes, alternatives and cost"));
        Grid sizes = (Grid) printed.get(0);
        String supply = LoweredSupply.of(answer).orElseThrow().set(shown);
        assertTrue(sizes.caption().endsWith(", with " + supply), sizes.caption());
        assertTrue(sizes.rows().toString().contains("yes, recommended"), sizes.toString());
        assertTrue(printed.get(1) instanceof Block.Folded, "those at the present supply are folded");
    }

    /** Regression: the check sheet rested on more ranges than the page listed. */
    @Test
    void everyRangeBehindTheCheckSheetIsListed() throws IOException {
        Scenario house = Catalogue.read("ridge-house")
                .with(List.of(
                        Change.of("supply.arrangement=reducing-valve"),
                        Change.of("supply.reducing-valve={ set: 50 psi }")));
        String listed = Pages.onPage(section(page(house, UnitSystem.US), "Inputs and assumptions"))
                .toString();
        assertTrue(listed.contains("lock-up rise of the reducing valve 0\u00a0psi to 8.7\u00a0psi"), listed);
        assertTrue(listed.contains(VariedHouse.ASSUMED_RESEAT + " 70 % to 95 %"), listed);
    }

    /** A person whose house is cured wants to show it to an inspector. */
    @Test
    void theRunOfACuredHouseTellsHowToMakeTheSheetForTheAuthority() throws IOException {
        String cured = Pages.text(page(Catalogue.read("orchard-lodge-vessel"), UnitSystem.SI));
        assertTrue(
                cured.contains("heatswell size --against 12L&#39; with the file of this house"),
                "the vessel that is there");
        String open = Pages.text(page(Catalogue.read("ferry-cottage"), UnitSystem.SI));
        assertFalse(open.contains("For the authority"), "a house that needs no vessel");
    }

    private static Document.Section section(Document document, String title) {
        return document.sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** Regression: a run had a vessel pumped up and labelled that a sizing of the same house calls too small. */
    @Test
    void aVesselThatIsTooSmallIsNotPresentedAsTheCure() {
        String house = """
                supply:
                  arrangement: reducing-valve
                  pressure: 5.8 bar
                  water: 7 degC
                  reducing-valve: { set: 3 bar }
                tank: { volume: 210 L, material: stainless-steel, working-pressure: 7 bar }
                heater: { energy: electric, input: 3 kW, set-point: 62 degC }
                relief:
                  - { name: expansion valve, kind: expansion-valve, opens: 6 bar }
                vessel: { volume: %s L, precharge: 0.5 bar }
                run: { duration: 6 h }
                """;
        Document small = page(ScenarioReader.read("elm", house.formatted("12")), UnitSystem.SI);
        String said = "vessel of this house is too small at the present supply";
        String todo = section(small, "The answer").blocks().toString();
        assertTrue(todo.indexOf(said) < todo.indexOf("What to do"), "on the screen, too: " + todo);
        assertTrue(
                todo.lastIndexOf(said) > todo.indexOf("What to do")
                        && todo.lastIndexOf(said) < todo.indexOf("Pump it up"),
                todo);
        List<Block> sheet =
                section(small, "For the fitter: the expansion vessel").blocks();
        assertTrue(sheet.get(0).toString().contains(said), sheet.toString());
        assertTrue(sheet.stream().noneMatch(Block.Blanks.class::isInstance), "no settings and no tag: " + sheet);
        Document large = page(ScenarioReader.read("elm", house.formatted("24")), UnitSystem.SI);
        sheet = section(large, "For the fitter: the expansion vessel").blocks();
        assertFalse(large.sections().toString().contains(said));
        assertTrue(sheet.stream().anyMatch(Block.Blanks.class::isInstance), "settings and a tag: " + sheet);
    }

    /** Regression: what to do began with an expansion vessel where the water boils. */
    @Test
    void whatToDoBeginsWithTheCureOfTheHazard() {
        Document hot = page(ScenarioReader.read("hot", """
                        supply: { arrangement: check-valve, pressure: 4 bar, water: 10 degC }
                        tank: { volume: 50 L, material: steel }
                        heater: { energy: electric, input: 3 kW, set-point: 60 degC, thermostat: stuck }
                        relief: [{ opens: 7 bar }]
                        run: { duration: 4 h }
                        """), UnitSystem.SI);
        String todo = section(hot, "The answer").blocks().toString();
        todo = todo.substring(todo.indexOf("What to do"));
        int cure = todo.indexOf("leave it off until the thermostat has been replaced");
        assertTrue(cure > 0 && cure < todo.indexOf("Have an expansion vessel"), todo);
        List<Block.FoundRule> cautions = section(hot, "Findings").blocks().stream()
                .filter(Block.Either.class::isInstance)
                .flatMap(block -> ((Block.Either) block).screen().stream())
                .filter(Block.FoundRule.class::isInstance)
                .map(Block.FoundRule.class::cast)
                .filter(rule -> rule.severity().equals("Caution:"))
                .toList();
        assertFalse(cautions.isEmpty());
        cautions.forEach(
                rule -> assertFalse(rule.advice().isBlank(), "a caution keeps its advice on the screen: " + rule));
    }

    /** Regression: a house that drips at one end of the range given and not at the other was told its middle alone. */
    @Test
    void anAnswerThatDiffersWithinTheRangeGivenSaysSo() {
        String house = """
                supply: { arrangement: reducing-valve, pressure: 5 bar, water: 7 degC, reducing-valve: { set: 3 bar, lock-up-rise: 0.2 bar } }
                tank: { volume: 250 L, material: stainless-steel, working-pressure: 10 bar }
                heater: { energy: electric, input: 3 kW, set-point: 62 degC }
                relief: [{ opens: 6 bar }]
                vessel: { volume: 18 L, precharge: %s }
                run: { duration: 1 h }
                """;
        String both = section(
                        page(ScenarioReader.read("lane", house.formatted("0.5 bar to 3 bar")), UnitSystem.SI),
                        "The answer")
                .blocks()
                .toString();
        assertTrue(
                both.matches(
                        "(?s).*Within what is not known, the valve may open\\. After the check's draw of 83\\hL, a relief valve discharges in \\d+ of 128 houses .*"),
                both);
        String opens = section(
                        page(
                                ScenarioReader.read(
                                        "lane",
                                        house.formatted("0.5 bar to 1.5 bar").replace("1 h", "10 h")),
                                UnitSystem.SI),
                        "The answer")
                .blocks()
                .toString();
        assertTrue(opens.contains("The relief valve opens"), opens);
        assertFalse(opens.contains("of 128 houses"), "of a smaller heat-up than that of the run: " + opens);
        String one = section(page(ScenarioReader.read("lane", house.formatted("3 bar")), UnitSystem.SI), "The answer")
                .blocks()
                .toString();
        assertFalse(one.contains("of 128 houses"), one);
    }

    /** Regression: What to do sold a vessel that the table of sizes below called too small, as it did every other on sale. */
    @Test
    void whereNoVesselOnSaleIsEnoughTheSupplyIsLoweredFirst() {
        String house = """
                supply: { arrangement: reducing-valve, pressure: 8 bar, water: 10 degC, reducing-valve: { set: %s } }
                tank:   { volume: 200 L, material: steel }
                heater: { energy: electric, input: 3 kW, set-point: 60 degC }
                relief:
                  - { opens: 7 bar }
                run: { duration: 6 h }
                """;
        String first = "First have the reducing valve set lower";
        Document high = page(ScenarioReader.read("high", house.formatted("5 bar")), UnitSystem.SI);
        String todo = section(high, "The answer").blocks().toString();
        todo = todo.substring(todo.indexOf("What to do"));
        assertTrue(todo.contains(first) && todo.indexOf(first) < todo.indexOf("Have an expansion vessel"), todo);
        assertTrue(section(high, "For the fitter: the expansion vessel")
                .blocks()
                .get(0)
                .toString()
                .contains(first));
        Document low = page(ScenarioReader.read("low", house.formatted("2 bar")), UnitSystem.SI);
        assertFalse(low.sections().toString().contains(first));
    }

    private static Check check(Scenario scenario, UnitSystem units) {
        return advice(scenario, scenario.simulation().run(), units).check();
    }

    private static Advice advice(Scenario scenario, RunResult result, UnitSystem units) {
        return Advice.of(scenario, Findings.of(result.summary(), scenario.doubts()), CommandResult.onPage(units));
    }

    private static Document page(Scenario scenario, UnitSystem units) {
        RunResult result = scenario.simulation().run();
        Advice advice = advice(scenario, result, units);
        return new Results(scenario, RunFindings.of(result), advice, Chart.of(result, units))
                .content(CommandResult.onPage(units));
    }
}

package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: the answer to an owner's question never contradicts what its own run discharged. */
class OwnersQuestionTest {

    private static final String EXPANSION = "The relief valve drips during heat-up. Is it thermal expansion?";
    private static final String MAINS =
            "The relief valve drips at night. Is it the supply pressure, or thermal expansion?";
    private static final String DRY = "The relief valve is dry. Does the simulation agree?";

    /** Less than a drop or two (m3). */
    private static final double DROP = 1e-5;

    static List<String> names() {
        return Catalogue.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theVerdictAgreesWithTheTotals(String name) {
        Scenario described = Catalogue.read(name);
        List<Scenario> houses = new ArrayList<>(List.of(described));
        if (described.system().vessels().size() == 1 && described.duration().compareTo(Duration.ofHours(30)) < 0) {
            for (String condition : List.of("isolated", "waterlogged", "upstream-of-check")) {
                houses.add(described.with(List.of(new Change("vessel.condition", condition))));
            }
            houses.add(described.with(List.of(new Change("vessel.precharge", "1 bar"))));
        }
        for (Scenario house : houses) {
            RunSummary run = house.simulation().run().summary();
            boolean drips = run.totals().relieved() > DROP;
            String told = name + ", " + house.system().vessels() + ": " + run.totals();
            assertEquals(drips ? "No" : "Yes", said(house, run, DRY).replaceAll("\\W.*", ""), told);
            for (String question : List.of(EXPANSION, MAINS)) {
                boolean dry = said(house, run, question).matches(".*(does not drip|stays shut).*");
                assertEquals(!drips, dry, told);
            }
        }
    }

    private static String said(Scenario house, RunSummary run, String question) {
        return Narrative.verdict(question, run, house.doubts()).orElseThrow();
    }

    /** What was seen before a vessel was fitted says nothing of the house with it; another description of the house leaves it as it is. */
    @Test
    void aHouseWithAnotherVesselIsAskedWhetherThatStopsTheDrip() {
        String after = "Does the relief valve stay shut after the change?";
        Scenario dripping = Catalogue.read("orchard-lodge").with(List.of(new Change("question", EXPANSION)));
        Scenario cured =
                dripping.with(List.of(new Change("vessel.volume", "12 L"), new Change("vessel.precharge", "4.2 bar")));
        assertEquals(after, cured.question());
        assertTrue(cured.changedText().contains(after), cured::changedText);
        assertTrue(said(cured, cured.simulation().run().summary(), cured.question())
                .startsWith("Yes: "));
        assertEquals(
                EXPANSION,
                dripping.with(List.of(new Change("tank.volume", "150 L"))).question());
    }

    /** A charge or a state of the vessel that lets the valve drip is expansion, whatever finding names the vessel's fault. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vessel.precharge | 1 bar             | the vessel does not take up enough of it.",
                "vessel.condition | isolated          | the vessel takes up none of it.",
                "vessel.condition | waterlogged       | the vessel takes up none of it.",
                "vessel.condition | upstream-of-check | the vessel takes up none of it."
            })
    void aVesselThatFailsLetsTheExpansionDrip(String field, String value, String why) {
        Scenario house = Catalogue.read("orchard-lodge-vessel").with(List.of(new Change(field, value)));
        RunSummary run = house.simulation().run().summary();
        assertTrue(run.totals().relieved() > DROP);
        assertEquals("Yes, as described: the water expands as it heats, and " + why, said(house, run, EXPANSION));
    }

    /** Regression: the question in other words was given an account of the run for an answer. */
    @ParameterizedTest
    @ValueSource(
            strings = {"It drips at night. Is it the expansion?", "is this thermal expansion?", "Is it expansion?"})
    void theSameInOtherWordsIsAnswered(String question) {
        Scenario house = Catalogue.read("orchard-lodge");
        assertTrue(said(house, house.simulation().run().summary(), question).startsWith("Yes, as described: "));
    }

    /** A bundled question whether a valve is worn is answered by its first word. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mill-cottage     | Thermal expansion, as described: the heated water has nowhere else to go.",
                "vineyard-cottage | No, as described: the water expands as it heats, and that opens the valve."
            })
    void whetherAValveIsWornIsAnswered(String name, String answer) {
        Scenario house = Catalogue.read(name);
        RunSummary run = house.simulation().run().summary();
        assertEquals(answer, said(house, run, house.question()));
    }

    /** A sizing does not count the water of a house that stays dry where its owner sees it drip. */
    @ParameterizedTest
    @CsvSource({"orchard-lodge-vessel, true", "mill-cottage, false"})
    void aSizingSaysThatItsRunIsNotWhatTheOwnerSees(String name, boolean unlike) {
        Scenario house = Catalogue.read(name).with(List.of(new Change("question", EXPANSION)));
        String text = SizingReport.answer(VesselChoice.of(house).build().answer(), UnitSystem.SI)
                .report()
                .get()
                .text()
                .replaceAll("\\s+", " ");
        assertEquals(unlike, text.contains("the cost of doing nothing is not known"), text);
    }

    /**
     * What is only taken for a value nobody knows is no fact: the answer says so, and accuses no description. Regression: it left it at
     * that, though the owner had said that the valve drips.
     */
    @Test
    void aValueNobodyKnowsMakesNoPlainNo() {
        Scenario house = Catalogue.read("orchard-lodge-vessel")
                .with(List.of(new Change("vessel.precharge", "3.9 bar to 4.1 bar")));
        RunSummary run = house.simulation().run().summary();
        assertEquals(
                "Not with the assumed values: the valve stays shut. But you see it drip, so one of these values is wrong, or"
                        + " something is worn. Check first the precharge of the vessel, with its water side drained.",
                said(house, run, EXPANSION));
        assertFalse(said(house, run, DRY).contains("as described"));
    }

    /** Regression: a vessel that lets the pressure rise to 89 psi, where the code allows 80, was answered with a plain yes. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "us-ipc | 2.5 gal | It stays shut, as described, but the pressure climbs above the limit that the rules set here.",
                "us-ipc | 12 gal  | Yes: as described, it stays shut.",
                "en     | 2.5 gal | Yes: as described, it stays shut."
            })
    void aVesselThatIsTooSmallForTheRulesIsNoPlainYes(String place, String volume, String answer) {
        Scenario house = Catalogue.read("orchard-lodge-vessel")
                .with(List.of(
                        new Change("site.place", place),
                        new Change("vessel.volume", volume),
                        new Change("relief[0].opens", "10 bar"),
                        new Change("relief[0].full-lift", "11 bar"),
                        new Change("relief[0].reseats", "8 bar"),
                        new Change("tank.working-pressure", "12 bar")));
        assertEquals(
                answer,
                said(house, house.simulation().run().summary(), "Does the relief valve stay shut after the change?"));
    }
}

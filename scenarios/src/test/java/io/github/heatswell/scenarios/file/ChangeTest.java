package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A changed scenario is the scenario of a file in which the values stand. */
class ChangeTest {

    private static final Scenario LODGE = Catalogue.read("orchard-lodge");

    @Test
    void aChangedValueIsThatOfAFileThatHoldsIt() {
        Scenario changed = LODGE.with(List.of(Change.of("tank.volume=150 L"), Change.of(" supply.pressure = 60psi ")));
        Scenario written = ScenarioReader.read(
                "orchard-lodge",
                Catalogue.text("orchard-lodge")
                        .replace("volume: 230 L", "volume: 150 L")
                        .replace("4.2 bar", "60 psi"));
        assertEquals(written.system().tank().volume(), changed.system().tank().volume());
        assertEquals(
                written.simulation().run().extremes(),
                changed.simulation().run().extremes());
        assertEquals(List.of("tank.volume=150 L", "supply.pressure=60psi"), texts(changed));
        assertEquals(LODGE.source(), changed.source());
    }

    /** Regression: what a file says of its house is not said of another one. */
    @Test
    void aChangedHouseIsMarkedAndNotMeasuredByWhatWasExpected() {
        Scenario ferry = Catalogue.read("ferry-cottage");
        Scenario closed = ferry.with(List.of(Change.of("supply.arrangement=check-valve")));
        assertFalse(ferry.expectation().isEmpty());
        assertEquals("\u201c" + ferry.title() + "\u201d, with changes", closed.title());
        assertEquals("", closed.expectation());
        Scenario asked = ferry.with(List.of(Change.of("question=Why?")));
        assertEquals(ferry.title(), asked.title());
        assertEquals(ferry.expectation(), asked.expectation());
        Scenario told = closed.with(List.of(Change.of("title=Ferry cottage, closed"), Change.of("expect=It drips.")));
        assertEquals("Ferry cottage, closed", told.title());
        assertEquals("It drips.", told.expectation());
    }

    @Test
    void changesThatAreNullAreRefusedInWords() {
        assertEquals(
                "changes",
                assertThrows(NullPointerException.class, () -> LODGE.with(null)).getMessage());
        List<Change> one = Collections.singletonList(null);
        assertEquals(
                "changes: one of them is null",
                assertThrows(NullPointerException.class, () -> LODGE.with(one)).getMessage());
    }

    @Test
    void changesFollowOneAnother() {
        Scenario twice = LODGE.with(List.of(Change.of("tank.volume=150 L")))
                .with(List.of(Change.of("tank.volume=160 L"), Change.of("vessel={ volume: 8 L, precharge: 4 bar }")))
                .with(List.of(Change.of("vessel.precharge=3 bar")));
        assertEquals(0.16, twice.system().tank().volume(), 1e-12);
        assertEquals(0.008, twice.system().vessel().orElseThrow().volume(), 1e-12);
        assertEquals(3e5, twice.system().vessel().orElseThrow().precharge().value(), 1e-6);
        assertTrue(
                twice.with(List.of(Change.of("vessel=none"))).system().vessel().isEmpty());
    }

    /** To leave a cut-out out is no statement; the word for none is one, in a file as in a change. */
    @Test
    void aCutOutIsAbsentOnlyWhereItIsSaid() {
        assertFalse(LODGE.system().heater().isCutOutAbsent());
        Scenario without = LODGE.with(List.of(Change.of("heater.cut-out=none")));
        assertTrue(without.system().heater().isCutOutAbsent());
        assertEquals("none", without.given().get("heater.cut-out"));
    }

    @Test
    void whatIsGivenIsNoLongerAssumed() {
        assertTrue(fields(LODGE).contains("relief[0].character"));
        Scenario changed = LODGE.with(List.of(Change.of("relief[0].character=snap"), Change.of("tank.wall=none")));
        assertFalse(fields(changed).contains("relief[0].character"));
        assertTrue(fields(changed).contains("tank.wall"));
    }

    /** The house of the file with 28 mL/bar measured; then as an uncertain value, whose middle a run takes. */
    @Test
    void aMeasuredComplianceTakesThePlaceOfDimensions() {
        List<Change> measured = List.of(
                Change.of("tank.compliance=28 mL/bar"), Change.of("tank.diameter=none"), Change.of("tank.wall=none"));
        Scenario changed = LODGE.with(measured);
        assertTrue(changed.system().tank().complianceGiven());
        assertEquals(28e-11, changed.system().tank().compliance(), 1e-24); // rounding
        assertFalse(fields(changed).contains("tank.diameter"));
        assertFalse(fields(changed).contains("tank.wall"));
        Scenario uncertain = changed.with(List.of(Change.of("tank.compliance=0.07 fl oz/psi +- 10 %")));
        assertEquals(0.07 * 428.927e-11, uncertain.system().tank().compliance(), 1e-15); // digits of the unit
        assertEquals("tank.compliance", uncertain.uncertain().get(0).field());
    }

    /** Membrane theory (Tank.Builder.heads): of a tank about three times as high as wide, 10 % more. */
    @Test
    void headsAreAWordOrADepth() {
        double plain = LODGE.system().tank().compliance();
        Scenario word = LODGE.with(List.of(Change.of("tank.heads=Ellipsoidal")));
        Scenario depth = LODGE.with(List.of(Change.of("tank.heads=50 % +- 2 %")));
        assertEquals(1.1, word.system().tank().compliance() / plain, 0.03); // another height
        assertEquals(word.system().tank().compliance(), depth.system().tank().compliance(), 1e-12 * plain); // rounding
        assertEquals("tank.heads", depth.uncertain().get(0).field());
        Scenario flue = LODGE.with(List.of(Change.of("tank.flue=4 in"), Change.of("heater.energy=gas")));
        assertTrue(flue.system().tank().compliance() > 1.04 * plain, "a flue widens the shell and gives way itself");
    }

    @Test
    void itemsAreAddedAndTakenOut() {
        Scenario two = LODGE.with(List.of(Change.of("relief[1].name=second"), Change.of("relief[1].opens=8 bar")));
        assertEquals(2, two.system().reliefValves().size());
        Scenario none = two.with(List.of(Change.of("relief[0]=none"), Change.of("relief[0]=none")));
        assertEquals(0, none.system().reliefValves().size());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            tank.volum=3 L             | tank.volum: is not a known key here; did you mean volume?
            tank.volume=-3 L           | tank.volume: -3 L is outside the allowed range, 1 L to 20000 L
            tank.volume=150            | tank.volume: '150' has no unit; give a volume in
            tank..volume=3 L           | tank..volume: is not a field; write a field like tank.volume or relief[0].opens
            tank[0].volume=3 L         | tank: needs keys and values, not a list; its keys are volume, material, compliance, diameter, wall, heads, flue, expansion, standing-loss, working-pressure, air, never-fails, layers, height
            relief[4].opens=3 bar      | relief[4].opens: the list has 1 item; numbering starts at 0, so the next is number 1
            relief.character=snap      | relief: is a list, and its items are counted from 0; write, for example, relief[0].character
            leaks.flow=1 L/min         | leaks: is a list, and its items are counted from 0; write, for example, leaks[0].flow
            relief=snap                | relief: needs a list, not a single value; write its items in brackets, [{ ... }], or none
            relief[-1].opens=3 bar     | relief[-1].opens: is not a field; write a field like tank.volume or relief[0].opens
            tank=none                  | tank.volume: is missing; write, for example, 'volume: 230 L'
            relief[0].opens=3 bar      | relief[0].reseats: 5.6 bar gauge must be below the set pressure of 3 bar gauge
            draws=[{ at: 06:00         | draws:
            draws=!!int 3              | draws: '!!int 3' is not one of
            """)
    void whatMakesNoSenseIsRefusedWithTheChange(String change, String message) {
        InvalidScenarioException refusal =
                assertThrows(InvalidScenarioException.class, () -> LODGE.with(List.of(Change.of(change))));
        String first = refusal.getMessage().lines().findFirst().orElseThrow();
        boolean ofTheChange = first.startsWith("orchard-lodge with " + change + ": " + message);
        // What is missing or no longer fits is pointed at where it stands, or would stand, in the file.
        boolean ofTheFile = first.matches("orchard-lodge:\\d+:\\d+: .*") && first.contains(message);
        assertTrue(ofTheChange || ofTheFile, first);
    }

    @ParameterizedTest
    @CsvSource({"tank.volume", "=3 L", "tank.volume=", "''"})
    void aChangeIsAFieldAndAValue(String text) {
        assertThrows(IllegalArgumentException.class, () -> Change.of(text));
    }

    @Test
    void aScenarioOfAProgramHasNoText() {
        HotWaterSystem system = LODGE.system();
        Scenario made = Scenario.of("made", "Made", system, Duration.ofHours(4), Duration.ofMinutes(1));
        assertThrows(IllegalStateException.class, () -> made.with(List.of(Change.of("tank.volume=150 L"))));
        assertEquals("", made.changedText());
    }

    @Test
    void theChangedTextOfEveryBundledScenarioReadsBackTheSame() {
        for (String name : Catalogue.names()) {
            Scenario changed = Catalogue.read(name).with(List.of(Change.of("site.room=18 degC")));
            Scenario back = ScenarioReader.read(name, changed.changedText());
            assertEquals(changed.assumptions(), back.assumptions(), name);
            assertEquals(changed.changedText(), back.with(List.of()).changedText(), name);
            assertEquals(changed.title(), "\u201c" + back.title() + "\u201d, with changes", name);
            assertEquals(291.15, back.system().site().roomTemperature(), 1e-9, name);
        }
    }

    /** Regression: what a program asks of a scenario is in its text, and the units stay when more is changed. */
    @Test
    void theTextHoldsTheSamplingAndTheUnitsAskedFor() {
        for (String name : List.of("orchard-lodge", "ridge-house")) {
            Scenario plain = Catalogue.read(name);
            Scenario asked = plain.in(plain.units().other()).sampledEvery(Duration.ofMillis(7_500));
            Scenario back = ScenarioReader.read(name, asked.changedText());
            assertEquals(Duration.ofMillis(7_500), back.sample(), name);
            assertEquals(plain.units().other(), back.units(), name);
            assertEquals(asked.title(), back.title(), name);
            assertEquals(asked.assumptions(), back.assumptions(), name);
            assertEquals(asked.costs().currency(), back.costs().currency(), name);
            Scenario more = asked.with(List.of(Change.of("site.room=18 degC")));
            assertEquals(plain.sample(), more.sample(), "a sampling that is not in the text is forgotten");
            assertEquals(
                    plain.units().other(),
                    ScenarioReader.read(name, more.changedText()).units(),
                    name);
        }
        Scenario made = Scenario.of("made", "Made", LODGE.system(), Duration.ofHours(4), Duration.ofMinutes(1));
        Scenario inUs = made.in(UnitSystem.US).sampledEvery(Duration.ofSeconds(7));
        assertEquals(UnitSystem.US, inUs.units());
        assertEquals("", inUs.changedText());
    }

    private static List<String> texts(Scenario scenario) {
        return scenario.changes().stream().map(Change::toString).toList();
    }

    private static List<String> fields(Scenario scenario) {
        return scenario.assumptions().stream().map(Assumption::field).toList();
    }
}

package io.github.heatswell.narrative;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Site;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Regression: what is said of runs written by hand. */
class HeadlineTest {

    private static final HotWaterSystem BARE = Houses.bare().build();
    private static final HotWaterSystem ONE =
            Houses.bare().addReliefValve(Houses.snap("lid", 7, 6.3).build()).build();
    private static final HotWaterSystem AIRY = ONE.toBuilder()
            .tank(ONE.tank().toBuilder().air(1, VolumeUnit.LITRE).build())
            .build();
    private static final HotWaterSystem TWO = Houses.bare()
            .addReliefValve(Houses.snap("lid", 7, 6.3).build())
            .addReliefValve(Houses.snap("cellar", 6.5, 6).build())
            .build();
    private static final HotWaterSystem GUARDED =
            Houses.bare().addReliefValve(FaultlessHouse.guard(7, 6).build()).build();
    private static final HotWaterSystem VESSEL =
            Houses.bare().vessel(FaultlessHouse.vessel(18, 4).build()).build();

    static Stream<Arguments> findings() {
        return Stream.of(
                Arguments.of(
                        "The pressure peaks at 5.44 bar, 1.56 bar below the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 5.44, 4.2)),
                Arguments.of(
                        "The pressure peaks at 6.2 bar, 0.68 bar above the limit here, 5.52 bar",
                        RunByHand.run(
                                ONE.toBuilder()
                                        .site(Site.builder()
                                                .altitude(0, LengthUnit.METRE)
                                                .room(20, TemperatureUnit.CELSIUS)
                                                .place(Place.US_UPC)
                                                .build())
                                        .build(),
                                60,
                                4.2,
                                6.2)),
                Arguments.of(
                        "The pressure peaks at 6.97 bar, 0.03 bar below the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 6.97)),
                Arguments.of(
                        "The pressure peaks at 7 bar, just below the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 6.9999)),
                Arguments.of(
                        "The pressure peaks at 5.4 bar, 1.1 bar below the relief set pressure",
                        RunByHand.run(TWO, 60, 4.2, 5.4)),
                Arguments.of(
                        "The pressure stays at about 4.21 bar, 2.79 bar below the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 4.21, 4.2)),
                Arguments.of(
                        "The pressure peaks at 5.4 bar; there is no relief valve", RunByHand.run(BARE, 60, 4.2, 5.4)),
                Arguments.of(
                        "The bypass returns 2.5 L to the mains; the pressure peaks at 5.44 bar, 1.56 bar below the relief set"
                                + " pressure",
                        RunByHand.run(ONE, 60, 4.2, 5.44)
                                .event(30, Event.Kind.BYPASS_OPENED, "", 5.4)
                                .returned(2.5)),
                Arguments.of(
                        "The leaking seat of the feed returns 2.5 L to the mains; the pressure peaks at 5.44 bar, 1.56 bar below"
                                + " the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 5.44).returned(2.5)),
                Arguments.of(
                        "Leaks lose 3 L, which hides the expansion; the pressure peaks at 5.44 bar, 1.56 bar below the relief set"
                                + " pressure",
                        RunByHand.run(ONE, 60, 4.2, 5.44)
                                .event(30, Event.Kind.HEATER_ON, "", 4.2)
                                .leaked(3)),
                Arguments.of(
                        "The pressure peaks at 5.44 bar, 1.56 bar below the relief set pressure",
                        RunByHand.run(ONE, 60, 4.2, 5.44).returned(0.009).leaked(0.009)),
                Arguments.of(
                        "Water is held at 99 °C by “T&P valve”, which opens once, after 10 min, and lets 3 L through",
                        RunByHand.run(GUARDED, 600, 4.2, 5)
                                .openedByTemperature(600, Event.Kind.RELIEF_OPENED, "T&P valve", 5)
                                .relieved(3)),
                Arguments.of(
                        "The heater never switches on; the pressure peaks at 5.4 bar; there is no relief valve",
                        RunByHand.run(BARE, 60, 4.2, 5.4).unheated()),
                Arguments.of(
                        "The relief valve opens after 10 min and discharges 3.14 L",
                        RunByHand.run(ONE, 600, 4.2, 7, 6.3)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(3.14)),
                Arguments.of(
                        "The relief valve opens at the start and discharges under 0.01 L",
                        RunByHand.run(ONE, 600, 7, 6.3)
                                .event(0, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(0.004)),
                Arguments.of(
                        "The relief valve opens twice, first after 10 min, and discharges 0.42 L in all",
                        RunByHand.run(ONE, 600, 4.2, 7, 7)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .event(1200, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(0.42)),
                Arguments.of(
                        "The relief valve “cellar” opens after 10 min and discharges 3.14 L",
                        RunByHand.run(TWO, 600, 4.2, 6.5)
                                .event(600, Event.Kind.RELIEF_OPENED, "cellar", 6.5)
                                .relieved(3.14)),
                Arguments.of(
                        "2 relief valves open, the first after 10 min, and discharge 4 L in all",
                        RunByHand.run(TWO, 600, 4.2, 6.5, 7)
                                .event(600, Event.Kind.RELIEF_OPENED, "cellar", 6.5)
                                .event(1200, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(2)),
                Arguments.of(
                        "The pressure peaks at 11.2 bar, 1.2 bar above the tank's working pressure",
                        RunByHand.run(BARE, 60, 4.2, 11.2)),
                Arguments.of(
                        "The pressure peaks at 11.2 bar, 1.2 bar above the tank's working pressure; the relief valve opens"
                                + " after 10 min and discharges 3.14 L",
                        RunByHand.run(ONE, 600, 4.2, 11.2)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 11.2)
                                .relieved(3.14)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve, no vessel",
                        RunByHand.run(BARE, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve",
                        RunByHand.run(VESSEL, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: the open relief did not hold it",
                        RunByHand.run(ONE, 1320, 4.2, 20)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve opened",
                        RunByHand.run(ONE, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Water comes to the boil after 22 min, at 0.3 bar and a mean of 13 °C",
                        RunByHand.run(ONE, 1320, 4.2, 0.3).event(1320, Event.Kind.VAPOUR_FORMS, "", 0.3)),
                Arguments.of(
                        "Water fills the top of the tank with steam after 22 min, at 0.3 bar and a mean of 13 °C",
                        RunByHand.run(AIRY, 1320, 4.2, 0.3).event(1320, Event.Kind.VAPOUR_FORMS, "", 0.3)),
                Arguments.of(
                        "Pressure falls to the pressure of the surrounding air after 22 min: the supply does not hold it higher",
                        RunByHand.run(ONE, 1320, 4.2, 0).event(1320, Event.Kind.ATMOSPHERE_REACHED, "", 0)),
                Arguments.of(
                        "Water in the tank begins to freeze after 22 min",
                        RunByHand.run(ONE, 1320, 4.2, 5).event(1320, Event.Kind.WATER_FREEZES, "", 5)),
                Arguments.of(
                        "Water in the hot branch begins to freeze after 22 min",
                        RunByHand.run(ONE, 1320, 4.2, 5).event(1320, Event.Kind.WATER_FREEZES, "hot branch", 5)),
                Arguments.of(
                        "Water leaves the range of known water properties after 22 min, at 13 °C",
                        RunByHand.run(ONE, 1320, 4.2, 5).event(1320, Event.Kind.WATER_OUT_OF_RANGE, "", 5)));
    }

    @ParameterizedTest
    @MethodSource("findings")
    void saysWhatWasFound(String sentence, RunByHand run) {
        assertEquals(sentence, headline(run.summary(), UnitSystem.SI));
    }

    @Test
    void bothUnitSystemsGoIntoOneSentence() {
        RunSummary run = RunByHand.run(ONE, 600, 4.2, 7, 6.3)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .summary();
        assertEquals(
                "The relief valve opens after 10 min and discharges 3.14 L (0.83 gal)",
                told(run).text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
        assertEquals(
                "The relief valve opens after 10 min and discharges 0.83 gal (3.14 L)",
                told(run).text(QuantityFormat.unicode(UnitSystem.US).inBoth()));
        RunSummary calm = RunByHand.run(ONE, 60, 4.2, 5.44, 4.2).summary();
        assertEquals(
                "The pressure peaks at 5.44 bar (79 psi), 1.56 bar (23 psi) below the relief set pressure",
                told(calm).text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
        List<NamedSummary> runs = List.of(new NamedSummary("drips", run), new NamedSummary("holds", calm));
        Statement verdict = verdict(runs);
        assertEquals(
                verdict.text(UnitSystem.SI).replace("3.14 L", "3.14 L (0.83 gal)"),
                verdict.text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
    }

    @Test
    void twoBlockedValvesAreNotOne() {
        HotWaterSystem.Builder house = Houses.bare();
        for (String name : List.of("lid", "cellar")) {
            house.addReliefValve(
                    Houses.snap(name, 7, 6.3).fault(ReliefFault.blocked()).build());
        }
        assertEquals(
                "The pressure peaks at 5.4 bar; no relief valve can open",
                headline(RunByHand.run(house.build(), 60, 4.2, 5.4).summary(), UnitSystem.SI));
    }

    @Test
    void speaksInPoundsAndGallons() {
        RunSummary calm = RunByHand.run(ONE, 60, 4.2, 5.44).summary();
        RunSummary drips = RunByHand.run(ONE, 600, 4.2, 7)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .summary();
        assertEquals(
                "The pressure peaks at 79 psi, 23 psi below the relief set pressure", headline(calm, UnitSystem.US));
        assertEquals("The relief valve opens after 10 min and discharges 0.83 gal", headline(drips, UnitSystem.US));
    }

    /** What stands in the place of a picture for those who cannot see it. */
    @Test
    void theCourseIsToldFromStartToPeak() {
        RunSummary drips = RunByHand.run(ONE, 600, 4.2, 7, 6.3)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .summary();
        String course = Narrative.course(drips).text(UnitSystem.SI);
        assertTrue(
                course.matches("the pressure starts at \\d[.\\d]* bar.* and reaches at most 7 bar after 10 min; .*"),
                course);
        assertTrue(course.endsWith("; the relief valve opens after 10 min and discharges 3.14 L."), course);
        String bare =
                Narrative.course(RunByHand.run(BARE, 60, 4.2, 5.4).summary()).text(UnitSystem.US);
        assertTrue(bare.matches("the pressure .* psi.*; there is no relief valve\\."), bare);
    }

    @Test
    void namesTheOnlyOneThatStopsTheDripping() {
        assertEquals(
                "“calm” keeps the relief valve shut; “drips” discharges 3 L",
                compare(named("drips", drips(3)), named("calm", calm(5))));
        assertEquals(
                "Only “calm” keeps the relief valve shut; “a” discharges 3 L; “b” 2 L",
                compare(named("b", drips(2)), named("a", drips(3)), named("calm", calm(5))));
        assertEquals(
                "“x” and “y” keep the relief valve shut; the 3 others discharge up to 3 L, with “b”",
                compare(
                        named("a", drips(1)),
                        named("b", drips(3)),
                        named("c", drips(2)),
                        named("x", calm(5)),
                        named("y", calm(6))));
    }

    @Test
    void saysWhenAllDripOrNone() {
        assertEquals(
                "In both runs the relief valve discharges water: more with “b” (3 L), less with “a” (1 L)",
                compare(named("a", drips(1)), named("b", drips(3))));
        assertEquals(
                "In both runs the relief valve discharges about 3.14 L",
                compare(named("a", drips(3.1412)), named("b", drips(3.1418))));
        assertEquals(
                "The relief valve stays shut in both runs; the pressure peaks highest with “b”, at 6 bar",
                compare(named("a", calm(5)), named("b", calm(6))));
    }

    @Test
    void putsHazardsFirst() {
        RunSummary bursts = RunByHand.run(BARE, 1320, 4.2, 20)
                .event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)
                .summary();
        RunSummary later = RunByHand.run(BARE, 2640, 4.2, 20)
                .event(2640, Event.Kind.TEST_PRESSURE_REACHED, "", 20)
                .summary();
        assertEquals(
                "“bursts” reaches the tank's test pressure of 20 bar after 22 min; the relief valve stays shut with"
                        + " “calm”",
                compare(named("calm", calm(5)), named("bursts", bursts)));
        assertEquals(
                "Both runs end in a hazard: first, “bursts” reaches the tank's test pressure of 20 bar after 22 min",
                compare(named("later", later), named("bursts", bursts)));
        assertEquals(
                "2 of 3 runs end in a hazard: first, “bursts” reaches the tank's test pressure of 20 bar after 22"
                        + " min; “drips” discharges 3 L",
                compare(named("later", later), named("bursts", bursts), named("drips", drips(3))));
    }

    @Test
    void tellsOfWorkingPressureAndMissingValves() {
        RunSummary strained = RunByHand.run(BARE, 600, 4.2, 11).summary();
        assertEquals(
                "“strained” exceeds the tank's working pressure; the relief valve stays shut with “calm”; “strained”"
                        + " has no relief valve",
                compare(named("calm", calm(5)), named("strained", strained)));
    }

    @Test
    void comparesNoFewerThanTwo() {
        List<NamedSummary> one = List.of(named("a", calm(5)));
        assertThrows(IllegalArgumentException.class, () -> verdict(one));
        assertThrows(IllegalArgumentException.class, () -> verdict(List.of()));
    }

    private static String compare(NamedSummary... runs) {
        return verdict(List.of(runs)).text(UnitSystem.SI);
    }

    private static Statement verdict(List<NamedSummary> runs) {
        return Narrative.comparing(runs).headline();
    }

    private static Statement told(RunSummary run) {
        return Narrative.of(run).headline();
    }

    private static String headline(RunSummary run, UnitSystem units) {
        return told(run).text(units);
    }

    private static NamedSummary named(String name, RunSummary result) {
        return new NamedSummary(name, result);
    }

    private static RunSummary calm(double peak) {
        return RunByHand.run(ONE, 600, 4.2, peak).summary();
    }

    private static RunSummary drips(double litres) {
        return RunByHand.run(ONE, 600, 4.2, 7)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(litres)
                .summary();
    }
}

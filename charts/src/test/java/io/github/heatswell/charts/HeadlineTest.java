package io.github.heatswell.charts;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class HeadlineTest {

    private static final HotWaterSystem BARE = Plants.bare().build();
    private static final HotWaterSystem ONE = Plants.bare()
            .addReliefValve(Plants.valve("lid", 7, 6.3, LiftCharacteristic.SNAP))
            .build();
    private static final HotWaterSystem TWO = Plants.bare()
            .addReliefValve(Plants.valve("lid", 7, 6.3, LiftCharacteristic.SNAP))
            .addReliefValve(Plants.valve("cellar", 6.5, 6, LiftCharacteristic.SNAP))
            .build();
    private static final HotWaterSystem VESSEL =
            Plants.bare().vessel(Plants.vessel(18, 4)).build();

    static Stream<Arguments> findings() {
        return Stream.of(
                Arguments.of(
                        "Pressure peaks at 5.44 bar, 1.56 bar below the relief set pressure",
                        Handmade.run(ONE, 60, 4.2, 5.44, 4.2)),
                Arguments.of(
                        "Pressure peaks at 6.97 bar, 0.03 bar below the relief set pressure",
                        Handmade.run(ONE, 60, 4.2, 6.97)),
                Arguments.of(
                        "Pressure peaks at 7 bar, just below the relief set pressure",
                        Handmade.run(ONE, 60, 4.2, 6.9999)),
                Arguments.of(
                        "Pressure peaks at 5.4 bar, 1.1 bar below the relief set pressure",
                        Handmade.run(TWO, 60, 4.2, 5.4)),
                Arguments.of(
                        "Pressure stays at about 4.21 bar, 2.79 bar below the relief set pressure",
                        Handmade.run(ONE, 60, 4.2, 4.21, 4.2)),
                Arguments.of("Pressure peaks at 5.4 bar; there is no relief valve", Handmade.run(BARE, 60, 4.2, 5.4)),
                Arguments.of(
                        "Relief valve opens after 10 min and discharges 3.14 L",
                        Handmade.run(ONE, 600, 4.2, 7, 6.3)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(3.14)),
                Arguments.of(
                        "Relief valve opens at the start and discharges under 0.01 L",
                        Handmade.run(ONE, 600, 7, 6.3)
                                .event(0, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(0.004)),
                Arguments.of(
                        "Relief valve opens twice, first after 10 min, and discharges 0.42 L in all",
                        Handmade.run(ONE, 600, 4.2, 7, 7)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .event(1200, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(0.42)),
                Arguments.of(
                        "Relief valve “cellar” opens after 10 min and discharges 3.14 L",
                        Handmade.run(TWO, 600, 4.2, 6.5)
                                .event(600, Event.Kind.RELIEF_OPENED, "cellar", 6.5)
                                .relieved(3.14)),
                Arguments.of(
                        "2 relief valves open, the first after 10 min, and discharge 4 L in all",
                        Handmade.run(TWO, 600, 4.2, 6.5, 7)
                                .event(600, Event.Kind.RELIEF_OPENED, "cellar", 6.5)
                                .event(1200, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .relieved(2)),
                Arguments.of(
                        "Pressure peaks at 11.2 bar, 1.2 bar above the tank's working pressure",
                        Handmade.run(BARE, 60, 4.2, 11.2)),
                Arguments.of(
                        "Pressure peaks at 11.2 bar, 1.2 bar above the tank's working pressure; relief valve opens"
                                + " after 10 min and discharges 3.14 L",
                        Handmade.run(ONE, 600, 4.2, 11.2)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 11.2)
                                .relieved(3.14)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve, no vessel",
                        Handmade.run(BARE, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve",
                        Handmade.run(VESSEL, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: the open relief did not hold it",
                        Handmade.run(ONE, 1320, 4.2, 20)
                                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                                .event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Reaches the tank's test pressure of 20 bar after 22 min: no relief valve opened",
                        Handmade.run(ONE, 1320, 4.2, 20).event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)),
                Arguments.of(
                        "Water comes to the boil after 22 min, at 0.3 bar and a mean of 13 °C",
                        Handmade.run(ONE, 1320, 4.2, 0.3).event(1320, Event.Kind.VAPOUR_FORMS, "", 0.3)),
                Arguments.of(
                        "Falls to the pressure of the surrounding air after 22 min",
                        Handmade.run(ONE, 1320, 4.2, 0).event(1320, Event.Kind.ATMOSPHERE_REACHED, "", 0)),
                Arguments.of(
                        "Water begins to freeze after 22 min",
                        Handmade.run(ONE, 1320, 4.2, 5).event(1320, Event.Kind.WATER_FREEZES, "", 5)),
                Arguments.of(
                        "Water leaves the range of known water properties after 22 min, at 13 °C",
                        Handmade.run(ONE, 1320, 4.2, 5).event(1320, Event.Kind.WATER_OUT_OF_RANGE, "", 5)));
    }

    @ParameterizedTest
    @MethodSource("findings")
    void saysWhatWasFound(String sentence, Handmade run) {
        assertEquals(sentence, headline(run.result(), UnitSystem.SI));
    }

    @Test
    void bothUnitSystemsGoIntoOneSentence() {
        RunResult run = Handmade.run(ONE, 600, 4.2, 7, 6.3)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .result();
        assertEquals(
                "Relief valve opens after 10 min and discharges 3.14 L (0.83 gal)",
                told(run).text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
        assertEquals(
                "Relief valve opens after 10 min and discharges 0.83 gal (3.14 L)",
                told(run).text(QuantityFormat.unicode(UnitSystem.US).inBoth()));
        RunResult calm = Handmade.run(ONE, 60, 4.2, 5.44, 4.2).result();
        assertEquals(
                "Pressure peaks at 5.44 bar (78.9 psi), 1.56 bar (22.6 psi) below the relief set pressure",
                told(calm).text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
        List<NamedRun> runs = List.of(new NamedRun("drips", run), new NamedRun("holds", calm));
        Statement verdict = verdict(runs);
        assertEquals(
                verdict.text(UnitSystem.SI).replace("3.14 L", "3.14 L (0.83 gal)"),
                verdict.text(QuantityFormat.unicode(UnitSystem.SI).inBoth()));
    }

    @Test
    void twoBlockedValvesAreNotOne() {
        HotWaterSystem.Builder house = Plants.bare();
        for (String name : List.of("lid", "cellar")) {
            house.addReliefValve(ReliefValve.builder()
                    .name(name)
                    .setPressure(Pressure.gauge(7, BAR))
                    .fullLiftPressure(Pressure.gauge(7.7, BAR))
                    .reseatPressure(Pressure.gauge(6.3, BAR))
                    .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                    .liftCharacteristic(LiftCharacteristic.SNAP)
                    .fault(ReliefFault.blocked())
                    .build());
        }
        assertEquals(
                "Pressure peaks at 5.4 bar; no relief valve can open",
                headline(Handmade.run(house.build(), 60, 4.2, 5.4).result(), UnitSystem.SI));
    }

    @Test
    void speaksInPoundsAndGallons() {
        RunResult calm = Handmade.run(ONE, 60, 4.2, 5.44).result();
        RunResult drips = Handmade.run(ONE, 600, 4.2, 7)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .result();
        assertEquals(
                "Pressure peaks at 78.9 psi, 22.6 psi below the relief set pressure", headline(calm, UnitSystem.US));
        assertEquals("Relief valve opens after 10 min and discharges 0.83 gal", headline(drips, UnitSystem.US));
    }

    /** What stands in the place of a picture for those who cannot see it. */
    @Test
    void theCourseIsToldFromStartToPeak() {
        RunResult drips = Handmade.run(ONE, 600, 4.2, 7, 6.3)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(3.14)
                .result();
        String course = Narrative.course(drips.summary()).text(UnitSystem.SI);
        assertTrue(
                course.matches("the pressure starts at \\d[.\\d]* bar.* and reaches at most 7 bar after 10 min; .*"),
                course);
        assertTrue(course.endsWith("; the relief valve opens after 10 min and discharges 3.14 L."), course);
        String bare = Narrative.course(Handmade.run(BARE, 60, 4.2, 5.4).result().summary())
                .text(UnitSystem.US);
        assertTrue(bare.matches("the pressure .* psi.*; there is no relief valve\\."), bare);
    }

    @Test
    void namesTheOnlyOneThatStopsTheDripping() {
        assertEquals(
                "Only “calm” keeps the relief valve shut; “drips” discharges 3 L",
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
                "In both runs the relief valve discharges water: most with “b” (3 L), least with “a” (1 L)",
                compare(named("a", drips(1)), named("b", drips(3))));
        assertEquals(
                "In both runs the relief valve discharges about 3.14 L",
                compare(named("a", drips(3.1412)), named("b", drips(3.1418))));
        assertEquals(
                "The relief valve stays shut in both runs; pressure peaks highest with “b”, at 6 bar",
                compare(named("a", calm(5)), named("b", calm(6))));
    }

    @Test
    void putsHazardsFirst() {
        RunResult bursts = Handmade.run(BARE, 1320, 4.2, 20)
                .event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)
                .result();
        RunResult later = Handmade.run(BARE, 2640, 4.2, 20)
                .event(2640, Event.Kind.TEST_PRESSURE_REACHED, "", 20)
                .result();
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
        RunResult strained = Handmade.run(BARE, 600, 4.2, 11).result();
        assertEquals(
                "“strained” exceeds the tank's working pressure; the relief valve stays shut with “calm”; “strained”"
                        + " has no relief valve",
                compare(named("calm", calm(5)), named("strained", strained)));
    }

    @Test
    void comparesNoFewerThanTwo() {
        List<NamedRun> one = List.of(named("a", calm(5)));
        assertThrows(IllegalArgumentException.class, () -> verdict(one));
        assertThrows(IllegalArgumentException.class, () -> verdict(List.of()));
    }

    private static String compare(NamedRun... runs) {
        return verdict(List.of(runs)).text(UnitSystem.SI);
    }

    private static Statement verdict(List<NamedRun> runs) {
        return Narrative.comparing(runs.stream().map(NamedRun::summary).toList())
                .headline();
    }

    private static Statement told(RunResult run) {
        return Narrative.of(run.summary(), Doubts.NONE).headline();
    }

    private static String headline(RunResult run, UnitSystem units) {
        return told(run).text(units);
    }

    private static NamedRun named(String name, RunResult result) {
        return new NamedRun(name, result);
    }

    private static RunResult calm(double peak) {
        return Handmade.run(ONE, 600, 4.2, peak).result();
    }

    private static RunResult drips(double litres) {
        return Handmade.run(ONE, 600, 4.2, 7)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(litres)
                .result();
    }
}

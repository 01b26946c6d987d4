package io.github.heatswell.checksheet;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.study.Houses;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** When readings are taken, what counts as drip, and the numbers of a gauge. The taps are closed after 8 min. */
class CheckDetailsTest {

    private static final double CLOSED = 480;

    private static CheckSheet sheet(HotWaterSystem house) {
        return CheckProcedure.of(house).simulate(house);
    }

    private static RunResult byHand(HotWaterSystem house) {
        Draw draw = Draw.ofVolume(0, 77, VolumeUnit.LITRE, 77 / 8.0, FlowUnit.LITRE_PER_MINUTE);
        return Simulation.of(
                        house.toBuilder()
                                .draws(DrawProfile.of("check", List.of(draw)))
                                .start(Start.builder()
                                        .water(58, TemperatureUnit.CELSIUS)
                                        .build())
                                .build(),
                        Duration.ofMinutes(608))
                .run();
    }

    /** A reducing valve still fills the house for a moment: the gauge is read when it has closed. */
    @Test
    void readingAfterTheDrawWaitsForTheValveToClose() {
        HotWaterSystem house = Houses.reduced();
        double closes = byHand(house).events().stream()
                .filter(event -> event.kind() == Event.Kind.SUPPLY_CLOSED && event.time() > CLOSED - 1e-3)
                .findFirst()
                .orElseThrow()
                .time();
        CheckSheet.Reading reading =
                sheet(house).reading(CheckSheet.Reading.Kind.AFTER_DRAW).orElseThrow();
        assertEquals(Math.max(0, closes - CLOSED), reading.time(), 1e-3); // s, where the solver locates an event
        assertTrue(reading.time() > 0 && reading.time() < 60, reading.toString());
    }

    /** A large vessel charged below the supply takes more than a minute to fill: read while it fills, a sound house is off. */
    @Test
    void readingAfterTheDrawWaitsForALargeVesselToFill() {
        HotWaterSystem house =
                Houses.reduced().toBuilder().vessel(Houses.vessel(80, 2)).build();
        CheckSheet.Reading reading =
                sheet(house).reading(CheckSheet.Reading.Kind.AFTER_DRAW).orElseThrow();
        assertEquals(3.4e5, reading.expectedGauge(), 1); // Pa: set pressure and lock-up rise
        assertTrue(reading.time() > 60, reading.toString());
    }

    /** The highest after the draw counts, not the mains' pressure before it: here 4.5 bar ten minutes later. */
    @Test
    void peakIsLookedForAfterTheDraw() {
        HotWaterSystem house = Parts.lodge(4, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.DIRECT)
                        .mains(MainsPressure.daily(Map.of(
                                0.0,
                                Pressure.gauge(5, BAR),
                                CLOSED,
                                Pressure.gauge(4, BAR),
                                CLOSED + 600,
                                Pressure.gauge(4.5, BAR),
                                7200.0,
                                Pressure.gauge(2, BAR))))
                        .water(9, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        CheckSheet.Reading peak =
                sheet(house).reading(CheckSheet.Reading.Kind.PEAK).orElseThrow();
        assertEquals(4.5e5, peak.expectedGauge(), 1); // Pa
        assertEquals(600, peak.time(), 1e-9); // a minute's sample
    }

    /** What the mains do in the small hours is no peak of the heat-up: on an open feed the pressure is theirs throughout. */
    @Test
    void peakEndsWithTheHeatUp() {
        Pressure evening = Pressure.gauge(4, BAR);
        HotWaterSystem house = Parts.lodge(4, 58)
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.DIRECT)
                        .mains(MainsPressure.daily(
                                Map.of(0.0, evening, 14_400.0, evening, 18_000.0, Pressure.gauge(6, BAR))))
                        .water(9, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        CheckSheet sheet = sheet(house);
        assertTrue(sheet.heatUp().finished());
        assertEquals(
                4e5, sheet.reading(CheckSheet.Reading.Kind.PEAK).orElseThrow().expectedGauge(), 1); // Pa
    }

    /** A seat that lets mains of 24 bar by brings a tank without a relief valve to its test pressure while it is cold: nothing is read. */
    @Test
    void aHouseThatFailsInTheColdHasNoReadings() {
        Supply seat = Parts.reduced(24, Parts.reducingValve(3, 0.2, 0.5, 20)).toBuilder()
                .seatLeakage(1, FlowUnit.LITRE_PER_MINUTE)
                .build();
        CheckSheet sheet = sheet(Parts.lodge(4, 58).supply(seat).build());
        assertEquals(
                Event.Kind.TEST_PRESSURE_REACHED, sheet.hazard().orElseThrow().kind());
        assertEquals(List.of(), sheet.readings());
        assertFalse(sheet.heatUp().finished());
        assertEquals(0, sheet.drips().volume());
    }

    /** What ran out during the draw is not caught in the bucket afterwards, nor is an opening before it a first drip. */
    @Test
    void dripsAreCountedFromTheEndOfTheDraw() {
        HotWaterSystem house =
                Parts.lodge(7.5, 58).addReliefValve(Houses.valve(7)).build();
        RunResult run = byHand(house);
        double before = run.trace().value(Channel.RELIEVED_TOTAL, 8);
        assertTrue(before > 0);
        CheckSheet.Drips drips = sheet(house).drips();
        assertEquals(run.totals().relieved() - before, drips.volume(), 1e-6 * drips.volume()); // two runs alike
        assertTrue(drips.firstAfter().isEmpty());
    }

    @Test
    void gaugeHasASpanAndAClass() {
        assertEquals(100e5 * 0.1, new UncertainCheck.Gauge(100e5, 10).error(), 1e-9); // rounding
        assertEquals(6e5 * 0.025, new UncertainCheck.Gauge(6e5, 2.5).error(), 1e-9); // rounding
        assertThrows(IllegalArgumentException.class, () -> new UncertainCheck.Gauge(100.001e5, 1.6));
        assertThrows(IllegalArgumentException.class, () -> new UncertainCheck.Gauge(10e5, 10.001));
        assertThrows(IllegalArgumentException.class, () -> new UncertainCheck.Gauge(10e5, 0));
    }

    /** A band that lies to one side of the expected reading widens to that side only, but for the gauge's error. */
    @Test
    void bandIsThatOfTheHouseAndOfTheGauge() {
        CheckSheet.Reading reading = new CheckSheet.Reading(CheckSheet.Reading.Kind.PEAK, 5e5, 100);
        UncertainCheck.ToleratedReading above = new UncertainCheck.ToleratedReading(reading, 5.1e5, 5.4e5, 0.3e5, 99);
        assertEquals(4.7e5, above.lowest(), 1e-6); // rounding
        assertEquals(5.5e5, above.highest(), 1e-6); // 3, 4, 5
        assertTrue(above.agrees(above.lowest()) && above.agrees(above.highest()));
        assertFalse(above.agrees(above.lowest() - 1) || above.agrees(above.highest() + 1));
        assertEquals(CheckSheet.Reading.Kind.PEAK.when(), reading.when());
    }

    @Test
    void kindsAreToldApart() {
        Set<String> ids = new HashSet<>();
        Set<String> moments = new HashSet<>();
        for (CheckSheet.Reading.Kind kind : CheckSheet.Reading.Kind.values()) {
            assertTrue(kind.id().matches("[a-z0-9]+(-[a-z0-9]+)+|peak") && ids.add(kind.id()), kind.id());
            assertTrue(!kind.when().isBlank() && moments.add(kind.when()), kind.when());
        }
    }

    /** All of a tank may be drawn, and not a drop more than it holds nor more than 20 000 L. */
    @Test
    void amountIsAtMostTheTank() {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .addReliefValve(Houses.valve(7))
                .vessel(Houses.vessel(18, 4))
                .build();
        assertFalse(new CheckProcedure(house.tank().volume())
                .simulate(house)
                .readings()
                .isEmpty());
        assertEquals(20, new CheckProcedure(20).amount());
        assertThrows(IllegalArgumentException.class, () -> new CheckProcedure(20.001));
    }
}

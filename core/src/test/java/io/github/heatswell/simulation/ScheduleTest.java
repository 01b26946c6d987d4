package io.github.heatswell.simulation;

import static io.github.heatswell.units.FlowUnit.LITRE_PER_MINUTE;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What happens by the clock, in a run that starts at ten in the evening of day 100. */
class ScheduleTest {

    private static final double HOUR = 3600;
    private static final double NEVER = Double.POSITIVE_INFINITY;

    private static HotWaterSystem.Builder evening(Supply supply) {
        return Parts.lodge(4.2, 58)
                .supply(supply)
                .start(Start.builder()
                        .timeOfDay(22, DurationUnit.HOUR)
                        .dayOfYear(100)
                        .build());
    }

    private static Supply.Builder constant() {
        return Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4, BAR), 10).toBuilder();
    }

    private static Draw draw(double atHour) {
        return Draw.ofVolume(atHour * HOUR, 10, VolumeUnit.LITRE, 5, LITRE_PER_MINUTE);
    }

    /** Nothing changes: nothing is due, and nothing moves. */
    @Test
    void constantWorldIsOneSegment() {
        Schedule schedule = new Schedule(evening(constant().build()).build());
        assertEquals(new Conditions(NEVER, 0, 0, true, null, false), schedule.from(0, null, 0));
        assertTrue(schedule.nextDraw(0).isEmpty());
        assertEquals(283.15, schedule.cold(5 * HOUR), 1e-12); // rounding
    }

    /** Draws at six and at half past ten in the evening, seen from ten in the evening on. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5, 22.5",
        "0.4999, 0.5, 22.5",
        "0.5, 8, 6", // a draw that begins now is not the next one
        "1.9999, 8, 6",
        "2, 8, 6", // midnight
        "8, 24.5, 22.5",
        "24.4, 24.5, 22.5",
        "24.5, 32, 6"
    })
    void nextDrawIsFoundAcrossMidnight(double hours, double nextHours, double clock) {
        Schedule schedule = new Schedule(evening(constant().build())
                .draws(DrawProfile.of("two", List.of(draw(6), draw(22.5))))
                .build());
        Schedule.Start next = schedule.nextDraw(hours * HOUR).orElseThrow();
        assertEquals(nextHours * HOUR, next.time(), 1e-9); // rounding
        assertEquals(clock * HOUR, next.draw().timeOfDay());
        assertEquals(nextHours * HOUR, schedule.from(hours * HOUR, null, 0).until(), 1e-9); // rounding
    }

    /** A running draw ends the segment when it ends, unless something else comes before. */
    @Test
    void runningDrawEndsTheSegment() {
        Draw running = draw(6);
        Schedule schedule = new Schedule(evening(constant().build())
                .draws(DrawProfile.of("two", List.of(running, draw(22.5))))
                .build());
        assertEquals(8.1 * HOUR, schedule.from(8 * HOUR, running, 8.1 * HOUR).until());
        assertSame(running, schedule.from(8 * HOUR, running, 8.1 * HOUR).draw());
        assertEquals(24.5 * HOUR, schedule.from(8 * HOUR, running, NEVER).until());
        assertNull(schedule.from(8 * HOUR, null, 8.1 * HOUR).draw());
        assertEquals(24.5 * HOUR, schedule.from(8 * HOUR, null, 8.1 * HOUR).until());
    }

    /** Shut off from the first hour to the third: closed from the very beginning, open from the very end. */
    @ParameterizedTest
    @CsvSource({"0, 1, true", "0.999, 1, true", "1, 3, false", "2.999, 3, false", "3, 10, true", "10, 11, false"})
    void outagesBeginAndEndToTheMoment(double hours, double untilHours, boolean open) {
        Schedule schedule = new Schedule(evening(constant()
                        .addOutage(new Supply.Outage(HOUR, 3 * HOUR))
                        .addOutage(new Supply.Outage(10 * HOUR, 11 * HOUR))
                        .build())
                .build());
        Conditions conditions = schedule.from(hours * HOUR, null, 0);
        assertEquals(open, conditions.supplyOpen());
        assertEquals(untilHours * HOUR, conditions.until());
    }

    /** 4 bar at six, 6 bar at eleven in the evening: up by 2 bar in 17 hours, down in 7. */
    @ParameterizedTest
    @CsvSource({"0, 1, 2, 17", "0.5, 1, 2, 17", "1, 8, -2, 7", "2, 8, -2, 7", "5, 8, -2, 7", "8, 25, 2, 17"})
    void mainsChangesEvenlyBetweenEntries(double hours, double untilHours, double changeBar, double inHours) {
        Schedule schedule = new Schedule(evening(constant()
                        .mains(MainsPressure.daily(
                                Map.of(6 * HOUR, Pressure.gauge(4, BAR), 23 * HOUR, Pressure.gauge(6, BAR))))
                        .build())
                .build());
        Conditions conditions = schedule.from(hours * HOUR, null, 0);
        assertEquals(untilHours * HOUR, conditions.until(), 1e-9); // rounding
        double rate = changeBar * 1e5 / (inHours * HOUR);
        assertEquals(rate, conditions.mainsRate(), 1e-9 * Math.abs(rate)); // rounding of pressures near 1e6 Pa
        double atEnd = schedule.mains(hours * HOUR) + rate * (untilHours - hours) * HOUR;
        assertEquals(atEnd, schedule.mains(untilHours * HOUR), 1e-6); // rounding
    }

    /** The cold water has its day's temperature at midnight, and changes evenly from one midnight to the next. */
    @Test
    void coldChangesEvenlyFromMidnightToMidnight() {
        SupplyTemperature water =
                SupplyTemperature.seasonal(10, TemperatureUnit.CELSIUS, 20, TemperatureDifferenceUnit.KELVIN);
        Schedule schedule =
                new Schedule(evening(constant().water(water).build()).build());
        double tight = 1e-9; // rounding
        assertEquals(water.on(101), schedule.cold(2 * HOUR), tight);
        assertEquals(water.on(102), schedule.cold(26 * HOUR), tight);
        assertEquals(0.5 * (water.on(101) + water.on(102)), schedule.cold(14 * HOUR), tight);
        Conditions evening = schedule.from(0, null, 0);
        assertEquals(2 * HOUR, evening.until(), tight);
        double daily = water.on(101) - water.on(100);
        assertEquals(daily / 86_400, evening.coldRate(), 1e-6 * Math.abs(daily) / 86_400); // difference of near numbers
        Conditions next = schedule.from(2 * HOUR, null, 0);
        assertEquals(26 * HOUR, next.until(), tight);
        double then = water.on(102) - water.on(101);
        assertEquals(then / 86_400, next.coldRate(), 1e-6 * Math.abs(then) / 86_400); // difference of near numbers
    }
}

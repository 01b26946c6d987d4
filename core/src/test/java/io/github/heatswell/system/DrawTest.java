package io.github.heatswell.system;

import static io.github.heatswell.units.EnergyUnit.KILOWATT_HOUR;
import static io.github.heatswell.units.EnergyUnit.MEGAJOULE;
import static io.github.heatswell.units.FlowUnit.LITRE_PER_MINUTE;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;
import static io.github.heatswell.units.VolumeUnit.LITRE;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.DurationUnit;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** One draw and a day of them: what ends a draw, and where the stated ranges end. */
class DrawTest {

    @Test
    void oneThingEndsADrawAndNothingIsMixedUnasked() {
        Draw bucket = Draw.ofVolume(3600, 10, LITRE, 5, LITRE_PER_MINUTE);
        assertEquals(10e-3, bucket.volume().orElseThrow(), 1e-18); // rounding
        assertTrue(bucket.heat().isEmpty());
        assertTrue(bucket.mixedTemperature().isEmpty());
        Draw bath = Draw.ofHeat(3600, 5, MEGAJOULE, 5, LITRE_PER_MINUTE);
        assertEquals(5e6, bath.heat().orElseThrow());
        assertTrue(bath.volume().isEmpty());
        assertTrue(bath.mixedTemperature().isEmpty());
        assertEquals(313.15, bath.mixedTo(40, CELSIUS).mixedTemperature().orElseThrow(), 1e-12); // rounding
    }

    /** The clock by hand: 7.5 h is 27 000 s. */
    @Test
    void aDrawIsTimedInAnyUnit() {
        Draw.Builder shower = Draw.builder().volume(40, LITRE).flow(8, LITRE_PER_MINUTE);
        assertEquals(27_000, shower.timeOfDay(7.5, DurationUnit.HOUR).build().timeOfDay());
        refused("at: ", () -> shower.timeOfDay(24, DurationUnit.HOUR));
        refused("at: ", () -> shower.timeOfDay(-1, DurationUnit.MINUTE));
    }

    /** The clock by hand: 7:30 is 27 000 s. */
    @Test
    void aDrawIsTimedByTheClock() {
        LocalTime half = LocalTime.of(7, 30);
        assertEquals(27_000, Draw.ofVolume(half, 40, LITRE, 8, LITRE_PER_MINUTE).timeOfDay());
        assertEquals(
                27_000, Draw.ofHeat(half, 5, MEGAJOULE, 8, LITRE_PER_MINUTE).timeOfDay());
        assertEquals(
                86_399.5,
                Draw.ofVolume(LocalTime.of(23, 59, 59, 500_000_000), 1, LITRE, 8, LITRE_PER_MINUTE)
                        .timeOfDay());
    }

    @Test
    void limitsThemselvesAreAllowed() {
        assertEquals(293.15, mixed(20).mixedTemperature().orElseThrow(), 1e-12); // rounding
        assertEquals(368.15, mixed(95).mixedTemperature().orElseThrow(), 1e-12); // rounding
        assertEquals(
                200e-3 / 60, Draw.ofHeat(0, 1, MEGAJOULE, 200, LITRE_PER_MINUTE).flow(), 1e-15); // rounding
        Draw nearlyADay = Draw.ofVolume(0, 1439, LITRE, 1, LITRE_PER_MINUTE);
        assertEquals(1, DrawProfile.of("mine", List.of(nearlyADay)).draws().size());
    }

    @Test
    void whatIsBeyondTheLimitsIsRefused() {
        refused("mixedTo: ", () -> mixed(19.999));
        refused("mixedTo: ", () -> mixed(95.001));
        refused("flow: ", () -> Draw.ofHeat(0, 1, MEGAJOULE, 200.001, LITRE_PER_MINUTE));
        refused("flow: ", () -> Draw.ofHeat(0, 1, MEGAJOULE, 0, LITRE_PER_MINUTE));
        refused("heat: ", () -> Draw.ofHeat(0, 2778, KILOWATT_HOUR, 5, LITRE_PER_MINUTE));
        refused("volume: ", () -> Draw.ofVolume(0, 86_400, LITRE, 60, LITRE_PER_MINUTE)); // a whole day, to the second
        refused("volume: ", () -> Draw.ofVolume(0, 30_000, LITRE, 20, LITRE_PER_MINUTE)); // 25 hours
    }

    /** A tap that closes in the second in which the next one opens would be one draw, not two. */
    @Test
    void nextDrawBeginsAfterTheLastHasEnded() {
        Draw second = Draw.ofVolume(3600, 1, LITRE, 1, LITRE_PER_MINUTE);
        Draw closesThen = Draw.ofVolume(3000, 10, LITRE, 1, LITRE_PER_MINUTE);
        refused("draws: ", () -> DrawProfile.of("mine", List.of(second, closesThen)));
        Draw closesBefore = Draw.ofVolume(2999, 10, LITRE, 1, LITRE_PER_MINUTE);
        DrawProfile day = DrawProfile.of("mine", List.of(second, closesBefore));
        assertEquals(List.of(closesBefore, second), day.draws());
        assertEquals("mine", day.name());
    }

    /** The last draw of the evening may not run into the first of the next morning. */
    @Test
    void dayIsARound() {
        Draw morning = Draw.ofVolume(600, 1, LITRE, 1, LITRE_PER_MINUTE);
        Draw late = Draw.ofVolume(86_340, 12, LITRE, 1, LITRE_PER_MINUTE);
        refused("draws: ", () -> DrawProfile.of("mine", List.of(morning, late)));
        Draw shorter = Draw.ofVolume(86_340, 10, LITRE, 1, LITRE_PER_MINUTE);
        assertDoesNotThrow(() -> DrawProfile.of("mine", List.of(morning, shorter)));
    }

    private static Draw mixed(double celsius) {
        return Draw.ofHeat(0, 1, MEGAJOULE, 5, LITRE_PER_MINUTE).mixedTo(celsius, CELSIUS);
    }

    private static void refused(String start, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.startsWith(start), message);
    }
}

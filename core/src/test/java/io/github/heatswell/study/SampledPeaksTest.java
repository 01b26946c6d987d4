package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.study.SampledPeaks.Influence;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Peaks of many houses, counted and ordered. */
class SampledPeaksTest {

    private static SampledPeaks.Builder five() {
        return SampledPeaks.builder(5e5, 3e5, 7e5, 4e5, 6e5);
    }

    private static void refuses(String message, Executable mistake) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, mistake).getMessage());
    }

    @Test
    void peaksAreCountedInRisingOrder() {
        SampledPeaks peaks = five().build();
        assertEquals(5, peaks.count());
        assertEquals(3e5, peaks.peakGauge(0));
        assertEquals(7e5, peaks.peakGauge(4));
        assertEquals(5e5, peaks.quantileGauge(0.5));
        assertEquals(0, peaks.countBelow(3e5));
        assertEquals(2, peaks.countBelow(5e5));
        assertEquals(5, peaks.countBelow(8e5));
    }

    @Test
    void whatIsNotSaidIsNotKnown() {
        SampledPeaks peaks = five().build();
        assertEquals(OptionalDouble.empty(), peaks.reliefSetGauge());
        assertEquals(OptionalDouble.empty(), peaks.limitGauge());
        assertEquals(OptionalDouble.empty(), peaks.workingPressureGauge());
        assertFalse(peaks.reliefVaries() || peaks.isWorkingPressureAssumed());
        assertEquals(0, peaks.dripping());
        assertEquals(0, peaks.endedEarly());
        assertEquals(List.of(), peaks.influences());
        assertEquals("", peaks.subject());
    }

    /** A peak at the set pressure drips; where each sample has a set pressure of its own, the count is given. */
    @Test
    void peaksThatReachTheSetPressureDrip() {
        assertEquals(2, five().reliefSet(6e5).build().dripping());
        SampledPeaks given =
                five().reliefSet(6e5).reliefVaries(true).dripping(4).build();
        assertEquals(4, given.dripping());
        assertTrue(given.reliefVaries());
        assertEquals(OptionalDouble.of(6e5), given.reliefSetGauge());
    }

    @Test
    void limitsAndTheSubjectAreKept() {
        SampledPeaks peaks = five().limit(5.5e5)
                .workingPressure(10e5)
                .endedEarly(1)
                .subject("192 houses")
                .build();
        assertEquals(OptionalDouble.of(5.5e5), peaks.limitGauge());
        assertEquals(OptionalDouble.of(10e5), peaks.workingPressureGauge());
        assertFalse(peaks.isWorkingPressureAssumed());
        assertTrue(five().assumedWorkingPressure(10e5).build().isWorkingPressureAssumed());
        assertEquals(1, peaks.endedEarly());
        assertEquals("192 houses", peaks.subject());
    }

    /** The strongest first, whichever way it works. */
    @Test
    void influencesStandByTheirStrength() {
        SampledPeaks peaks = five().influence(new Influence("supply", 0.3))
                .influence(new Influence("precharge", -0.9))
                .influence(new Influence("set point", 0.5))
                .build();
        assertEquals(
                List.of("precharge", "set point", "supply"),
                peaks.influences().stream().map(Influence::name).toList());
    }

    @Test
    void whatCannotBeIsRefused() {
        refuses("peaks: 1 are too few; 2 or more are needed", () -> SampledPeaks.builder(5e5));
        refuses("peaks: NaN is not a finite number", () -> SampledPeaks.builder(5e5, Double.NaN));
        refuses("limit: Infinity is not a finite number", () -> five().limit(Double.POSITIVE_INFINITY));
        refuses("relief-set: NaN is not a finite number", () -> five().reliefSet(Double.NaN));
        refuses("working-pressure: NaN is not a finite number", () -> five().workingPressure(Double.NaN));
        refuses("dripping: 6 is outside the allowed range, 0 to 5", () -> five().dripping(6));
        refuses("ended-early: -1 is outside the allowed range, 0 to 5", () -> five().endedEarly(-1));
        refuses("influence: needs a name", () -> new Influence(" ", 0));
        refuses(
                "influence: 1.1 of \"supply\" is outside the allowed range, -1 to 1",
                () -> new Influence("supply", 1.1));
        assertEquals(-1, new Influence("supply", -1).rankCorrelation());
    }
}

package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Trace;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Whether what is left of a log looks like scatter. */
class MisfitFinderTest {

    private static final double UNCERTAINTY = 1_000;

    /** What is left of a log of a steady pressure by a forecast that lies above it by as much (standard uncertainties). */
    private static Misfit left(int count, IntToDoubleFunction above) {
        return left(flat(count), above);
    }

    private static Misfit left(PressureLog log, IntToDoubleFunction above) {
        double[] gauge = new double[log.count()];
        Arrays.setAll(gauge, i -> log.gauge(i) + UNCERTAINTY * above.applyAsDouble(i));
        Forecaster.Forecast forecast = new Forecaster.Forecast(
                gauge, gauge, gauge, i -> Trace.Regime.SEALED, Double.NaN, new double[0], Map.of());
        return new Misfit.Residuals(Target.fine(log, SpotReadings.none()), forecast).misfit(90, 50, 5, List.of());
    }

    private static PressureLog flat(int count) {
        return log(count, i -> 3e5);
    }

    private static PressureLog log(int count, IntToDoubleFunction gauge) {
        double[] times = new double[count];
        double[] readings = new double[count];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.setAll(readings, gauge);
        return PressureLog.builder(times, readings).uncertainty(UNCERTAINTY).build();
    }

    @Test
    void theSumOfSquaresIsTakenForEachDegreeOfFreedom() {
        assertEquals(2, left(64, i -> 0).reduced());
        PressureLog log = flat(3);
        Forecaster.Forecast same = new Forecaster.Forecast(
                new double[] {3e5, 3e5, 3e5},
                new double[3],
                new double[3],
                i -> Trace.Regime.SEALED,
                Double.NaN,
                new double[0],
                Map.of());
        assertEquals(
                90,
                new Misfit.Residuals(Target.fine(log, SpotReadings.none()), same)
                        .misfit(90, 5, 5, List.of())
                        .reduced(),
                "never less than one");
    }

    /** Of ten readings scatter makes 2.4 per degree of freedom once in a hundred times (chi-square), of a hundred never. */
    @Test
    void fewReadingsScatterMore() {
        assertFalse(new Misfit(2.4, 0, 0, 0, 1, 11, List.of()).isSerious());
        assertTrue(new Misfit(2.9, 0, 0, 0, 1, 11, List.of()).isSerious());
        assertTrue(new Misfit(2.1, 0, 0, 0, 1, 100, List.of()).isSerious());
    }

    @Test
    void scatterIsNoMisfit() {
        Random random = new Random(8);
        double[] scatter = random.doubles(640, -1.7, 1.7).toArray();
        Misfit misfit = left(640, i -> scatter[i]);
        assertEquals(0, misfit.correlation(), 3 / Math.sqrt(160), "of 160 blocks of four");
        assertEquals(0, misfit.runs(), 3);
        assertEquals(0, misfit.systematic());
        assertEquals(0.5 * UNCERTAINTY, misfit.tolerated());
        assertFalse(misfit.isSerious());
    }

    /** Validation: by hand, with outliers held back at 2.5. */
    @Test
    void theCorrelationOfNeighbours() {
        double[] few = {1, 1, -1, 2};
        assertEquals((1 - 1 - 2) / (1.0 + 1 + 4), left(4, i -> few[i]).correlation(), 1e-12);
        assertEquals(0, left(4, i -> i == 0 ? 1 : 0).correlation(), "nothing to go by");
        double held = Target.robust(30);
        double[] wild = {1, 30, 1, 1};
        assertEquals(
                (held + held + 1) / (held * held + 1 + 1), left(4, i -> wild[i]).correlation(), 1e-12);
    }

    /** Validation: 3 above and 5 below in 4 runs, of which Wald and Wolfowitz expect 4.75 with a variance of 1.473. */
    @Test
    void theNumberOfRuns() {
        double[] signs = {1, 1, -1, -1, -1, 1, -1, -1};
        double expected = 1 + 2.0 * 3 * 5 / 8;
        double variance = 2.0 * 3 * 5 * (2.0 * 3 * 5 - 8) / (8.0 * 8 * 7);
        assertEquals(
                (4 - expected) / Math.sqrt(variance), left(8, i -> signs[i]).runs(), 1e-12);
        assertEquals(Math.sqrt(16) * -1, left(16, i -> 1).runs(), "all on one side");
        assertTrue(left(16, i -> i % 2 == 0 ? 1 : -1).runs() > 3, "more than scatter gives");
        assertTrue(left(16, i -> i < 8 ? 1 : -1).runs() < -3, "fewer than scatter gives");
    }

    /** Stretches of a sixteenth of 640 readings: what scatter makes of 40 is 3.5 / sqrt(40) of a standard uncertainty. */
    @Test
    void aStretchThatLiesApart() {
        double scatter = 3.5 / Math.sqrt(40);
        assertEquals((1.5 - scatter) * UNCERTAINTY, left(640, i -> 1.5).systematic(), 1e-6);
        assertEquals((1.5 - scatter) * UNCERTAINTY, left(640, i -> -1.5).systematic(), 1e-6);
        IntToDoubleFunction late = i -> i >= 600 ? 1.5 : 0;
        assertEquals((1.5 - scatter) * UNCERTAINTY, left(640, late).systematic(), 1e-6, "the last stretch too");
        IntToDoubleFunction between = i -> i >= 20 && i < 60 ? 1.5 : 0;
        assertEquals((1.5 - scatter) * UNCERTAINTY, left(640, between).systematic(), 1e-6, "and between two");
        assertEquals(0, left(640, i -> 0.4).systematic(), "no more than scatter gives");
        assertTrue(left(640, i -> 1.5).isSerious());
        double few = 3.5 / Math.sqrt(4);
        assertEquals((2.2 - few) * UNCERTAINTY, left(20, i -> 2.2).systematic(), 1e-6, "no shorter than four");
    }

    /** A gauge with marks of a tenth of a bar may lie off by half of that for hours. */
    @Test
    void stepsCoarserThanScatterMayLieApart() {
        PressureLog stepped = log(640, i -> 3e5 + 1e4 * (i / 80));
        assertEquals(1e4, stepped.step(), 1e-6);
        double held = Target.robust(8);
        assertEquals(held * UNCERTAINTY - 5e3, left(stepped, i -> 8).systematic(), 1e-6);
        assertEquals(0, left(stepped, i -> 4).systematic());
    }

    /** Regression: 0.03 bar for a while, on a gauge with marks of 0.1 bar, was what no cause explains; and tanks are not what owners say. */
    @Test
    void marksAndDescriptionsAreOffForAWhile() {
        assertEquals(5e3, left(log(640, i -> 3e5 + 1e4 * (i / 160)), i -> 0).tolerated(), 1e-6, "half a mark");
        assertEquals(
                1e4, left(log(640, i -> 3e5 + 2e5 * i / 639.0), i -> 0).tolerated(), 1e-6, "a twentieth of a rise");
    }

    @Test
    void stepsFinerThanScatterExcuseNothing() {
        PressureLog noisy = log(640, i -> 3e5 + 1e4 * (i * 7 % 5));
        assertEquals(1e4, noisy.step(), 1e-6);
        double scatter = 3.5 / Math.sqrt(40);
        assertEquals((1.5 - scatter) * UNCERTAINTY, left(noisy, i -> 1.5).systematic(), 1e-6);
    }

    @Test
    void eitherOfTwoIsSerious() {
        assertFalse(new Misfit(2, 0, 0, 100, 100, 100, List.of()).isSerious());
        assertTrue(new Misfit(2.01, 0, 0, 100, 100, 100, List.of()).isSerious());
        assertTrue(new Misfit(2, 0, 0, 100.1, 100, 100, List.of()).isSerious());
    }

    /** Contract: a wild reading in twenty is a logger's, more of them are not explained. */
    @Test
    void oneReadingInTwentyMayBeWild() {
        Misfit.Stray stray = new Misfit.Stray(60, 4e5, 3e5, false, false);
        assertFalse(new Misfit(1, 0, 0, 0, 100, 20, List.of(stray)).isSerious());
        assertTrue(new Misfit(1, 0, 0, 0, 100, 19, List.of(stray)).isSerious());
        Misfit.Stray highest = new Misfit.Stray(60, 4e5, 3e5, true, false);
        assertTrue(new Misfit(1, 0, 0, 0, 100, 20, List.of(highest)).isSerious(), "on which most depends");
        Misfit.Stray far = new Misfit.Stray(60, 2e5, 3e5, false, true);
        assertTrue(new Misfit(1, 0, 0, 0, 100, 100, List.of(far)).isSerious(), "no gauge is as wrong");
    }
}

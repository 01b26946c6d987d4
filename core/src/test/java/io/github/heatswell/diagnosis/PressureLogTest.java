package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.PressureUnit;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A log by itself: what it holds, what it refuses and how well it takes its own readings to be. */
class PressureLogTest {

    private static final int DAY_OF_MINUTES = 1440;

    private static PressureLog.Builder three() {
        return PressureLog.builder(new double[] {0, 60, 150}, new double[] {4e5, 4.1e5, 4.3e5});
    }

    private static double[] minutes(int count) {
        double[] times = new double[count];
        Arrays.setAll(times, i -> 60.0 * i);
        return times;
    }

    /** A slow rise and fall of two bar, with normal scatter. */
    private static double[] scattered(double scatter, long seed) {
        Random random = new Random(seed);
        double[] gauge = new double[DAY_OF_MINUTES];
        Arrays.setAll(gauge, i -> 4e5 + 2e5 * Math.sin(Math.PI * i / DAY_OF_MINUTES) + scatter * random.nextGaussian());
        return gauge;
    }

    @Test
    void holdsWhatItWasGiven() {
        double[] temperatures = {290, Double.NaN, 300};
        PressureLog log = three().temperature(temperatures)
                .burner(true, false, true)
                .timeOfDay(3_600)
                .build();
        temperatures[0] = 0;

        assertEquals(3, log.count());
        assertEquals(60, log.time(1));
        assertEquals(4.3e5, log.gauge(2));
        assertEquals(150, log.end());
        assertEquals(90, log.interval(), "the longer of two in the middle");
        assertTrue(log.hasTemperature());
        assertEquals(OptionalDouble.of(290), log.temperature(0));
        assertEquals(OptionalDouble.empty(), log.temperature(1));
        assertTrue(log.hasBurner());
        assertTrue(log.burnerOn(0));
        assertFalse(log.burnerOn(1));
        assertEquals(OptionalDouble.of(3_600), log.timeOfDay());
    }

    @Test
    void doesWithoutWhatItWasNotGiven() {
        PressureLog log = three().build();
        assertFalse(log.hasTemperature());
        assertEquals(OptionalDouble.empty(), log.temperature(0));
        assertFalse(log.hasBurner());
        assertFalse(log.burnerOn(0));
        assertEquals(OptionalDouble.empty(), log.timeOfDay());
        assertEquals(7_000, log.uncertainty(), "too short to tell");
        assertEquals(700, three().uncertainty(700).build().uncertainty());
    }

    /** A valve that opens lets the pressure fall a little with the heater on; a tap lets it fall to the supply. */
    @Test
    void aFallUnderHeatingShowsThatAValveOpens() {
        double[] opened = {4e5, 6e5, 8e5, 10.3e5, 9.4e5, 9.8e5};
        double[] drawn = {4e5, 6e5, 8e5, 10.3e5, 5e5, 7e5};
        double[] rising = {4e5, 6e5, 8e5, 10.3e5, 10.25e5, 10.4e5};
        assertTrue(heated(opened, true).fellWhileHeating());
        assertFalse(heated(opened, false).fellWhileHeating(), "cooling lets it fall too");
        assertFalse(heated(drawn, true).fellWhileHeating());
        assertFalse(heated(rising, true).fellWhileHeating(), "that is scatter");
        assertFalse(PressureLog.builder(minutes(6), opened).build().fellWhileHeating(), "nobody knows when it was on");
    }

    /** Regression: readings of a sound vessel, which rises by a fifth of a bar, were said to show no heat-up at all. */
    @Test
    void aVesselLeavesASmallRiseOfAHeatUp() {
        double[] rests = new double[120];
        double[] rises = new double[120];
        for (int i = 0; i < rests.length; i++) {
            rests[i] = 4e5 - (i % 40 < 5 ? 0.3e5 : 0); // a tap runs
            rises[i] = rests[i] + (i < 60 ? 0 : 0.2e5);
        }
        assertTrue(PressureLog.builder(minutes(120), rises).build().showsHeatUp());
        assertFalse(PressureLog.builder(minutes(120), rests).build().showsHeatUp(), "nothing but draws");
        PressureLog byHand = PressureLog.builder(minutes(3), new double[] {4.2e5, 4.4e5, 4.5e5})
                .build();
        assertFalse(byHand.showsHeatUp(), "nobody saw a heater");
        assertTrue(
                byHand.seen(List.of(Sighting.of(Sighting.Kind.HEATER_ON, 0, 0))).showsHeatUp());
    }

    private static PressureLog heated(double[] gauge, boolean atTheFall) {
        return PressureLog.builder(minutes(6), gauge)
                .burner(true, true, true, true, atTheFall, true)
                .uncertainty(5_000)
                .build();
    }

    /** Validation: the scatter that was put in comes out, though the pressure itself moves by two bar. */
    @ParameterizedTest
    @ValueSource(doubles = {1_000, 3_000, 10_000})
    void findsTheScatterOfItsReadings(double scatter) {
        for (long seed = 1; seed <= 5; seed++) {
            PressureLog log = PressureLog.builder(minutes(DAY_OF_MINUTES), scattered(scatter, seed))
                    .build();
            // 1 / sqrt(2 n) is 2 % for 1440 readings, and neighbours share theirs
            assertEquals(scatter, log.scatter(), 0.08 * scatter, "seed " + seed);
            assertEquals(log.scatter(), log.uncertainty());
            assertEquals(0, log.step());
        }
    }

    /** Validation: jumps in a twentieth of the readings are events, not scatter. */
    @Test
    void jumpsAreNoScatter() {
        double[] gauge = scattered(2_000, 7);
        for (int i = 50; i < DAY_OF_MINUTES; i += 60) {
            gauge[i] += 1.5e5;
        }
        PressureLog log = PressureLog.builder(minutes(DAY_OF_MINUTES), gauge).build();
        assertEquals(2_000, log.scatter(), 0.15 * 2_000);
    }

    /** Regression: ten readings by hand of a heat-up were said to scatter by more than a bar. */
    @Test
    void whatAFewReadingsRiseIsNoScatter() {
        double psi = PressureUnit.PSI.factor();
        double[] gauge = {61, 62, 95, 128, 101, 92, 90, 86, 84, 80};
        Arrays.setAll(gauge, i -> gauge[i] * psi);
        assertEquals(
                7_000, PressureLog.builder(minutes(10), gauge).build().uncertainty(), "what a gauge read by hand has");
    }

    /** Validation: where one reading in seven stands at or beside an event, what was put in comes out of the others. */
    @Test
    void realChangesOfManyReadingsAreNoScatter() {
        double[] gauge = scattered(2_000, 11);
        for (int i = 0; i < DAY_OF_MINUTES; i += 20) {
            gauge[i] += 2e5;
        }
        PressureLog log = PressureLog.builder(minutes(DAY_OF_MINUTES), gauge).build();
        assertEquals(2_000, log.scatter(), 0.2 * 2_000);
    }

    /** Validation: the standard deviation of what rounding to a step leaves open is the step by the root of twelve. */
    @Test
    void findsTheStepsItsReadingsFallOn() {
        double[] gauge = scattered(100, 3);
        for (int i = 0; i < gauge.length; i++) {
            gauge[i] = 0.1e5 * Math.rint(gauge[i] / 0.1e5);
        }
        PressureLog log = PressureLog.builder(minutes(DAY_OF_MINUTES), gauge).build();
        assertEquals(0.1e5, log.step(), 1e-6);
        assertTrue(log.uncertainty() >= 0.1e5 / Math.sqrt(12));
        assertTrue(log.uncertainty() < 0.05e5, log.uncertainty() + " Pa");
    }

    /** Regression: a reading every three minutes, rounded to 1 psi, repeats too few values to be called coarse, but is rounded. */
    @Test
    void findsTheStepsOfManyDifferentReadings() {
        double psi = 6_894.757;
        double[] gauge = new double[39];
        for (int i = 0; i < gauge.length; i++) {
            gauge[i] = psi * (i < 3 ? 66 + 28 * i : 120 - Math.rint(13.0 * i / 38));
        }
        PressureLog log = PressureLog.builder(minutes(gauge.length), gauge).build();
        assertEquals(psi, log.step(), 1);
        assertTrue(log.uncertainty() >= psi / Math.sqrt(12));
    }

    private static double step(double... gauge) {
        return PressureLog.builder(minutes(gauge.length), gauge).build().step();
    }

    /** Contract: marks are at even distances, wherever they begin, and each is met twice or more. */
    @Test
    void stepsAreEvenAndMetAgain() {
        assertEquals(1e4, step(3.03e5, 3.03e5, 3.13e5, 3.13e5, 3.43e5, 3.43e5), 1e-6, "three levels of six readings");
        assertEquals(0, step(3.03e5, 3.03e5, 3.13e5, 3.13e5, 3.43e5), "of five they might be chance");
        assertEquals(0, step(3.03e5, 3.03e5, 3.13e5, 3.13e5, 3.28e5, 3.28e5), "one and a half times the least");
        assertEquals(0, step(3e5, 3e5, 3e5, 3e5), "one level tells of no step");
        double[] apart = {3.0e5, 3.2e5, 3.5e5, 3.7e5, 4.2e5};
        double[] resting =
                Arrays.stream(apart).flatMap(p -> DoubleStream.of(p, p, p)).toArray();
        assertEquals(1e4, step(resting), 1e-6, "no two on neighbouring marks: half the least difference");
    }

    /** The interval of a log is the middle one, in whatever order they come. */
    @Test
    void theIntervalIsTheMiddleOne() {
        double[] times = {0, 60, 70, 200, 230};
        assertEquals(
                60,
                PressureLog.builder(times, new double[] {3e5, 3e5, 3e5, 3e5, 3e5})
                        .build()
                        .interval());
    }

    /** Contract: no gauge of a household is taken to be better than a hundredth of a bar. */
    @Test
    void noGaugeIsPerfect() {
        PressureLog log =
                PressureLog.builder(minutes(DAY_OF_MINUTES), scattered(0, 1)).build();
        assertEquals(1_000, log.uncertainty());
    }

    static Stream<Arguments> refused() {
        double[] times = {0, 60, 120};
        double[] gauge = {4e5, 4e5, 4e5};
        return Stream.of(
                bad(
                        () -> PressureLog.builder(new double[] {0, 60}, new double[] {4e5, 4e5}),
                        "a log needs at least 3 readings, not 2"),
                bad(
                        () -> PressureLog.builder(times, new double[] {4e5, 4e5}),
                        "a log of 3 times needs as many pressures, not 2"),
                bad(
                        () -> PressureLog.builder(new double[] {1, 60, 120}, gauge),
                        "reading 1: time must begin at 0 s and run forward, but here it is 1.0 s"),
                bad(
                        () -> PressureLog.builder(new double[] {0, 60, 60}, gauge),
                        "reading 3: time must begin at 0 s and run forward, but here it is 60.0 s"),
                bad(
                        () -> PressureLog.builder(new double[] {0, 60, Double.POSITIVE_INFINITY}, gauge),
                        "reading 3: time must begin at 0 s and run forward, but here it is Infinity s"),
                bad(
                        () -> PressureLog.builder(times, new double[] {4e5, Double.NaN, 4e5}),
                        "reading 2: NaN bar is outside the allowed range, -1.2 bar to 10000 bar"),
                bad(
                        () -> PressureLog.builder(times, new double[] {4, 4.2, 5}),
                        "no pressure in the log reaches 0.01 bar (1000 Pa, gauge); either the unit is wrong,"
                                + " or there is nothing to diagnose"),
                bad(() -> three().temperature(290, 291), "a log of 3 times needs as many temperatures, not 2"),
                bad(
                        () -> three().temperature(20, 40, 60),
                        "no temperature of the log reaches 200.0 K; temperatures are given in K, not in degC"),
                bad(
                        () -> PressureLog.builder(times, new double[] {4e5, 3e9, 4e5}),
                        "reading 2: 30000 bar is outside the allowed range, -1.2 bar to 10000 bar"),
                bad(
                        () -> three().temperature(290, 1e6, 300),
                        "reading 2: 1000000 K is outside the allowed range, 23.15 K to 1273.15 K"),
                bad(() -> three().burner(true), "a log of 3 times needs as many burner states, not 1"),
                bad(
                        () -> three().timeOfDay(86_400),
                        "the clock time of a log is 0 s to less than 86400 s, not 86400.0 s"),
                bad(() -> three().timeOfDay(-1), "the clock time of a log is 0 s to less than 86400 s, not -1.0 s"),
                bad(() -> three().uncertainty(0), "the uncertainty of a log must be above 0 Pa, not 0.0 Pa"),
                bad(
                        () -> three().uncertainty(Double.POSITIVE_INFINITY),
                        "the uncertainty of a log must be above 0 Pa, not Infinity Pa"));
    }

    private static Arguments bad(Executable mistake, String message) {
        return Arguments.of(message, mistake);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void refuses(String message, Executable mistake) {
        assertEquals(
                message, assertThrows(IllegalArgumentException.class, mistake).getMessage());
    }

    /** Contract: the limits themselves are allowed. */
    @Test
    void allowsItsLimits() {
        assertAll(
                () -> assertEquals(
                        OptionalDouble.of(0), three().timeOfDay(0).build().timeOfDay()),
                () -> assertEquals(
                        1e3,
                        PressureLog.builder(new double[] {0, 1, 2}, new double[] {0, 0, 1e3})
                                .build()
                                .gauge(2)),
                () -> assertEquals(
                        OptionalDouble.of(200),
                        three().temperature(200, 100, 100).build().temperature(0)));
    }

    /** An hour at one pressure, which a quiet gauge shows as the same mark, and then a fall through several marks. */
    private static PressureLog rounded(double pressure, double scatter, double step) {
        Random random = new Random(3);
        double[] gauge = new double[240];
        Arrays.setAll(gauge, i -> pressure - 400 * Math.max(0, i - 180) + scatter * random.nextGaussian());
        return PressureLog.builder(
                        minutes(gauge.length),
                        Arrays.stream(gauge)
                                .map(p -> step * Math.rint(p / step))
                                .toArray())
                .build();
    }

    private static double squares(PressureLog log, double pressure) {
        double sum = 0;
        for (int i = 0; i < 180; i++) {
            sum += Math.pow(log.weights().beyond(i, pressure), 2);
        }
        return sum;
    }

    /**
     * Regression: an hour on one digit counted as many readings, each off by as much, and told a pressure from another within that
     * digit.
     */
    @Test
    void aDigitShownForHoursSaysNoMoreThanThatDigit() {
        PressureLog log = rounded(5.54e5, 0, 1e4);
        assertEquals(5.5e5, log.gauge(0), 1e-6);
        assertEquals(0, squares(log, 5.54e5), 5, "less than what tells one cause from another");
        assertEquals(0, squares(log, 5.47e5));
        assertTrue(squares(log, 5.59e5) > 1_000, "another digit is another pressure");
        assertTrue(log.weights().beyond(0, 5.59e5) > 3, "above");
        assertTrue(log.weights().beyond(0, 5.41e5) < -3, "below");
    }

    /** Noise of a digit carries readings to both neighbours: their mean is worth its number, as without rounding. */
    @Test
    void noiseLetsTheMeanOfManyDigitsTellMore() {
        PressureLog log = rounded(5.54e5, 1e4, 1e4);
        double variance = 1e8 + 1e8 / 12;
        assertEquals(180, squares(log, 5.54e5), 4 * Math.sqrt(2 * 180), "what scatter makes of 180 squares");
        // a fifth of a scatter off adds its square for each reading
        assertEquals(
                180 * 4e6 / variance,
                0.5 * (squares(log, 5.56e5) + squares(log, 5.52e5)) - squares(log, 5.54e5),
                2,
                "the scatter is found to a tenth or so");
    }

    /** A reading that has its own uncertainty still stands for all that its digit leaves open. */
    @Test
    void aGivenUncertaintyCountsBeyondTheDigit() {
        double[] times = minutes(6);
        double[] gauge = {5e5, 5e5, 5e5, 5.1e5, 5.1e5, 5.1e5};
        PressureLog log = PressureLog.builder(times, gauge).uncertainty(2_000).build();
        PressureLog fine = PressureLog.builder(times, new double[] {5e5, 5.01e5, 5.033e5, 5.1e5, 5.15e5, 5.22e5})
                .uncertainty(2_000)
                .build();
        assertEquals(0, fine.step());
        assertEquals(1.5, fine.weights().beyond(0, 5.03e5), 1e-9);
        assertEquals(1e4, log.step(), 1e-6);
        assertTrue(Math.abs(log.weights().beyond(0, 5.03e5)) < 1.5);
    }

    /** A pressure that moves 0.25 bar a minute before a reading and 0.5 bar after it: a clock a minute off is 0.25 bar off at least. */
    @Test
    void aReadingByHandOfASteepRiseTellsLess() {
        double[] times = {0, 120, 240};
        double[] gauge = {3e5, 3.5e5, 4.5e5};
        PressureLog log = PressureLog.builder(times, gauge).build();
        assertEquals(Math.hypot(1, 0.25e5 / log.uncertainty()), log.weights().looseness(1), 1e-12);
        PressureLog sure = PressureLog.builder(times, gauge).uncertainty(5_000).build();
        assertEquals(1, sure.weights().looseness(1), "who gives an uncertainty means all of it");
    }

    /** A reading that is only about right tells less, by 0.15 bar beside what a gauge read by hand is off. */
    @Test
    void aRoughReadingTellsLess() {
        PressureLog log = PressureLog.builder(new double[] {0, 60, 120}, new double[] {3e5, 3e5, 3e5})
                .build()
                .roughened(false, true, false);
        assertEquals(1, log.weights().looseness(0));
        assertEquals(Math.hypot(1, 0.15e5 / log.uncertainty()), log.weights().looseness(1), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> log.roughened(true));
    }
}

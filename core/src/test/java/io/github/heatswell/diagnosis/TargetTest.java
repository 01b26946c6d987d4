package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import io.github.heatswell.result.Trace;
import java.util.Arrays;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a forecast lies from readings, worked out by hand. */
class TargetTest {

    private static final double EXACT = 1e-12;
    private static final double UNCERTAINTY = 1_000;

    private static PressureLog.Builder log(int count) {
        double[] times = new double[count];
        double[] gauge = new double[count];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.fill(gauge, 3e5);
        return PressureLog.builder(times, gauge).uncertainty(UNCERTAINTY);
    }

    private static Forecaster.Forecast forecast(
            double[] gauge, double[] temperature, double burn, Map<SiteCheck, Double> spots) {
        return new Forecaster.Forecast(
                gauge, temperature, temperature, i -> Trace.Regime.SEALED, burn, new double[0], spots);
    }

    private static double[] all(int count, double value) {
        double[] values = new double[count];
        Arrays.fill(values, value);
        return values;
    }

    private static Forecaster.Forecast off(int count, double pascal) {
        return forecast(all(count, 3e5 + pascal), all(count, 300), Double.NaN, Map.of());
    }

    /** Validation: twice Huber's loss, whose square root joins without a step or a kink. */
    @ParameterizedTest
    @CsvSource({"0, 0", "2, 2", "-2.5, -2.5", "2.5, 2.5", "6.5, 5.123475382979799", "-6.5, -5.123475382979799"})
    void outliersCountByTheirAmount(double residual, double expected) {
        assertEquals(expected, Target.robust(residual), EXACT);
    }

    @Test
    void eachReadingOfAShortLogCountsByItself() {
        Target target = Target.fine(log(5).build(), SpotReadings.none());
        assertEquals(5, target.count());
        assertEquals(5, target.readings());
        assertArrayEquals(all(5, 0.7), target.residuals(off(5, 700)), EXACT);
    }

    @ParameterizedTest
    @CsvSource({"139, 1, 139", "279, 1, 279", "280, 2, 140", "701, 5, 141", "1399, 9, 156", "5000, 10, 500"})
    void neighboursAreTakenTogether(int count, int block, int blocks) {
        Target target = Target.fine(log(count).build(), SpotReadings.none());
        assertEquals(blocks, target.count());
        assertEquals(count, target.readings());
        double[] residuals = target.residuals(off(count, 700));
        assertEquals(0.7 * Math.sqrt(block), residuals[0], EXACT, "the sum of a block over its uncertainty");
        int last = count - (blocks - 1) * block;
        assertEquals(0.7 * Math.sqrt(last), residuals[blocks - 1], EXACT);
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "80, 40", "400, 40", "410, 41"})
    void longerBlocksLeadPastWhatIsSmall(int count, int blocks) {
        Target coarse = Target.fine(log(count).build(), SpotReadings.none()).coarse();
        assertEquals(blocks, coarse.count());
        assertEquals(count, coarse.readings());
    }

    /**
     * Validation: the filter gives what the covariance of scatter and the model's own error gives, whose inverse weighs the
     * differences of a log directly. Readings of the log rest on one digit throughout, so that nothing is known of rounding.
     */
    @Test
    void theErrorOfTheModelLastsForAWhile() {
        double[] times = {0, 300, 600, 1_800, 2_400};
        double[] gauge = new double[5];
        Arrays.fill(gauge, 3e5);
        PressureLog log = PressureLog.builder(times, gauge).build();
        double scatter = log.weights().averaging();
        double[] off = {900, -2_000, 1_500, 3_000, -400};
        double[] shown = Arrays.stream(off).map(o -> 3e5 + o).toArray();
        RealMatrix covariance = new Array2DRowRealMatrix(5, 5);
        for (int i = 0; i < 5; i++) {
            for (int j = 0; j < 5; j++) {
                double model = 3_000 * 3_000 * Math.exp(-Math.abs(times[i] - times[j]) / 1_800);
                covariance.setEntry(i, j, model + (i == j ? scatter * scatter : 0));
            }
        }
        RealVector differences = new ArrayRealVector(off);
        double expected = differences.dotProduct(
                new LUDecomposition(covariance).getSolver().solve(differences));
        double[] residuals =
                Target.fine(log, SpotReadings.none()).residuals(forecast(shown, all(5, 300), Double.NaN, Map.of()));
        assertEquals(expected, Trial.sumOfSquares(residuals), 1e-9);
    }

    /** Regression: a thousand readings all off by less than the gauge and the house are known to counted as a thousand proofs. */
    @Test
    void manyReadingsThatAreOffAlikeSayLittleMoreThanOne() {
        double[] times = new double[240];
        double[] gauge = new double[240];
        Arrays.setAll(times, i -> 60.0 * i);
        Arrays.setAll(gauge, i -> 3e5 + (i % 2 == 0 ? 1_000 : -1_000));
        PressureLog log = PressureLog.builder(times, gauge).build();
        double[] shown = all(240, 3e5 + 3_000);
        double cost = Trial.sumOfSquares(
                Target.fine(log, SpotReadings.none()).residuals(forecast(shown, all(240, 300), Double.NaN, Map.of())));
        double still = Trial.sumOfSquares(Target.fine(log, SpotReadings.none())
                .residuals(forecast(all(240, 3e5), all(240, 300), Double.NaN, Map.of())));
        assertEquals(4 * 3_600 / (2 * 1_800.0) + 1, cost - still, 1.5, "as many as the log is times the memory long");
    }

    /** A jump may have been at any time between two readings, a rectangle whose variance is a twelfth of its square. */
    @Test
    void whereTheLogJumpsItSaysLess() {
        double[] gauge = {3e5, 3e5, 3.12e5, 3.119e5, 3.039e5};
        PressureLog log = PressureLog.builder(new double[] {0, 60, 120, 180, 240}, gauge)
                .uncertainty(UNCERTAINTY)
                .build();
        double[] higher = Arrays.stream(gauge).map(p -> p + 700).toArray();
        double[] residuals =
                Target.fine(log, SpotReadings.none()).residuals(forecast(higher, all(5, 300), Double.NaN, Map.of()));
        double jump = 0.7 / Math.sqrt(1 + 12.0 * 12.0 / 12);
        assertArrayEquals(new double[] {0.7, 0.7, jump, 0.7, 0.7}, residuals, 1e-9);
    }

    @Test
    void temperaturesCountWhereTheyAreKnown() {
        PressureLog log =
                log(4).temperature(new double[] {300, Double.NaN, 300, 300}).build();
        Target target = Target.fine(log, SpotReadings.none());
        assertEquals(7, target.count());
        assertEquals(7, target.readings());
        double[] residuals =
                target.residuals(forecast(all(4, 3e5), new double[] {303, 999, 300, 298.5}, Double.NaN, Map.of()));
        assertArrayEquals(new double[] {0, 0, 0, 0, 2, 0, -1}, residuals, EXACT);
    }

    @Test
    void theFirstBurnCountsOnce() {
        PressureLog log = log(6).burner(false, true, true, true, false, false).build();
        Target target = Target.fine(log, SpotReadings.none());
        assertEquals(7, target.count());
        double allowed = Math.hypot(0.02 * 180, 60);
        assertEquals(45 / allowed, target.residuals(forecast(all(6, 3e5), all(6, 300), 225, Map.of()))[6], EXACT);
        double never = (300 - 180) / allowed;
        assertEquals(
                never,
                target.residuals(forecast(all(6, 3e5), all(6, 300), Double.NaN, Map.of()))[6],
                EXACT,
                "as if it burnt to the end of the log");
        Target more = Target.fine(log, SpotReadings.none().with(SiteCheck.HOT_TAP, 330));
        Forecaster.Forecast all = forecast(all(6, 3e5), all(6, 300), 225, Map.of(SiteCheck.HOT_TAP, 333.0));
        assertEquals(45 / allowed, more.residuals(all)[6], EXACT);
        assertEquals(1.5, more.residuals(all)[7], EXACT);
    }

    @Test
    void readingsOnSiteCountInTheOrderOfTheChecks() {
        SpotReadings spots = SpotReadings.none()
                .with(SiteCheck.TYRE_GAUGE, 2e5)
                .with(SiteCheck.COLD_STATIC, new SpotReading(3e5, 4_000));
        Target target = Target.fine(null, spots);
        assertEquals(2, target.count());
        assertEquals(2, target.readings());
        double[] residuals = target.residuals(forecast(
                new double[0],
                new double[0],
                Double.NaN,
                Map.of(SiteCheck.COLD_STATIC, 3.08e5, SiteCheck.TYRE_GAUGE, 1.9e5)));
        assertArrayEquals(new double[] {2, -1}, residuals, EXACT);
        assertSame(spots, target.coarse().spots());
    }

    @Test
    void readingsOnSiteComeAfterThoseOfTheLog() {
        Target target = Target.fine(log(3).build(), SpotReadings.none().with(SiteCheck.HOT_TAP, 330));
        double[] residuals =
                target.residuals(forecast(all(3, 3e5), all(3, 300), Double.NaN, Map.of(SiteCheck.HOT_TAP, 331.0)));
        assertArrayEquals(new double[] {0, 0, 0, 0.5}, residuals, EXACT);
    }
}

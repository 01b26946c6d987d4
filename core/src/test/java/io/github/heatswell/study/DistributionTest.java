package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantiles against closed forms, and what is refused. */
class DistributionTest {

    /** Validation: the quantile of the rectangular distribution is a straight line. */
    @ParameterizedTest
    @CsvSource({"0, -3", "0.25, -1", "0.5, 1", "0.75, 3", "1, 5"})
    void anEvenSpreadIsAStraightLine(double share, double expected) {
        Distribution spread = Distribution.between(-3, 5);

        assertEquals(expected, spread.quantile(share));
        assertEquals(1, spread.centre());
    }

    /**
     * Validation: quantiles of the normal distribution cut off at three standard deviations, from the printed percentage
     * points of the standard normal distribution (from memory): the share s of the cut-off distribution is the share
     * Q + s (1 - 2 Q) of the whole, Q = 0.00134990 below -3. Below -2 lie 0.0227501, below -1 0.1586553 of the whole.
     */
    @ParameterizedTest
    @CsvSource({"0.0214582, -2", "0.1577312, -1", "0.5, 0", "0.8422688, 1", "0.9785418, 2"})
    void aNormalSpreadFollowsThePrintedTable(double share, double deviations) {
        Distribution spread = Distribution.around(4.2, 0.3);

        // half a unit of the seventh digit, over the density 0.054 at two standard deviations
        assertEquals(4.2 + deviations * 0.15, spread.quantile(share), 0.15 * 0.5e-7 / 0.054);
    }

    @Test
    void aNormalSpreadEndsAtOneAndAHalfTimesTheUncertainty() {
        Distribution spread = Distribution.around(58, 3);

        assertEquals(53.5, spread.low());
        assertEquals(62.5, spread.high());
        assertEquals(53.5, spread.quantile(0));
        assertEquals(62.5, spread.quantile(1));
        assertEquals(53.5, spread.quantile(1e-15), 1e-9); // the density there is 0.004 a deviation of 1.5
        assertEquals(58, spread.centre());
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 1, low: NaN is not a finite number",
        "0, Infinity, high: Infinity is not a finite number",
        "2, 2, 'low: 2.0 must be below high, 2.0'",
        "3, 2, 'low: 3.0 must be below high, 2.0'",
        "-1.7e308, 1.7e308, a finite distance apart"
    })
    void impossibleLimitsAreRefused(double low, double high, String message) {
        refused(() -> Distribution.between(low, high), message);
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 1, value: NaN is not a finite number",
        "1, -Infinity, expanded: -Infinity is not a finite number",
        "1, 0, expanded: 0.0 must be above 0",
        "1, -2, expanded: -2.0 must be above 0",
        "1e9, 1e-9, too small",
        "1, 1.7e308, too large"
    })
    void impossibleUncertaintiesAreRefused(double value, double expanded, String message) {
        refused(() -> Distribution.around(value, expanded), message);
    }

    @ParameterizedTest
    @CsvSource({"-0.01", "1.01", "NaN"})
    void sharesOutsideZeroToOneAreRefused(double share) {
        refused(() -> Distribution.between(0, 1).quantile(share), "0 to 1");
        refused(() -> Distribution.around(0, 1).quantile(share), "0 to 1");
    }

    @Test
    void sameLimitsAreTheSameDistribution() {
        Distribution about = Distribution.around(4, 0.5);
        assertEquals(0.5, about.expanded());
        assertEquals(about, Distribution.around(4, 0.5));
        assertEquals(about.hashCode(), Distribution.around(4, 0.5).hashCode());
        assertNotEquals(about, Distribution.around(4, 0.4));
        assertNotEquals(about, Distribution.between(3, 5));
        assertNotEquals(Distribution.between(3, 5), Distribution.between(3, 6));
    }

    @Test
    void anInputNeedsAName() {
        refused(() -> new Study.Input(" ", Distribution.between(0, 1)), "needs a name");
    }

    private static void refused(Executable action, String message) {
        String said = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(said.contains(message), said);
    }
}

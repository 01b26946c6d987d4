package io.github.heatswell.outlook;

import java.util.Objects;

/**
 * How fast the charge fades: as expected, and as slowly and as fast as may be.
 *
 * @param expected the rate that is as likely to be too low as too high
 * @param slow the lowest that may be, not above the expected
 * @param fast the highest that may be, not below the expected
 */
public record Fading(GasLoss expected, GasLoss slow, GasLoss fast) {

    /**
     * Checks the order.
     *
     * @param expected the rate that is as likely to be too low as too high
     * @param slow the lowest that may be, not above the expected
     * @param fast the highest that may be, not below the expected
     * @throws IllegalArgumentException if the rates are not in order
     */
    public Fading {
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(slow, "slow");
        Objects.requireNonNull(fast, "fast");
        if (!(slow.yearly() <= expected.yearly() && expected.yearly() <= fast.yearly())) {
            throw new IllegalArgumentException("fade: the expected rate must lie between the slowest and the fastest");
        }
    }

    /**
     * What is known of a vessel of which nobody has measured it.
     *
     * @return the usual rate, a third of it and three times it, on the weak basis that {@link GasLoss} describes
     */
    public static Fading usual() {
        return new Fading(new GasLoss(GasLoss.USUAL), new GasLoss(GasLoss.LOW), new GasLoss(GasLoss.HIGH));
    }

    /**
     * A rate known exactly, as after two readings of the drained vessel.
     *
     * @param loss the rate
     * @return no range
     */
    public static Fading exactly(GasLoss loss) {
        return new Fading(loss, loss, loss);
    }

    /**
     * The rate that a share of all vessels does not exceed: even in the logarithm of the rate between the slowest and the
     * expected, and between the expected and the fastest; even in the rate itself where the slowest is none at all.
     *
     * @param share the share (-), 0 to 1; half of the vessels fade more slowly than expected
     * @return the rate
     */
    GasLoss quantile(double share) {
        double place = 2 * share;
        return place <= 1 ? between(slow, expected, place) : between(expected, fast, place - 1);
    }

    private static GasLoss between(GasLoss low, GasLoss high, double place) {
        if (low.yearly() == 0) {
            return new GasLoss(high.yearly() * place);
        }
        double rate = low.yearly() * Math.pow(high.yearly() / low.yearly(), place);
        return new GasLoss(Math.min(rate, high.yearly()));
    }
}

package io.github.heatswell.ageing;

import java.util.Objects;

/**
 * Rate of precharge loss: expected, slowest and fastest.
 *
 * @param expected the rate that is as likely to be too low as too high
 * @param slow the lowest that may be, not above the expected
 * @param fast the highest that may be, not below the expected
 */
public record PrechargeLossRange(PrechargeLoss expected, PrechargeLoss slow, PrechargeLoss fast) {

    /**
     * Checks the order.
     *
     * @param expected the rate that is as likely to be too low as too high
     * @param slow the lowest that may be, not above the expected
     * @param fast the highest that may be, not below the expected
     * @throws IllegalArgumentException if the rates are not in order
     */
    public PrechargeLossRange {
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(slow, "slow");
        Objects.requireNonNull(fast, "fast");
        if (!(slow.yearly() <= expected.yearly() && expected.yearly() <= fast.yearly())) {
            throw new IllegalArgumentException("fade: the expected rate must be between the slowest and the fastest");
        }
    }

    /**
     * Rates for a vessel that nobody has measured.
     *
     * @return the usual rate, a third of it and three times it, on the weak basis that {@link PrechargeLoss} describes
     */
    public static PrechargeLossRange usual() {
        return new PrechargeLossRange(
                new PrechargeLoss(PrechargeLoss.USUAL),
                new PrechargeLoss(PrechargeLoss.LOW),
                new PrechargeLoss(PrechargeLoss.HIGH));
    }

    /**
     * A rate known exactly, as after two readings of the drained vessel.
     *
     * @param loss the rate
     * @return a range of one rate
     */
    public static PrechargeLossRange exactly(PrechargeLoss loss) {
        return new PrechargeLossRange(loss, loss, loss);
    }

    /**
     * The rate that a share of all vessels does not exceed: even in the logarithm of the rate between the slowest and
     * the expected, and between the expected and the fastest; even in the rate itself where the slowest is none at all.
     *
     * @param share the share (-), 0 to 1; half of the vessels lose precharge more slowly than expected
     * @return the rate
     */
    PrechargeLoss quantile(double share) {
        double place = 2 * share;
        return place <= 1 ? between(slow, expected, place) : between(expected, fast, place - 1);
    }

    private static PrechargeLoss between(PrechargeLoss low, PrechargeLoss high, double place) {
        if (low.yearly() == 0) {
            return new PrechargeLoss(high.yearly() * place);
        }
        double rate = low.yearly() * Math.pow(high.yearly() / low.yearly(), place);
        return new PrechargeLoss(Math.min(rate, high.yearly()));
    }
}

package io.github.heatswell.ageing;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.RatioUnit;
import java.util.Objects;

/**
 * Precharge loss of a vessel: gas permeates the diaphragm into the water in proportion to the difference between its
 * pressure and that at which the water is saturated with air, which is that of the atmosphere. While the vessel holds
 * water its gas is at static supply pressure, so the precharge then falls linearly: {@code dp0/dt = -k max(p0, ps)},
 * with both the precharge p0 and the static pressure ps at the vessel as gauge pressures. Hours of higher pressure are
 * neglected. So is that the loss slows once so little is left that the diaphragm rests at its stop while the house is cold: the gas
 * is then below static pressure. Such a vessel has no room left for expansion, so what it loses further neither begins nor ends any
 * dripping; only the precharge of the years after that is stated too low.
 *
 * <p><b>Basis.</b> Weak. Permeation in proportion to the difference of partial pressures is textbook physics. We know
 * of no published rate for a vessel: a butyl diaphragm of 0.1 m2 and 2 mm around 8 L of air at 3 bar gauge would lose 6
 * % of its air in a year, that is about a quarter of a bar, by permeabilities from a polymer handbook, cited from
 * memory and good to a factor of three; natural or EPDM rubber loses air some twenty times as fast. Leaking valves and
 * seams are not included. Neither is temperature: rubber lets through several times as much when it is warm; a maker reports, as we
 * know second-hand, twenty times as much at 80 degC as at 10 degC. Two readings of a vessel's precharge a year apart are better evidence.
 *
 * @param yearly k, the share of the gas's gauge pressure that is lost in a year (1/year), 0 to 5
 */
public record PrechargeLoss(double yearly) {

    /** A third of the usual one (1/year). */
    public static final double LOW = 0.03;
    /** The butyl diaphragm worked out above: 6.4 % of 4 bar absolute are 8.5 % of 3 bar gauge (1/year). */
    public static final double USUAL = 0.085;
    /** Three times the usual one (1/year). */
    public static final double HIGH = 0.25;

    /** How long a vessel goes unchecked at most (years): a year, which is common practice. */
    public static final double MAX_UNCHECKED = 1;

    /** Where the rates come from. */
    public static final Citation SOURCE = new Citation(
            "calculated from permeabilities of rubber to air in a polymer handbook, good to a factor of three; temperature is left"
                    + " out, and a warm vessel loses its charge several times as fast",
            Citation.Standing.FROM_MEMORY);

    private static final Limits YEARLY = Limits.between("fade in a year", 0, 5);

    /**
     * Checks the rate.
     *
     * @param yearly k, the share of the gas's gauge pressure that is lost in a year (1/year), 0 to 5
     * @throws IllegalArgumentException if it is outside its range
     */
    public PrechargeLoss {
        yearly = YEARLY.checkSi(yearly, RatioUnit.PERCENT);
    }

    /**
     * The precharge that is left.
     *
     * @param prechargeGauge the precharge at first (Pa, gauge), 0 or more
     * @param staticGauge the static pressure at the vessel (Pa, gauge), above 0
     * @param years how much later (years of 365 days), 0 or more
     * @return the precharge (Pa, gauge), 0 or more
     */
    public double left(double prechargeGauge, double staticGauge, double years) {
        if (years < timeAbove(prechargeGauge, staticGauge)) {
            return prechargeGauge * Math.exp(-yearly * years);
        }
        double from = Math.min(prechargeGauge, staticGauge);
        return Math.max(0, from - yearly * staticGauge * (years - timeAbove(prechargeGauge, staticGauge)));
    }

    /**
     * Time to fall to a lower precharge.
     *
     * @param fromGauge the precharge at first (Pa, gauge), 0 or more
     * @param toGauge the precharge that is left (Pa, gauge), 0 to that at first
     * @param staticGauge the static pressure at the vessel (Pa, gauge), above 0
     * @return the time (years of 365 days); infinite if nothing is lost
     */
    public double yearsUntil(double fromGauge, double toGauge, double staticGauge) {
        if (toGauge >= staticGauge) {
            return toGauge >= fromGauge ? 0 : Math.log(fromGauge / toGauge) / yearly;
        }
        double even = Math.min(fromGauge, staticGauge) - toGauge;
        return even <= 0 ? 0 : timeAbove(fromGauge, staticGauge) + even / (yearly * staticGauge);
    }

    /** How long a precharge stays above the static pressure, where the vessel takes no cold water (years). */
    private double timeAbove(double prechargeGauge, double staticGauge) {
        return prechargeGauge > staticGauge ? Math.log(prechargeGauge / staticGauge) / yearly : 0;
    }

    /**
     * Rate of precharge loss: expected, slowest and fastest.
     *
     * @param expected the rate that is as likely to be too low as too high
     * @param slow the lowest that may be, not above the expected
     * @param fast the highest that may be, not below the expected
     */
    public record Range(PrechargeLoss expected, PrechargeLoss slow, PrechargeLoss fast) {

        /**
         * Checks the order.
         *
         * @param expected the rate that is as likely to be too low as too high
         * @param slow the lowest that may be, not above the expected
         * @param fast the highest that may be, not below the expected
         * @throws IllegalArgumentException if the rates are not in order
         */
        public Range {
            Objects.requireNonNull(expected, "expected");
            Objects.requireNonNull(slow, "slow");
            Objects.requireNonNull(fast, "fast");
            if (!(slow.yearly() <= expected.yearly() && expected.yearly() <= fast.yearly())) {
                throw new IllegalArgumentException(
                        "fade: the expected rate must be between the slowest and the fastest");
            }
        }

        /**
         * Rates for a vessel that nobody has measured.
         *
         * @return the usual rate, a third of it and three times it, on the weak basis that {@link PrechargeLoss} describes
         */
        public static Range usual() {
            return new Range(
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
        public static Range exactly(PrechargeLoss loss) {
            return new Range(loss, loss, loss);
        }

        /**
         * The rate that a share of all vessels does not exceed: even in the logarithm of the rate between the slowest and
         * the expected, and between the expected and the fastest; even in the rate itself where the slowest is none at all.
         *
         * @param share the share (-), 0 to 1; half of the vessels lose precharge more slowly than expected
         * @return the rate
         */
        public PrechargeLoss quantile(double share) {
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
}

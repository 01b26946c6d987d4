package io.github.heatswell.ageing;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.study.StudyResult;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Result of an {@link Outlook}: how the years ahead go at several rates of precharge loss.
 *
 * @param years how many
 * @param expected the course at the expected rate of precharge loss
 * @param slow the course at the slowest rate
 * @param fast the course at the fastest rate
 * @param larger the expected course with larger vessels, charged as the present one is today, the smallest first
 * @param onset when dripping begins with the present vessel, with its uncertainty
 * @param limit how low the precharge of the present vessel may fall
 * @param balances those of all runs behind it
 */
public record OutlookResult(
        int years,
        OutlookCourse expected,
        OutlookCourse slow,
        OutlookCourse fast,
        List<OutlookCourse> larger,
        DripOnset onset,
        ChargeLimit limit,
        Balances balances) {

    private static final double MIN_UNCHECKED = 1.0 / OutlookCourse.Month.MONTHS_OF_YEAR;

    /**
     * Checks that everything is there and copies the list.
     *
     * @param years how many
     * @param expected the course at the expected rate of precharge loss
     * @param slow the course at the slowest rate
     * @param fast the course at the fastest rate
     * @param larger the expected course with larger vessels, charged as the present one is today, the smallest first
     * @param onset when dripping begins with the present vessel, with its uncertainty
     * @param limit how low the precharge of the present vessel may fall
     * @param balances those of all runs behind it
     */
    public OutlookResult {
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(slow, "slow");
        Objects.requireNonNull(fast, "fast");
        Objects.requireNonNull(onset, "onset");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(balances, "balances");
        larger = List.copyOf(Objects.requireNonNull(larger, "larger"));
    }

    /**
     * How long the charge may go unchecked: a year, which is common practice, or half of the time to the earliest
     * likely dripping ({@link DripOnset#early}, or all the time looked at if it is later) if that is shorter, but not
     * less than a month.
     *
     * @return the time between two checks (years); empty if today's charge is no good, so that there is nothing to wait
     *     for
     */
    public OptionalDouble checkEvery() {
        if (limit.lowestGauge().isEmpty()) {
            return OptionalDouble.empty();
        }
        double half = onset.early().orElse(years) / 2;
        return OptionalDouble.of(Math.max(MIN_UNCHECKED, Math.min(PrechargeLoss.MAX_UNCHECKED, half)));
    }

    /**
     * The earliest month, in any of the courses of the present vessel, whose worst day ends in a hazard, or, if none does, in
     * which the tank's working pressure is exceeded. If several courses have the same, that of the expected one.
     *
     * @return the month, or empty if there is neither
     */
    public Optional<OutlookCourse.Month> gravest() {
        return Stream.of(expected, fast, slow)
                .flatMap(course -> course.gravest().stream())
                .min(Comparator.comparing((OutlookCourse.Month month) -> !month.isHazard())
                        .thenComparingInt(OutlookCourse.Month::number));
    }

    /**
     * How low the precharge may fall.
     *
     * @param lowestGauge the lowest precharge with which on the worst day of the year no relief valve discharges and the
     *     tank's working pressure is kept (Pa, gauge): 0 if any charge will do, empty if that of today does not
     * @param rechargeBelowGauge the reading of the drained vessel that calls for the pump (Pa, gauge): what the findings
     *     call too low, or the lowest precharge, or the one that keeps the other limit, with a margin for the tyre gauge if that is
     *     more; empty as the lowest, if the
     *     plate of vessel or tank forbids to charge it as the supply stands (then the supply has to come down), or if a run
     *     with that charge ends in a hazard
     * @param pumpToGauge what to pump it to then, as the findings say (Pa, gauge); empty as the other
     * @param hazardWhenPumped the hazard in which the worst day of some month ends with the charge that matches the supply:
     *     then that charge is not advised and what follows from it is empty; itself empty if there is none, or if today's
     *     charge does not do or the plates forbid to match the supply
     * @param rechargeAfter when it is reached at the expected loss (years), infinite if never; empty as the others
     */
    public record ChargeLimit(
            OptionalDouble lowestGauge,
            OptionalDouble rechargeBelowGauge,
            OptionalDouble pumpToGauge,
            Optional<Event.Kind> hazardWhenPumped,
            OptionalDouble rechargeAfter) {

        /** Margin above the limit at which to recharge (Pa, difference): common practice, no source. */
        public static final double MARGIN = 0.2e5;

        private static final double WITHIN = 100;

        static ChargeLimit of(Ageing house, PrechargeLoss loss, double leastGauge) {
            double today = house.prechargeGauge();
            if (!house.isSoundAt(today, loss)) {
                return unpumped(OptionalDouble.empty(), Optional.empty());
            }
            double limit = limit(house, today, loss);
            PrechargeTarget target = house.target();
            if (!target.isAllowed()) {
                return unpumped(OptionalDouble.of(limit), Optional.empty());
            }
            Optional<Event.Kind> hazard = house.hazardAt(target.pumpToGauge());
            if (hazard.isPresent()) {
                return unpumped(OptionalDouble.of(limit), hazard);
            }
            double least = Math.max(limit, leastGauge);
            double safe = least == 0 ? 0 : least + MARGIN;
            double recharge = Math.min(target.pumpToGauge(), Math.max(target.tooLowGauge(), safe));
            double after = today <= recharge ? 0 : loss.yearsUntil(today, recharge, house.staticGauge());
            return new ChargeLimit(
                    OptionalDouble.of(limit),
                    OptionalDouble.of(recharge),
                    OptionalDouble.of(target.pumpToGauge()),
                    Optional.empty(),
                    OptionalDouble.of(after));
        }

        private static ChargeLimit unpumped(OptionalDouble limit, Optional<Event.Kind> hazard) {
            return new ChargeLimit(
                    limit, OptionalDouble.empty(), OptionalDouble.empty(), hazard, OptionalDouble.empty());
        }

        /** Halves the range between a charge that will not do and one that does. */
        private static double limit(Ageing house, double sound, PrechargeLoss loss) {
            if (house.isSoundAt(0, loss)) {
                return 0;
            }
            double low = 0;
            double high = sound;
            while (high - low > WITHIN) {
                double middle = (low + high) / 2;
                if (house.isSoundAt(middle, loss)) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return high;
        }
    }

    /**
     * When dripping begins, as far as anybody can tell: the house is followed through the years many times, each time with
     * other plausible values and another plausible rate of precharge loss. Immutable.
     */
    public static final class DripOnset {

        /** What a sample answers. */
        static final List<String> OUTPUTS =
                List.of("first dripping (years; the end of the look if none)", "drips in time");

        private static final double LOW = 0.05;
        private static final double HIGH = 0.95;

        private final StudyResult result;
        private final int years;

        DripOnset(StudyResult result, int years) {
            this.result = Objects.requireNonNull(result, "result");
            this.years = years;
        }

        /** The answers of one sample. */
        static double[] answers(OptionalDouble first, int years) {
            return new double[] {first.orElse(years), first.isPresent() ? 1 : 0};
        }

        /**
         * The time by which one sample in twenty drips.
         *
         * @return the 5 % quantile (years), or empty if it lies beyond the years looked at
         */
        public OptionalDouble early() {
            return quantile(LOW);
        }

        /**
         * The time by which half of the samples drip.
         *
         * @return the median (years), or empty if it lies beyond the years looked at
         */
        public OptionalDouble middle() {
            return quantile(0.5);
        }

        /**
         * The time by which all but one sample in twenty drip.
         *
         * @return the 95 % quantile (years), or empty if it lies beyond the years looked at
         */
        public OptionalDouble late() {
            return quantile(HIGH);
        }

        /**
         * How many of the samples drip before the years are over.
         *
         * @return the share, an estimate of the probability
         */
        public StudyResult.Share withinYears() {
            return spread(1).above(0.5);
        }

        /**
         * The samples, each with its input values.
         *
         * @return the result of the study
         */
        public StudyResult result() {
            return result;
        }

        private OptionalDouble quantile(double share) {
            double time = spread(0).quantile(share);
            return time < years ? OptionalDouble.of(time) : OptionalDouble.empty();
        }

        private StudyResult.Spread spread(int output) {
            return result.spread(output);
        }
    }
}

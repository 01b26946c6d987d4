package io.github.heatswell.ageing;

import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.result.Balances;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.UncertainHouse;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Looks years ahead: month by month the vessel loses precharge, the supply follows the seasons, and the worst day is
 * simulated.
 *
 * <p>Three courses are followed with the numbers of the house as described: at the expected, the lowest and the highest
 * rate of precharge loss. When dripping begins is also estimated from many houses that differ from it within the uncertainty
 * of its numbers, each with its own rate of precharge loss. Months are twelfths of a year of 365 days; the first begins on
 * the house's day of the year, on which the vessel holds the charge of its description. Immutable.
 */
public final class Outlook {

    /** The most years that can be looked ahead. */
    public static final int MAX_YEARS = 40;

    /** A shorter run would leave out the night, in which a leaking seat makes a valve drip. */
    private static final Duration MIN_RUN = Duration.ofDays(1);

    private static final Duration MAX_RUN = Duration.ofDays(3);
    private static final Limits SWING = Limits.between("mains-swing", 0, 10e5);
    private static final Limits LARGER = Limits.between("larger", 0.1e-3, 5);

    private final HotWaterSystem house;
    private final Duration run;
    private final int years;
    private final PrechargeLoss.Range fading;
    private final double mainsSwing;
    private final List<Double> larger;
    private final double leastGauge;
    private final List<Study.Input> inputs;
    private final Function<double[], HotWaterSystem> deviating;
    private final UnaryOperator<Study.Builder> studied;

    private Outlook(Builder from) {
        house = from.house;
        run = Collections.max(List.of(MIN_RUN, Collections.min(List.of(MAX_RUN, from.run))));
        years = from.years;
        fading = from.fading;
        mainsSwing = from.mainsSwing;
        larger = from.larger;
        leastGauge = from.leastGauge;
        inputs = from.inputs;
        deviating = from.deviating;
        studied = from.studied;
    }

    /**
     * Starts a look ahead.
     *
     * @param house the house, with a sound vessel
     * @param run the length of its run, above 0; less than a day counts as a day, more than three days as three
     * @return a builder for ten years, the usual rates of precharge loss, mains that stand the same all year, no larger vessel, and
     *     the usual uncertainty of the house
     */
    public static Builder builder(HotWaterSystem house, Duration run) {
        return new Builder(house, run);
    }

    /**
     * Simulates every month of every course, and the sampled houses, on several threads. The result does not depend on
     * their number.
     *
     * @return what the years will do
     * @throws io.github.heatswell.simulation.SimulationException if the equations could not be integrated
     */
    public OutlookResult simulate() {
        Balances.Count count = new Balances.Count();
        Ageing ageing = new Ageing(house, run, mainsSwing, count);
        Study uncertain = uncertain(count);
        Courses courses = new Courses(ageing, Workers.of(uncertain.threads()));
        double volume = ageing.vessel().volume();
        List<OutlookCourse> bigger = new ArrayList<>();
        larger.forEach(each -> bigger.add(courses.of(each, fading.expected())));
        OutlookCourse expected = courses.of(volume, fading.expected());
        OutlookCourse slow = courses.of(volume, fading.slow());
        OutlookCourse fast = courses.of(volume, fading.fast());
        OutlookResult.DripOnset onset = new OutlookResult.DripOnset(uncertain.run(), years);
        OutlookResult.ChargeLimit limit = OutlookResult.ChargeLimit.of(ageing, fading.expected(), leastGauge);
        return new OutlookResult(years, expected, slow, fast, bigger, onset, limit, count.sum());
    }

    /** Makes courses of a house, several of their months at a time. */
    private final class Courses {
        private final Ageing ageing;
        private final Workers workers;

        Courses(Ageing ageing, Workers workers) {
            this.ageing = ageing;
            this.workers = workers;
        }

        OutlookCourse of(double volume, PrechargeLoss loss) {
            List<Integer> numbers = IntStream.range(0, years * OutlookCourse.Month.MONTHS_OF_YEAR)
                    .boxed()
                    .toList();
            double all = house.hasSeveralVessels()
                    ? house.vessels().stream()
                            .filter(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)
                            .mapToDouble(ExpansionVessel::volume)
                            .sum()
                    : volume;
            return new OutlookCourse(all, loss, workers.map(numbers, number -> ageing.month(number, volume, loss)));
        }
    }

    private Study uncertain(Balances.Count count) {
        Study.Builder study = Study.builder()
                .samples(128)
                .inputs(inputs)
                .input("precharge loss (share of all vessels)", Distribution.between(0, 1))
                .outputs(OutlookResult.DripOnset.OUTPUTS)
                .model(values -> firstDripping(values, count));
        return studied.apply(study).build();
    }

    private double[] firstDripping(double[] values, Balances.Count count) {
        PrechargeLoss loss = fading.quantile(values[inputs.size()]);
        return Study.orFailed(() -> {
            HotWaterSystem deviated = deviating.apply(Arrays.copyOf(values, inputs.size()));
            return OutlookResult.DripOnset.answers(
                    new Ageing(deviated, run, mainsSwing, count).firstDripping(years, loss), years);
        });
    }

    /** Builds an {@link Outlook}. */
    public static final class Builder {
        private final HotWaterSystem house;
        private final Duration run;
        private int years = 10;
        private PrechargeLoss.Range fading = PrechargeLoss.Range.usual();
        private double mainsSwing;
        private List<Double> larger = List.of();
        private double leastGauge;
        private List<Study.Input> inputs;
        private Function<double[], HotWaterSystem> deviating;
        private UnaryOperator<Study.Builder> studied = UnaryOperator.identity();

        private Builder(HotWaterSystem house, Duration run) {
            this.house = Objects.requireNonNull(house, "house");
            this.run = Objects.requireNonNull(run, "run");
            if (run.isZero() || run.isNegative()) {
                throw new IllegalArgumentException("run: " + run + " must be above 0");
            }
            UncertainHouse usual = UncertainHouse.usual(house);
            inputs = usual.inputs();
            deviating = usual::moved;
        }

        /**
         * Sets how far to look ahead.
         *
         * @param number the number of years, 1 to 40
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder years(int number) {
            years = Limits.whole("years", number, 1, MAX_YEARS);
            return this;
        }

        /**
         * Sets how fast the vessel loses precharge.
         *
         * @param value the rates
         * @return this builder
         */
        public Builder fading(PrechargeLoss.Range value) {
            fading = Objects.requireNonNull(value, "fading");
            return this;
        }

        /**
         * Sets how far the pressure of the mains goes up and down with the seasons; highest when its water is coldest.
         *
         * @param pascal the highest less the lowest pressure of the year (Pa, difference), 0 to 10 bar
         * @return this builder
         * @throws IllegalArgumentException if it is outside its range
         */
        public Builder mainsSwing(double pascal) {
            mainsSwing = SWING.checkSi(pascal, PressureUnit.BAR);
            return this;
        }

        /**
         * Sets larger vessels to compare with, charged as the present one.
         *
         * @param volumes their volumes (m3), 0.1 L to 5 m3
         * @return this builder
         * @throws IllegalArgumentException if a volume is outside its range
         */
        public Builder larger(List<Double> volumes) {
            larger = Objects.requireNonNull(volumes, "larger").stream()
                    .map(volume -> LARGER.checkSi(
                            Objects.requireNonNull(volume, "larger: one of the volumes"), VolumeUnit.LITRE))
                    .sorted()
                    .toList();
            return this;
        }

        /**
         * Sets the precharge below which the house passes a limit other than that of its relief valves. The advice is then to pump it up
         * before that too.
         *
         * @param gauge the precharge (Pa, gauge), 0 for none
         * @return this builder
         */
        public Builder leastPrecharge(double gauge) {
            leastGauge = gauge;
            return this;
        }

        /**
         * Sets which numbers of the house are uncertain, in place of the usual ones.
         *
         * @param uncertain the uncertain numbers, fewer than 20; none if the house is known exactly
         * @param made makes a house from a value of each, in the unit of its input; for any number of threads; refuses
         *     values that do not go together by an {@link IllegalArgumentException}
         * @return this builder
         */
        public Builder uncertain(List<Study.Input> uncertain, Function<double[], HotWaterSystem> made) {
            inputs = List.copyOf(Objects.requireNonNull(uncertain, "uncertain"));
            deviating = Objects.requireNonNull(made, "made");
            return this;
        }

        /**
         * Sets how the uncertain houses are sampled.
         *
         * @param settings sets samples (128 if it does not), seed, threads, progress or the stop signal
         * @return this builder
         */
        public Builder sampled(UnaryOperator<Study.Builder> settings) {
            studied = Objects.requireNonNull(settings, "settings");
            return this;
        }

        /**
         * Completes the description.
         *
         * @return the look ahead, ready to be simulated
         * @throws IllegalArgumentException if there is no intact vessel that the supply reaches, if a larger one is asked for where there
         * are several, or if the pressure of the mains would leave its range
         */
        public Outlook build() {
            if (house.vessels().stream().noneMatch(vessel -> vessel.condition() == ExpansionVessel.Condition.SOUND)) {
                throw new IllegalArgumentException(
                        "vessel: the house has no intact expansion vessel, so there is no" + " precharge to lose");
            }
            if (PrechargeTarget.leading(house).isEmpty()) {
                throw new IllegalArgumentException(
                        "vessel: the supply pressure does not reach its height, so no precharge can match it");
            }
            if (house.hasSeveralVessels() && !larger.isEmpty()) {
                throw new IllegalArgumentException(
                        "larger: larger sizes are compared only for a house with one vessel; leave them out");
            }
            new Seasons(house, mainsSwing).check();
            return new Outlook(this);
        }
    }
}

package io.github.heatswell.scenarios.outlook;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.study.Study;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * Looks ahead over the years for the house of a scenario.
 */
public final class HouseOutlook {

    private static final int LARGER = 2;
    private static final double CLEARLY_LARGER = 1.05;

    private final Scenario scenario;
    private final VariedHouse house;
    private final PrechargeLoss.Range fading;
    private final double mainsSwing;
    private final Outlook outlook;
    private final Optional<Yardstick> yardstick;
    private final Balances looked;

    private HouseOutlook(Builder from, Outlook outlook, Optional<Yardstick> yardstick, Balances looked) {
        this.scenario = from.scenario;
        this.house = from.house;
        this.fading = from.fading;
        this.mainsSwing = from.mainsSwing;
        this.outlook = outlook;
        this.yardstick = yardstick;
        this.looked = looked;
    }

    /**
     * Starts the question.
     *
     * @param scenario the house with its vessel, its run, its uncertain values and the sizes on sale
     * @return a builder for ten years, the usual rates of precharge loss, mains without seasons and the first two larger sizes that
     *     keep the limit of a sizing
     */
    public static Builder of(Scenario scenario) {
        return new Builder(scenario);
    }

    /**
     * Simulates the years.
     *
     * @return what was found
     */
    public OutlookAnswer answer() {
        return new OutlookAnswer(scenario, house, fading, mainsSwing, outlook.simulate(), yardstick, looked);
    }

    /** Builds a {@link HouseOutlook}. */
    public static final class Builder {
        private final Scenario scenario;
        private final VariedHouse house;
        private PrechargeLoss.Range fading = PrechargeLoss.Range.usual();
        private double mainsSwing;
        private int years = 10;
        private UnaryOperator<Study.Builder> sampled = UnaryOperator.identity();

        private Builder(Scenario scenario) {
            this.scenario = Objects.requireNonNull(scenario, "scenario");
            house = VariedHouse.of(scenario).withUnread(scenario);
        }

        /**
         * Sets how far to look ahead.
         *
         * @param number the number of years, 1 to 40
         * @return this builder
         */
        public Builder years(int number) {
            years = number;
            return this;
        }

        /**
         * Sets how fast the charge fades.
         *
         * @param value the rates
         * @return this builder
         */
        public Builder fading(PrechargeLoss.Range value) {
            fading = Objects.requireNonNull(value, "fading");
            return this;
        }

        /**
         * Sets how far the mains' pressure goes up and down over the year, highest when its water is coldest.
         *
         * @param pascal the highest less the lowest (Pa, difference), 0 to 10 bar
         * @return this builder
         */
        public Builder mainsSwing(double pascal) {
            mainsSwing = pascal;
            return this;
        }

        /**
         * Sets how the uncertain houses are sampled.
         *
         * @param settings sets samples, seed, threads, progress or the stop signal
         * @return this builder
         */
        public Builder sampled(UnaryOperator<Study.Builder> settings) {
            sampled = Objects.requireNonNull(settings, "settings");
            return this;
        }

        /**
         * Builds the question.
         *
         * @return the question, ready to be answered
         * @throws IllegalArgumentException if there is no sound vessel, or a number is outside its range
         */
        public HouseOutlook build() {
            VesselChoice choice = VesselChoice.of(scenario).build();
            Optional<Yardstick> yardstick = choice.yardstickWithPrecharge();
            Balances.Count count = new Balances.Count();
            Outlook outlook = Outlook.builder(scenario.system(), scenario.duration())
                    .years(years)
                    .fading(fading)
                    .mainsSwing(mainsSwing)
                    .larger(larger(choice, count))
                    .leastPrecharge(yardstick
                            .map(Yardstick::leastPrechargeGauge)
                            .orElse(OptionalDouble.empty())
                            .orElse(0))
                    .uncertain(
                            house.inputs().stream()
                                    .map(VariedHouse.Input::input)
                                    .toList(),
                            house.house())
                    .sampled(sampled)
                    .build();
            return new HouseOutlook(this, outlook, yardstick, count.sum());
        }

        /** The first sizes on sale that keep the limit of a sizing in place of the only vessel; where none does, the largest. */
        private List<Double> larger(VesselChoice choice, Balances.Count count) {
            if (scenario.system().vessel().isEmpty() || scenario.system().hasSeveralVessels()) {
                return List.of();
            }
            double present = scenario.system().vessel().orElseThrow().volume();
            List<Double> larger = scenario.costs().vessels().stream()
                    .map(NominalSize::volume)
                    .filter(volume -> volume > CLEARLY_LARGER * present)
                    .sorted()
                    .toList();
            int first = 0;
            int last = larger.size() - 1;
            double needed = needed(choice, count);
            while (first < last && larger.get(first) < needed) {
                first++;
            }
            return larger.subList(first, Math.min(larger.size(), first + LARGER));
        }

        /** The smallest size on sale that is enough by the best estimates (m3); 0 where there is no such question, or none needed. */
        private double needed(VesselChoice choice, Balances.Count count) {
            try {
                SizingResult cold = choice.forColdFill();
                count.add(cold.balances());
                return cold.outcome() == SizingResult.Outcome.NONE_NEEDED
                        ? 0
                        : cold.smallestOnSale().map(SizingResult.Vessel::volume).orElse(Double.POSITIVE_INFINITY);
            } catch (IllegalArgumentException | SimulationException e) {
                return 0;
            }
        }
    }
}

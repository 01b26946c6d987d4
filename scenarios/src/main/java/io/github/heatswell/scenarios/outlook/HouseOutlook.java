package io.github.heatswell.scenarios.outlook;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.study.Study;
import io.github.heatswell.system.ExpansionVessel;
import java.util.List;
import java.util.Objects;
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

    private HouseOutlook(Builder from, Outlook outlook) {
        this.scenario = from.scenario;
        this.house = from.house;
        this.fading = from.fading;
        this.mainsSwing = from.mainsSwing;
        this.outlook = outlook;
    }

    /**
     * Starts the question.
     *
     * @param scenario the house with its vessel, its run, its uncertain values and the sizes on sale
     * @return a builder for ten years, the usual rates of precharge loss, mains without seasons and the next two larger
     *     sizes
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
        return new OutlookAnswer(
                scenario,
                house,
                fading,
                mainsSwing,
                outlook.simulate(),
                VesselChoice.of(scenario).build().yardstick());
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
            Outlook outlook = Outlook.builder(scenario.system(), scenario.duration())
                    .years(years)
                    .fading(fading)
                    .mainsSwing(mainsSwing)
                    .larger(larger())
                    .uncertain(
                            house.inputs().stream()
                                    .map(VariedHouse.Input::input)
                                    .toList(),
                            house.house())
                    .sampled(sampled)
                    .build();
            return new HouseOutlook(this, outlook);
        }

        /** The next sizes on sale in place of the only vessel. */
        private List<Double> larger() {
            if (scenario.system().hasSeveralVessels()) {
                return List.of();
            }
            double present =
                    scenario.system().vessel().map(ExpansionVessel::volume).orElse(Double.POSITIVE_INFINITY);
            return scenario.costs().vessels().stream()
                    .map(NominalSize::volume)
                    .filter(volume -> volume > CLEARLY_LARGER * present)
                    .sorted()
                    .limit(LARGER)
                    .toList();
        }
    }
}

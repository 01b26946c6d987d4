package io.github.heatswell.scenarios.spread;

import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Workers;
import io.github.heatswell.study.HouseDay;
import io.github.heatswell.study.Study;
import java.util.Objects;
import java.util.function.BooleanSupplier;

/**
 * Estimates how far off the answer of a scenario may be.
 */
public final class HouseSpread {

    private final Scenario scenario;
    private final VariedHouse house;
    private final Study study;

    private HouseSpread(Scenario scenario, VariedHouse house, Study study) {
        this.scenario = scenario;
        this.house = house;
        this.study = study;
    }

    /**
     * Starts the question.
     *
     * @param scenario the house and its run
     * @return a builder with 1024 samples, the seed 1 and as many threads as there are processors
     */
    public static Builder of(Scenario scenario) {
        return new Builder(scenario);
    }

    /**
     * Simulates the run of every sample.
     *
     * @return what was found; of the samples done so far if it was told to stop
     */
    public SpreadAnswer answer() {
        return new SpreadAnswer(scenario, house, study.run());
    }

    /** Builds a {@link HouseSpread}. */
    public static final class Builder {
        private final Scenario scenario;
        private final VariedHouse house;
        private final Study.Builder study;

        private Builder(Scenario scenario) {
            this.scenario = Objects.requireNonNull(scenario, "scenario");
            house = VariedHouse.of(scenario);
            study = Study.builder().outputs(HouseDay.outputs()).model(house.day(scenario));
            house.inputs()
                    .forEach(varied -> study.input(varied.name(), varied.input().distribution()));
        }

        /**
         * Sets how many houses are simulated.
         *
         * @param number the number, 16 to 1 000 000
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder samples(int number) {
            study.samples(number);
            return this;
        }

        /**
         * Sets where the random numbers begin. The same seed gives the same answer.
         *
         * @param value any number
         * @return this builder
         */
        public Builder seed(long value) {
            study.seed(value);
            return this;
        }

        /**
         * Sets how many threads share the work. The answer does not depend on it.
         *
         * @param number the number, 1 to 1024
         * @return this builder
         * @throws IllegalArgumentException if the number is outside its range
         */
        public Builder threads(int number) {
            study.threads(number);
            return this;
        }

        /**
         * Sets who is told how far the work has come.
         *
         * @param listener is called now and then, by one thread at a time
         * @return this builder
         */
        public Builder progress(Workers.Progress listener) {
            study.progress(listener);
            return this;
        }

        /**
         * Sets a signal to stop early.
         *
         * @param signal is asked between samples, by any thread
         * @return this builder
         */
        public Builder stopWhen(BooleanSupplier signal) {
            study.stopWhen(signal);
            return this;
        }

        /**
         * Builds the question.
         *
         * @return the question, ready to be answered
         * @throws IllegalArgumentException if more than 20 values are uncertain
         */
        public HouseSpread build() {
            return new HouseSpread(scenario, house, study.build());
        }
    }
}

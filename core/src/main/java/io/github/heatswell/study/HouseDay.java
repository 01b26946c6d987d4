package io.github.heatswell.study;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A house as the model of a study: it is simulated for a given time, and the answers are its highest and lowest
 * pressure, the relief valves' discharge and whether it met a hazard. The course of the run is not kept.
 */
public final class HouseDay implements UncertainModel {

    private final Function<double[], HotWaterSystem> house;
    private final Duration duration;

    private HouseDay(Function<double[], HotWaterSystem> house, Duration duration) {
        this.house = house;
        this.duration = duration;
    }

    /**
     * A model that simulates a day, or another while.
     *
     * @param house makes the house from the values of the uncertain inputs, each in the unit of its input; called from
     *     several threads at once. What it refuses with an {@link IllegalArgumentException} is a failed sample
     * @param duration for how long, above 0 to 100 years
     * @return the model
     * @throws IllegalArgumentException if the duration is not above 0
     */
    public static HouseDay of(Function<double[], HotWaterSystem> house, Duration duration) {
        Objects.requireNonNull(house, "house");
        if (Objects.requireNonNull(duration, "duration").isZero() || duration.isNegative()) {
            throw new IllegalArgumentException("duration: " + duration + " must be above 0");
        }
        return new HouseDay(house, duration);
    }

    /** What the model answers, in this order. */
    public enum Answer {
        /** The highest pressure at the drain cock (Pa, gauge); at a hazard, the highest until then. */
        PEAK("peak pressure (Pa gauge)"),
        /** The lowest pressure at the drain cock (Pa, gauge); at a hazard, the lowest until then. */
        LOWEST("lowest pressure (Pa gauge)"),
        /** Total discharge of all relief valves (m3), as cold water; at a hazard, until then. */
        RELIEVED("relieved volume (m3)"),
        /** 1 if a hazard ended the run before its time, else 0. */
        HAZARD("ended by a hazard"),
        /** 1 if people may be hurt by what the run or the house is found to be ({@link Findings}), else 0. */
        HAZARD_FOUND("hazard found"),
        /** 1 if the balance of the run does not close ({@link io.github.heatswell.result.Audit#closes}), else 0. */
        OPEN_BALANCE("balance does not close");

        private final String description;

        Answer(String description) {
            this.description = description;
        }

        /**
         * The answer in words, with its unit.
         *
         * @return the name of the output
         */
        public String description() {
            return description;
        }
    }

    /**
     * The names of the answers, for {@link Study.Builder#outputs}.
     *
     * @return the names, in the order of {@link Answer}
     */
    public static List<String> outputs() {
        return Arrays.stream(Answer.values()).map(Answer::description).toList();
    }

    @Override
    public double[] answers(double[] values) {
        RunSummary found =
                Simulation.of(made(values), duration).sampledEvery(duration).stream((time, sample, regime) -> {});
        double[] answers = new double[Answer.values().length];
        answers[Answer.PEAK.ordinal()] = found.peak().value();
        answers[Answer.LOWEST.ordinal()] =
                found.gauge(found.extremes().lowestPressure().value());
        answers[Answer.RELIEVED.ordinal()] = found.totals().relieved();
        answers[Answer.HAZARD.ordinal()] = found.hazard().isPresent() ? 1 : 0;
        boolean hazard = Findings.of(found).stream().anyMatch(finding -> finding.severity() == Severity.HAZARD);
        answers[Answer.HAZARD_FOUND.ordinal()] = hazard ? 1 : 0;
        answers[Answer.OPEN_BALANCE.ordinal()] = found.audit().closes() ? 0 : 1;
        return answers;
    }

    private HotWaterSystem made(double[] values) {
        try {
            return house.apply(values);
        } catch (IllegalArgumentException refused) {
            throw new SampleFailedException(refused.getMessage(), refused);
        }
    }
}

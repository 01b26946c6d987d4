package io.github.heatswell.study;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A house as the model of a study: it is simulated for a given time, and the answers are its highest and lowest
 * pressure, the relief valves' discharge and whether it met a hazard. The course of the run is not kept.
 */
public final class HouseDay implements Study.Model {

    /** The findings that compare what the plates of relief valve and tank say. */
    private static final Set<String> BY_PLATES = Set.of("relief-set-above-tank", "tp-relief-set-high");

    private final Function<double[], HotWaterSystem> house;
    private final Duration duration;
    private final Optional<HotWaterSystem> plates;

    private HouseDay(Function<double[], HotWaterSystem> house, Duration duration, Optional<HotWaterSystem> plates) {
        this.house = house;
        this.duration = duration;
        this.plates = plates;
    }

    /**
     * A model that simulates a day, or another duration.
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
        return new HouseDay(house, duration, Optional.empty());
    }

    /**
     * The same model for a house whose plates were read: whether a relief valve suits the tank is judged by what their
     * plates say. That a valve opens a few percent above its plate, as valves may, is no hazard then.
     *
     * @param described the house as its plates say
     * @return the model
     */
    public HouseDay withPlatesOf(HotWaterSystem described) {
        return new HouseDay(house, duration, Optional.of(described));
    }

    /** What the model answers, in this order. */
    public enum Output {
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
        /** 1 if the balance of the run does not close ({@link io.github.heatswell.result.RunSummary.Audit#closes}), else 0. */
        OPEN_BALANCE("balance does not close");

        private final String description;

        Output(String description) {
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
     * @return the names, in the order of {@link Output}
     */
    public static List<String> outputs() {
        return Arrays.stream(Output.values()).map(Output::description).toList();
    }

    @Override
    public double[] answers(double[] values) {
        RunSummary found = run(values);
        double[] answers = new double[Output.values().length];
        answers[Output.PEAK.ordinal()] = found.peak().value();
        answers[Output.LOWEST.ordinal()] =
                found.gauge(found.extremes().lowestPressure().value());
        answers[Output.RELIEVED.ordinal()] = found.totals().relieved();
        answers[Output.HAZARD.ordinal()] = found.hazard().isPresent() ? 1 : 0;
        answers[Output.HAZARD_FOUND.ordinal()] = hazards(found).isEmpty() ? 0 : 1;
        answers[Output.OPEN_BALANCE.ordinal()] = found.audit().closes() ? 0 : 1;
        return answers;
    }

    /**
     * What may hurt people in one of the houses.
     *
     * @param values the values of the uncertain inputs, each in the unit of its input
     * @return the findings, the worst first; none if {@link Output#HAZARD_FOUND} is 0
     */
    public List<Finding> hazards(double[] values) {
        return hazards(run(values));
    }

    private List<Finding> hazards(RunSummary found) {
        Stream<Finding> byRun = Findings.of(found).stream();
        Stream<Finding> all = plates.map(described -> Stream.concat(
                        Findings.of(described).stream().filter(HouseDay::isByPlates),
                        byRun.filter(finding -> !isByPlates(finding))))
                .orElse(byRun);
        return all.filter(finding -> finding.severity() == Severity.HAZARD).toList();
    }

    private static boolean isByPlates(Finding finding) {
        return BY_PLATES.contains(finding.id());
    }

    private RunSummary run(double[] values) {
        HotWaterSystem made = Study.orFailed(() -> house.apply(values));
        return Simulation.of(made, duration).summary();
    }
}

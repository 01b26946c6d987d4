package io.github.heatswell.scenarios.spread;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.study.HouseDay.Output;
import io.github.heatswell.study.StudyResult;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Uncertainty of the answer of a scenario.
 *
 * @param scenario the house and its run
 * @param house what differed from sample to sample
 * @param result what the samples gave
 */
public record SpreadAnswer(Scenario scenario, VariedHouse house, StudyResult result) {

    /**
     * Checks that everything is there.
     *
     * @param scenario the house and its run
     * @param house what differed from sample to sample
     * @param result what the samples gave
     */
    public SpreadAnswer {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(house, "house");
        Objects.requireNonNull(result, "result");
    }

    /**
     * The highest pressures of the runs.
     *
     * @return their spread (Pa, gauge)
     */
    public StudyResult.Spread peak() {
        return result.spread(Output.PEAK.ordinal());
    }

    /**
     * Discharge of the relief valves in the runs.
     *
     * @return its spread (m3 of cold water)
     */
    public StudyResult.Spread relieved() {
        return result.spread(Output.RELIEVED.ordinal());
    }

    /**
     * Samples in which a relief valve discharged.
     *
     * @return the share of the samples that could be simulated
     */
    public StudyResult.Share dripping() {
        return relieved().above(0);
    }

    /**
     * In how many of the samples the run ended in a hazard.
     *
     * @return the share of the samples that could be simulated
     */
    public StudyResult.Share hazardous() {
        return result.spread(Output.HAZARD.ordinal()).above(0.5);
    }

    /**
     * In how many of the samples the house or its run is found to be a hazard, also without an end of the run.
     *
     * @return the share of the samples that could be simulated
     */
    public StudyResult.Share hazardFound() {
        return result.spread(Output.HAZARD_FOUND.ordinal()).above(0.5);
    }

    /**
     * What is a hazard in the first of the samples of which {@link #hazardFound()} counts any.
     *
     * @return the findings, the worst first; none if no sample has any
     */
    public List<Finding> firstHazards() {
        return IntStream.range(0, result.completed())
                .filter(sample -> result.output(sample, Output.HAZARD_FOUND.ordinal()) > 0.5)
                .mapToObj(sample -> house.day(scenario).hazards(result.input(sample)))
                .findFirst()
                .orElse(List.of());
    }

    /**
     * The balances of the samples.
     *
     * @return how many samples were answered, and how many of them have a balance that does not close
     */
    public Balances balances() {
        StudyResult.Share open = result.spread(Output.OPEN_BALANCE.ordinal()).above(0.5);
        return new Balances(open.count(), open.of());
    }

    /**
     * Influence of an input on the peak.
     *
     * @param input its number, in the order of the inputs
     * @return the rank correlation (-), -1 to 1: above 0 if more of it raises the peak
     */
    public double onPeak(int input) {
        return result.importance(input, Output.PEAK.ordinal());
    }

    /**
     * Influence of an input on the discharge.
     *
     * @param input its number, in the order of the inputs
     * @return the rank correlation (-), -1 to 1: above 0 if more of it increases the discharge
     */
    public double onRelieved(int input) {
        return result.importance(input, Output.RELIEVED.ordinal());
    }
}

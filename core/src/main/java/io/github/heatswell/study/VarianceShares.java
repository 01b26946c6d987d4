package io.github.heatswell.study;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which share of the variance of an output comes from which input (the indices of Sobol'). The first-order share is what
 * the input explains alone, estimated after Saltelli and others, Computer Physics Communications 181 (2010) 259; the total
 * share includes what it does together with others, after Jansen, Computer Physics Communications 117 (1999) 35 (both from
 * memory). Estimates may lie a little outside 0 to 1. Immutable.
 */
public final class VarianceShares {

    private final Study study;
    private final SampleRunner.Runs runs;
    private final int group;

    VarianceShares(Study study, SampleRunner.Runs runs) {
        this.study = study;
        this.runs = runs;
        group = study.inputs().size() + 2;
    }

    /**
     * The uncertain inputs.
     *
     * @return the inputs, in their order
     */
    public List<Study.Input> inputs() {
        return study.inputs();
    }

    /**
     * The names of the outputs.
     *
     * @return the names, in their order
     */
    public List<String> outputs() {
        return study.outputs();
    }

    /**
     * How many runs of the model were asked for.
     *
     * @return the number
     */
    public int plannedRuns() {
        return runs.planned();
    }

    /**
     * How many runs of the model are there, failed ones included.
     *
     * @return the number; less than planned if the study was stopped
     */
    public int completedRuns() {
        return runs.completed();
    }

    /**
     * How many of them have no answers. A sample with any such run counts for nothing.
     *
     * @return the number
     */
    public int failedRuns() {
        return runs.failed();
    }

    /**
     * Why the first failed run has no answers.
     *
     * @return the message, or empty if none failed
     */
    public Optional<String> firstFailure() {
        return Optional.ofNullable(runs.firstFailure());
    }

    /**
     * How many samples the shares of an output rest on.
     *
     * @param output the number of the output, from 0
     * @return the number
     */
    public int samples(int output) {
        int samples = 0;
        for (int sample = 0; sample < completeGroups(); sample++) {
            samples += answered(output, sample) ? 1 : 0;
        }
        return samples;
    }

    /**
     * The share of the variance an input explains alone.
     *
     * @param input the number of the input, from 0
     * @param output the number of the output, from 0
     * @return the share (-); 0 for an output that is always the same
     * @throws IndexOutOfBoundsException if there is no such input or output
     */
    public double firstOrder(int input, int output) {
        checkInput(input);
        double mean = mean(output);
        double sum = 0;
        for (int sample = 0; sample < completeGroups(); sample++) {
            if (answered(output, sample)) {
                double change = run(output, sample, input + 2) - run(output, sample, 0);
                sum += (run(output, sample, 1) - mean) * change;
            }
        }
        return share(sum, output, mean);
    }

    /**
     * The share of the variance that an input has a part in, alone or together with others.
     *
     * @param input the number of the input, from 0
     * @param output the number of the output, from 0
     * @return the share (-); 0 for an output that is always the same
     * @throws IndexOutOfBoundsException if there is no such input or output
     */
    public double total(int input, int output) {
        checkInput(input);
        double sum = 0;
        for (int sample = 0; sample < completeGroups(); sample++) {
            if (answered(output, sample)) {
                double change = run(output, sample, input + 2) - run(output, sample, 0);
                sum += 0.5 * change * change;
            }
        }
        return share(sum, output, mean(output));
    }

    private double share(double sum, int output, double mean) {
        double squares = 0;
        for (int sample = 0; sample < completeGroups(); sample++) {
            if (answered(output, sample)) {
                double first = run(output, sample, 0) - mean;
                double second = run(output, sample, 1) - mean;
                squares += 0.5 * (first * first + second * second);
            }
        }
        return squares > 0 ? sum / squares : 0;
    }

    private double mean(int output) {
        double sum = 0;
        int count = 0;
        for (int sample = 0; sample < completeGroups(); sample++) {
            if (answered(output, sample)) {
                sum += run(output, sample, 0) + run(output, sample, 1);
                count += 2;
            }
        }
        return sum / count;
    }

    private int completeGroups() {
        return runs.completed() / group;
    }

    private double run(int output, int sample, int kind) {
        return runs.answers()[output][sample * group + kind];
    }

    private boolean answered(int output, int sample) {
        for (int kind = 0; kind < group; kind++) {
            if (Double.isNaN(run(output, sample, kind))) {
                return false;
            }
        }
        return true;
    }

    private void checkInput(int input) {
        Objects.checkIndex(input, study.inputs().size());
    }
}

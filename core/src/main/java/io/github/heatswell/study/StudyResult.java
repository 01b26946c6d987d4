package io.github.heatswell.study;

import java.util.List;
import java.util.Optional;

/** What a study found: the answers of every sample, and what they say together. Immutable. */
public final class StudyResult {

    private final Study study;
    private final Runner.Runs runs;

    StudyResult(Study study, Runner.Runs runs) {
        this.study = study;
        this.runs = runs;
    }

    /**
     * The uncertain inputs.
     *
     * @return the inputs, in their order
     */
    public List<UncertainInput> inputs() {
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
     * How many samples were asked for.
     *
     * @return the number
     */
    public int planned() {
        return runs.planned();
    }

    /**
     * How many samples are there, failed ones included.
     *
     * @return the number; less than planned if the study was stopped
     */
    public int completed() {
        return runs.completed();
    }

    /**
     * How many of them have no answers.
     *
     * @return the number
     */
    public int failed() {
        return runs.failed();
    }

    /**
     * Why the first failed sample has no answers.
     *
     * @return the message, or empty if none failed
     */
    public Optional<String> firstFailure() {
        return Optional.ofNullable(runs.firstFailure());
    }

    /**
     * The input values of a sample.
     *
     * @param sample its number, from 0
     * @return the values in the order of the inputs, each in the unit of its input; a new array
     * @throws IndexOutOfBoundsException if there is no such sample
     */
    public double[] input(int sample) {
        checkSample(sample);
        return PointSource.plain(inputs(), study.seed()).values(sample);
    }

    /**
     * All values of an input.
     *
     * @param input its number, from 0
     * @return one value for each completed sample, in the unit of the input; a new array
     * @throws IndexOutOfBoundsException if there is no such input
     */
    public double[] inputValues(int input) {
        UncertainInput wanted = inputs().get(input);
        PointSource.ShiftedSobol points = new PointSource.ShiftedSobol(inputs().size(), study.seed());
        double[] values = new double[completed()];
        for (int i = 0; i < values.length; i++) {
            values[i] = wanted.distribution().quantile(points.at(i)[input]);
        }
        return values;
    }

    /**
     * One answer.
     *
     * @param sample the number of the sample, from 0
     * @param output the number of the output, from 0
     * @return the answer, in the unit of the output; NaN if the sample has none
     * @throws IndexOutOfBoundsException if there is no such sample or output
     */
    public double output(int sample, int output) {
        checkSample(sample);
        return runs.answers()[output][sample];
    }

    /**
     * What the samples say about an output.
     *
     * @param output its number, from 0
     * @return its quantiles and shares
     * @throws IndexOutOfBoundsException if there is no such output
     */
    public OutputSpread spread(int output) {
        return OutputSpread.of(runs.answers()[output], completed());
    }

    /**
     * How strongly an output rises or falls with an input, wherever the others stand: the rank correlation of Spearman
     * over the samples that have an answer.
     *
     * @param input the number of the input, from 0
     * @param output the number of the output, from 0
     * @return the correlation (-), from -1 (falls always) to 1 (rises always); 0 for an output that is always the same,
     *     or with fewer than two answers
     * @throws IndexOutOfBoundsException if there is no such input or output
     */
    public double importance(int input, int output) {
        double[] all = runs.answers()[output];
        double[] values = inputValues(input);
        double[] answers = new double[values.length];
        int answered = 0;
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(all[i])) {
                values[answered] = values[i];
                answers[answered++] = all[i];
            }
        }
        return RankCorrelation.of(values, answers, answered);
    }

    private void checkSample(int sample) {
        if (sample < 0 || sample >= completed()) {
            throw new IndexOutOfBoundsException("sample " + sample + " of " + completed());
        }
    }
}

package io.github.heatswell.study;

/** What is studied: a calculation that turns numbers into answers. It is called from several threads at once. */
@FunctionalInterface
public interface UncertainModel {

    /**
     * Calculates the answers to one set of numbers. The same numbers must give the same answers.
     *
     * @param values one value for each uncertain input, in the unit and the order of the inputs; the array is the model's
     *     own
     * @return one answer for each named output, in the unit its name says and in their order; NaN where this sample has
     *     no such answer
     * @throws SampleFailedException if these numbers have no answer at all; the study counts it and goes on
     */
    double[] answers(double[] values);
}

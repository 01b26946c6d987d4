package io.github.heatswell.study;

/**
 * What the runs of a model gave: the first {@code completed} of them, without a gap.
 *
 * @param planned how many runs were asked for
 * @param completed how many are there
 * @param answers by output, then by run; NaN where there is none
 * @param failed how many of them have no answers
 * @param firstFailure why the first of these has none, or null
 */
record Runs(int planned, int completed, double[][] answers, int failed, String firstFailure) {}

/**
 * Studies of uncertain numbers: how far they leave the answers open, and which of the numbers matter.
 *
 * <p>An {@link io.github.heatswell.study.Study.Input} has a {@link io.github.heatswell.study.Distribution}. A {@link
 * io.github.heatswell.study.Study} runs an {@link io.github.heatswell.study.Study.Model} for many samples of the inputs,
 * on several threads, and its {@link io.github.heatswell.study.StudyResult} gives the quantiles of each answer, the
 * probability that it exceeds a threshold, and how strongly it correlates with each input. {@link io.github.heatswell.study.VarianceShares} say
 * more about the inputs, at the cost of many more runs.
 *
 * <p>{@link io.github.heatswell.study.HouseDay} makes a model of a house; {@link io.github.heatswell.study.UncertainHouse}
 * varies one within the {@link io.github.heatswell.study.UncertainHouse.Quantity usual uncertainties}:
 *
 * <pre>
 *   UncertainHouse house = UncertainHouse.usual(described);
 *   StudyResult found = Study.builder()
 *           .inputs(house.inputs())
 *           .outputs(HouseDay.outputs())
 *           .model(HouseDay.of(house::moved, Duration.ofDays(1)))
 *           .build()
 *           .run();
 *   double high = found.spread(HouseDay.Output.PEAK.ordinal()).quantile(0.95);
 * </pre>
 */
package io.github.heatswell.study;

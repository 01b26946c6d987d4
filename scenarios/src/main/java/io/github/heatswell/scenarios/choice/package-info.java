/**
 * Which vessel to buy: the sizing of a scenario's house with the formulas beside it, what each size on sale would do and
 * cost, and the scenario's own run before and after. Start at {@link
 * io.github.heatswell.scenarios.choice.VesselChoice}.
 */
package io.github.heatswell.scenarios.choice;

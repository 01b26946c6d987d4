/**
 * Which expansion vessel, and which precharge?
 *
 * <p>Two ways lead to an answer. The formulas of handbook and standards ({@link
 * io.github.heatswell.sizing.VesselFormula}) take three or four numbers and treat the water as if it grew in a rigid box. The
 * simulation knows tank, piping, layers and vessel, so {@link io.github.heatswell.sizing.VesselSizing} asks it: it heats
 * the house from a cold fill again and again with vessels of other sizes, until it knows the smallest whose peak stays below
 * the {@link io.github.heatswell.sizing.SizingTarget}. {@link io.github.heatswell.sizing.SizingReconciliation} then says, effect
 * by effect, why the two answers are not the same.
 *
 * <p>In the order of use:
 *
 * <pre>
 *   SizingTarget target = SizingTarget.builder(house).vesselRating(Pressure.gauge(10, BAR)).build();
 *   VesselSizing sizing = VesselSizing.builder(house, target).precharge(PrechargeRule.STATIC).build();
 *   SizingResult result = sizing.size();
 *   SizingReconciliation why = SizingReconciliation.fromHandbook(sizing, NetExpansion.HANDBOOK_STEEL);
 * </pre>
 *
 * <p>{@link io.github.heatswell.sizing.PeakSurvey} shows the ground the answer stands on: the peaks over vessel volume and
 * precharge, as a {@link io.github.heatswell.sizing.PeakMap}, with the line below which the relief valve drips.
 *
 * <p>A peak can never be lower than the pressure the supply stands at. If that is not below the target, no vessel of any
 * size helps, and the result says how far the supply pressure has to come down first.
 *
 * <p>All volumes are in m3, all pressures in Pa and named absolute or gauge, or of the type
 * {@link io.github.heatswell.units.Pressure}. Pressures of the system are those at the height of the tank's drain cock.
 */
package io.github.heatswell.sizing;

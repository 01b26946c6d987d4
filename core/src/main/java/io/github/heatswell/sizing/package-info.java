/**
 * Which expansion vessel, and which precharge?
 *
 * <p>Two ways lead to an answer. Formulas from a handbook and standards ({@link
 * io.github.heatswell.sizing.VesselFormula}) take three or four numbers and treat the water as if it expanded in a
 * rigid box. The simulation includes tank, piping, layers and vessel: {@link io.github.heatswell.sizing.VesselSizing}
 * heats the house from a cold fill with vessels of different sizes until it finds the smallest whose peak stays below
 * the {@link io.github.heatswell.sizing.SizingTarget}. {@link io.github.heatswell.sizing.SizingReconciliation} then
 * explains, effect by effect, why the two answers differ.
 *
 * <p>In order of use:
 *
 * <pre>
 *   SizingTarget target = SizingTarget.builder(house).vesselRating(Pressure.gauge(10, BAR)).build();
 *   VesselSizing sizing = VesselSizing.builder(house, target)
 *       .precharge(VesselSizing.Precharge.STATIC)
 *       .vesselLike(pattern) // an ExpansionVessel; not needed where the house has one
 *       .build();
 *   SizingResult result = sizing.size();
 *   SizingReconciliation why = SizingReconciliation.fromHandbook(sizing, VesselFormula.NetExpansion.HANDBOOK_STEEL);
 * </pre>
 *
 * <p>{@link io.github.heatswell.sizing.PeakSurvey} shows what lies around the answer: the peaks over vessel volume
 * and precharge, as a {@link io.github.heatswell.sizing.PeakMap}, with the line below which the relief valve drips.
 *
 * <p>A peak can never be lower than the static supply pressure. If that is not below the target, no vessel helps, and
 * the result says how far the supply pressure must be lowered first.
 *
 * <p>All volumes are in m3, all pressures in Pa and named absolute or gauge, or of the type
 * {@link io.github.heatswell.units.Pressure}. Pressures of the system are those at the height of the tank's drain cock.
 */
package io.github.heatswell.sizing;

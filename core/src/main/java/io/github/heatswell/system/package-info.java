/**
 * What the user has: the description of a closed hot-water system, before anything is computed.
 *
 * <p>{@link io.github.heatswell.system.HotWaterSystem} holds one of everything: the site, the cold feed, the tank with its
 * shell, the heater with its thermostat, runs of pipe, relief valves, an expansion vessel if there is one, and the
 * state a run starts from. Every part is immutable and made by a builder whose methods take a number with its unit.
 *
 * <p>When hot water is drawn is described here too: a {@link io.github.heatswell.system.Draw}, the
 * {@link io.github.heatswell.system.DrawProfile} of a day, and the {@link io.github.heatswell.system.StandardProfiles published
 * profiles} of the European and the United States regulations. How much of a draw comes out of the tank depends on how hot the
 * tank is, and is found by the simulation.
 *
 * <p>There are no silent values: what a part needs must be set, or {@code build()} lists what is missing. A number outside
 * its range is refused where it is set, with the value, its unit and the range; contradictions between numbers are
 * collected and reported together by {@link io.github.heatswell.system.InvalidDescriptionException}.
 *
 * <p>The parts answer questions that belong to them alone (the compliance of a pipe, the air pressure of a site, and of the
 * whole the weight of a column of water). What happens when they work together over time is the business of {@code io.github.heatswell.simulation}.
 */
package io.github.heatswell.system;

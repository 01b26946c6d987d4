/**
 * The description of a closed hot-water system, before anything is computed.
 *
 * <p>{@link io.github.heatswell.system.HotWaterSystem} holds the site, the cold feed, the tank, the heater, the piping,
 * the relief valves, the expansion vessel if any, and the starting state of a run. Every part is immutable and made by
 * a builder whose methods take a number with its unit.
 *
 * <p>Hot-water use is described here too: a {@link io.github.heatswell.system.Draw}, the
 * {@link io.github.heatswell.system.DrawProfile} of a day, and the
 * {@link io.github.heatswell.system.DrawProfile#published published profiles} of the European and the United States
 * regulations. How much of a draw comes from the tank depends on the tank's temperature, so the simulation finds it.
 *
 * <p>There are no hidden defaults: required values must be set, or {@code build()} lists what is missing. A number
 * outside its range is refused by its setter, with the value, its unit and the range; contradictions between numbers
 * are collected and reported together by {@link io.github.heatswell.system.InvalidDescriptionException}.
 *
 * <p>Each part answers only questions about itself (the compliance of a pipe, the air pressure of a site; the system,
 * the pressure of a water column). How they interact over time is computed by {@code io.github.heatswell.simulation}.
 */
package io.github.heatswell.system;

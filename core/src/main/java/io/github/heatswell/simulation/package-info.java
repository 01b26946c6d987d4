/**
 * The run: from a description to what it does over time.
 *
 * <p>{@link io.github.heatswell.simulation.Simulation} is all that a user needs:
 *
 * <pre>
 *   RunResult result = Simulation.of(system, Duration.ofHours(4)).run();
 * </pre>
 *
 * <p>or {@code stream} with a {@link io.github.heatswell.simulation.SampleListener} for runs too long to hold. If the
 * equations cannot be integrated, a {@link io.github.heatswell.simulation.SimulationException} says how far the run came; a
 * physical hazard is no error and ends a run normally.
 *
 * <p>Behind it, a run is a chain of segments. In a segment the modes stand still: which thermostat calls, which valve is
 * open, where the vessel's diaphragm is, which layers are mixed, and which rule fixes the pressure. The balances of mass and
 * energy are integrated until the first of all watched distances falls to zero, or until the clock changes something outside;
 * then the modes are chosen afresh.
 *
 * <p>Inside, all quantities are in SI units, pressures are absolute and belong to the height of the tank's drain cock, and
 * mass flows are positive in the direction of their name.
 */
package io.github.heatswell.simulation;

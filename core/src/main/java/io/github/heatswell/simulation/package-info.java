/**
 * The simulation: from a description to its behaviour over time.
 *
 * <p>{@link io.github.heatswell.simulation.Simulation} is all a user needs:
 *
 * <pre>
 *   RunResult result = Simulation.of(system, Duration.ofHours(4)).run();
 * </pre>
 *
 * <p>or {@code stream} with a {@link io.github.heatswell.simulation.Simulation.SampleListener} for runs too long to
 * hold in memory. If the equations cannot be integrated, a {@link io.github.heatswell.simulation.SimulationException}
 * states the time reached; a physical hazard is not an error and ends a run normally.
 *
 * <p>Behind it, a run is a chain of segments. In a segment the modes are fixed: which thermostat calls, which valve is
 * open, where the vessel's diaphragm is, which layers are mixed, and which rule determines the pressure. The mass and
 * energy balances are integrated until the first event detector reaches zero or the schedule changes a boundary
 * condition; then the modes are selected anew.
 *
 * <p>From outside, a relief valve may have a lift curve of its own
 * ({@link io.github.heatswell.system.ReliefValve.LiftCurve}), a vessel a law of its own for its gas
 * ({@link io.github.heatswell.system.GasLaw}), and a burner or element a curve of what it gives over time and temperature
 * ({@link io.github.heatswell.system.PowerCurve}): pure functions, checked where they are set and where they are asked.
 * Devices stay closed: one must keep the conserved mass and energy, the state's slots and the modes in step with the balances,
 * and a mistake in it would show as physics.
 * What switches a source stays its thermostat, because switching is a mode.
 *
 * <p>Internally, all quantities are in SI units, pressures are absolute at the height of the tank's drain cock, and
 * mass flows are positive in the direction of their name.
 */
package io.github.heatswell.simulation;

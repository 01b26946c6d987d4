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
 * <p>Other programs may supply the lift curve of a relief valve
 * ({@link io.github.heatswell.system.ReliefValve.LiftCurve}), the gas law of a vessel
 * ({@link io.github.heatswell.system.GasLaw}), and the output of a burner or element over time and temperature
 * ({@link io.github.heatswell.system.PowerCurve}): pure functions, checked when they are set and whenever they are
 * evaluated. Devices stay closed: a device must keep the conserved mass and energy, its slots of the state and its
 * modes in step with the balances, and a mistake there would pass for physics. A source is always switched by its
 * thermostat, because switching is a mode.
 *
 * <p>Internally, all quantities are in SI units, pressures are absolute at the height of the tank's drain cock, and
 * mass flows are positive in the direction of their name.
 */
package io.github.heatswell.simulation;

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
 * <p>Each part of the installation that behaves in its own way is a {@code Device}: heat source, supply, relief valve,
 * vessel, piping, leaks, tap. A device owns its slots of the state, its mode, what it adds to the balances, how its own
 * temperatures change, and the detectors of what ends its mode. The equations, the modes and the engine know no other
 * side of it, but for heat sources, which heat the tank's layers, and the supply, on which the pressure rule rests. So a new device is
 *
 * <ul>
 *   <li>a subclass of {@code Device}, which takes its slots from {@code StateVector.Slots} and overrides what it needs:
 *       {@code contribute} adds stored cold water or a flow by a curve to the {@code Contributions};
 *   <li>one line in {@code CompiledSystem}, where the description becomes devices: the order there decides which of two
 *       simultaneous events is taken first;
 *   <li>a description in {@code system}, and a channel in {@code Recorder} if its course is to be seen.
 * </ul>
 *
 * <p>A device may hold cold water under the system's pressure, and pass water out of the cold branch or the top of the
 * tank. A {@code HotPipe} holds hot water beyond that top, on its way to the tap or round a loop: its balances, {@code HotPipes}, are solved with those
 * of the tank. What goes on inside the tank (layers, heat, the shell) is that of {@code TankColumn}; what fixes the pressure is
 * a {@code PressureRegime}.
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

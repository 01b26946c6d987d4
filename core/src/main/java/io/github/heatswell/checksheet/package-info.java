/**
 * Checking an installation: the readings that a gauge at the drain cock should show.
 *
 * <p>A {@link io.github.heatswell.checksheet.CheckProcedure} says in plain words what the owner does, and simulates the
 * same: its {@link io.github.heatswell.checksheet.CheckSheet} holds the expected readings. Together with a study of the
 * house's uncertain numbers they become an {@link io.github.heatswell.checksheet.UncertainCheck}, which gives each reading
 * a tolerance that includes the error of the gauge:
 *
 * <pre>
 *   UncertainHouse house = UncertainHouse.usual(described);
 *   CheckProcedure procedure = CheckProcedure.of(described);
 *   StudyResult found = UncertainCheck.study(procedure, house).samples(512).build().run();
 *   UncertainCheck.Gauge gauge = UncertainCheck.gaugeFor(procedure.simulate(described), described, found, UnitSystem.SI);
 *   UncertainCheck check = UncertainCheck.of(procedure, house, gauge, found);
 * </pre>
 *
 * <p>A reading outside its tolerance means that the house is not as described, but not which part differs.
 */
package io.github.heatswell.checksheet;

/**
 * Why does it drip? From readings of a gauge to causes.
 *
 * <p>Owners describe their system as they believe it to be and read its gauge: as a log ({@link
 * io.github.heatswell.diagnosis.PressureLog}), as single readings ({@link io.github.heatswell.diagnosis.SpotReadings}), or both.
 * {@link io.github.heatswell.diagnosis.Diagnosis} then takes each {@link io.github.heatswell.diagnosis.Cause} in turn, changes the
 * described house accordingly, and finds the size of the change for which the simulation best matches the readings. In order of use:
 *
 * <pre>
 *   PressureLog log = PressureLog.builder(times, gauge).build();
 *   DiagnosisResult found = Diagnosis.builder(house).log(log).build().run();
 *   found.best();     // the cause that explains the readings best, with its numbers and their intervals
 *   found.alike();    // every cause these readings cannot distinguish from it
 *   found.misfit();   // whether even the best leaves something unexplained
 *   found.check();    // what to check on site to tell the first two apart
 * </pre>
 *
 * <p>One cause at a time is assumed. Supply, tank, heater and gauge may be off by their usual errors meanwhile. What the readings
 * cannot determine is stated, not estimated.
 *
 * <p>Times are in s, pressures in Pa and named gauge or absolute; gauge readings are those where the owner's gauge sits.
 */
package io.github.heatswell.diagnosis;

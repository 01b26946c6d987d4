/**
 * Rules that find what is wrong or noteworthy in a house and in a run. Each rule keeps in one place when its finding
 * holds, its words, its source, the values it rests on and the graver findings that replace it.
 *
 * <p>{@link io.github.heatswell.assessment.Findings#of(io.github.heatswell.system.HotWaterSystem)} judges the
 * description, {@link io.github.heatswell.assessment.Findings#of(io.github.heatswell.result.RunSummary)} the run as well. A {@link
 * io.github.heatswell.assessment.Finding} says in one sentence what was found, what to do about it, on whose authority, and
 * whom to ask. Its numbers keep their kind ({@link io.github.heatswell.assessment.Measure}), so that the sentence can be
 * shown in either system of units and a program can read them. A rule that does not apply says nothing. Of several
 * findings with one cause, only the one that names the cause is kept. A house without findings is not proved safe: only what
 * is described can be judged.
 *
 * <p>All values are in SI units, pressures as a gauge shows them; those of the system at the height of the tank's drain
 * cock, those of a device at its own height.
 */
package io.github.heatswell.assessment;

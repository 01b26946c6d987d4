/**
 * The results of a run, as plain values.
 *
 * <p>{@link io.github.heatswell.result.RunResult} holds the {@link io.github.heatswell.result.Trace} (one column for
 * each {@link io.github.heatswell.result.Channel} on a {@link io.github.heatswell.result.Trace.Grid}), the located
 * {@link io.github.heatswell.result.Event events}, what lasted from one to another (an
 * {@link io.github.heatswell.result.Interval Interval} of a {@link io.github.heatswell.result.Interval.Phase Phase}), the
 * {@link io.github.heatswell.result.RunSummary.Extremes extremes} between the samples, the
 * {@link io.github.heatswell.result.Totals totals}, and the {@link io.github.heatswell.result.RunSummary.Audit audit} of mass and
 * energy. Charts and tables use nothing else.
 *
 * <p>All values are in SI units; pressures given as plain numbers are absolute, and their names say so; times are seconds since the start
 * of the run. A hazard ends a run early: it is the last event, and the trace ends with it.
 */
package io.github.heatswell.result;

/**
 * Pictures and headlines of what a run found.
 *
 * <p>{@link io.github.heatswell.charts.RunChart} draws one run, or several for comparison, as PNG or SVG;
 * {@link io.github.heatswell.charts.MapChart} draws the peaks over vessel volume and precharge,
 * {@link io.github.heatswell.charts.SizingChart} those of the sizes on sale,
 * {@link io.github.heatswell.charts.SpreadChart} those of many samples of a house of which not everything is known.
 * {@link io.github.heatswell.charts.Headline} says the finding of a run in one sentence.
 * {@link io.github.heatswell.charts.table} writes tables for spreadsheets. What is said of a run reads nothing but its
 * {@link io.github.heatswell.result.RunResult}: located events and extremes from the continuous solution, not the nearest
 * samples.
 *
 * <p>A picture is made in two steps, neither of them open to other modules. This package decides what it says: title, scales,
 * levels, marks. It puts that down as plain values ({@code charts.picture}), and {@code charts.drawing} makes them visible.
 */
package io.github.heatswell.charts;

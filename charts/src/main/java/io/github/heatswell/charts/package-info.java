/**
 * Pictures of what a run found.
 *
 * <p>A {@link io.github.heatswell.charts.Chart} is made from a run, several runs, a sizing, a map of peaks, the spread
 * of many samples, the years ahead or a diagnosis, and written as PNG or SVG or drawn onto anything.
 * {@link io.github.heatswell.charts.table} writes tables for spreadsheets. A run's picture uses only its
 * {@link io.github.heatswell.result.RunResult}: located events and extremes from the continuous solution, not the
 * nearest samples.
 *
 * <p>A picture is made in two steps, neither of them open to other modules. This package decides what it says: title,
 * scales, levels, marks. It expresses that as plain values ({@code charts.picture}), and {@code charts.drawing} draws
 * them.
 */
package io.github.heatswell.charts;

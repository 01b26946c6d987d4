package io.github.heatswell.result;

/**
 * The largest or smallest value a quantity took in a run, and when. Taken from the continuous solution, so it may lie
 * between two samples.
 *
 * @param value the value, in the SI unit of the quantity
 * @param time since the start of the run (s) at which it was first taken
 */
public record Extreme(double value, double time) {}

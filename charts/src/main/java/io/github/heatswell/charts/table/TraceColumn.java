package io.github.heatswell.charts.table;

import io.github.heatswell.result.Channel;
import io.github.heatswell.units.Unit;

/**
 * A column of numbers.
 *
 * @param name its name with its unit, as the header has it
 * @param channel the quantity
 * @param zero what is taken off its values, in their SI unit: the pressure of the air for a gauge pressure
 * @param unit the unit shown
 * @param decimals the number of decimals
 */
record TraceColumn(String name, Channel channel, double zero, Unit unit, int decimals) {

    /** Appends the cell of a sample. */
    void append(StringBuilder text, double[] values) {
        FixedDecimals.append(text, unit.fromSi(values[channel.ordinal()] - zero), decimals);
    }
}

package io.github.heatswell.charts.table;

import io.github.heatswell.result.Channel;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The columns of a trace. The order is part of the format: a new column goes behind all others. */
final class TraceColumns {

    private final Quantities quantities;
    private final UnitSystem units;
    private final double atmosphere;

    TraceColumns(UnitSystem units, double atmosphere) {
        this.quantities = new Quantities(units);
        this.units = units;
        this.atmosphere = atmosphere;
    }

    /** The columns between the time and the regime. */
    List<Column> beforeRegime() {
        return List.of(
                temperature("water_mean", Channel.WATER_MEAN),
                pressure("pressure_gauge", Channel.PRESSURE_ABSOLUTE, atmosphere),
                pressure("pressure_absolute", Channel.PRESSURE_ABSOLUTE, 0),
                volume("vessel_water", Channel.VESSEL_WATER),
                flow("relief_flow", Channel.RELIEF_FLOW),
                volume("relieved_total", Channel.RELIEVED_TOTAL),
                volume("inflow_total", Channel.INFLOW_TOTAL),
                new Column(
                        "heater_power_" + quantities.powerUnit(),
                        Channel.HEATER_POWER,
                        0,
                        units.power(),
                        quantities.powerDecimals()));
    }

    /** The columns behind the regime. */
    List<Column> behindRegime() {
        return List.of(
                temperature("water_top", Channel.WATER_TOP),
                temperature("water_bottom", Channel.WATER_BOTTOM),
                flow("draw_flow", Channel.DRAW_FLOW),
                volume("drawn_total", Channel.DRAWN_TOTAL),
                volume("returned_total", Channel.RETURNED_TOTAL),
                pressure("street_pressure_gauge", Channel.MAINS_ABSOLUTE, atmosphere),
                pressure("gauge_reading", Channel.GAUGE_READING, 0));
    }

    /** The names of all columns. */
    List<String> names() {
        List<String> names = new ArrayList<>(List.of("time_s"));
        beforeRegime().forEach(column -> names.add(column.name()));
        names.add("regime");
        behindRegime().forEach(column -> names.add(column.name()));
        return names;
    }

    private Column temperature(String name, Channel channel) {
        String full = name + "_" + quantities.temperatureUnit();
        return new Column(full, channel, 0, units.temperature(), quantities.temperatureDecimals());
    }

    private Column pressure(String name, Channel channel, double zero) {
        String full = name + "_" + quantities.pressureUnit();
        return new Column(full, channel, zero, units.pressure(), quantities.pressureDecimals());
    }

    private Column volume(String name, Channel channel) {
        String full = name + "_" + quantities.volumeUnit();
        return new Column(full, channel, 0, units.volume(), quantities.volumeDecimals());
    }

    private Column flow(String name, Channel channel) {
        String full = name + "_" + quantities.flowUnit();
        return new Column(full, channel, 0, units.flow(), quantities.flowDecimals());
    }

    /**
     * A column of numbers.
     *
     * @param name its name with its unit, as the header has it
     * @param channel the quantity
     * @param zero what is taken off its values, in their SI unit: the pressure of the air for a gauge pressure
     * @param unit the unit shown
     * @param decimals the number of decimals
     */
    record Column(String name, Channel channel, double zero, Unit unit, int decimals) {

        /** Appends the cell of a sample. */
        void append(StringBuilder text, double[] values) {
            FixedDecimals.append(text, unit.fromSi(values[channel.ordinal()] - zero), decimals);
        }
    }
}

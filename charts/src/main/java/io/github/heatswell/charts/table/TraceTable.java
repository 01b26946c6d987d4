package io.github.heatswell.charts.table;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;

/**
 * The course of a run as CSV, one row for each sample.
 *
 * <p>RFC 4180 with lines that end in LF; the first line names the columns with their units, the first column is the time
 * since the start. Numbers have a full stop and fixed decimals in any language, without exponents; a missing value is an
 * empty cell. A vessel's water is 0 where there is no vessel.
 *
 * <p>In SI units the columns are {@code time_s}, {@code water_mean_degC}, {@code pressure_gauge_bar},
 * {@code pressure_absolute_bar}, {@code vessel_water_L}, {@code relief_flow_L_per_min}, {@code relieved_total_L},
 * {@code inflow_total_L}, {@code heater_power_kW} and {@code regime}; in US units {@code degF}, {@code psi}, {@code gal},
 * {@code gal_per_min} and {@code Btu_per_h} take the places of the units.
 */
public final class TraceTable {

    private TraceTable() {}

    /**
     * Writes the table.
     *
     * @param result the run
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(RunResult result, UnitSystem units, Appendable out) throws IOException {
        Objects.requireNonNull(result, "result");
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(
                "time_s",
                "water_mean_" + quantities.temperatureUnit(),
                "pressure_gauge_" + quantities.pressureUnit(),
                "pressure_absolute_" + quantities.pressureUnit(),
                "vessel_water_" + quantities.volumeUnit(),
                "relief_flow_" + quantities.flowUnit(),
                "relieved_total_" + quantities.volumeUnit(),
                "inflow_total_" + quantities.volumeUnit(),
                "heater_power_" + quantities.powerUnit(),
                "regime");
        Trace trace = result.trace();
        for (int i = 0; i < trace.count(); i++) {
            double pressure = trace.value(Channel.PRESSURE_ABSOLUTE, i);
            rows.add(
                    Quantities.time(trace.grid().time(i)),
                    quantities.temperature(trace.value(Channel.WATER_MEAN, i)),
                    quantities.gauge(result, pressure),
                    quantities.pressure(pressure),
                    quantities.volume(trace.value(Channel.VESSEL_WATER, i)),
                    quantities.flow(trace.value(Channel.RELIEF_FLOW, i)),
                    quantities.volume(trace.value(Channel.RELIEVED_TOTAL, i)),
                    quantities.volume(trace.value(Channel.INFLOW_TOTAL, i)),
                    quantities.power(trace.value(Channel.HEATER_POWER, i)),
                    trace.regime(i).label());
        }
        rows.end();
    }
}

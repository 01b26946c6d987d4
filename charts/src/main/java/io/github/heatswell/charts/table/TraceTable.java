package io.github.heatswell.charts.table;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;

/**
 * The course of a run as CSV, one row for each sample.
 *
 * <p>RFC 4180 with lines that end in LF; the first line names the columns with their units, the first column is the
 * time since the start. Numbers have a decimal point and fixed decimals in every locale, without exponents; a missing
 * value is an empty cell. A vessel's water is 0 where there is no vessel.
 *
 * <p>In SI units the columns are {@code time_s}, {@code water_mean_degC}, {@code pressure_gauge_bar},
 * {@code pressure_absolute_bar}, {@code vessel_water_L}, {@code relief_flow_L_per_min}, {@code relieved_total_L},
 * {@code inflow_total_L}, {@code heater_power_kW}, {@code regime}, {@code water_top_degC}, {@code water_bottom_degC},
 * {@code draw_flow_L_per_min}, {@code drawn_total_L}, {@code returned_total_L}, {@code street_pressure_gauge_bar} and
 * {@code gauge_reading_bar} (what the owner's gauge shows where it sits). Where there are several vessels, water and gas of each
 * follow, {@code vessel_1_water_L} and {@code vessel_1_gas_gauge_bar} for the first described and so on; the cells of one that takes no
 * part are empty. A house with a hot branch has one more column after these, {@code hot_branch_degC}: the temperature of the water in
 * it; a house with a circulation loop has {@code loop_degC} behind it. In US units {@code degF}, {@code psi},
 * {@code gal}, {@code gal_per_min} and {@code Btu_per_h} take the places of the units.
 *
 * <p>The order of the columns is fixed. New ones are added at the end, so that scripts that count columns keep working.
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
        Trace trace = result.trace();
        try (TraceWriter rows = writer(result.system(), units, out)) {
            for (int i = 0; i < trace.count(); i++) {
                rows.sample(trace.grid().time(i), trace.sample(i), trace.regime(i));
            }
        }
    }

    /**
     * Starts the same table for a run whose samples come one by one.
     *
     * @param system the system that is going to run
     * @param units the units of the columns
     * @param out where to; stays open
     * @return the writer, which must be closed to be sure of what was written
     */
    public static TraceWriter writer(HotWaterSystem system, UnitSystem units, Appendable out) {
        return new TraceWriter(Objects.requireNonNull(system, "system"), units, out);
    }
}

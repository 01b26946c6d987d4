package io.github.heatswell.charts.table;

import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What runs with different values of some fields found as CSV, one row for each run, in the order given.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code scenario}, one for each varied field, named after it
 * and holding the value as written, {@code highest_pressure_gauge_bar}, {@code highest_pressure_s},
 * {@code relief_margin_bar} (the lowest set pressure of a relief valve less the highest pressure; empty without a relief
 * valve), {@code relieved_total_L}, {@code relief_openings} and {@code hazard} (the one at which the run ended, if any); in
 * US units with {@code psi} and {@code gal}.
 *
 * <p>A text that begins like a formula ({@code = + - @}, a tab or a line break) gets an apostrophe before it, so that a
 * spreadsheet shows it instead of running it.
 */
public final class VariationTable {

    private VariationTable() {}

    /**
     * A run and what was varied for it.
     *
     * @param run the scenario's name and what the run found
     * @param values the value of each varied field, as written
     * @param reliefMargin the lowest set pressure of a relief valve less the highest pressure (Pa, difference); empty
     *     without one
     */
    public record Row(NamedSummary run, List<String> values, OptionalDouble reliefMargin) {
        /**
         * Copies the values.
         *
         * @param run the scenario's name and what the run found
         * @param values the value of each varied field, as written
         * @param reliefMargin the lowest set pressure of a relief valve less the highest pressure (Pa, difference); empty
         *     without one
         */
        public Row {
            Objects.requireNonNull(run, "run");
            Objects.requireNonNull(reliefMargin, "reliefMargin");
            values = List.copyOf(values);
        }
    }

    /**
     * Writes the table.
     *
     * @param fields the varied fields
     * @param rows the runs
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     * @throws IllegalArgumentException if a run has more or fewer values than there are fields
     */
    public static void write(List<String> fields, List<Row> rows, UnitSystem units, Appendable out) throws IOException {
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows table = new Rows(out);
        table.add(header(fields, quantities));
        for (Row row : rows) {
            if (row.values().size() != fields.size()) {
                throw new IllegalArgumentException(
                        "values: " + row.values().size() + " for " + fields.size() + " fields");
            }
            table.add(cells(row, quantities));
        }
        table.end();
    }

    private static String[] header(List<String> fields, Quantities quantities) {
        List<String> header = new ArrayList<>(List.of("scenario"));
        fields.forEach(field -> header.add(Rows.plain(field)));
        header.add("highest_pressure_gauge_" + quantities.pressureUnit());
        header.add("highest_pressure_s");
        header.add("relief_margin_" + quantities.pressureUnit());
        header.add("relieved_total_" + quantities.volumeUnit());
        header.add("relief_openings");
        header.add("hazard");
        return header.toArray(String[]::new);
    }

    private static String[] cells(Row row, Quantities quantities) {
        RunSummary summary = row.run().summary();
        RunSummary.Extreme peak = summary.extremes().highestPressure();
        int openings = 0;
        for (Totals.Relief valve : summary.totals().relief()) {
            openings += valve.openings();
        }
        List<String> cells = new ArrayList<>(List.of(Rows.plain(row.run().name())));
        row.values().forEach(value -> cells.add(Rows.plain(value)));
        cells.add(quantities.gauge(summary, peak.value()));
        cells.add(Quantities.time(peak.time()));
        cells.add(quantities.pressure(row.reliefMargin().orElse(Double.NaN)));
        cells.add(quantities.volume(summary.totals().relieved()));
        cells.add(Integer.toString(openings));
        cells.add(summary.hazard().map(Event::kind).map(EventTable::label).orElse(""));
        return cells.toArray(String[]::new);
    }
}

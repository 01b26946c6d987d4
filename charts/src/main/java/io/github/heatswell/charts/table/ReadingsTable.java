package io.github.heatswell.charts.table;

import io.github.heatswell.charts.LoggedRuns;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Readings and the runs that may explain them as CSV, one row for each reading.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code time_s}, {@code reading_gauge_bar} and one for each
 * run, named after it, in the same unit; in US units {@code psi}.
 */
public final class ReadingsTable {

    private ReadingsTable() {}

    /**
     * Writes the table.
     *
     * @param logged the readings and the runs
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(LoggedRuns logged, UnitSystem units, Appendable out) throws IOException {
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        List<String> header = new ArrayList<>(List.of("time_s", "reading_gauge_" + quantities.pressureUnit()));
        logged.runs().forEach(run -> header.add(Rows.plain(run.name())));
        rows.add(header.toArray(String[]::new));
        for (int i = 0; i < logged.log().count(); i++) {
            List<String> cells = new ArrayList<>();
            cells.add(Quantities.time(logged.log().time(i)));
            cells.add(quantities.pressure(logged.log().gauge(i)));
            for (LoggedRuns.NamedReadings run : logged.runs()) {
                cells.add(quantities.pressure(run.gauge().get(i)));
            }
            rows.add(cells.toArray(String[]::new));
        }
        rows.end();
    }
}

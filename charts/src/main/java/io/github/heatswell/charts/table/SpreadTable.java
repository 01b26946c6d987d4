package io.github.heatswell.charts.table;

import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;

/**
 * What many samples found as CSV, one row for each share of them.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code share_percent} (0, 1, 5, 10, 25, 50, 75, 90, 95, 99
 * and 100), {@code peak_gauge_bar} and {@code relieved_total_L}, in US units {@code psi} and {@code gal}: what so many
 * of the samples do not exceed, as {@link StudyResult.Spread#quantile} defines it. Each column is sorted on its own.
 */
public final class SpreadTable {

    private static final int[] PERCENTS = {0, 1, 5, 10, 25, 50, 75, 90, 95, 99, 100};

    private SpreadTable() {}

    /**
     * Writes the table.
     *
     * @param peak the highest pressures (Pa, gauge)
     * @param relieved what the relief valves discharged (m3)
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(StudyResult.Spread peak, StudyResult.Spread relieved, UnitSystem units, Appendable out)
            throws IOException {
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(
                "share_percent",
                "peak_gauge_" + quantities.pressureUnit(),
                "relieved_total_" + quantities.volumeUnit());
        for (int percent : PERCENTS) {
            double share = percent / 100.0;
            rows.add(
                    Integer.toString(percent),
                    quantities.pressure(peak.quantile(share)),
                    quantities.volume(relieved.quantile(share)));
        }
        rows.end();
    }
}

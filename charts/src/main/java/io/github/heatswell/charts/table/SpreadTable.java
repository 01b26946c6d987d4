package io.github.heatswell.charts.table;

import io.github.heatswell.charts.SampledPeaks;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;

/**
 * What many samples found as CSV, one row for each share of them.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code share_percent} (0, 1, 5, 10, 25, 50, 75, 90, 95, 99 and
 * 100) and {@code peak_gauge_bar}, in US units {@code psi}: the lowest of the sampled peaks that so many of the samples do
 * not exceed, for 0 the lowest of all. Every peak is one of the samples; nothing is put in between.
 */
public final class SpreadTable {

    private static final int[] PERCENTS = {0, 1, 5, 10, 25, 50, 75, 90, 95, 99, 100};

    private SpreadTable() {}

    /**
     * Writes the table.
     *
     * @param sampled the peaks
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(SampledPeaks sampled, UnitSystem units, Appendable out) throws IOException {
        Objects.requireNonNull(sampled, "sampled");
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add("share_percent", "peak_gauge_" + quantities.pressureUnit());
        for (int percent : PERCENTS) {
            rows.add(Integer.toString(percent), quantities.pressure(sampled.quantileGauge(percent / 100.0)));
        }
        rows.end();
    }
}

package io.github.heatswell.charts.table;

import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Objects;

/**
 * A map of peaks as CSV, one row for each vessel: the smallest volume with every precharge first.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code volume_L}, {@code precharge_gauge_bar} (read at
 * room temperature), {@code peak_gauge_bar}, {@code relief_drips} ({@code yes} where the peak reaches the lowest set
 * pressure of a relief valve, else {@code no}; empty where the run ended before that, so that it is unknown) and
 * {@code peak_at_least} ({@code yes} where the run ended at the test pressure of the tank, which is then given as the
 * peak, else {@code no}); in US units with {@code gal} and {@code psi}.
 */
public final class MapTable {

    private MapTable() {}

    /**
     * Writes the table.
     *
     * @param map the peaks
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(PeakMap map, UnitSystem units, Appendable out) throws IOException {
        Objects.requireNonNull(map, "map");
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(
                "volume_" + quantities.volumeUnit(),
                "precharge_gauge_" + quantities.pressureUnit(),
                "peak_gauge_" + quantities.pressureUnit(),
                "relief_drips",
                "peak_at_least");
        for (int i = 0; i < map.volumeCount(); i++) {
            for (int j = 0; j < map.prechargeCount(); j++) {
                rows.add(
                        quantities.volume(map.volume(i)),
                        quantities.pressure(map.prechargeGauge(j)),
                        quantities.pressure(map.peakGauge(i, j)),
                        drips(map, i, j),
                        map.isAtLeast(i, j) ? "yes" : "no");
            }
        }
        rows.end();
    }

    private static String drips(PeakMap map, int volume, int precharge) {
        if (map.drips(volume, precharge)) {
            return "yes";
        }
        boolean unknown = map.isAtLeast(volume, precharge)
                && map.setting().reliefSetGauge().isPresent();
        return unknown ? "" : "no";
    }
}

package io.github.heatswell.charts.table;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Locale;
import java.util.Objects;

/**
 * What the years will do as CSV, one row for each month of each course: first the present vessel at the expected,
 * slowest and fastest precharge loss, then larger vessels at the expected rate.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code course} (expected, slow, fast or larger),
 * {@code vessel_L}, {@code month} (counted from 1), {@code years} (from now to the worst day of the month),
 * {@code day_of_year}, {@code precharge_gauge_bar}, {@code peak_pressure_gauge_bar} (of that day, at the drain cock),
 * {@code relieved_daily_L} and {@code alarm} (what happened to the tank, or nothing); in US units with {@code gal} and
 * {@code psi}.
 */
public final class OutlookTable {

    private static final int YEARS_DECIMALS = 4;

    private final Quantities quantities;
    private final Rows rows;

    private OutlookTable(Quantities quantities, Rows rows) {
        this.quantities = quantities;
        this.rows = rows;
    }

    /**
     * Writes the table.
     *
     * @param result what the years will do
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(OutlookResult result, UnitSystem units, Appendable out) throws IOException {
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        new OutlookTable(quantities, new Rows(out)).write(result);
    }

    private void write(OutlookResult result) throws IOException {
        rows.add(
                "course",
                "vessel_" + quantities.volumeUnit(),
                "month",
                "years",
                "day_of_year",
                "precharge_gauge_" + quantities.pressureUnit(),
                "peak_pressure_gauge_" + quantities.pressureUnit(),
                "relieved_daily_" + quantities.volumeUnit(),
                "alarm");
        add("expected", result.expected());
        add("slow", result.slow());
        add("fast", result.fast());
        for (OutlookCourse larger : result.larger()) {
            add("larger", larger);
        }
        rows.end();
    }

    private void add(String name, OutlookCourse course) throws IOException {
        for (OutlookCourse.Month month : course.months()) {
            rows.add(
                    name,
                    quantities.volume(course.vesselVolume()),
                    String.valueOf(month.number() + 1),
                    FixedDecimals.of(month.years(), YEARS_DECIMALS),
                    String.valueOf(month.dayOfYear()),
                    quantities.pressure(month.prechargeGauge()),
                    quantities.pressure(month.peakGauge()),
                    quantities.volume(month.relievedDaily()),
                    month.alarm()
                            .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                            .orElse(""));
        }
    }
}

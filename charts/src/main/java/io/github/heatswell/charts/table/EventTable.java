package io.github.heatswell.charts.table;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.Locale;
import java.util.Objects;

/**
 * What happened in a run as CSV, one row for each located event, in the order of time.
 *
 * <p>The form is that of {@link TraceTable}. The columns are {@code time_s}, {@code event} (such as
 * {@code relief_opened}), {@code device} (the name of the relief valve, else empty), {@code pressure_gauge_bar},
 * {@code pressure_absolute_bar}, {@code water_mean_degC}, {@code ends_run} ({@code yes} for a hazard at which the run
 * ended, else {@code no}) and {@code opened_by} ({@code pressure}, {@code temperature} or {@code both} where a relief valve opens, else
 * empty); in US units with {@code psi} and {@code degF}. With two elements, {@code device} also says which one switched.
 *
 * <p>Pressures are those at the tank's drain cock. A device higher up is under less, by
 * {@link io.github.heatswell.system.HotWaterSystem#head}: a relief valve 8 m up that is set to 7 bar opens at about 7.78 bar in this
 * table. {@link io.github.heatswell.system.HotWaterSystem#atDrainCock} converts.
 *
 * <p>A device's name that begins like a formula ({@code = + - @}, a tab or a line break) gets an apostrophe before it, so
 * that a spreadsheet shows it instead of running it. A control character in it is written as its code,
 * {@code [U+0007]}.
 */
public final class EventTable {

    private EventTable() {}

    /**
     * Writes the table.
     *
     * @param result the run
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(RunResult result, UnitSystem units, Appendable out) throws IOException {
        write(Objects.requireNonNull(result, "result").summary(), units, out);
    }

    /**
     * Writes the table of a run whose course was not kept.
     *
     * @param summary the run
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     */
    public static void write(RunSummary summary, UnitSystem units, Appendable out) throws IOException {
        Objects.requireNonNull(summary, "summary");
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(
                "time_s",
                "event",
                "device",
                "pressure_gauge_" + quantities.pressureUnit(),
                "pressure_absolute_" + quantities.pressureUnit(),
                "water_mean_" + quantities.temperatureUnit(),
                "ends_run",
                "opened_by");
        for (Event event : summary.events()) {
            rows.add(
                    Quantities.time(event.time()),
                    label(event.kind()),
                    Rows.plain(event.device()),
                    quantities.gauge(summary, event.pressureAbsolute()),
                    quantities.pressure(event.pressureAbsolute()),
                    quantities.temperature(event.waterTemperature()),
                    event.kind().endsRun() ? "yes" : "no",
                    event.cause().map(Event.OpeningCause::label).orElse(""));
        }
        rows.end();
    }

    /** The kind as files write it. */
    static String label(Event.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}

package io.github.heatswell.charts.table;

import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.narrative.NamedSummary;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What several runs found as CSV, one row for each run, in the order given.
 *
 * <p>The form is that of {@link TraceTable}, but the first column is the name of the run, and the second the hazard at
 * which it ended, if any. The other columns are {@code end_s}, {@code highest_pressure_gauge_bar},
 * {@code highest_pressure_s}, {@code lowest_pressure_gauge_bar}, {@code lowest_pressure_s},
 * {@code working_pressure_exceeded_s}, {@code relief_opened_s}, {@code relief_openings}, {@code relieved_total_L},
 * {@code vessel_most_water_L}, {@code vessel_full_s}, {@code highest_water_mean_degC}, {@code inflow_total_L},
 * {@code draws}, {@code drawn_total_L}, {@code returned_total_L} (to the mains), {@code leaked_total_L},
 * {@code bypass_opened_s}, {@code bypass_openings}, {@code relief_opened_by_temperature_s}, {@code cut_out_tripped_s}
 * and {@code supply_shut_off_s}; in US units with {@code psi}, {@code gal} and {@code degF}. Columns that end in
 * {@code _s} hold times since the start, of the first occurrence; they are empty if it never happened. The vessel's
 * water is empty without a vessel.
 *
 * <p>A run's name that begins like a formula ({@code = + - @}, a tab or a line break) gets an apostrophe before it, so
 * that a spreadsheet shows it instead of running it.
 */
public final class ComparisonTable {

    private ComparisonTable() {}

    /**
     * Writes the table.
     *
     * @param runs the runs, at least one
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     * @throws IllegalArgumentException if there are no runs
     */
    public static void write(List<NamedRun> runs, UnitSystem units, Appendable out) throws IOException {
        writeAll(runs.stream().map(NamedRun::summary).toList(), units, out);
    }

    /**
     * Writes the table of runs whose courses were not kept.
     *
     * @param runs the runs, at least one
     * @param units the units of the columns
     * @param out where to; stays open
     * @throws IOException if it cannot be written
     * @throws IllegalArgumentException if there are no runs
     */
    public static void writeAll(List<NamedSummary> runs, UnitSystem units, Appendable out) throws IOException {
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("runs: a comparison needs at least 1, not 0");
        }
        Quantities quantities = new Quantities(Objects.requireNonNull(units, "units"));
        Rows rows = new Rows(out);
        rows.add(header(quantities));
        for (NamedSummary run : runs) {
            rows.add(cells(run, quantities));
        }
        rows.end();
    }

    private static String[] header(Quantities quantities) {
        return new String[] {
            "run",
            "hazard",
            "end_s",
            "highest_pressure_gauge_" + quantities.pressureUnit(),
            "highest_pressure_s",
            "lowest_pressure_gauge_" + quantities.pressureUnit(),
            "lowest_pressure_s",
            "working_pressure_exceeded_s",
            "relief_opened_s",
            "relief_openings",
            "relieved_total_" + quantities.volumeUnit(),
            "vessel_most_water_" + quantities.volumeUnit(),
            "vessel_full_s",
            "highest_water_mean_" + quantities.temperatureUnit(),
            "inflow_total_" + quantities.volumeUnit(),
            "draws",
            "drawn_total_" + quantities.volumeUnit(),
            "returned_total_" + quantities.volumeUnit(),
            "leaked_total_" + quantities.volumeUnit(),
            "bypass_opened_s",
            "bypass_openings",
            "relief_opened_by_temperature_s",
            "cut_out_tripped_s",
            "supply_shut_off_s"
        };
    }

    private static String[] cells(NamedSummary run, Quantities quantities) {
        RunSummary result = run.summary();
        RunSummary.Extremes extremes = result.extremes();
        int openings = result.totals().relief().stream()
                .mapToInt(Totals.Relief::openings)
                .sum();
        return new String[] {
            Rows.plain(run.name()),
            result.hazard().map(Event::kind).map(EventTable::label).orElse(""),
            Quantities.time(result.end()),
            quantities.gauge(result, extremes.highestPressure().value()),
            Quantities.time(extremes.highestPressure().time()),
            quantities.gauge(result, extremes.lowestPressure().value()),
            Quantities.time(extremes.lowestPressure().time()),
            first(result, Event.Kind.WORKING_PRESSURE_EXCEEDED),
            first(result, Event.Kind.RELIEF_OPENED),
            Integer.toString(openings),
            quantities.volume(result.totals().relieved()),
            result.system()
                    .vessel()
                    .map(vessel -> quantities.volume(extremes.mostVesselWater().value()))
                    .orElse(""),
            full(result),
            quantities.temperature(extremes.highestTemperature().value()),
            quantities.volume(result.totals().letIn()),
            count(result, Event.Kind.DRAW_STARTED),
            quantities.volume(result.totals().drawn()),
            quantities.volume(result.totals().returned()),
            quantities.volume(result.totals().leaked()),
            first(result, Event.Kind.BYPASS_OPENED),
            count(result, Event.Kind.BYPASS_OPENED),
            openedHot(result),
            first(result, Event.Kind.CUT_OUT_TRIPPED),
            first(result, Event.Kind.SUPPLY_SHUT_OFF)
        };
    }

    private static String full(RunSummary result) {
        return result.intervals(Interval.Phase.VESSEL_FULL).stream()
                .findFirst()
                .map(full -> Quantities.time(full.from()))
                .orElse("");
    }

    private static String count(RunSummary result, Event.Kind kind) {
        return Long.toString(
                result.events().stream().filter(event -> event.kind() == kind).count());
    }

    private static String openedHot(RunSummary result) {
        return result.events().stream()
                .filter(Event::openedByTemperature)
                .findFirst()
                .map(event -> Quantities.time(event.time()))
                .orElse("");
    }

    private static String first(RunSummary result, Event.Kind kind) {
        Optional<Event> event = result.first(kind);
        return event.map(found -> Quantities.time(found.time())).orElse("");
    }
}

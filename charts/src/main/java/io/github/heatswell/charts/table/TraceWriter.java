package io.github.heatswell.charts.table;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Writes the rows of a {@link TraceTable} as the samples come, so that a run of any length takes no more memory than a
 * few rows. Made by {@link TraceTable#writer}; for one run and one thread.
 *
 * <p>A {@link Simulation.SampleListener} cannot throw an {@link IOException}. If the target fails, the failure is kept,
 * what comes after it is dropped, and {@link #close()} throws it. Whoever does not close does not know whether the
 * table is whole:
 *
 * <pre>{@code
 * try (TraceWriter table = TraceTable.writer(system, UnitSystem.SI, out)) {
 *     summary = simulation.stream(table);
 * }
 * }</pre>
 *
 * <p>CSVPrinter looks at every cell for characters that need quotes, which takes longer than writing it. No cell here
 * can need them: numbers consist of digits, full stop and minus, a missing one is empty, and a regime is a word in
 * lower case. The first cell of a row is never empty, since a sample always has a time. So rows are put together here,
 * and only the header, which is made of names, goes through CSVPrinter.
 */
public final class TraceWriter implements Simulation.SampleListener, Closeable {

    /** How many characters are gathered before they are passed on. */
    private static final int CHUNK = 1 << 14;

    private static final int TIME_DECIMALS = Quantities.TIME_DECIMALS;

    private final TraceColumns.Column[] before;
    private final TraceColumns.Column[] behind;
    private final String[] regimes;
    private final Appendable out;
    private final StringBuilder rows = new StringBuilder(CHUNK + 512);
    private IOException failure;

    TraceWriter(HotWaterSystem system, UnitSystem units, Appendable out) {
        TraceColumns columns = new TraceColumns(
                Objects.requireNonNull(units, "units"),
                system.site().atmosphere(),
                system.vessels().size(),
                !system.piping(PipeRun.Carries.HOT).isEmpty(),
                system.circulation().isPresent());
        this.before = columns.beforeRegime().toArray(TraceColumns.Column[]::new);
        this.behind = columns.behindRegime().toArray(TraceColumns.Column[]::new);
        this.regimes = regimeCells();
        this.out = Objects.requireNonNull(out, "out");
        try {
            new Rows(rows).add(columns.names().toArray(String[]::new));
        } catch (IOException failed) {
            failure = failed;
        }
    }

    @Override
    public void sample(double time, double[] values, Trace.Regime regime) {
        FixedDecimals.appendTrimmed(rows, time, TIME_DECIMALS);
        for (TraceColumns.Column column : before) {
            rows.append(',');
            column.append(rows, values);
        }
        rows.append(regimes[regime.ordinal()]);
        for (TraceColumns.Column column : behind) {
            rows.append(',');
            column.append(rows, values);
        }
        rows.append('\n');
        if (rows.length() >= CHUNK) {
            passOn();
        }
    }

    /**
     * Passes on what is still held back, and says whether all of it could be written. The target stays open. Closing
     * again has no effect.
     *
     * @throws IOException the first failure of the target since the start, if there was one
     */
    @Override
    public void close() throws IOException {
        passOn();
        if (failure != null) {
            IOException first = failure;
            failure = null;
            throw first;
        }
    }

    private void passOn() {
        try {
            if (failure == null && !rows.isEmpty()) {
                out.append(rows);
            }
        } catch (IOException failed) {
            failure = failed;
        }
        rows.setLength(0);
    }

    /** The cells of the regimes with the separator before them, by ordinal. */
    private static String[] regimeCells() {
        List<String> cells = new ArrayList<>();
        for (Trace.Regime regime : Trace.Regime.values()) {
            cells.add("," + regime.label());
        }
        return cells.toArray(String[]::new);
    }

    /** The columns of a trace. The order is part of the format: a new column goes behind all others. */
    private static final class TraceColumns {

        private final Quantities quantities;
        private final UnitSystem units;
        private final double atmosphere;
        private final int vessels;
        private final boolean hotBranch;
        private final boolean loop;

        TraceColumns(UnitSystem units, double atmosphere, int vessels, boolean hotBranch, boolean loop) {
            this.loop = loop;
            this.vessels = vessels;
            this.quantities = new Quantities(units);
            this.units = units;
            this.atmosphere = atmosphere;
            this.hotBranch = hotBranch;
        }

        /** The columns between the time and the regime. */
        List<Column> beforeRegime() {
            return List.of(
                    temperature("water_mean", Channel.WATER_MEAN),
                    pressure("pressure_gauge", Channel.PRESSURE_ABSOLUTE, atmosphere),
                    pressure("pressure_absolute", Channel.PRESSURE_ABSOLUTE, 0),
                    volume("vessel_water", Channel.VESSEL_WATER),
                    flow("relief_flow", Channel.RELIEF_FLOW),
                    volume("relieved_total", Channel.RELIEVED_TOTAL),
                    volume("inflow_total", Channel.INFLOW_TOTAL),
                    new Column(
                            "heater_power_" + quantities.powerUnit(),
                            Channel.HEATER_POWER.ordinal(),
                            0,
                            units.power(),
                            quantities.powerDecimals()));
        }

        /** The columns behind the regime. */
        List<Column> behindRegime() {
            List<Column> columns = new ArrayList<>(List.of(
                    temperature("water_top", Channel.WATER_TOP),
                    temperature("water_bottom", Channel.WATER_BOTTOM),
                    flow("draw_flow", Channel.DRAW_FLOW),
                    volume("drawn_total", Channel.DRAWN_TOTAL),
                    volume("returned_total", Channel.RETURNED_TOTAL),
                    pressure("street_pressure_gauge", Channel.MAINS_ABSOLUTE, atmosphere),
                    pressure("gauge_reading", Channel.GAUGE_READING, 0)));
            for (int i = 0; vessels > 1 && i < vessels; i++) {
                String name = "vessel_" + (i + 1);
                columns.add(volume(name + "_water", Trace.vesselWater(i, vessels)));
                columns.add(pressure(name + "_gas_gauge", Trace.vesselGas(i, vessels), atmosphere));
            }
            if (hotBranch) {
                columns.add(temperature("hot_branch", Channel.WATER_AT_TAP));
            }
            if (loop) {
                columns.add(temperature("loop", Channel.WATER_IN_LOOP));
            }
            return columns;
        }

        /** The names of all columns. */
        List<String> names() {
            List<String> names = new ArrayList<>(List.of("time_s"));
            beforeRegime().forEach(column -> names.add(column.name()));
            names.add("regime");
            behindRegime().forEach(column -> names.add(column.name()));
            return names;
        }

        private Column temperature(String name, Channel channel) {
            String full = name + "_" + quantities.temperatureUnit();
            return new Column(full, channel.ordinal(), 0, units.temperature(), quantities.temperatureDecimals());
        }

        private Column pressure(String name, Channel channel, double zero) {
            return pressure(name, channel.ordinal(), zero);
        }

        private Column pressure(String name, int value, double zero) {
            String full = name + "_" + quantities.pressureUnit();
            return new Column(full, value, zero, units.pressure(), quantities.pressureDecimals());
        }

        private Column volume(String name, Channel channel) {
            return volume(name, channel.ordinal());
        }

        private Column volume(String name, int value) {
            String full = name + "_" + quantities.volumeUnit();
            return new Column(full, value, 0, units.volume(), quantities.volumeDecimals());
        }

        private Column flow(String name, Channel channel) {
            String full = name + "_" + quantities.flowUnit();
            return new Column(full, channel.ordinal(), 0, units.flow(), quantities.flowDecimals());
        }

        /**
         * A column of numbers.
         *
         * @param name its name with its unit, as the header has it
         * @param value where the quantity stands among the values of a sample
         * @param zero what is taken off its values, in their SI unit: the pressure of the air for a gauge pressure
         * @param unit the unit shown
         * @param decimals the number of decimals
         */
        record Column(String name, int value, double zero, Unit unit, int decimals) {

            /** Appends the cell of a sample; a trace put together by hand may lack the vessels. */
            void append(StringBuilder text, double[] values) {
                double found = value < values.length ? values[value] : Double.NaN;
                FixedDecimals.append(text, unit.fromSi(found - zero), decimals);
            }
        }
    }
}

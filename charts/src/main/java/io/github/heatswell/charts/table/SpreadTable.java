package io.github.heatswell.charts.table;

import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
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

    /**
     * Writes samples as CSV while they come, one row for each; none is kept.
     *
     * <p>The form is that of {@link TraceTable}. The first column is {@code sample}, counted from 1; then comes a column for
     * each input, named and in the unit as the caller says, to nine digits; then {@code peak_gauge_bar} and
     * {@code relieved_total_L} (in US units {@code psi} and {@code gal}) and {@code hazard} ({@code yes} where the run ended in
     * one, else {@code no}). The last three are empty where the values of the inputs do not go together. For one thread at a time.
     */
    public static final class SampleWriter {

        private static final MathContext DIGITS = new MathContext(9);

        private final Rows rows;
        private final Quantities quantities;
        private final int inputs;
        private int written;

        /**
         * Writes the header.
         *
         * @param inputs what the inputs are called, with their units, such as {@code tank_volume_L}
         * @param units the units of the other columns
         * @param out where to; stays open
         * @throws IOException if it cannot be written
         */
        public SampleWriter(List<String> inputs, UnitSystem units, Appendable out) throws IOException {
            this.rows = new Rows(out);
            this.quantities = new Quantities(units);
            this.inputs = inputs.size();
            List<String> header = new ArrayList<>(List.of("sample"));
            inputs.stream().map(Rows::plain).forEach(header::add);
            header.addAll(List.of(
                    "peak_gauge_" + quantities.pressureUnit(), "relieved_total_" + quantities.volumeUnit(), "hazard"));
            rows.add(header.toArray(String[]::new));
        }

        /**
         * Writes one sample.
         *
         * @param values the inputs, in the unit of their names and as many as there are names; NaN leaves the cell empty
         * @param peakGauge the highest pressure (Pa, gauge), NaN if the sample could not be simulated
         * @param relieved what the relief valves discharged (m3)
         * @param hazard whether the run ended in a hazard
         * @throws IOException if it cannot be written
         * @throws IllegalArgumentException if there are more or fewer values than names
         */
        public void add(double[] values, double peakGauge, double relieved, boolean hazard) throws IOException {
            if (values.length != inputs) {
                throw new IllegalArgumentException(
                        "values: " + values.length + " do not go with the names of " + inputs + " inputs");
            }
            written++;
            List<String> cells = new ArrayList<>(List.of(Integer.toString(written)));
            for (double value : values) {
                cells.add(number(value));
            }
            boolean known = !Double.isNaN(peakGauge);
            cells.add(known ? quantities.pressure(peakGauge) : "");
            cells.add(known ? quantities.volume(relieved) : "");
            cells.add(known ? hazard ? "yes" : "no" : "");
            rows.add(cells.toArray(String[]::new));
        }

        /**
         * Flushes what is buffered; the target stays open.
         *
         * @throws IOException if it cannot be written
         */
        public void end() throws IOException {
            rows.end();
        }

        private static String number(double value) {
            if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
                return "";
            }
            BigDecimal rounded = new BigDecimal(value).round(DIGITS);
            return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        }
    }
}

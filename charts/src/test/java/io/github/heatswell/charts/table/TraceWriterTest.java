package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Plants;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringReader;
import java.io.Writer;
import java.time.Duration;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TraceWriterTest {

    private static final HotWaterSystem SYSTEM = Plants.bare().build();
    private static final int YEAR = 525_601;

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void streamsWhatATableInMemoryHolds(UnitSystem units) throws IOException {
        Simulation simulation = Simulation.of(SYSTEM, Duration.ofMinutes(20));
        StringBuilder streamed = new StringBuilder();
        try (TraceWriter rows = TraceTable.writer(SYSTEM, units, streamed)) {
            simulation.stream(rows);
        }
        RunResult result = simulation.run();
        StringBuilder written = new StringBuilder();
        TraceTable.write(result, units, written);
        assertEquals(written.toString(), streamed.toString());
    }

    /**
     * Validation: each of several vessels holds the water that Boyle's law gives by itself, together what the column before says;
     * one behind a closed valve has empty cells. A house with one vessel has no such columns.
     */
    @Test
    void followsEachOfSeveralVessels() throws IOException {
        HotWaterSystem system = Plants.bare()
                .vessel(Plants.vessel(8, 4))
                .addVessel(Plants.vessel(6, 3).toBuilder()
                        .height(2, LengthUnit.METRE)
                        .acceptance(30, RatioUnit.PERCENT)
                        .build())
                .addVessel(Plants.vessel(12, 4).toBuilder()
                        .condition(ExpansionVessel.Condition.ISOLATED)
                        .build())
                .build();
        Simulation simulation = Simulation.of(system, Duration.ofMinutes(90));
        StringBuilder streamed = new StringBuilder();
        try (TraceWriter rows = TraceTable.writer(system, UnitSystem.SI, streamed)) {
            simulation.stream(rows);
        }
        StringBuilder written = new StringBuilder();
        TraceTable.write(simulation.run(), UnitSystem.SI, written);
        assertEquals(written.toString(), streamed.toString());
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().get();
        double air = system.site().atmosphere() / 1e5;
        int atTheLimit = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(streamed.toString()), format)) {
            for (CSVRecord row : parser) {
                double first = number(row, "vessel_1_water_L");
                double second = number(row, "vessel_2_water_L");
                // half of the last decimal of each
                assertEquals(number(row, "vessel_water_L"), first + second, 1.5e-4 + 1e-9);
                assertEquals("", row.get("vessel_3_water_L"));
                assertEquals("", row.get("vessel_3_gas_gauge_bar"));
                // no diaphragm at its seat or limit: gas and water at one pressure
                assertEquals(
                        number(row, "pressure_gauge_bar"),
                        number(row, "vessel_1_gas_gauge_bar"),
                        1e-5 + 1e-9,
                        row::toString);
                // Boyle: p V = p0 V0, printed digits
                assertEquals(8 * (1 - (4 + air) / (number(row, "vessel_1_gas_gauge_bar") + air)), first, 2e-4);
                assertEquals(6 * (1 - (3 + air) / (number(row, "vessel_2_gas_gauge_bar") + air)), second, 2e-4);
                boolean limit = second > 0.3 * 6 - 1e-4;
                atTheLimit += limit ? 1 : 0;
                double there = number(row, "pressure_gauge_bar") - system.head(2) / 1e5;
                assertTrue(
                        limit
                                ? number(row, "vessel_2_gas_gauge_bar") <= there + 1e-4
                                : Math.abs(number(row, "vessel_2_gas_gauge_bar") - there) < 1e-4,
                        row::toString);
            }
        }
        assertTrue(atTheLimit > 0, "the second vessel reaches its limit");
        StringBuilder one = new StringBuilder();
        TraceTable.writer(Plants.bare().vessel(Plants.vessel(8, 4)).build(), UnitSystem.SI, one)
                .close();
        assertTrue(one.toString().strip().endsWith("gauge_reading_bar"), one::toString);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    /** What is put together by hand is what CSVPrinter would have written, letter for letter. */
    @Test
    void quotesAsTheLibraryWould() throws IOException {
        StringBuilder out = new StringBuilder();
        double[] values = new double[Channel.values().length];
        try (TraceWriter rows = TraceTable.writer(SYSTEM, UnitSystem.SI, out)) {
            for (Trace.Regime regime : Trace.Regime.values()) {
                values[regime.ordinal()] = -1234.5 * regime.ordinal();
                values[Channel.DRAW_FLOW.ordinal()] = Double.NaN;
                rows.sample(60 * regime.ordinal(), values, regime);
            }
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();
        StringBuilder again = new StringBuilder();
        try (CSVParser parser = CSVParser.parse(new StringReader(out.toString()), format);
                CSVPrinter printer = new CSVPrinter(again, format)) {
            for (CSVRecord row : parser) {
                assertEquals(17, row.size());
                printer.printRecord(row);
            }
        }
        assertEquals(again.toString(), out.toString());
    }

    @Test
    void keepsAFailureUntilItIsClosed() throws IOException {
        IOException full = new IOException("disk full");
        Broken broken = new Broken(full);
        TraceWriter rows = TraceTable.writer(SYSTEM, UnitSystem.SI, broken);
        double[] values = new double[Channel.values().length];
        for (int i = 0; i < 2_000; i++) {
            rows.sample(60 * i, values, Trace.Regime.SEALED);
        }
        assertSame(full, assertThrows(IOException.class, rows::close));
        assertEquals(1, broken.attempts, "nothing is written behind a gap");
        rows.close();
    }

    @Test
    void leavesTheTargetOpen() throws IOException {
        Broken target = new Broken(null);
        TraceTable.writer(SYSTEM, UnitSystem.SI, target).close();
        assertTrue(target.open);
        assertEquals(1, target.attempts, "the header is there without any sample");
    }

    /** A wide guard against a cell that suddenly costs ten times as much. */
    @Test
    void streamsAYearInSeconds() throws IOException {
        long start = System.nanoTime();
        CountingWriter out = new CountingWriter();
        double[] values = new double[Channel.values().length];
        try (TraceWriter rows = TraceTable.writer(SYSTEM, UnitSystem.US, out)) {
            for (int i = 0; i < YEAR; i++) {
                for (int c = 0; c < values.length; c++) {
                    values[c] = 300 + c * 1e3 + i * 0.123;
                }
                rows.sample(60.0 * i, values, Trace.Regime.FED);
            }
        }
        assertTrue(out.characters > 50_000_000, out.characters + " characters");
        double seconds = 1e-9 * (System.nanoTime() - start);
        assertTrue(seconds < 20, seconds + " s");
    }

    private static final class CountingWriter extends Writer {
        private long characters;

        @Override
        public void write(char[] buffer, int from, int count) {
            characters += count;
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            // nothing to give back
        }
    }

    private static final class Broken extends Writer {
        private final IOException failure;
        private int attempts;
        private boolean open = true;

        Broken(IOException failure) {
            this.failure = failure;
        }

        @Override
        public void write(char[] buffer, int from, int count) throws IOException {
            attempts++;
            if (failure != null) {
                throw failure;
            }
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            open = false;
        }
    }
}

package io.github.heatswell.charts.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.Gallery;
import io.github.heatswell.charts.Handmade;
import io.github.heatswell.charts.Houses;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.Plants;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {

    private static final String ODD_NAME = "=HYPERLINK(\"x\"), lid";

    private static RunResult small() {
        return Handmade.run(
                        Plants.bare()
                                .addReliefValve(Plants.valve(ODD_NAME, 7, 6.3, LiftCharacteristic.SNAP))
                                .build(),
                        60,
                        4.2,
                        6.5,
                        6.300008)
                .event(61.25, Event.Kind.RELIEF_OPENED, ODD_NAME, 7)
                .event(61.25, Event.Kind.RELIEF_RESEATED, ODD_NAME, 6.3)
                .event(120, Event.Kind.VAPOUR_FORMS, "", 6.300008)
                .relieved(0.0274)
                .result();
    }

    @ParameterizedTest
    @EnumSource(
            value = UnitSystem.class,
            names = {"SI", "US"})
    void tracesMatchTheGoldenFile(UnitSystem units) throws IOException {
        StringBuilder out = new StringBuilder();
        TraceTable.write(small(), units, out);
        assertEquals(golden("trace-" + units + ".csv"), out.toString());
    }

    @ParameterizedTest
    @EnumSource(
            value = UnitSystem.class,
            names = {"SI", "US"})
    void eventsMatchTheGoldenFile(UnitSystem units) throws IOException {
        StringBuilder out = new StringBuilder();
        EventTable.write(small(), units, out);
        assertEquals(golden("events-" + units + ".csv"), out.toString());
    }

    @ParameterizedTest
    @EnumSource(
            value = UnitSystem.class,
            names = {"SI", "US"})
    void comparisonsMatchTheGoldenFile(UnitSystem units) throws IOException {
        RunResult bare = Handmade.run(Plants.bare().build(), 60, 4.2, 5).result();
        StringBuilder out = new StringBuilder();
        ComparisonTable.write(
                List.of(new NamedRun("+1 valve", small()), new NamedRun("say \"none\", then", bare)), units, out);
        assertEquals(golden("comparison-" + units + ".csv"), out.toString());
    }

    @Test
    void readsBackAsItWas() throws IOException {
        RunResult result = Gallery.popping();
        StringBuilder out = new StringBuilder();
        TraceTable.write(result, UnitSystem.SI, out);
        List<CSVRecord> rows = read(out);
        assertEquals(result.trace().count(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord row = rows.get(i);
            assertEquals(result.trace().grid().time(i), number(row, "time_s"), 0.0005, "half a millisecond");
            assertEquals(
                    result.trace().value(Channel.PRESSURE_ABSOLUTE, i) / 1e5,
                    number(row, "pressure_absolute_bar"),
                    0.5001e-5,
                    "half of the last decimal");
            assertEquals(
                    result.trace().value(Channel.RELIEVED_TOTAL, i) * 1e3,
                    number(row, "relieved_total_L"),
                    0.5001e-4,
                    "half of the last decimal");
            assertEquals(result.trace().regime(i).label(), row.get("regime"));
        }
    }

    @Test
    void neverWritesWhatSpreadsheetsMisread() throws IOException {
        StringBuilder out = new StringBuilder();
        for (UnitSystem units : UnitSystem.values()) {
            TraceTable.write(Gallery.dripping(), units, out);
            EventTable.write(Gallery.popping(), units, out);
            ComparisonTable.write(Gallery.six(), units, out);
        }
        String text = out.toString();
        assertFalse(text.contains("NaN") || text.contains("E-") || text.contains("\r"));
        assertFalse(text.contains("-0.0000,") || text.contains(",-0,"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\tx", "\rx", "\nx", "＝1", "－1"})
    void takesTheEdgeOffFormulas(String text) {
        assertEquals("'" + text, Rows.plain(text));
    }

    /** A bell, an escape, the end of a text in C, and one of the second set of controls. */
    @Test
    void showsControlCharactersAsTheirCodes() {
        assertEquals(
                "a[U+0007]b[U+001B][31m[U+0000][U+0085]",
                Rows.plain("a" + (char) 7 + "b" + (char) 0x1b + "[31m" + (char) 0 + (char) 0x85));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "lid", "a=b", "7 bar - lid", "'quoted"})
    void leavesOtherTextAlone(String text) {
        assertEquals(text, Rows.plain(text));
    }

    @Test
    void refusesAComparisonOfNothing() {
        StringBuilder out = new StringBuilder();
        assertThrows(IllegalArgumentException.class, () -> ComparisonTable.write(List.of(), UnitSystem.SI, out));
        assertTrue(out.isEmpty());
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static List<CSVRecord> read(CharSequence text) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text.toString()), format)) {
            return parser.getRecords();
        }
    }

    private static String golden(String name) throws IOException {
        try (InputStream file = TablesTest.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(file, name).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void tablesTellWhatOpenedAValve() throws IOException {
        RunResult runaway = Houses.runaway();
        StringBuilder events = new StringBuilder();
        EventTable.write(runaway, UnitSystem.SI, events);
        assertTrue(events.toString().contains(",no,temperature\n"));
        assertTrue(events.toString().contains(",no,pressure\n"));
        StringBuilder comparison = new StringBuilder();
        ComparisonTable.write(
                List.of(new NamedRun("bypass", Houses.bypass()), new NamedRun("cut-out", Houses.cutOut())),
                UnitSystem.SI,
                comparison);
        String[] rows = comparison.toString().split("\n");
        String[] bypass = rows[1].split(",", -1);
        assertEquals("23", bypass[15]);
        assertTrue(Double.parseDouble(bypass[17]) > 1, "returned: " + bypass[17]);
        assertEquals("6", bypass[20]);
        assertTrue(Double.parseDouble(rows[2].split(",", -1)[22]) > 3600, "cut-out");
    }
}

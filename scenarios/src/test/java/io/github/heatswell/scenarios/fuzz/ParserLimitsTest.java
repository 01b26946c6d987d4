package io.github.heatswell.scenarios.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.Sources;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.LogReader;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What files may not do to the reader: grow by references, nest, or be long enough to take for ever. */
class ParserLimitsTest {

    private static final double AIR = 101_325;
    /** Far more than it takes on a busy machine; without the limits it would be minutes to years. */
    private static final Duration SOON = Duration.ofSeconds(30);

    @TempDir
    Path folder;

    private static String refusal(String text) {
        return assertTimeoutPreemptively(
                        SOON,
                        () -> assertThrows(InvalidScenarioException.class, () -> ScenarioReader.read("house", text)))
                .getMessage();
    }

    /** Twelve lines that stand for a hundred thousand million values are refused at the first of them. */
    @ParameterizedTest
    @ValueSource(strings = {"house.yaml", "spots.yaml"})
    void referencesDoNotGrow(String name) throws IOException {
        String bomb = YamlMutations.bomb(12);
        Path file = Files.writeString(folder.resolve(name), bomb);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> {
            if (name.startsWith("house")) {
                ScenarioReader.read(file);
            } else {
                OwnersReadings.none().with(file, AIR);
            }
        });
        assertTrue(refused.getMessage().contains("1:5: anchors (&) are not supported"), refused.getMessage());
    }

    /** The root is the first of eight levels. */
    @ParameterizedTest
    @ValueSource(ints = {7, 8, 200, 60_000})
    void nestingEndsAtEightLevels(int levels) {
        String message = refusal(Sources.FULL + "other: " + "[".repeat(levels) + "]".repeat(levels) + "\n");
        assertEquals(levels > 7, message.contains("13:15: this is nested too deeply"), message);
    }

    @Test
    void sizeEndsAtItsLimit() throws IOException {
        int left = SourceText.MAX_SIZE - Sources.FULL.length();
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, Sources.FULL + "#".repeat(left));
        assertEquals("House by the brook", ScenarioReader.read(file).title());
        Files.writeString(file, Sources.FULL + "#".repeat(left + 1));
        IOException refused = assertThrows(IOException.class, () -> ScenarioReader.read(file));
        assertTrue(refused.getMessage().contains("larger than 256 KiB"), refused.getMessage());
    }

    /** Regression: a pattern tried every share of the blanks with every other. */
    @ParameterizedTest
    @ValueSource(strings = {" ", " x", "+", "+-", " to"})
    void aLongValueIsRefusedAtOnce(String run) {
        String value = "4 bar" + run.repeat(200_000 / run.length()) + "x";
        String message = refusal(Sources.FULL.replace("pressure: 4.2 bar", "pressure: \"" + value + '"'));
        assertTrue(message.startsWith("house:3:47: supply.pressure: "), message);
    }

    /**
     * Regression: patterns that look for words took minutes or for ever over a cell of blanks or brackets, in a log, a list or the
     * readings on site.
     */
    @ParameterizedTest
    @ValueSource(strings = {" ", " \t", "(", "_"})
    void aLongTextAmongReadingsIsRefusedWhereItStands(String run) throws IOException {
        String written = "4.2" + run.repeat(60_000 / run.length()) + "x";
        String tooLong = " has 60004 characters; up to 500 are allowed: leave only the reading and a short note";
        assertEquals(
                "1:21: this cell" + tooLong,
                refusedReadings("log.csv", "time_s,pressure_bar,\"" + written + "\"\n0,1,20\n60,2,20\n120,3,20\n"));
        assertEquals(
                "3:4: this cell" + tooLong,
                refusedReadings("log.csv", "time_s,pressure_bar\n0,1\n60,\"" + written + "\"\n120,3\n"));
        assertEquals(
                "3:1: this line" + tooLong.replace("60004", "60009"),
                refusedReadings("list.txt", "6:45 60 psi\n6:50 62 psi\n7:00 " + written + "\n"));
        assertEquals(
                "2:12: hot-tap: this value" + tooLong,
                refusedReadings(
                        "spots.yaml", "cold-static: 4 bar\n\"hot-tap\": \"" + written.replace('\t', ' ') + "\"\n"));
        OwnersReadings none = OwnersReadings.none();
        String message = assertThrows(IllegalArgumentException.class, () -> none.noted("vessel heavy" + written))
                .getMessage();
        assertTrue(message.startsWith("this note has 60016 characters"), message);
    }

    /** As long as is allowed, line after line. */
    @ParameterizedTest
    @ValueSource(strings = {" ", " \t", "(", "no ", "i don't know ", "1.", "1,1 "})
    void asMuchAsIsAllowedIsReadSoon(String run) throws IOException {
        String written = run.repeat(480 / run.length()) + "x";
        assertTimeoutPreemptively(SOON, () -> {
            StringBuilder list = new StringBuilder();
            StringBuilder log = new StringBuilder("time_s,pressure_bar,note\n");
            for (int i = 0; i < 20; i++) {
                list.append(i / 60)
                        .append(i % 60 < 10 ? ":0" : ":")
                        .append(i % 60)
                        .append(" 61 psi ");
                list.append(written).append('\n');
                log.append(60 * i).append(",4.2,\"").append(written).append("\"\n");
            }
            assertEquals(
                    20, read("list.txt", list.toString()).log().orElseThrow().count());
            assertEquals(20, read("log.csv", log.toString()).log().orElseThrow().count());
        });
        assertTrue(refusedReadings("spots.yaml", "hot-tap: \"60 C" + written.replace('\t', ' ') + "\"\n")
                .startsWith("1:10: hot-tap: "));
    }

    private OwnersReadings read(String name, String text) throws IOException {
        return OwnersReadings.none().with(Files.writeString(folder.resolve(name), text), AIR);
    }

    private String refusedReadings(String name, String text) {
        return assertTimeoutPreemptively(
                        SOON, () -> assertThrows(InvalidReadingsException.class, () -> read(name, text)))
                .faults()
                .get(0)
                .toString();
    }

    /** Regression: a log whose line ends were lost is one line of names, each of which was looked at in every way. */
    @Test
    void aLogWithoutLineEndsIsRefusedAtOnce() throws IOException {
        assertEquals(
                "1:1: this line has 90003 cells; up to 500 columns are allowed, so the ends of its lines may be missing",
                refusedReadings("log.csv", "time_s,pressure_bar,note" + "0,4.0,20,on".repeat(30_000)));
    }

    /** Regression: every comma between many numbers was tried as a mark within a number, too. */
    @Test
    void manyColumnsWithoutNamesAreRefusedAtOnce() {
        String row = "6:45," + "1,".repeat(60) + "x\n";
        String message = refusedReadings("list.txt", row + row);
        assertTrue(message.startsWith("1:1: "), message);
    }

    /** In other readers of YAML a tag makes an object of any class; here it is refused before anything is made of it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "!!javax.script.ScriptEngineManager [!!java.net.URLClassLoader [[!!java.net.URL [\"file:///\"]]]]",
                "!<tag:yaml.org,2002:java.io.File> house.yaml",
                "!!java.util.Date { time: 0 }",
                "!!binary AAAA",
                "!own 4 bar",
                "{ !!str key: value }"
            })
    void tagsMakeNoObjects(String value) throws IOException {
        String message = refusal(Sources.FULL + "other: " + value + "\n");
        assertTrue(message.contains("tags (!) are not supported"), message);
        Path file = Files.writeString(folder.resolve("spots.yaml"), "cold-static: " + value + "\n");
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> OwnersReadings.none().with(file, AIR));
        assertTrue(refused.getMessage().contains("tags (!) are not supported"), refused.getMessage());
    }

    /** A key that comes again could hide the first one; one that merges another mapping is a key like any other. */
    @Test
    void noKeyHidesAnother() {
        String twice = refusal(Sources.FULL + "title: Another house\n");
        assertTrue(twice.contains("title: appears twice, first on line 1"), twice);
        String merged = refusal(Sources.FULL + "<<: { title: Another house }\n");
        assertTrue(merged.contains("13:1: <<: "), merged);
    }

    /** Regression: as many wrong keys as a file can hold, different or the same, gave as many lines of complaints. */
    @ParameterizedTest
    @ValueSource(strings = {"k%d: 1\n", "supply: 1\n"})
    void manyKeysAreRefusedAtOnce(String key) {
        StringBuilder text = new StringBuilder(Sources.FULL);
        for (int i = 0; text.length() < SourceText.MAX_SIZE - 20; i++) {
            text.append(key.formatted(i));
        }
        String message = refusal(text.toString());
        assertEquals(51, message.lines().count());
        assertTrue(message.endsWith(" more faults like these; correct these first"), message);
    }

    /** Numbers longer than any quantity, and those beyond what a computer holds. */
    @ParameterizedTest
    @ValueSource(strings = {"%s bar", "0.%s bar", "1e%s bar", "1e999999999 bar", "-1e999999999 bar"})
    void aHugeNumberIsRefusedAtOnce(String number) {
        String value = number.formatted("9".repeat(200_000));
        String message = refusal(Sources.FULL.replace("pressure: 4.2 bar", "pressure: \"" + value + '"'));
        assertTrue(message.startsWith("house:3:47: supply.pressure: "));
        assertTrue(message.length() < 1_000, "the value is cut in the message");
    }

    /** Regression: a text that comes from a program had no limit, and a comment of four million characters took minutes. */
    @Test
    void aTextWithoutAFileEndsToo() {
        String message = refusal(Sources.FULL + "#".repeat(4 << 20));
        assertTrue(message.contains("1:1: this is longer than 262144 characters"), message);
    }

    /** Regression: every one of them was looked up among the known keys, which took seconds. */
    @Test
    void thousandsOfUnknownKeysAreCountedAfterFifty() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            text.append("k").append(i).append(": 1\n");
        }
        List<String> lines = refusal(text.toString()).lines().toList();
        assertEquals(51, lines.size());
        assertTrue(lines.get(50).contains("and 199"), lines.get(50));
    }

    @Test
    void listsEndSomewhere() {
        String valves = "  - { name: a, opens: 7 bar }\n".repeat(7_500);
        String message = refusal(Sources.FULL.replaceFirst("(?m)^relief:\n(?:  - .*\n)+", "relief:\n" + valves));
        assertTrue(message.contains("relief: has 7500 items; up to 20 are allowed"), message);
        assertEquals(1, message.lines().count(), message);
    }

    /** Regression: every level was a call, and two thousand of them were too many. */
    @Test
    void fieldsDoNotGoDeepForEver() {
        for (String field : List.of("a" + ".a".repeat(2_000), "a".repeat(100_000), "tank" + "[0]".repeat(1_000))) {
            Scenario lodge = Catalogue.read("orchard-lodge");
            String message = assertThrows(
                            InvalidScenarioException.class, () -> lodge.with(List.of(Change.of(field + "=1"))))
                    .getMessage();
            assertTrue(message.length() < 500 && message.lines().count() == 1, message);
        }
        for (String value : List.of("[".repeat(2_000), "{a: ".repeat(2_000), "[".repeat(2_000) + "]".repeat(2_000))) {
            Scenario lodge = Catalogue.read("orchard-lodge");
            String message = assertThrows(
                            InvalidScenarioException.class, () -> lodge.with(List.of(Change.of("tank=" + value))))
                    .getMessage();
            assertTrue(message.length() < 500 && message.contains("nested too deeply"), message);
        }
    }

    private String refusedLog(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), text);
        return assertTimeoutPreemptively(
                        SOON, () -> assertThrows(InvalidReadingsException.class, () -> LogReader.read(file, AIR)))
                .getMessage();
    }

    /** A row is kept until it ends; what never ends is given up after a million characters, however long the file. */
    @Test
    void aQuoteThatIsNeverClosedEndsARow() throws IOException {
        String rest = "60,2,20\n".repeat(1 << 20);
        String message = refusedLog("time_s,pressure_bar,note\n0,1,\"20\n" + rest);
        assertTrue(message.startsWith("2:5: the row goes on for more than a million characters from here"), message);
        String closed = refusedLog("time_s,pressure_bar,note\n0,1,\"" + "x".repeat(2 << 20) + "\"\n" + rest);
        assertTrue(closed.startsWith("2:5: the row goes on for more than a million characters from here"), closed);
    }

    /** Bytes that no text has are refused where they stand in a number, and passed over in a column that is not read. */
    @Test
    void bytesOfNoTextMeanNothing() throws IOException {
        String first = refusedLog("time_s,pressure\0_bar\n0,1\n60,2\n");
        assertTrue(first.contains(":1: ") || first.contains(":1:1: "), first);
        String later = refusedLog("time_s,pressure_bar\n0,1\n60,\0\n120,2\n");
        assertTrue(later.startsWith("3:4: "), later);
        assertTrue(later.chars().noneMatch(c -> c == 0), "the message can be printed");
    }

    /** As many columns as a log may have, most of a name that is not known. */
    @Test
    void asManyColumnsAsAreAllowedAreReadAtOnce() throws IOException {
        String more = ",x".repeat(498);
        Path file = folder.resolve("log.csv");
        Files.writeString(
                file, "time_s,pressure_bar" + more + "\n0,1" + more + "\n60,2" + more + "\n120,3" + more + "\n");
        LogReader.LogFile read = assertTimeoutPreemptively(SOON, () -> LogReader.read(file, AIR));
        assertEquals(3, read.log().count());
        assertTrue(read.remarks().contains("and 493 more columns are not used"));
    }
}

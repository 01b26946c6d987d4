package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "--help, help.txt",
        "help, help.txt",
        "help size, help-size.txt",
        "run --help, help-run.txt",
        "compare --help, help-compare.txt",
        "size --help, help-size.txt",
        "map --help, help-map.txt",
        "spread --help, help-spread.txt",
        "guide --help, help-guide.txt",
        "interview --help, help-interview.txt",
        "readings --help, help-readings.txt",
        "diagnose --help, help-diagnose.txt",
        "outlook --help, help-outlook.txt",
        "rules --help, help-rules.txt",
        "lessons --help, help-lessons.txt",
        "list --help, help-list.txt",
        "show --help, help-show.txt",
        "list, list.txt"
    })
    void helpReadsAsItWasLookedAt(String arguments, String golden) throws IOException {
        Outcome outcome = Outcome.execute(arguments.split(" "));
        Path expected = Path.of("src/test/resources/io/github/heatswell/scenarios/cli", golden);
        if (System.getProperty("golden.rewrite") != null) {
            Files.createDirectories(expected.getParent());
            Files.writeString(expected, outcome.out());
        }
        assertEquals(Files.readString(expected), outcome.out());
        assertEquals(0, outcome.status());
        assertEquals("", outcome.err());
        outcome.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void showPrintsTheFileAsItIs() {
        for (String name : Catalogue.names()) {
            String next = "\n# Next: heatswell run " + name + "\n";
            assertEquals(new Outcome(0, Catalogue.text(name) + next, ""), Outcome.execute("show", name));
        }
    }

    @Test
    void theVersionIsTheBuilds() {
        Outcome outcome = Outcome.execute("--version");
        assertTrue(outcome.out().matches("heatswell \\d+\\.\\d+\\.\\d+\\S*\\R"), outcome.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            rum                              | heatswell: there is no command 'rum'; did you mean run?
            run                              | heatswell: Missing required parameter: 'SCENARIO'
            run --sampel 3s orchard-lodge    | heatswell: there is no option '--sampel'; did you mean --sample?
            run --sample 10 orchard-lodge    | heatswell: Invalid value for option '--sample': '10' has no unit; give a time in s, min, h or d
            run --sample 1e30h orchard-lodge | heatswell: Invalid value for option '--sample': '1e30h' is longer than any run can be
            run --sample 5h orchard-lodge    | orchard-lodge: --sample: 5 h is longer than the run of 4 h
            run --sample 0.1s orchard-lodge  | orchard-lodge: --sample: 0.1 s is shorter than the shortest interval, 1 s
            run --units uk orchard-lodge     | heatswell: Invalid value for option '--units': 'uk' is not si, us or kpa
            run orchard-lodg                 | orchard-lodg: there is no such file or bundled scenario; did you mean the bundled scenario orchard-lodge?
            run ./orchard-lodge.yaml         | ./orchard-lodge.yaml: there is no such file; did you mean the bundled scenario orchard-lodge?
            run nowhere.yaml                 | nowhere.yaml: there is no such file; for the bundled scenarios, run: heatswell list
            run src                          | src: this is a folder, not a file
            interview --out house.txt        | heatswell: Invalid value for option '--out': 'house.txt' does not end in .yaml or .yml
            interview --out .yaml            | heatswell: Invalid value for option '--out': '.yaml' does not end in .yaml or .yml
            compare orchard-lodge            | heatswell: compare takes 2 to 6 scenarios, not 1; or give one with --vary
            show orchard-loge                | heatswell: no scenario called 'orchard-loge' is bundled; did you mean orchard-lodge?
            show orchard-lodge quarry-row    | heatswell: 'quarry-row' is one argument too many
            """)
    void badCommandLinesSayWhatIsWrong(String arguments, String complaint) {
        Outcome outcome = Outcome.execute(arguments.split(" "));
        assertEquals(complaint, outcome.err().lines().findFirst().orElse(""));
        assertEquals("", outcome.out());
        assertEquals(2, outcome.status());
    }

    @Test
    void withoutACommandTheHelpIsAComplaint() {
        Outcome outcome = Outcome.execute();
        assertEquals(2, outcome.status());
        assertEquals("", outcome.out());
        assertEquals(Outcome.execute("--help").out(), outcome.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "\u001b[2J", "a\u0000b", "\u202e"})
    void namesFromOutsideCommandNoTerminal(String name) {
        Outcome outcome = Outcome.execute("run", name);
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().chars().allMatch(c -> c == '\n' || c == '\r' || c >= 32), outcome.err());
    }

    @Test
    void aFaultOfTheProgramIsOneLine() {
        Reader broken = new Reader() {
            @Override
            public int read(char[] buffer, int offset, int length) {
                throw new IllegalStateException("out of order");
            }

            @Override
            public void close() {
                // There is nothing to close.
            }
        };
        StringWriter err = new StringWriter();
        int status = CommandFactory.heatswell(new PrintWriter(new StringWriter()), new PrintWriter(err), broken)
                .execute("interview", "--out", folder.resolve("my.yaml").toString());
        assertEquals(5, status);
        assertTrue(
                err.toString().matches("heatswell: this is a bug in Heatswell; please report it: .*out of order\n"),
                err::toString);
    }

    @Test
    void aLongRunIsWrittenAsItGoes() throws IOException {
        Path out = folder.resolve("long");
        Outcome outcome = Outcome.execute("run", "mill-cottage", "--sample", "1s", "--out", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(outcome.out().contains("Written to " + out), outcome.out());
        try (Stream<String> lines = Files.lines(out.resolve("trace.csv"))) {
            assertEquals(3 * 86_400 + 2, lines.count());
        }
        assertTrue(Files.size(out.resolve("pressure.png")) > 1000);
    }

    @Test
    void aLongRunThatCannotBeWrittenLeavesNothing() throws IOException {
        Path out = Files.writeString(folder.resolve("occupied"), "a file");
        Outcome outcome = Outcome.execute("run", "mill-cottage", "--sample", "1s", "--out", out.toString());
        assertEquals(4, outcome.status());
        assertEquals("", outcome.out());
        assertTrue(outcome.err().contains("is a file; results need a folder there"), outcome.err());
    }

    @Test
    void aRunWritesItsFilesAndSaysWhere() throws IOException {
        Path out = folder.resolve("results");
        Outcome outcome = Outcome.execute("run", "orchard-lodge", "--out", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals("", outcome.err());
        assertEquals(
                List.of("events.csv", "pressure.png", "pressure.svg", "report.html", "summary.json", "trace.csv"),
                names(out));
        assertTrue(outcome.out().contains("Written to " + out + ":\n  trace.csv, events.csv, summary.json,"));
    }

    @Test
    void severalRunsGoIntoFoldersOfTheirOwn() throws IOException {
        Path mine = Files.writeString(folder.resolve("orchard-lodge.yaml"), Catalogue.text("orchard-lodge-vessel"));
        Outcome outcome =
                Outcome.execute("run", "orchard-lodge", mine.toString(), "quarry-row", "-o", folder.toString());
        assertEquals(3, outcome.status(), outcome.err());
        assertEquals(List.of("orchard-lodge", "orchard-lodge-2", "orchard-lodge.yaml", "quarry-row"), names(folder));
    }

    @Test
    void aComparisonWritesOnePictureAndOneTable() throws IOException {
        Outcome outcome = Outcome.execute(
                "compare",
                "orchard-lodge",
                "orchard-lodge-vessel",
                "orchard-lodge-lost-charge",
                "-o",
                folder.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals(List.of("comparison.csv", "comparison.png", "comparison.svg", "report.html"), names(folder));
    }

    @Test
    void aHazardHasItsOwnStatus() {
        assertEquals(
                3, Outcome.execute("run", "quarry-row", "-o", folder.toString()).status());
        assertEquals(
                3,
                Outcome.execute("compare", "quarry-row", "orchard-lodge", "-o", folder.toString())
                        .status());
    }

    @Test
    void oneBadFileKeepsEverythingFromRunning() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "tank: { volume: -230 L }\n");
        Path out = folder.resolve("results");
        Outcome outcome = Outcome.execute("run", "orchard-lodge", bad.toString(), "nowhere", "-o", out.toString());
        assertEquals(2, outcome.status());
        assertEquals("", outcome.out());
        assertFalse(Files.exists(out));
        assertTrue(
                outcome.err().contains(bad + ":1:17: tank.volume: -230 L is outside the allowed range"), outcome.err());
        assertTrue(outcome.err().contains("nowhere: there is no such file or bundled scenario"), outcome.err());
    }

    @Test
    void resultsThatCannotBeWrittenAreReportedAllTheSame() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        Outcome outcome = Outcome.execute("run", "quarry-row", "-o", file.toString());
        assertEquals(4, outcome.status());
        assertEquals("quarry-row: " + file + " is a file; results need a folder there\n", outcome.err());
        assertTrue(outcome.out().startsWith("HAZARD"));
        assertFalse(outcome.out().contains("Written"));
    }

    @Test
    void aFileThatIsWrongThroughoutDoesNotFloodTheScreen() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.yaml"), many());
        Outcome outcome = Outcome.execute("run", bad.toString());
        List<String> lines = outcome.err().lines().toList();
        assertEquals(51, lines.size());
        assertTrue(lines.get(50).startsWith("... and "), lines.get(50));
    }

    @Test
    void anotherSamplingIsTaken() throws IOException {
        Outcome.execute("run", "orchard-lodge", "-o", folder.toString(), "--sample", "10s");
        assertEquals(1 + 1441, Files.readAllLines(folder.resolve("trace.csv")).size());
    }

    @Test
    void usUnitsAreTaken() throws IOException {
        Outcome outcome = Outcome.execute("run", "orchard-lodge", "-o", folder.toString(), "-u", "US");
        assertTrue(outcome.out().contains("102 psi"), outcome.out());
        assertTrue(Files.readString(folder.resolve("trace.csv")).contains("psi"));
    }

    private static String many() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 100; i++) {
            text.append("key").append(i).append(": 1\n");
        }
        return text.toString();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}

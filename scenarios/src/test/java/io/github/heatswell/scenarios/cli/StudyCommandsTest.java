package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The commands that simulate many houses: spread and map. */
class StudyCommandsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"16, true", "128, false"})
    void fewSamplesAreSaidToBeUnevenlyMixed(String samples, boolean few) {
        String out = Outcome.execute("spread", "ridge-house", "-n", samples, "-o", folder.toString())
                .out();
        assertEquals(few, out.contains("With so few samples, unrelated inputs correlate by chance"), out);
    }

    @Test
    void aSpreadWritesQuantilesSamplesAndAPicture() throws IOException {
        Outcome outcome = Outcome.execute(
                "spread",
                "orchard-lodge",
                "--set",
                "supply.pressure=3 bar to 4.5 bar",
                "-n",
                "64",
                "-o",
                folder.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals(
                List.of("report.html", "samples.csv", "spread.csv", "spread.json", "spread.png", "spread.svg"),
                names());
        List<String> samples = Files.readAllLines(folder.resolve("samples.csv"));
        assertEquals("sample,supply.pressure (bar),peak_gauge_bar,relieved_total_L,hazard", samples.get(0));
        assertEquals(65, samples.size());
        assertTrue(outcome.out().contains("A relief valve discharges in all 64 samples"), outcome.out());
        outcome.out()
                .lines()
                .filter(line -> !line.contains(folder.toString()))
                .forEach(line -> assertTrue(line.length() <= 79 || line.startsWith("Next: "), line));
    }

    @Test
    void hazardsOfSamplesComeFirst() {
        Outcome outcome = Outcome.execute("spread", "quarry-row", "-n", "16", "-o", folder.toString());
        assertEquals(3, outcome.status(), outcome.err());
        assertTrue(outcome.out().startsWith("HAZARD: "), outcome.out());
        assertTrue(outcome.out().contains("HAZARD in all 16 samples"), outcome.out());
        assertTrue(outcome.out().contains("The first of them: "), outcome.out());
    }

    @Test
    void aMapWritesATableAndAPicture() throws IOException {
        Outcome outcome = Outcome.execute("map", "orchard-lodge-vessel", "-u", "us", "-o", folder.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals(List.of("map.csv", "map.png", "map.svg", "report.html"), names());
        assertTrue(Files.readAllLines(folder.resolve("map.csv")).size() > 1000);
        assertTrue(outcome.out().contains("the peak is"), outcome.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            spread orchard-lodge --samples 3       | heatswell: --samples: 3 is outside the allowed range, 16 to 1000000
            spread orchard-lodge --samples many    | heatswell: Invalid value for option '--samples': 'many' is not an int
            spread orchard-lodge --threads 0       | heatswell: Invalid value for option '--threads': '0' is not a number from 1 to 256
            spread nowhere                         | nowhere: there is no such file or bundled scenario; for the bundled scenarios, run: heatswell list
            map mill-cottage-thermostat            | mill-cottage-thermostat: cannot draw a map: thermostat: is stuck; repair it, since no vessel helps against that
            """)
    void badQuestionsSayWhatIsWrong(String arguments, String complaint) {
        Outcome outcome = Outcome.execute(arguments.split(" "));
        assertEquals(complaint, outcome.err().lines().findFirst().orElse(""));
        assertEquals("", outcome.out());
        assertEquals(2, outcome.status());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}

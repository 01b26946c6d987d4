package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code compare --vary}: from the command line to the files. */
class VaryTest {

    private static final String SEVEN = "tank.volume=150L,160L,170L,180L,190L,200L,210L";

    @TempDir
    private Path folder;

    /** Contract: what is not known of every house is said once. */
    @Test
    void whatIsNotKnownOfAllRunsIsSaidOnce() {
        Outcome outcome = Outcome.execute(
                "compare",
                "orchard-lodge",
                "--set",
                "supply.pressure=3 bar to 5 bar",
                "--vary",
                "tank.volume=150L,180L",
                "-o",
                folder.toString());
        assertEquals(2, outcome.out().split("Not known: ", -1).length, outcome.out());
    }

    /** Contract: a part that a change brings along is missing in the owner's units and a round number, with the option that gives it. */
    @Test
    void whatAVariedVesselLacksIsAskedForInItsUnits() {
        Outcome outcome = Outcome.execute(
                "compare", "orchard-lodge", "--vary", "vessel.volume=2gal,4.5gal", "-u", "us", "-o", folder.toString());
        assertTrue(
                outcome.err()
                        .contains("vessel.precharge: is missing; give it too, on the command line such as"
                                + " --set 'vessel.precharge=60 psi'"),
                outcome.err());
    }

    /** Regression: the precharge offered is the supply pressure of this house, in the unit of its file. */
    @ParameterizedTest
    @CsvSource({
        "orchard-lodge, , 4.2 bar",
        "vineyard-cottage, , 3.5 bar",
        "tannery-yard, , 3 bar",
        "vineyard-cottage, supply.pressure=3.2 bar +- 0.3 bar, 3.2 bar",
        "ridge-house, , 62 psi"
    })
    void thePrechargeOfferedIsTheSupplyOfTheHouse(String house, String change, String offered) {
        List<String> command =
                new ArrayList<>(List.of("compare", house, "--vary", "vessel.volume=8L,12L", "-o", folder.toString()));
        if (change != null) {
            command.addAll(List.of("--set", change));
        }
        Outcome outcome = Outcome.execute(command.toArray(String[]::new));
        assertTrue(outcome.err().contains("--set 'vessel.precharge=" + offered + "'"), outcome.err());
    }

    @Test
    void everyRowIsThatOfAScenarioWithTheValue() throws IOException {
        Outcome outcome =
                compare("orchard-lodge", "--vary", "vessel.volume=8L,12L,18L", "--set", "vessel.precharge=4.2 bar");
        assertEquals(0, outcome.status(), outcome.err());
        List<String> rows = Files.readAllLines(folder.resolve("variations.csv"));
        assertEquals(
                "scenario,vessel.volume,highest_pressure_gauge_bar,highest_pressure_s,relief_margin_bar,"
                        + "relieved_total_L,relief_openings,hazard",
                rows.get(0));
        assertEquals(4, rows.size());
        for (int i = 0; i < 3; i++) {
            String volume = List.of("8L", "12L", "18L").get(i);
            Scenario same = Catalogue.read("orchard-lodge")
                    .with(List.of(new Change("vessel.volume", volume), new Change("vessel.precharge", "4.2 bar")));
            var result = same.simulation().run();
            double peak = result.peak().value() / 1e5;
            String[] cells = rows.get(i + 1).split(",", -1);
            assertEquals(List.of("orchard-lodge", volume), List.of(cells).subList(0, 2));
            assertEquals(String.format(Locale.ROOT, "%.5f", peak), cells[2]);
            // The only relief valve opens at 7 bar and sits at the drain cock; cells have five decimals.
            assertEquals(7 - peak, Double.parseDouble(cells[4]), 1.1e-5);
        }
        // paths of fields are for files and programs
        assertTrue(outcome.out().contains("vessel volume 8 L"), outcome.out());
        for (String file : List.of("comparison.svg", "report.html")) {
            String shown = Files.readString(folder.resolve(file));
            assertTrue(shown.contains("12 L") && !shown.contains("vessel.volume=12L"), file);
        }
        assertEquals(
                List.of("comparison.csv", "comparison.png", "comparison.svg", "report.html", "variations.csv"),
                names());
    }

    @Test
    void allCombinationsOfAllScenariosAreRunTheLastFieldFastest() throws IOException {
        Outcome outcome = compare(
                "orchard-lodge",
                "quarry-row",
                "--vary",
                "supply.pressure=3bar,50psi",
                "--vary",
                "tank.volume=150L,200L",
                "-u",
                "us");
        assertEquals(3, outcome.status(), outcome.err());
        List<String> rows = Files.readAllLines(folder.resolve("variations.csv"));
        assertTrue(rows.get(0)
                .contains("highest_pressure_gauge_psi,highest_pressure_s,relief_margin_psi,relieved_total_gal"));
        List<String> starts = rows.stream().skip(1).map(VaryTest::firstThree).toList();
        assertEquals(
                List.of(
                        "orchard-lodge,3bar,150L",
                        "orchard-lodge,3bar,200L",
                        "orchard-lodge,50psi,150L",
                        "orchard-lodge,50psi,200L",
                        "quarry-row,3bar,150L",
                        "quarry-row,3bar,200L",
                        "quarry-row,50psi,150L",
                        "quarry-row,50psi,200L"),
                starts);
        // A house without a relief valve has no margin, and ends in a hazard, which comes first in the report.
        assertTrue(rows.get(5).endsWith(",,0.00000,0,test_pressure_reached"), rows.get(5));
        assertTrue(
                outcome.out().startsWith("HAZARD in \"quarry-row, supply pressure 3 bar, tank volume 150 L\": "),
                outcome.out());
        outcome.out()
                .lines()
                .filter(line -> !line.contains(folder.toString()))
                .filter(line -> !line.startsWith("Next: ")) // one line, to be pasted
                .forEach(line -> assertTrue(line.length() < 80, line));
    }

    @Test
    void ofMoreThanSixRunsThePictureShowsSixAndSaysSo() throws IOException {
        Outcome outcome = compare("orchard-lodge", "--vary", SEVEN);
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals(8, Files.readAllLines(folder.resolve("variations.csv")).size());
        assertEquals(8, Files.readAllLines(folder.resolve("comparison.csv")).size());
        String svg = Files.readString(folder.resolve("comparison.svg")).replaceAll("<[^>]*>|\\s+", " ");
        assertTrue(svg.replaceAll(" +", " ").contains("6 of 7 runs"), "the picture does not say that it shows 6 of 7");
        String report = outcome.out().replaceAll("\\s+", " ");
        assertTrue(
                report.startsWith(
                        "Comparison of 7 runs In all 7 runs the relief valve discharges water: most with \"tank volume 210 L\" (2.87 L), least with \"tank volume 150 L\" (2.05 L)."),
                report);
        assertTrue(
                report.contains(
                        "All peaks are at 7 bar. 7 of 7 runs reach the set pressure of a relief valve. The picture shows 6 of them."),
                report);
    }

    @Test
    void samplesOfTheCommandLineHoldForAllVariants() throws IOException {
        assertEquals(
                0,
                compare("orchard-lodge", "--vary", "run.duration=2h,3h", "--sample", "30min")
                        .status());
        Outcome tooLong = compare("orchard-lodge", "--vary", "run.duration=2h,3h", "--sample", "150min");
        assertEquals("heatswell: run.duration=2h: --sample: 2 h 30 min is longer than the run of 2 h\n", tooLong.err());
        assertEquals(2, tooLong.status());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            --vary;tank.volum=1L,2L           | orchard-lodge with tank.volum=1L: tank.volum: is not a known key here; did you mean volume?
            --vary;tank.volume=150L,-5L       | orchard-lodge with tank.volume=-5L: tank.volume: -5 L is outside the allowed range, 1 L to 20000 L
            --vary;tank.volume=150L,          | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): tank.volume: a value is missing before or after a comma
            --vary;tank.volume=,150L          | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): tank.volume: a value is missing before or after a comma
            --vary;tank.volume=150L           | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): tank.volume: one value is not a variation; write two or more, separated by commas, or use --set for a single value
            --vary;tank.volume                | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): 'tank.volume' is not a variation; write a field, = and values separated by commas, such as vessel.volume=8L,12L,18L
            --vary;=1L,2L                     | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): '=1L,2L' is not a variation; write a field, = and values separated by commas, such as vessel.volume=8L,12L,18L
            --vary;tank.volume=1L,1L          | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): tank.volume: '1L' appears twice
            --vary;piping=[,[]                | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): piping: the brackets in the values do not match
            --vary;piping=],[                 | heatswell: Invalid value for option '--vary' (FIELD=A,B,...): piping: the brackets in the values do not match
            --vary;tank.volume=1L,2L;--vary;tank.volume=3L,4L | heatswell: tank.volume: is varied twice; put all its values in one --vary
            --vary;tank.volume=1L,2L;--set;tank.volume=3L | heatswell: tank.volume: stands in both --set and --vary; use one of them
            --vary;run.sample=10s,20s;-s;5s   | heatswell: run.sample: cannot be varied together with --sample, which sets it
            --vary;tank.volume=1L,2L,3L,4L,5L,6L,7L,8L;--vary;tank.layers=1,2,3,4,5,6,7,8 | heatswell: compare makes up to 60 runs, not 64: 1 scenario in 64 combinations
            """)
    void badVariationsSayWhatIsWrong(String arguments, String complaint) throws IOException {
        String[] words = Stream.concat(Stream.of("orchard-lodge"), Stream.of(arguments.split(";")))
                .toArray(String[]::new);
        Outcome outcome = compare(words);
        assertEquals(complaint, outcome.err().lines().findFirst().orElse(""));
        assertEquals("", outcome.out());
        assertEquals(2, outcome.status());
        assertFalse(Files.exists(folder.resolve("variations.csv")));
    }

    private static String firstThree(String row) {
        return String.join(",", List.of(row.split(",")).subList(0, 3));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Outcome compare(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] all = Stream.of(Stream.of("compare"), Stream.of(arguments), Stream.of("-o", folder.toString()))
                .flatMap(words -> words)
                .toArray(String[]::new);
        int status = CommandFactory.heatswell(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(all);
        return new Outcome(status, out.toString(), err.toString());
    }
}

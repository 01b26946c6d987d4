package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: whoever writes psi, degF and gal is answered in psi, degF and gal, and the other way round. */
class OwnUnitsTest {

    /** Every value that is not given is assumed, so that there is much to say. */
    private static final String AMERICAN = """
            supply:  { arrangement: reducing-valve, pressure: 90 psi +- 5 psi, water: 52 degF, reducing-valve: { set: 65 to 75 psi } }
            tank:    { volume: 50 gal, material: steel }
            heater:  { energy: electric, input: 4.5 kW, set-point: 120 degF }
            relief:
              - { name: T&P valve, opens: 150 psi, opens-at: 210 degF }
            vessel:  { volume: 2 gal, precharge: 40 psi }
            run:     { duration: 12 h }
            """;

    @TempDir
    private Path folder;

    /** The same in the units of everybody else. */
    private static final String METRIC = """
            supply:  { arrangement: reducing-valve, pressure: 6 bar +- 0.3 bar, water: 11 degC, reducing-valve: { set: 4.5 to 5 bar } }
            tank:    { volume: 190 L, material: steel }
            heater:  { energy: electric, input: 4.5 kW, set-point: 60 degC }
            relief:
              - { name: T&P valve, opens: 10 bar, opens-at: 99 degC }
            vessel:  { volume: 8 L, precharge: 2.8 bar }
            run:     { duration: 12 h }
            """;

    private static final String READINGS = """
            time,pressure (psi)
            06:00,62
            06:20,100
            06:40,140
            07:20,140
            """;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "run",
                "size",
                "map",
                "spread --samples 16",
                "outlook --years 1",
                "compare --vary vessel.volume=2gal,3gal",
                "diagnose --readings LOG",
                "rules --place us-ipc"
            })
    void anAmericanFileIsAnsweredInAmericanUnits(String command) throws IOException {
        String said = answered(command, AMERICAN, OwnUnitsTest::metric);
        assertTrue(said.contains(" psi"), said);
        assertFalse(said.matches("(?s).*\\d (bar|degC|K|L|m|mm|m3)\\b.*"), said);
        assertFalse(said.contains("EUR"), said);
        String assumed = "4.4 psi of it, the lock-up rise of the reducing valve, is assumed";
        assertTrue(!command.equals("size") || said.replaceAll("\\s+", " ").contains(assumed), said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "size", "map", "compare --vary vessel.volume=8L,12L", "rules --place uk"})
    void aMetricFileIsAnsweredInMetricUnits(String command) throws IOException {
        String said = answered(command, METRIC, OwnUnitsTest::american);
        assertTrue(said.contains(" bar"), said);
        assertEquals(List.of(), american(said));
    }

    /** Regression: whoever wrote kilopascals, as gauges of Australia and New Zealand show them, was answered in bar. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "run",
                "size",
                "map",
                "spread --samples 16",
                "outlook --years 1",
                "compare --vary vessel.volume=8L,12L",
                "diagnose --readings LOG"
            })
    void aFileInKilopascalsIsAnsweredInThem(String command) throws IOException {
        String house = "site: { place: au-nz }\n"
                + METRIC.replace("6 bar +- 0.3 bar", "600 kPa +- 30 kPa")
                        .replace("4.5 to 5 bar", "450 to 500 kPa")
                        .replace("10 bar", "1000 kPa")
                        .replace("2.8 bar", "280 kPa");
        String said = answered(command, house, markup -> quantities(markup, "bar|psi"));
        assertTrue(said.contains(" kPa"), said);
        assertEquals(List.of(), quantities(said, "bar|psi"));
    }

    /** What a command says; every file it writes is in the units of the house. */
    private String answered(String command, String house, Function<String, List<String>> foreign) throws IOException {
        Path elm = Files.writeString(folder.resolve("elm.yaml"), house);
        Path readings = Files.writeString(folder.resolve("log.csv"), READINGS);
        String[] words =
                (command.replace("LOG", readings.toString()) + " " + elm + " -o " + folder.resolve("out")).split(" ");
        String said = Outcome.execute(words).out();
        int looked = 0;
        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            for (Path file : files.toList()) {
                String name = file.toString();
                if (name.endsWith(".svg") || name.endsWith(".html")) {
                    assertEquals(List.of(), foreign.apply(Files.readString(file)), name);
                    looked++;
                } else if (name.endsWith(".json")) {
                    assertEquals(List.of(), foreign.apply(sentences(Files.readString(file))), name);
                }
            }
        }
        assertTrue(looked > 0, said);
        return said;
    }

    /** What a file for programs says in words; its numbers are in SI always, and sources are quoted. */
    private static String sentences(String json) {
        return Pattern.compile("\"(?!unit|text|quotation|source)(\\w+)\": \"((?:[^\"\\\\]|\\\\.)*)\"")
                .matcher(json)
                .results()
                .map(found -> found.group(2))
                .collect(Collectors.joining(" "));
    }

    /** Metric quantities in the text of a picture or a page, but for what a code is quoted with. */
    private static List<String> metric(String markup) {
        return quantities(markup, "bar|\u00b0C|degC|K|L|L/min|m|mm|m\u00b3|m3|kPa|W/K");
    }

    private static List<String> american(String markup) {
        return quantities(markup, "psi|\u00b0F|degF|gal|gal/min|ft|in|Btu|Btu/h");
    }

    private static List<String> quantities(String markup, String units) {
        String text = markup.replaceAll("(?s)<(style|script)\\b.*?</\\1>", " ")
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\u201c[^\u201d]*\u201d", " ")
                .replaceAll("[\\s\\u00a0\\u202f]+", " ");
        return Pattern.compile("\\d (" + units + ")(?![a-zA-Z])")
                .matcher(text)
                .results()
                .map(found -> text.substring(Math.max(0, found.start() - 90), found.end()))
                .toList();
    }

    /** The check would see a litre, in a picture or on a page. */
    @Test
    void aMetricQuantityIsSeen() {
        assertEquals(
                List.of(" holds 7.57 L"), metric("<text>holds</text> <text>7.57 L</text> (2 gal) \u201c551 kPa\u201d"));
        assertEquals(
                List.of("pe + 1 bar"), metric(sentences("{ \"expression\": \"pe + 1 bar\", \"unit\": \"1 bar\" }")));
    }

    /** Regression: whose rules hold is said once on the command line, and changes limit, clause and currency together. */
    @Test
    void thePlaceOfTheCommandLineDecides() throws IOException {
        Path file = Files.writeString(
                folder.resolve("elm.yaml"), AMERICAN.replace("opens-at: 210 degF", "opens-at: 205 degF"));
        String out = folder.resolve("out").toString();
        String here = Outcome.execute("run", file.toString(), "--place", "us-upc", "-o", out)
                .out();
        assertTrue(here.replaceAll("\\s+", " ").contains("above the 80 psi that the rules here allow"), here);
        String there = Outcome.execute("run", file.toString(), "--place", "en", "-u", "us", "-o", out)
                .out();
        assertFalse(there.contains("80 psi"), there);
        Outcome wrong = Outcome.execute("run", file.toString(), "--place", "atlantis", "-o", out);
        assertTrue(
                wrong.err().contains("'atlantis' is not one of us-ipc, us-upc, uk, en, au-nz, not-known"), wrong.err());
    }

    /** Nobody reads paths of fields; what is usual is given in the reader's units. */
    @Test
    void aSpreadNamesItsInputsInWords() throws IOException {
        Path file = Files.writeString(
                folder.resolve("elm.yaml"), AMERICAN.replace("opens: 150 psi", "opens: 150 psi +- 3 psi"));
        String out = folder.resolve("out").toString();
        String said = Outcome.execute("spread", file.toString(), "--samples", "16", "-o", out)
                .out();
        assertTrue(said.contains("Set pressure of relief valve 1"), said);
        assertTrue(said.contains("Supply pressure"), said);
        assertTrue(said.contains("Reducing valve's set pressure"), said);
        assertFalse(said.contains("elief[0]") || said.contains("upply.pressure"), said);
        String drawn = Files.readString(folder.resolve("out").resolve("spread.svg"));
        assertFalse(drawn.contains("relief[0]"), "the picture too");
        String usual = Outcome.execute("spread", "ridge-house", "--samples", "16", "-o", out)
                .out();
        assertTrue(usual.contains("+- 2.2 psi") && usual.contains("+- 3.6 degF"), usual);
        assertTrue(
                Files.readString(folder.resolve("out").resolve("spread.svg")).contains("assumed working pressure, 150"),
                "nobody read the plate");
    }

    /** A few psi decide whether a vessel is possible at all. */
    @Test
    void aSizeSaysWhichPartOfTheSupplyPressureIsAssumed() throws IOException {
        Path file = Files.writeString(folder.resolve("elm.yaml"), AMERICAN);
        String out = folder.resolve("out").toString();
        String capped = Outcome.execute("size", file.toString(), "-o", out, "--set", "supply.pressure=72 psi")
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(
                capped.contains("which is less than the 74 psi that the reducing valve would let it rise to"), capped);
    }

    @Test
    void anOptionOutweighsTheFile() throws IOException {
        Path file = Files.writeString(folder.resolve("elm.yaml"), AMERICAN);
        String said = Outcome.execute(
                        "run",
                        file.toString(),
                        "-u",
                        "si",
                        "-o",
                        folder.resolve("out").toString())
                .out();
        assertTrue(said.contains("Peak        10.34 bar"), said);
    }

    @ParameterizedTest
    @CsvSource({
        "60 psi, 50 gal, US",
        "400 kPa, 200 L, KPA",
        "4 bar, 200 L, SI",
        "60 psi, 200 L, SI",
        "60 to 70 psig, 50 gal, US"
    })
    void theSystemOfMostQuantitiesIsTheOwners(String pressure, String volume, UnitSystem units) {
        String text = "supply: { arrangement: check-valve, pressure: " + pressure + " }\ntank: { volume: " + volume
                + ", material: rigid, standing-loss: 0 W/K }\nheater: { energy: electric, input: 3 kW, set-point: 60 degC }\n";
        assertEquals(
                units,
                ScenarioReader.read("a", units == UnitSystem.US ? text.replace("60 degC", "140 degF") : text)
                        .units());
    }
}

package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings of known origin, and files that hold none. */
@Order(1)
class DiagnoseCommandTest {

    @TempDir
    private Path folder;

    /** A gauge of whole psi and half a psi of noise reads a house whose vessel is cut off. */
    @Test
    void aVesselThatIsCutOffIsFoundFromALog() throws IOException {
        Path log = log("vessel.condition=isolated");
        Path out = folder.resolve("out");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", log.toString(), "-o", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        try (Stream<Path> files = Files.list(out)) {
            assertEquals(
                    List.of("diagnosis.json", "readings.csv", "readings.png", "readings.svg", "report.html"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(
                text.contains("the expansion tank is behind a closed shutoff valve")
                        || text.contains("the expansion tank is full of water"),
                outcome.out());
        assertFalse(
                text.contains("what do the readings say? The readings are explained best by this: everything"), text);
        assertTrue(Files.readAllLines(out.resolve("readings.csv")).get(0).startsWith("time_s,reading_gauge_psi,"));
        outcome.out()
                .lines()
                .filter(line -> !line.contains(folder.toString()))
                .forEach(line -> assertTrue(line.length() <= 79 || line.startsWith("Next: "), line));
    }

    /** Valve and tank are marked 150 psi; 181 psi is a hazard whatever explains it, and nobody is told to heat the tank again. */
    @Test
    void aReadingFarAboveThePlatesIsAHazardWhateverFits() throws IOException {
        Path house = Files.writeString(folder.resolve("house.yaml"), """
                supply: { arrangement: reducing-valve, pressure: 70 psi, reducing-valve: { set: 60 psi }, water: 58 degF }
                tank: { volume: 50 gal, material: steel, working-pressure: 150 psi }
                heater: { energy: gas, input: 40000 Btu/h, set-point: 125 degF }
                relief: [{ opens: 150 psi, opens-at: 210 degF }]
                vessel: { volume: 2 gal, precharge: 40 psi }
                """);
        Path log = Files.writeString(folder.resolve("hot.txt"), """
                6:30 pm 60 psi
                6:40 63 psi
                7:00 75
                7:10 86
                7:20 103 psi
                7:25 116 psi
                7:30 150 psi
                7:35 172 psi not dripping!!
                7:40 181 psi still nothing from the valve
                """);
        Path out = folder.resolve("hot-out");
        Outcome outcome = Outcome.execute("diagnose", house.toString(), "-r", log.toString(), "-o", out.toString());
        String screen = outcome.out().replaceAll("\\s+", " ");
        assertEquals(3, outcome.status(), screen + outcome.err());
        assertTrue(screen.contains("HAZARD: The gauge read 181 psi, above the 150 psi"), screen);
        String page = Files.readString(out.resolve("report.html"));
        assertTrue(page.contains("HAZARD"), page);
        for (String text : List.of(screen, page)) {
            assertFalse(text.contains("log one heat-up"), text);
            assertFalse(text.contains("Watch the gauge during a heat-up"), text);
            assertFalse(text.contains("show no hazard"), text);
        }
        String json = Files.readString(out.resolve("diagnosis.json")).replaceAll("\\s+", "");
        assertTrue(json.contains("\"hazard\":true"), json);
        assertFalse(json.contains("\"check\":{"), json);
    }

    /** Regression: the hotter the tap or the tank, the less alarm: from 105 degC on nothing was called a hazard, and a heat-up asked for. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            a.yaml!hot-tap: 81.5 degC!81.5 degC, far above the 58 degC
            a.yaml!hot-tap: 105 degC!105 degC, far above the 58 degC
            a.yaml!hot-tap: 110 degC!110 degC, far above the 58 degC
            a.yaml!cold-static: 4.2 bar|heat-up-maximum: 4.2 bar|next-morning: 4.2 bar|hot-tap: 95 degC!95 degC, far
            a.csv!time_min,pressure_bar,temperature_C|0,4.2,10|5,5.6,40|8,7,70|20,6.9,98|30,6.9,105!105 degC, far above the 58
            a.txt!6:00 am 61 psi|6:10 90|6:20 100 steam from tap|6:30 103 psi!212 degF, far above
            a.txt!6:00 am 61 psi|6:10 90 hot tap 212 F|6:20 100|6:30 103 psi!212 degF, far above
            """)
    void waterFarHotterThanSetIsAHazardWhateverFits(String name, String lines, String words) throws IOException {
        Path readings = Files.writeString(folder.resolve(name), lines.replace('|', '\n') + "\n");
        Path out = folder.resolve("heat-out");
        Outcome outcome = Outcome.execute("diagnose", "orchard-lodge", "-r", readings.toString(), "-o", out.toString());
        String screen = outcome.out().replaceAll("\\s+", " ");
        assertEquals(3, outcome.status(), screen + outcome.err());
        assertTrue(screen.startsWith("HAZARD: The hot water was at "), screen);
        assertTrue(screen.contains(words), screen);
        assertTrue(screen.contains("The water got hotter than the thermostat allows, whatever the cause."), screen);
        assertTrue(screen.contains("leave the heater off and call a licensed professional"), screen);
        String page = Files.readString(out.resolve("report.html"));
        assertTrue(page.contains("The hot water was at "), page);
        for (String text : List.of(screen, page)) {
            assertFalse(text.contains("log one heat-up"), text);
            assertFalse(text.contains("Watch the gauge during a heat-up"), text);
            assertFalse(text.contains("show no hazard"), text);
            assertFalse(text.contains("Fit an expansion"), text);
        }
        String json = Files.readString(out.resolve("diagnosis.json")).replaceAll("\\s+", "");
        assertTrue(json.contains("\"hazard\":true"), json);
        assertTrue(json.contains("\"overheat\":{\"level\":\"hazard\",\"device\":\"thermostat\""), json);
        assertFalse(json.contains("\"check\":{"), json);
    }

    /**
     * Regression: a tap at 165 degF where 136 degF are set, which no cause explained, was not mentioned, and beside a lone wild reading
     * a heat-up was asked for.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            6:00 am 61 psi|6:10 75|6:20 90|6:30 100|7:00 100 hot tap 165 F!CAUTION: The hot water was at 165 degF, above the 136!far above
            6:00 am 61 psi|6:10 75|6:20 90|6:30 1000|7:00 100!Next, look up the reading that stands alone.!log one heat-up
            """)
    void whatIsOddButNoHazardIsSaid(String lines, String words, String never) throws IOException {
        Path readings = Files.writeString(folder.resolve("odd.txt"), lines.replace('|', '\n') + "\n");
        Outcome outcome = Outcome.execute(
                "diagnose",
                "orchard-lodge",
                "-r",
                readings.toString(),
                "-o",
                folder.resolve("odd").toString());
        String screen = outcome.out().replaceAll("\\s+", " ");
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(screen.contains(words), screen);
        assertFalse(screen.contains("The readings show no hazard"), screen);
        assertFalse(screen.contains(never + " "), screen);
    }

    /** Regression: water at the gas valve of a vessel that nobody described ended in "Fit an expansion vessel". */
    @Test
    void aVesselThatIsNotDescribedIsAskedForAndNoneIsSold() throws IOException {
        Path log = Files.writeString(
                folder.resolve("vessel.csv"),
                "time_min,pressure_bar,note\n0,4.2,\n5,5.6,\n10,7,\n20,6.9,water at the gas valve\n30,6.9,dripping\n");
        Outcome outcome = Outcome.execute(
                "diagnose",
                "orchard-lodge",
                "-r",
                log.toString(),
                "-o",
                folder.resolve("v").toString());
        String screen = outcome.out().replaceAll("\\s+", " ");
        assertEquals(0, outcome.status(), outcome.err());
        assertTrue(
                screen.contains(
                        "CHECK FIRST: You took readings of an expansion vessel, but the house described has none."),
                screen);
        assertTrue(screen.contains("means that its diaphragm has failed"), screen);
        assertFalse(screen.contains("Fit an expansion"), screen);
        assertFalse(screen.contains("Settled."), screen);
        assertFalse(screen.contains("As described"), screen);
        assertFalse(screen.contains("Next: heatswell size"), screen);
    }

    /** What was read of a vessel alone says nothing of a house without one, nor a tyre gauge of one of two. */
    @ParameterizedTest
    @CsvSource(delimiter = '!', textBlock = """
            orchard-lodge!all readings are of an expansion vessel, and the house has none; describe it
            two!tyre-gauge: the house has 2 expansion vessels, and the reading does not say of which
            """)
    void readingsOfAVesselThatIsNoneOrOneOfTwoAreRefused(String house, String words) throws IOException {
        Path spots = Files.writeString(folder.resolve("spots.yaml"), "tyre-gauge: 1.5 bar\nvessel-full: heavy\n");
        Path two = Files.writeString(folder.resolve("two.yaml"), """
                supply: { arrangement: check-valve, pressure: 4 bar }
                tank: { volume: 150 L, material: steel }
                heater: { energy: electric, input: 2 kW, set-point: 60 degC }
                relief: [{ opens: 7 bar }]
                vessels: [{ name: a, volume: 8 L, precharge: 4 bar }, { name: b, volume: 8 L, precharge: 4 bar }]
                """);
        Outcome outcome = Outcome.execute(
                "diagnose",
                "two".equals(house) ? two.toString() : house,
                "-r",
                spots.toString(),
                "-o",
                folder.resolve("v").toString());
        assertEquals(2, outcome.status(), outcome.out());
        assertTrue(outcome.err().contains(words), outcome.err());
    }

    /** Regression: a log of 4.2 to 7 under pressure_kPa was "Settled" before it was asked whether these are bar. */
    @Test
    void nothingIsSettledWhileAUnitIsInDoubt() throws IOException {
        Path log = Files.writeString(folder.resolve("unit.csv"), "time_min,pressure_kPa\n0,4.2\n5,5.6\n10,7\n20,6.9\n");
        String screen = Outcome.execute(
                        "diagnose",
                        "orchard-lodge",
                        "-r",
                        log.toString(),
                        "-o",
                        folder.resolve("u").toString())
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(
                screen.contains("say? Open until you have checked the points below. The cause that fits best"), screen);
        assertFalse(screen.contains("Settled."), screen);
    }

    /** Screen, page, table and picture are in the units asked for, else of the owner's file, else of the log. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            bundled, psi, '',   psi
            file,    psi, '',   bar
            file,    psi, us,   psi
            psi,     bar, '',   psi
            """)
    void theAnswerIsInTheUnitsOfItsOwner(String house, String logged, String asked, String answered)
            throws IOException {
        String text = Catalogue.text("orchard-lodge-vessel");
        Path own = Files.writeString(
                folder.resolve("own.yaml"),
                "psi".equals(house)
                        ? text.replace("310 m,", "1017 ft,")
                                .replace("17 degC", "63 degF")
                                .replace("4.2 bar", "61 psi")
                                .replace("9 degC", "48 degF")
                                .replace("230 L", "60 gal")
                                .replace("10 bar", "150 psi")
                                .replace("58 degC", "136 degF")
                                .replace(" 7 bar", " 102 psi")
                                .replace("7.7 bar", "112 psi")
                                .replace("5.6 bar", "81 psi")
                                .replace("12 L,", "3 gal,")
                        : text);
        StringBuilder log = new StringBuilder("time_min,pressure_" + logged + "\n");
        for (int i = 0; i < 6; i++) {
            log.append(5 * i).append("psi".equals(logged) ? ",61\n" : ",4.2\n");
        }
        Path readings = Files.writeString(folder.resolve("log.csv"), log);
        Path out = folder.resolve("out");
        List<String> words = new ArrayList<>(List.of(
                "diagnose",
                "bundled".equals(house) ? "orchard-lodge-vessel" : own.toString(),
                "-r",
                readings.toString(),
                "-o",
                out.toString()));
        if (!asked.isEmpty()) {
            words.addAll(List.of("-u", asked));
        }
        Outcome outcome = Outcome.execute(words.toArray(String[]::new));
        assertEquals(0, outcome.status(), outcome.err());
        String other = "psi".equals(answered) ? "bar" : "psi";
        String screen = outcome.out().replaceAll("\\s+", " ");
        String hint = "add --units " + ("psi".equals(logged) ? "us" : "si");
        assertEquals(asked.isEmpty() && !logged.equals(answered), screen.contains(hint), screen);
        assertTrue(screen.matches(".*\\d " + answered + "\\b.*"), screen);
        assertFalse(screen.matches(".*\\d " + other + "\\b.*"), screen);
        String page = Files.readString(out.resolve("report.html"));
        assertTrue(page.contains("\u00a0" + answered) || page.contains(" " + answered), page);
        assertTrue(Files.readString(out.resolve("readings.csv")).startsWith("time_s,reading_gauge_" + answered));
        assertTrue(Files.readString(out.resolve("readings.svg")).contains(answered));
        assertFalse(Files.readString(out.resolve("readings.svg")).contains(other));
    }

    /** The heater was off: the gauge showed the same all the time, and there is no span to draw it over. */
    @Test
    void aLogIsNotReplacedByWhatIsMadeOfIt() throws IOException {
        StringBuilder constant = new StringBuilder("time_min,pressure_bar\n");
        for (int i = 0; i < 12; i++) {
            constant.append(5 * i).append(",4.2\n");
        }
        Path log = Files.writeString(folder.resolve("readings.csv"), constant);
        Outcome beside = Outcome.execute("diagnose", "orchard-lodge", "-r", log.toString(), "-o", folder.toString());
        assertEquals(4, beside.status());
        assertTrue(beside.err().contains("readings.csv is what this command reads"), beside.err());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of(log), files.toList());
        }
        assertEquals(constant.toString(), Files.readString(log));
        Path out = folder.resolve("out");
        Outcome apart = Outcome.execute("diagnose", "orchard-lodge", "-r", log.toString(), "-o", out.toString());
        assertEquals(0, apart.status(), apart.err());
        assertTrue(Files.readString(out.resolve("readings.svg")).contains("4.2"));
    }

    /** Five readings on site that all agree are no hazard; a valve they say nothing of is not accused. */
    @Test
    void readingsThatAgreeAreNoHazard() throws IOException {
        Path spots = Files.writeString(folder.resolve("spots.yaml"), """
                cold-static: 4.2 bar
                heat-up-maximum: 6.0 bar
                next-morning: 5.7 bar
                caught-volume: 0 L
                tyre-gauge: 4.2 bar
                """);
        Path out = folder.resolve("o");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", spots.toString(), "-o", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertFalse(text.contains("HAZARD"), outcome.out());
        assertTrue(text.contains("The readings agree with the house as described"), outcome.out());
        assertTrue(
                text.replaceAll(".*Not tested by these readings:([^.]*).*", "$1")
                        .contains("the relief valve opens at a higher"),
                outcome.out());
        String page = Files.readString(out.resolve("report.html"));
        assertFalse(page.contains("HAZARD"));
        assertTrue(Files.readString(out.resolve("diagnosis.json")).contains("\"hazard\" : false"));
    }

    /** A heater that heats to 72 degC where 58 degC are described is a hazard, first and in the status. */
    @Test
    void hotWaterThatWasReadIsAHazard() throws IOException {
        Path spots = Files.writeString(folder.resolve("spots.yaml"), "cold-static: 4.2 bar\nhot-tap: 72 degC\n");
        Path out = folder.resolve("o");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", spots.toString(), "-o", out.toString());
        assertEquals(3, outcome.status(), outcome.err());
        assertTrue(
                outcome.out().startsWith("HAZARD: The readings point to this: the heater heats the water hotter"),
                outcome.out());
    }

    @Test
    void readingsOnSiteAreHeldAgainstThePlan() throws IOException {
        Path spots = Files.writeString(folder.resolve("spots.yaml"), "cold-static: 61 psi\ntyre-gauge: 1.5 bar\n");
        Outcome outcome = Outcome.execute(
                "diagnose",
                "orchard-lodge-vessel",
                "-r",
                spots.toString(),
                "-o",
                folder.resolve("o").toString());
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(
                text.contains(
                        "Reading described Read The gauge right after cold water was drawn, with 4.2 bar 4.21 bar, agrees"),
                outcome.out());
        assertTrue(
                text.contains("A tyre gauge at the air valve of the vessel, 4.2 bar 1.5 bar, DIFFERS"), outcome.out());
        assertTrue(
                text.contains("Settled. The cause is this: the vessel has lost part of its precharge"), outcome.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            time_s,pressure\\n0,4                  | 1
            0,4.2\\n60,4.3                         | 1
            time_s,pressure_bar\\n0,4.2\\n60,much  | 3
            time_s;pressure_bar                   | 1
            """)
    void badLogsSayWhere(String content, int line) throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.csv"), content.replace("\\n", "\n"));
        Path out = folder.resolve("none");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", bad.toString(), "-o", out.toString());
        assertEquals(2, outcome.status(), outcome.err());
        assertEquals("", outcome.out());
        assertTrue(outcome.err().startsWith(bad + ":" + line + ":"), outcome.err());
        boolean unitMissing = content.startsWith("time_s,pressure\\n");
        assertEquals(unitMissing, outcome.err().contains(", or give it with --pressure-unit"), outcome.err());
        assertFalse(Files.exists(out));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            diagnose orchard-lodge                            | heatswell: there are no readings; name their file with --readings, or say what you saw at the vessel or tap with --seen
            diagnose orchard-lodge --seen dripping            | heatswell: --seen: 'dripping' is not understood; write what you saw at the vessel or tap, such as 'vessel heavy', 'water at the gas valve', 'tyre gauge 40 psi' or 'hot tap 130 F', and put anything else with its time into the list of readings
            diagnose orchard-lodge -r nowhere.csv             | nowhere.csv: there is no such file
            diagnose orchard-lodge quarry-row -r nowhere.csv  | heatswell: diagnose takes one scenario, not 2
            """)
    void badQuestionsSayWhatIsWrong(String arguments, String complaint) {
        Outcome outcome = Outcome.execute(arguments.split(" "));
        assertEquals(complaint, outcome.err().lines().findFirst().orElse(""));
        assertEquals(2, outcome.status());
    }

    /** What was seen of the vessel needs no log, stands in the table of evidence, and is doubted nowhere. */
    @Test
    void whatWasSeenOfTheVesselIsEvidence() throws IOException {
        Path out = folder.resolve("out");
        Outcome outcome = Outcome.execute(
                "diagnose",
                "orchard-lodge-vessel",
                "--seen",
                "water at the gas valve",
                "--seen",
                "vessel heavy",
                "-o",
                out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("the vessel is full of water"), outcome.out());
        String page = Files.readString(out.resolve("report.html")).replaceAll("\\s+", " ");
        assertTrue(page.contains("taken as this: the vessel is taken to be nearly full of water."), page);
        String json = Files.readString(out.resolve("diagnosis.json"));
        assertTrue(json.contains("\"check\" : \"gas_valve\""), json);
        assertTrue(json.matches("(?s).*\"doubts\" ?: \\[ ?\\].*"), json);
    }

    /** What is doubted on the screen is doubted in JSON too. */
    @Test
    void doubtsStandInJson() throws IOException {
        Path list = Files.writeString(
                folder.resolve("list.txt"), "6:40 am 61 psi tyre gauge 61 psi\n6:50 am 61\n7 am 61\n7:10 am 61\n");
        Path out = folder.resolve("out");
        Outcome outcome =
                Outcome.execute("diagnose", "orchard-lodge-vessel", "-r", list.toString(), "-o", out.toString());
        String doubt = "06:40 'tyre gauge 61 psi' is what the water's own gauge reads";
        assertTrue(outcome.out().replaceAll("\\s+", " ").contains("CHECK FIRST: " + doubt), outcome.out());
        assertTrue(Files.readString(out.resolve("diagnosis.json")).contains("\"" + doubt));
    }

    /** The first two hours, a reading every three minutes. */
    private Path log(String change) throws IOException {
        Trace trace = Catalogue.read("orchard-lodge-vessel")
                .with(List.of(Change.of(change)))
                .simulation()
                .run()
                .trace();
        Random random = new Random(5);
        StringBuilder text = new StringBuilder("time_s,pressure_psi\n");
        for (int i = 0; trace.grid().time(i) <= 7_200; i += 3) {
            double psi = PressureUnit.PSI.fromSi(trace.value(Channel.GAUGE_READING, i)) + 0.5 * random.nextGaussian();
            text.append(Math.round(trace.grid().time(i)))
                    .append(',')
                    .append(Math.round(psi))
                    .append('\n');
        }
        return Files.writeString(folder.resolve("log.csv"), text);
    }
}

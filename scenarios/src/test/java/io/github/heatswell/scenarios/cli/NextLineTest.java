package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: every command ends with the command that goes on from its answer, about the same house. */
class NextLineTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "run orchard-lodge --place uk --set heater.cut-out=85degC | size orchard-lodge --place uk --set heater.cut-out=85degC",
                "run orchard-lodge --place uk | size orchard-lodge --place uk",
                "run orchard-lodge --place uk --set heater.cut-out=none | rules orchard-lodge --place uk --set heater.cut-out=none",
                "run mill-cottage-creeping-reducer --set vessel.precharge=3.6bar | rules mill-cottage-creeping-reducer --set vessel.precharge=3.6bar",
                "size orchard-lodge-vessel --set vessel.volume=50L | outlook orchard-lodge-vessel --set vessel.volume=50L",
                "size orchard-lodge-vessel --set vessel.volume=50L --set vessel.precharge=2bar | run orchard-lodge-vessel --set vessel.volume=50L --set vessel.precharge=4.2bar",
                "run orchard-lodge-vessel -u us --set vessel.volume=24L | outlook orchard-lodge-vessel --set vessel.volume=24L -u us",
                "run ferry-cottage | spread ferry-cottage",
                "run mill-cottage-worn-seat | rules mill-cottage-worn-seat",
                "run kiln-house-blocked | rules kiln-house-blocked",
                "rules ferry-cottage --place en | run ferry-cottage --place en",
                "run mill-cottage-high-mains | size mill-cottage-high-mains",
                "map ferry-cottage | run ferry-cottage",
                "size orchard-lodge --set vessel.volume=2L --set vessel.precharge=1bar | run orchard-lodge --set vessel.volume=24L --set vessel.precharge=4.2bar",
                "run orchard-lodge-vessel --set vessel.condition=upstream-of-check | size orchard-lodge-vessel --set vessel.condition=upstream-of-check",
                "size orchard-lodge-vessel --set vessel.condition=isolated | run orchard-lodge-vessel --set vessel.condition=sound --set vessel.volume=24L --set vessel.precharge=4.2bar",
                "size orchard-lodge-vessel --set vessel.volume=50L --set vessel.condition=isolated | run orchard-lodge-vessel --set vessel.volume=50L --set vessel.condition=sound",
                "run ferry-cottage --set vessel.volume=8L --set vessel.precharge=2bar --set vessel.condition=isolated | spread ferry-cottage --set vessel.volume=8L --set vessel.precharge=2bar --set vessel.condition=isolated",
                "compare orchard-lodge --vary tank.volume=100L,200L | size orchard-lodge --set tank.volume=100L",
                "compare ferry-cottage mill-cottage | size mill-cottage",
                "size orchard-lodge-two-vessels --set vessel.condition=isolated | size orchard-lodge-two-vessels --set vessel.condition=sound --set \"vessels[0].precharge=4.2bar\" --set \"vessels[0].charged-at=9degC\"",
                "size orchard-lodge-two-vessels --set tank.volume=600L --set vessels[0].precharge=4bar --set vessels[0].charged-at=9degC | run orchard-lodge-two-vessels --set tank.volume=600L --set \"vessels[0].precharge=4bar\" --set \"vessels[0].charged-at=9degC\" --set \"vessels[1].volume=50L\" --set \"vessels[1].precharge=4.05bar\"",
                "size mill-cottage-high-mains -u us | run mill-cottage-high-mains --set supply.arrangement=reducing-valve --set \"supply.reducing-valve={ set: 50psi }\" --set vessel.precharge=54psi -u us",
                "compare mill-cottage kiln-house-blocked | rules kiln-house-blocked",
                "compare kiln-house-cut-out --vary heater.set-point=60degC,55degC | rules kiln-house-cut-out --set heater.set-point=60degC",
                "rules orchard-lodge-waterlogged | size orchard-lodge-waterlogged",
                "rules mill-cottage-worn-seat | run mill-cottage-worn-seat --set \"relief[0].fault=none\"",
                "rules kiln-house-blocked | run kiln-house-blocked --set \"relief[0].fault=none\" --set heater.thermostat=working",
                "rules mill-cottage-creeping-reducer | run mill-cottage-creeping-reducer --set supply.seat-leakage=none",
                "list | run orchard-lodge"
            })
    void theNextCommandIsAboutTheSameHouse(String command, String next) {
        assertEquals("Next: heatswell " + next, last(execute(command.split(" "))));
    }

    /** Regression: the way led from the rules back to the run that had led to them, and later it ended there. */
    @ParameterizedTest
    @ValueSource(strings = {"mill-cottage-worn-seat", "kiln-house-blocked"})
    void theWayOfAFaultGoesOnWithTheHouseMended(String house) {
        String[] words = {"run", house};
        Set<String> asked = new HashSet<>();
        while (!List.of("size", "outlook", "spread").contains(words[0])) {
            assertTrue(asked.add(String.join(" ", words)), asked + " and again " + words[0]);
            words = last(execute(words))
                    .substring("Next: heatswell ".length())
                    .replace("\"", "")
                    .split(" ");
        }
    }

    /** Regression: the rules of a house with a fault ended without a line, or with the command just run. */
    @Test
    void theRulesOfEveryHouseLeadOn() {
        for (String house : Catalogue.names()) {
            String next = last(execute("rules", house));
            assertTrue(next.matches("Next: heatswell (run|size) " + house + "( --set .*)?"), next);
        }
    }

    /** Each line can be pasted: it answers, and ends with the next. */
    @Test
    void theLinesLeadFromTheDripToTheKeepingOfTheVessel() {
        List<String> job = List.of("run", "size", "run", "outlook", "run");
        String[] words = {"run", "orchard-lodge", "--place", "uk", "--set", "heater.cut-out=85degC"};
        for (String command : job) {
            assertEquals(command, words[0]);
            words = last(execute(words)).substring("Next: heatswell ".length()).split(" ");
        }
    }

    @Test
    void whatAShellWouldPartStandsInQuotationMarks() throws IOException {
        Path house = Files.createDirectory(folder.resolve("my house")).resolve("a.yaml");
        Files.writeString(house, Outcome.execute("show", "orchard-lodge").out());
        String next = last(execute("run", house.toString(), "--set", "tank.volume=150 L"));
        assertEquals("Next: heatswell size \"" + house + "\" --set \"tank.volume=150 L\"", next);
    }

    /** Regression: where readings settle nothing, the next command was the one just typed, and not the one whose sheet says what to read. */
    @Test
    void aDiagnosisThatSettlesNothingLeadsToTheCheckSheet() throws IOException {
        Path spots = Files.writeString(folder.resolve("spots.yaml"), "cold-static: 61 psi\n");
        String next = last(execute("diagnose", "ridge-house", "-r", spots.toString(), "--place", "us-ipc"));
        assertEquals("Next: heatswell run ridge-house --place us-ipc", next);
    }

    /** A question without an answer names the one to ask instead, where it complains. */
    @Test
    void whereThereIsNoAnswerAnotherQuestionIsNamed() {
        Outcome outcome = Outcome.execute("outlook", "orchard-lodge", "-o", folder.toString());
        assertEquals("Next: heatswell size orchard-lodge", last(outcome.err()));
        assertEquals("", outcome.out());
    }

    /** Regression: the guide runs the commands themselves, and names itself where it is left. */
    @Test
    void theGuideRunsTheCommandsAndIsCarriedOn() throws IOException {
        Path house = folder.resolve("house.yaml");
        Files.writeString(house, Outcome.execute("show", "orchard-lodge").out());
        StringWriter out = new StringWriter();
        Reader typed = new StringReader("\nno\nquit\n");
        int status = CommandFactory.heatswell(new PrintWriter(out), new PrintWriter(out), typed)
                .execute(
                        "guide",
                        "-o",
                        house.toString(),
                        "-r",
                        folder.resolve("results").toString());
        assertEquals(0, status, out.toString());
        assertTrue(out.toString().contains("The relief valve opens after 10 min 16 s"), out.toString());
        assertEquals("Next: heatswell guide -o " + house + " -r " + folder.resolve("results"), last(out.toString()));
        assertEquals(
                1,
                out.toString().lines().filter(line -> line.startsWith("Next: ")).count(),
                "the guide says what comes next, and its commands do not");
    }

    /** What is printed as a file stays a file. */
    @Test
    void ofAFileTheLineIsAComment() {
        assertEquals(
                "# Next: heatswell run orchard-lodge",
                last(Outcome.execute("show", "orchard-lodge").out()));
    }

    private String execute(String... words) {
        boolean files = !List.of("list", "show").contains(words[0]);
        String[] all = Arrays.copyOf(words, words.length + (files ? 2 : 0));
        if (files) {
            all[words.length] = "--out";
            all[words.length + 1] = folder.resolve("out").toString();
        }
        Outcome outcome = Outcome.execute(all);
        assertFalse(outcome.out().isBlank(), outcome.err());
        return outcome.out();
    }

    private static String last(String out) {
        assertTrue(out.endsWith("\n"), out);
        List<String> lines = out.lines().toList();
        return lines.get(lines.size() - 1);
    }
}

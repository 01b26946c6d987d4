package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: whatever may hurt people stands first and sets the exit status, whether it ended a run or not. */
class HazardStatusTest {

    @TempDir
    private Path folder;

    private Outcome execute(String arguments) {
        return Outcome.execute((arguments + " -o " + folder.resolve("out")).split(" "));
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("out").resolve("report.html"));
    }

    /** No hazard ended these runs, or the house itself is one. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "run kiln-house-runaway, HAZARD: 'T&P valve' opened because the water had reached 99",
                "run kiln-house-cut-out, HAZARD: The thermostat never switches off",
                "run ridge-house --set tank.working-pressure=10bar, HAZARD: No relief valve opens below",
                "run quarry-row, HAZARD: After 27 min 12 s the pressure reaches 16 bar",
                "size ridge-house --set tank.working-pressure=10bar, HAZARD in the house as it is: No relief valve opens below",
                "compare ridge-house orchard-lodge --set tank.working-pressure=10bar, HAZARD in ridge-house: No relief valve opens below"
            })
    void hazardsComeFirst(String arguments, String first) throws IOException {
        Outcome outcome = execute(arguments);
        assertEquals(3, outcome.status(), outcome.err());
        assertTrue(outcome.out().startsWith(first), outcome.out());
        assertTrue(page().contains("<strong>HAZARD"), "the page says so too");
        if (arguments.startsWith("size ")) {
            theTitleBeginsWithTheHazard("sizes.svg");
        }
    }

    /** Commands that write no page, or answer for years: a house that is a hazard is one for them too. */
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "map ridge-house --set tank.working-pressure=10bar, map.svg",
                "spread ridge-house --set tank.working-pressure=10bar --samples 16, spread.svg",
                "outlook orchard-lodge-vessel --set tank.working-pressure=6bar --years 1, outlook.svg"
            })
    void theHouseItselfSetsTheStatusOfEveryCommand(String arguments, String picture) throws IOException {
        String first = "HAZARD: No relief valve opens below";
        Outcome outcome = execute(arguments);
        assertEquals(3, outcome.status(), outcome.err());
        assertTrue(outcome.out().startsWith(first), outcome.out());
        assertEquals(outcome.out().indexOf(first), outcome.out().lastIndexOf(first), "a hazard is shouted once");
        theTitleBeginsWithTheHazard(picture);
    }

    /** A picture may be all that somebody is shown. */
    private void theTitleBeginsWithTheHazard(String picture) throws IOException {
        String drawn = Files.readString(folder.resolve("out").resolve(picture));
        assertTrue(drawn.contains("Hazard: No relief valve opens below"), "the title of " + picture);
    }

    /** What cannot be answered is refused, but not before the hazard was told. */
    @Test
    void aRefusedQuestionTellsTheHazardFirst() {
        Outcome outcome = execute("outlook ridge-house --set tank.working-pressure=10bar");
        assertEquals(3, outcome.status(), outcome.err());
        assertTrue(
                outcome.out().startsWith("HAZARD in the house as it is: No relief valve opens below"), outcome.out());
        assertEquals(
                "ridge-house: this house has no expansion tank, so there is no precharge to lose; 'heatswell size'"
                        + " finds one\nNext: heatswell size ridge-house --set tank.working-pressure=10bar",
                outcome.err().strip());
    }

    /** What leaks in while nothing is drawn fills any vessel. */
    @ParameterizedTest
    @CsvSource({
        "size, No vessel cures this: the seat of the reducing valve leaks",
        "outlook --years 1, No precharge helps while the seat of the reducing valve leaks"
    })
    void aLeakingReducingValveIsMendedBeforeAnythingIsBought(String command, String words) {
        String text = execute(command + " mill-cottage-creeping-reducer --set run.duration=1d")
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(text.contains(words), text);
        assertTrue(text.contains("Have the valve cleaned or its seat replaced"), text);
        assertFalse(text.contains("'heatswell size' proposes"), text);
    }

    /** A hazard is shouted once. */
    @Test
    void runawaySaysWhatToDoAndNoBucket() throws IOException {
        String text = execute("run kiln-house-runaway").out().replaceAll("\\s+", " ");
        assertTrue(text.contains("Stay away from the tank. If you can do it safely from elsewhere, trip"), text);
        String said = "until another device stops it";
        assertEquals(text.indexOf(said), text.lastIndexOf(said), text);
        assertTrue(text.contains("The water reaches 99 degC in the run"), text);
        String page = page();
        assertFalse(page.contains("bucket"), "nobody holds a bucket under 99 degC");
        assertFalse(page.contains("at its switch"), "nobody is sent to the tank");
        assertFalse(page.contains("The water reaches 60 degC in the run"), "the run was hotter than the set point");
    }

    /** A valve that does not close: the heater off, then the feed. */
    @Test
    void stuckOpenValveIsStoppedInTheRightOrder() throws IOException {
        Outcome outcome = execute("run mill-cottage-stuck-open");
        assertEquals(0, outcome.status());
        String text = outcome.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("Turn the heater off, then shut the cold feed"), text);
        assertTrue(text.contains("set no higher than the pressure on the tank's plate"), text);
        assertTrue(text.contains("safety valve: stuck open"), "no margin of a valve that does not close: " + text);
        String page = page().replaceAll("\\s+", " ");
        assertTrue(
                page.contains("There is no check sheet: the check needs a heat-up, and the heater must stay off until"),
                page);
        assertFalse(page.contains("Turn the heater on"), "the heater stays off");
        assertFalse(page.contains("The relief valve stays as it is"), "that one does not");
    }

    /** No vessel makes a valve close. */
    @Test
    void stuckOpenValveComesBeforeTheSize() {
        String text = execute("size mill-cottage-stuck-open").out().replaceAll("\\s+", " ");
        assertTrue(text.contains("No vessel cures this: 'safety valve' is stuck open"), text);
        assertTrue(text.contains("The 18 L vessel of this house is large enough, so there is none to buy."), text);
        assertTrue(text.indexOf("No vessel cures this") < text.indexOf("A vessel of 18 L"), text);
    }

    /** A vessel that is too small has to be replaced all the same. */
    @Test
    void stuckOpenValveBesideASmallVesselTakesALargerOne() {
        String text = execute("size mill-cottage-stuck-open --set vessel.volume=8L")
                .out()
                .replaceAll("\\s+", " ");
        assertTrue(text.contains("Have it replaced first; what follows applies after that. A vessel of 18 L"), text);
    }

    /** Where no vessel can be sized the hazards are told all the same, and first. */
    @Test
    void hazardsComeBeforeARefusal() {
        Outcome outcome = execute("size kiln-house-blocked");
        assertEquals(3, outcome.status());
        assertTrue(outcome.out().startsWith("HAZARD in the house as it is: "), outcome.out());
        assertTrue(outcome.out().contains("'T&P valve' never opens"), outcome.out());
        assertTrue(outcome.err().contains("cannot size a vessel: thermostat: is stuck"), outcome.err());
    }

    @Test
    void aSoundHouseIsNone() {
        Outcome outcome = execute("run orchard-lodge");
        assertEquals(0, outcome.status());
        assertFalse(outcome.out().contains("HAZARD"), outcome.out());
    }
}

package io.github.heatswell.scenarios.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.interview.Interview.Outcome.Ending;
import io.github.heatswell.scenarios.readings.LogReader;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Regression: readings on paper, typed one by one or pasted, by owners of two countries. */
class ReadingsTalkTest {

    @TempDir
    private Path folder;

    private Ending ending;

    private Path file() {
        return folder.resolve("readings.txt");
    }

    /** What is said while lines are typed, with blanks for ends of lines. */
    private String said(String typed) throws OutputException {
        StringWriter out = new StringWriter();
        ending = ReadingsTalk.hold(
                file(), UnitSystem.SI, new StringReader(typed.replace("|", "\n")), new PrintWriter(out));
        return out.toString().replaceAll("\\s+", " ");
    }

    @Test
    void tenReadingsOfAnOwnerInTheUnitedStatesArePasted() throws IOException, OutputException {
        String said = said(
                "10:05 pm 62 after dishwasher|10:10 73|psi|10:15 98|10:20 127|10:25 149 drip|10:30 148 drip|10:40 147|10:55"
                        + " 146|11:20 133|6:40 am 61 nobody used water 1-5 am|done|");
        assertEquals(Ending.FINISHED, ending, said);
        assertTrue(said.contains("What does the gauge read in"), said);
        assertTrue(
                said.contains("-> 10:05 pm, 62 psi; 'after dishwasher': water was drawn since the line before"), said);
        assertTrue(said.contains("-> 10:25 pm, 149 psi; 'drip': the relief pipe drips"), said);
        assertTrue(said.contains("-> 6:40 am, 61 psi; 'nobody used water 1-5 am': no water was drawn"), said);
        LogReader.LogFile read = LogReader.read(file(), 101_325);
        assertEquals(10, read.log().count());
        assertEquals(62 * 6894.757, read.log().gauge(0), 1, "psi");
        assertEquals(3, read.log().sightings().size(), read::toString);
    }

    /**
     * Regression: a first line with a comma in its note made a table of a list that had been echoed as understood, and an evening
     * told only roughly left the times after it to the next morning.
     */
    @Test
    void whatWasEchoedIsReadBack() throws IOException, OutputException {
        String said = said(
                "gauge by the washer|about 9:05 pm 66 heater off, no water running|psi|9:10 66 heater came on|9:15 83|done|");
        assertEquals(Ending.FINISHED, ending, said);
        assertTrue(said.contains("-> 9:05 pm, 66 psi;"), said);
        assertTrue(said.contains("-> 9:10 pm, 66 psi; 'heater came on'"), said);
        LogReader.LogFile read = LogReader.read(file(), 101_325);
        assertEquals(3, read.log().count());
        assertEquals(600, read.log().end(), 1e-6, "from five past nine to a quarter past");
    }

    @Test
    void anOwnerInGermanyTypesOneByOne() throws IOException, OutputException {
        String said = said(
                "Manometer im Keller|18:45 4,2 bar|18:50 4,9 Brenner an|17:00 5,1|18:55 5,8 tropft|back|18:55 5,6 tropft|dann"
                        + " geduscht|19:05 4,2|fertig|");
        assertEquals(Ending.FINISHED, ending, said);
        assertTrue(said.contains("-> a heading"), said);
        assertTrue(said.contains("Not kept: this time is earlier than the one before"), said);
        assertTrue(said.contains("Taken back; 2 readings are left"), said);
        assertTrue(said.contains("-> 'dann geduscht': water was drawn"), said);
        assertEquals(4, LogReader.read(file(), 101_325).log().count());
        assertEquals(5.6e5, LogReader.read(file(), 101_325).log().highest(), 1, "5.8 was taken back");
    }

    /** Regression: a line with a date, or with the morning after as people say it, lost its time and its pressure without a word. */
    @Test
    void aDateBeforeTheTimeLosesNoReading() throws IOException, OutputException {
        String said = said(
                "Mon 11/30 6:50 am 68 psi heater off nobody used water yet|about 7:05 62 showers done|8 mornings 70 psi"
                        + "|11/30 10:30 pm 69|Dec 1 6:30 am 71|nxt mornin 6:45 70 paper wet|the gauge said 72 psi at breakfast|done|");
        assertTrue(said.contains("-> 6:50 am, 68 psi; 'heater off nobody used water yet'"), said);
        assertTrue(said.contains("-> 7:05 am, 62 psi;"), said);
        assertTrue(said.contains("Not kept: this is another date than before"), said);
        assertTrue(said.contains("-> 6:45 am, 70 psi; 'paper wet'"), said);
        assertTrue(
                said.contains(
                        "'the gauge said 72 psi at breakfast': a note that does not affect the answer (no reading was"),
                said);
        assertEquals(4, LogReader.read(file(), 101_325).log().count());
        assertEquals((23 * 60 + 55) * 60, LogReader.read(file(), 101_325).log().end(), 1, "a day less five minutes");
    }

    /** Regression: a slip of the pen was taken without a question, and a draw invented to explain it. */
    @Test
    void aReadingFarFromTheOthersIsAskedAbout() throws IOException, OutputException {
        String said = said(
                "6:50 am 68 psi|7:05 62 showers done|7:15 104|7:20 38|7:25 150|7:35 147|7:50 204|8:50 91|9:00 95|10 am 30 ran"
                        + " the tap|11 am 90|done|");
        assertTrue(
                said.contains("38 psi (far below every line before, and no tap is noted: 38 as written, or 138?"),
                said);
        assertTrue(said.contains("91 psi (the line before, 204 psi, is far above both"), said);
        assertEquals(2, said.split("as written", -1).length - 1, said);
        LogReader.LogFile read = LogReader.read(file(), 101_325);
        assertTrue(read.doubts().toString().contains("at 07:20 is far from both its neighbours"), read::toString);
        assertEquals(2, read.doubts().size(), "38 and 204: at 10 a tap ran");
        assertTrue(read.remarks().toString().contains("at 07:20; "), read::toString);
    }

    /** Regression: the sheet's own words for its last rows made notes of two readings. */
    @Test
    void theRowsOfTheSheetAreTypedAsTheyStand() throws IOException, OutputException {
        String said = said("6:30 am 78 psi|8:30 am 85|10:30 pm 79|next morning 6:15 78|done|");
        assertTrue(said.contains("-> 10:30 pm, 79 psi -> 6:15 am, 78 psi"), said);
        assertEquals(4, LogReader.read(file(), 101_325).log().count());
    }

    /** Regression: a line that had been forgotten became one of the evening without a word. */
    @Test
    void aTimeBeforeTheLastWithoutAmOrPmIsAskedAbout() throws IOException, OutputException {
        String said = said("7:12 am 125 psi|8:30 85|7:16 148 dripping|1:00 80|10:30 79|6:15 78|done|");
        assertTrue(
                said.contains("Not kept: this time is either earlier than the one before or more than ten hours later"),
                said);
        assertTrue(said.contains("-> 1:00 pm, 80 psi -> 10:30 pm, 79 psi -> 6:15 am, 78 psi"), said);
        assertEquals(5, LogReader.read(file(), 101_325).log().count());
    }

    /** Regression: help and undo became notes, a bell stood in the file, and 1000 psi passed without a word. */
    @Test
    void wordsToTheProgramAndSlipsAreNoNotes() throws IOException, OutputException {
        String said = said(
                "6:45 am 61 psi|help|6:50 1000|undo|6:50 \u001b[31m70\tfoo|6:50 am 70 \u001b[31mfoo|7:00 80|done|");
        assertTrue(said.contains("it scalds"), said);
        assertTrue(said.contains("-> 6:50 am, 1000 psi (more than any house has: is it right?"), said);
        assertTrue(said.contains("Taken back; 1 reading is left"), said);
        assertFalse(Files.readString(file()).contains("\u001b"));
        assertEquals(3, LogReader.read(file(), 101_325).log().count());
    }

    @Test
    void readingsOfAnotherTimeGoOnInTheSameFile() throws IOException, OutputException {
        said("Fri 6:45 am 61 psi|quit|");
        assertEquals(Ending.LEFT, ending);
        String said = said("done|7:00 am 70|7:15 am 80|done|");
        assertTrue(said.contains("go on after 6:45 am, 61 psi"), said);
        assertTrue(said.contains("A diagnosis needs at least 3 readings; there are 1"), said);
        assertEquals(Ending.FINISHED, ending);
        assertEquals(1_800, LogReader.read(file(), 101_325).log().end(), 1e-9, "half an hour");
    }

    @Test
    void anotherFileIsLeftAlone() throws IOException, OutputException {
        Files.writeString(file(), "Dear diary\n");
        assertFalse(said("6:45 am 61 psi|done|").contains("Type your readings"));
        assertEquals(Ending.OBSTRUCTED, ending);
        assertEquals("Dear diary\n", Files.readString(file()));
    }

    /** Regression: a time without a pressure, typed first, was taken as a heading, and every line after it was refused. */
    @Test
    void aTimeWithoutAPressureIsRefusedAlsoAtFirst() throws OutputException {
        String said = said("cellar gauge|6:45 am|6:45 am 61 psi|7:00 am 70|7:15 am 80|done|");
        assertTrue(said.contains("Not kept: '6:45 am' is not a time of day with a pressure after it"), said);
        assertEquals(Ending.FINISHED, ending, said);
    }

    /** A later am or pm makes an earlier line unclear, which is said of that line. */
    @Test
    void aLineThatBecomesUnclearIsNamed() throws OutputException {
        String said = said("6:45 61 psi|7:00 pm 62|?|");
        assertTrue(said.contains("Not kept: with this line, '6:45 61 psi' is no longer clear: write am or pm"), said);
        assertTrue(said.contains("it scalds"), said);
        assertEquals(Ending.ENDED, ending, "fewer than three readings");
    }
}

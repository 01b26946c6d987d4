package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.file.Sources;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Contracts of {@code heatswell interview} as a command: what it runs, what it returns, and what it leaves behind. */
class InterviewCommandTest {

    @TempDir
    private Path folder;

    private Path file;
    private Path results;

    @BeforeEach
    void nameFiles() {
        file = folder.resolve("my-house.yaml");
        results = folder.resolve("results");
    }

    /** What a command printed and returned. */
    private record Outcome(int status, String out, String err) {}

    private static Outcome execute(String typed, String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Reader in = new StringReader(typed);
        int status = CommandFactory.heatswell(new PrintWriter(out), new PrintWriter(err), in)
                .execute(arguments);
        return new Outcome(status, out.toString(), err.toString());
    }

    private Outcome interview(String typed) {
        return execute(typed, "interview", "--out", file.toString(), "--results", results.toString());
    }

    @Test
    void theHouseIsRunAsRunWould() throws IOException {
        Outcome interview = interview(EveryCommand.ANSWERS);
        assertEquals(0, interview.status(), interview.err());
        assertEquals("", interview.err());
        String report = interview
                .out()
                .substring(interview.out().indexOf("Written: " + file)
                        + 10
                        + file.toString().length());
        Outcome run = execute("", "run", file.toString(), "--out", results.toString());
        assertEquals(run.out(), report.replaceFirst("^\\n\\n?", ""));
        assertTrue(run.out().contains("Mill cottage, as answered"), run.out());
        assertTrue(Files.exists(results.resolve("pressure.png")));
    }

    @Test
    void americanUnitsAreThoseOfTheReportToo() {
        Outcome interview = execute(
                EveryCommand.ANSWERS, "interview", "-o", file.toString(), "-r", results.toString(), "--units", "us");
        assertEquals(0, interview.status(), interview.err());
        assertTrue(interview.out().contains("such as 60 psi"), interview.out());
        assertTrue(interview.out().contains(" psi "), interview.out());
    }

    /** Regression: with a folder of its own for the results, the guide sent to a check sheet in a folder that was not there. */
    @Test
    void theGuideNamesTheFolderOfItsResults() throws IOException {
        Files.writeString(file, Sources.REDUCED);
        String[] guide = {"guide", "-o", file.toString(), "-r", results.toString()};
        Outcome first = execute("quit\n", guide);
        assertEquals(0, first.status(), first.err());
        Path papers = results.resolve("papers").resolve("report.html");
        assertTrue(Files.exists(papers), first.out());
        assertTrue(first.out().contains("Next: heatswell guide -o " + file + " -r " + results), first.out());
        Files.writeString(folder.resolve("my-house.guide.txt"), """
                #: step = verify
                #: vessel.volume = 6 gal
                #: vessel.rating = 150 psi
                #: vessel.precharge = 64 psi
                #: printed = yes
                """);
        String last = execute("later\n", guide).out().replaceAll("\\s+", "");
        assertTrue(last.contains("checksheetin" + papers), last);
    }

    @Test
    void leavingIsNoMistakeButRunningOutOfAnswersIs() {
        Outcome left = interview("uk\nMill\nquit\n");
        assertEquals(0, left.status());
        assertEquals("", left.err());
        Outcome ended = interview("dk\nyes\ncheck valve\n");
        assertEquals(2, ended.status());
        assertEquals("heatswell: the input ended before the last question\n", ended.err());
        String said = ended.out().replaceAll("\\s+", " ");
        assertTrue(said.contains("kept in " + folder.resolve("my-house.partial.yaml") + ";"), said);
        assertFalse(Files.exists(file));
        assertFalse(Files.exists(results));
    }

    @Test
    void aHouseWithoutReliefValveEndsInAHazard() throws IOException {
        Outcome interview = interview(EveryCommand.ANSWERS.replace("7 bar\nnone\nnone\n", "none\n"));
        assertEquals(3, interview.status(), interview.out() + interview.err());
        assertTrue(interview.out().contains("-> HAZARD: there is no relief valve."), interview.out());
    }

    @Test
    void aFileInTheWayIsLeftAlone() throws IOException {
        Path partial = Files.writeString(folder.resolve("my-house.partial.yaml"), "mine\n");
        Outcome obstructed = interview(EveryCommand.ANSWERS);
        assertEquals(2, obstructed.status());
        assertTrue(obstructed.err().startsWith(partial + ": an unfinished interview"), obstructed.err());
        assertEquals("", obstructed.out());
        assertEquals("mine\n", Files.readString(partial));
    }

    @Test
    void aPlaceThatCannotBeWrittenIsSaidAtTheFirstAnswer() throws IOException {
        Path occupied = Files.writeString(folder.resolve("occupied"), "mine");
        Outcome outcome = execute(
                EveryCommand.ANSWERS,
                "interview",
                "--out",
                occupied.resolve("my-house.yaml").toString());
        assertEquals(4, outcome.status());
        assertTrue(outcome.err().contains("occupied is a file"), outcome.err());
        assertFalse(outcome.out().contains("2 of "), outcome.out());
    }
}

package io.github.heatswell.scenarios.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.ScenarioName;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever files, houses and values are called, results stay inside the folder that the user named. */
class HostileNamesTest {

    @TempDir
    private Path temporary;

    private Path inputs;
    private Path out;

    @BeforeEach
    void makeFolders() throws IOException {
        inputs = Files.createDirectory(temporary.resolve("inputs"));
        out = Files.createDirectory(temporary.resolve("out"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "..",
                "/",
                "...yaml",
                "....yaml",
                ".yaml",
                " .yaml",
                "-.yaml",
                "con.yaml",
                "NUL.tar.yaml",
                "lpt1.yaml",
                "a\nb.yaml",
                "a\u001b[2Jb.yaml",
                "\\..\\..\\x.yaml",
                "C:\\x.yaml",
                "%2e%2e%2fx.yaml",
                "$(touch x).yaml",
                "\u202egnp.yaml",
                "trailing. .yaml",
                "very long"
            })
    void theNameOfAFileBecomesAPlainOne(String name) {
        Path file;
        try {
            file = Path.of(name.equals("very long") ? "x".repeat(240) + ".yaml" : name);
        } catch (InvalidPathException e) {
            assumeTrue(false, "no file can have that name here: " + e.getMessage());
            throw e;
        }
        String given = ScenarioName.of(file);
        assertTrue(given.matches("[\\p{L}\\p{N}_][\\p{L}\\p{N}._-]{0,70}"), given);
        assertFalse(given.endsWith(".") || given.contains(".."), given);
        assertFalse(given.matches("(?i)(con|nul|lpt1)(\\..*)?"), given);
    }

    /** Several scenarios, since each then gets a folder of its name. */
    @ParameterizedTest
    @ValueSource(strings = {"run", "spread --samples 16"})
    void resultsOfFilesWithOddNamesStayInside(String command) throws IOException {
        List<String> words = new ArrayList<>(List.of(command.split(" ")));
        for (String name : List.of("...yaml", "a\nb.yaml", "\\..\\..\\x.yaml")) {
            words.add(house(name).toString());
        }
        words.addAll(List.of("--out", out.toString()));
        Map<String, String> before = EveryCommand.contents(inputs);
        Outcome outcome = Outcome.execute(words.toArray(String[]::new));
        assertEquals(0, outcome.status(), outcome.err());
        String ending = command.equals("run") ? "" : "-spread";
        assertEquals(
                List.of("a-b" + ending, "scenario" + ending, "x" + ending),
                children(out).stream()
                        .map(path -> path.getFileName().toString())
                        .toList());
        assertEquals(before, EveryCommand.contents(inputs));
        assertEquals(List.of(inputs, out), children(temporary));
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../x", "/x", "a\nb"})
    void titlesAndValuesNameNothing(String text) throws IOException {
        Outcome set = Outcome.execute("run", "orchard-lodge", "--set", "title='" + text + "'", "-o", out.toString());
        assertTrue(set.status() == 0 || set.status() == 2, set.err());
        assertEquals(set.status() == 0 ? 6 : 0, children(out).size());
        Outcome varied = Outcome.execute(
                "compare", "orchard-lodge", "--vary", "title='" + text + "',other", "-o", out.toString());
        assertTrue(varied.status() == 0 || varied.status() == 2, varied.err());
        assertTrue(children(out).stream().allMatch(Files::isRegularFile));
        assertEquals(List.of(inputs, out), children(temporary));
    }

    @Test
    void linksInTheFolderAreReplacedAndNotWrittenThrough() throws IOException {
        Path victim = Files.writeString(temporary.resolve("victim"), "mine");
        link(out.resolve("report.html"), victim);
        link(out.resolve("trace.csv"), temporary.resolve("nowhere"));
        assertEquals(
                0, Outcome.execute("run", "orchard-lodge", "-o", out.toString()).status());
        assertEquals("mine", Files.readString(victim));
        assertFalse(Files.exists(temporary.resolve("nowhere")));
        assertTrue(Files.isRegularFile(out.resolve("report.html"), LinkOption.NOFOLLOW_LINKS));
        assertTrue(Files.isRegularFile(out.resolve("trace.csv"), LinkOption.NOFOLLOW_LINKS));
    }

    @Test
    void aFolderThatIsALinkOutIsRefusedAndTheUsersOwnIsNot() throws IOException {
        Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
        link(out.resolve("quarry-row"), elsewhere);
        Outcome refused = Outcome.execute("run", "quarry-row", "orchard-lodge", "-o", out.toString());
        assertEquals(4, refused.status());
        assertEquals(
                "quarry-row: " + out.resolve("quarry-row") + " is a link that leads out of " + out
                        + "; nothing is written there\n",
                refused.err());
        assertEquals(List.of(), children(elsewhere));
        assertEquals(6, children(out.resolve("orchard-lodge")).size());

        Path own = link(temporary.resolve("own"), elsewhere);
        assertEquals(
                3, Outcome.execute("run", "quarry-row", "-o", own.toString()).status());
        assertEquals(6, children(elsewhere).size());
        assertTrue(Files.isSymbolicLink(own));
    }

    @Test
    void anInterviewWritesThroughNoLink() throws IOException {
        Path victim = Files.writeString(temporary.resolve("victim"), "mine");
        link(out.resolve("my-house.partial.yaml"), victim);
        Outcome outcome = EveryCommand.execute(EveryCommand.lines(out, victim).get("interview"));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("belongs to another file"), outcome.err());
        assertEquals("mine", Files.readString(victim));
    }

    /** A house in a file of that name, where there can be one. */
    private Path house(String name) throws IOException {
        try {
            assumeTrue(inputs.equals(inputs.resolve(name).getParent()), "such a name is a path here");
            return Files.writeString(inputs.resolve(name), Catalogue.text("orchard-lodge"));
        } catch (InvalidPathException | FileSystemException e) {
            assumeTrue(false, "no file can have that name here: " + e.getMessage());
            throw e;
        }
    }

    private static Path link(Path link, Path target) throws IOException {
        try {
            return Files.createSymbolicLink(link, target);
        } catch (UnsupportedOperationException | FileSystemException e) {
            assumeTrue(false, "links cannot be made here: " + e.getMessage());
            throw e;
        }
    }

    private static List<Path> children(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}

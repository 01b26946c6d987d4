package io.github.heatswell.scenarios.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Regression: a whole interview, its file, and the part of it that the README shows, as they were looked at. With
 * {@code -Dgolden.rewrite} the first two are written anew, with {@code -Dreadme.rewrite} the last.
 */
class DialogueTest {

    private static final Path GOLDEN = Path.of("src/test/resources/io/github/heatswell/scenarios/interview");
    private static final Path README = Path.of("README.md");

    @TempDir
    private Path folder;

    @Test
    void theInterviewReadsAsItWasLookedAt() throws IOException {
        List<String> answers = new ArrayList<>(Answering.si());
        answers.set(19, "dk");
        answers.addAll(17, List.of("?", "12 bar", "back", "12 L", "dk", "back"));
        answers.set(14, "90 degC");
        answers.addAll(14, List.of("?", "back", "none", "7 bar"));
        answers.set(12, "6 bar");
        answers.set(5, "dk");
        answers.addAll(3, List.of("?", "4.2 L"));
        Talk talk = Talk.hold(folder.resolve("my-house.yaml"), UnitSystem.SI, answers);
        golden(
                "dialogue.txt",
                talk.dialogue().replace(folder + folder.getFileSystem().getSeparator(), ""));
        golden("my-house.yaml", talk.text());
    }

    @Test
    void theReadmeShowsHowItBegins() throws IOException {
        List<String> answers = List.of("dk", "Mill cottage", "check valve", "4.2", "dk", "quit");
        Talk talk = Talk.hold(folder.resolve("my-house.yaml"), UnitSystem.SI, answers);
        String said = talk.dialogue();
        String begin = "<!-- interview: made by DialogueTest -->\n";
        String end = "<!-- end of interview -->";
        String shown = "```text\n" + said.substring(said.indexOf("3 of "), said.indexOf("\n6 of ")) + "```\n";
        String readme = Files.readString(README);
        int from = readme.indexOf(begin) + begin.length();
        int to = readme.indexOf(end);
        assertTrue(from >= begin.length() && to >= from, "the README has no place for the interview");
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(README, readme.substring(0, from) + shown + readme.substring(to));
        } else {
            assertEquals(shown, readme.substring(from, to), "run this test once with -Dreadme.rewrite");
        }
    }

    private static void golden(String name, String text) throws IOException {
        Path expected = GOLDEN.resolve(name);
        if (System.getProperty("golden.rewrite") != null) {
            Files.createDirectories(GOLDEN);
            Files.writeString(expected, text);
        }
        assertEquals(Files.readString(expected), text);
    }
}

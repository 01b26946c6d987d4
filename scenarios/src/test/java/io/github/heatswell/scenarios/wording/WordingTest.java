package io.github.heatswell.scenarios.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WordingTest {

    private static final List<String> KEYS = List.of("volume", "material", "working-pressure", "wall");

    @Test
    void slipsOfTheKeyboardAreUnderstood() {
        assertEquals(Optional.of("volume"), Nearest.to("volmue", KEYS));
        assertEquals(Optional.of("volume"), Nearest.to("Volume", KEYS));
        assertEquals(Optional.of("working-pressure"), Nearest.to("workingPressure", KEYS));
        assertEquals(Optional.of("working-pressure"), Nearest.to("working_presure", KEYS));
        assertEquals(Optional.of("wall"), Nearest.to("wal", KEYS));
    }

    @Test
    void otherWordsAreNotTakenForSlips() {
        assertEquals(Optional.empty(), Nearest.to("colour", KEYS));
        assertEquals(Optional.empty(), Nearest.to("x", KEYS));
        assertEquals(Optional.empty(), Nearest.to("", KEYS));
        assertEquals(Optional.empty(), Nearest.to("volume".repeat(20_000), KEYS));
        assertEquals("", Nearest.hint("colour", KEYS));
    }

    @Test
    void charactersThatCommandATerminalDoNotReachIt() {
        assertEquals("a?[31mb", Printable.line("a\u001b[31mb"));
        assertEquals("a?b", Printable.line("a\u202eb"));
        assertTrue(Printable.shows("Gr\u00fc\u00dfe \u4e2d"));
        assertFalse(Printable.shows("a\nb"));
        assertEquals("'" + "x".repeat(37) + "...'", Printable.quote("x".repeat(1000)));
    }

    @Test
    void linesFitTheTerminal() {
        String text = Wrapped.lines("word ".repeat(100), "- ", "  ");
        assertTrue(text.lines().allMatch(line -> line.length() <= 79));
        assertTrue(text.startsWith("- word"));
        assertEquals("x".repeat(200) + "\n", Wrapped.lines("x".repeat(200), "", ""));
    }

    /** A number of more than three digits is one word, though a blank stands in it. */
    @Test
    void aNumberIsNotBroken() {
        String text = "Mains pressure above the relief set: the valve runs for 3 d and discharges 46 800 L.";
        assertEquals(
                "Mains pressure above the relief set: the valve runs for 3 d and discharges\n46 800 L.\n",
                Wrapped.lines(text, "", ""));
    }
}

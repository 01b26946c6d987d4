package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.TextBlock.Words;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextBlockTest {

    @Test
    void breaksBetweenWordsAndLosesNone() {
        String text = "Relief valve opens after 10 min and discharges 3.1 L";
        TextBlock block = TextBlock.of(text, Type.LABEL, 120);
        assertTrue(block.lineCount() > 2);
        assertTrue(block.width() <= 120.001);
        assertEquals(text, String.join(" ", block.text()));
    }

    @Test
    void breaksAWordThatIsWiderThanALine() {
        String text = "x".repeat(200) + "😀".repeat(20);
        TextBlock block = TextBlock.of(text, Type.LABEL, 90);
        assertTrue(block.width() <= 90.001);
        assertEquals(text, String.join("", block.text()));
        assertTrue(block.text().stream().noneMatch(line -> Character.isLowSurrogate(line.charAt(0))));
    }

    @Test
    void setsWordsOfTwoFontsOnOneLine() {
        TextBlock block = TextBlock.of(List.of(Words.strong("7.0 bar"), Words.plain("relief opens")), 300);
        assertEquals(List.of("7.0 bar relief opens"), block.text());
        TextBlock two = TextBlock.of(
                List.of(
                        Words.strong("no vessel"),
                        Words.plain("highest 7.0 bar").onNewLine()),
                300);
        assertEquals(List.of("no vessel", "highest 7.0 bar"), two.text());
        assertEquals(two.height(), 2 * block.height(), 1e-9);
    }

    @Test
    void endsAShortenedTextWithAnEllipsis() {
        TextBlock block = TextBlock.of("one two three four five six seven", Type.LABEL, 60);
        TextBlock shorter = block.inLines(2);
        assertEquals(2, shorter.lineCount());
        assertTrue(shorter.text().get(1).endsWith("…"));
        assertEquals(block.lineCount(), block.inLines(99).lineCount());
    }
}

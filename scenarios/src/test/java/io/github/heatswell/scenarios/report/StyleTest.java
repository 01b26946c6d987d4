package io.github.heatswell.scenarios.report;

import static io.github.heatswell.scenarios.report.StyleColours.contrast;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** The style sheet: colours that can be read, and nothing from elsewhere. */
class StyleTest {

    private final String css = Html.styleSheet();

    /** Validation: WCAG 2.1, success criterion 1.4.3 (AA): text has a contrast of at least 4.5 to 1. */
    @Test
    void everyTextCanBeReadOnEveryBackground() {
        Set<String> texts = StyleColours.of(css, "(?<![-\\w])color");
        Set<String> backgrounds = StyleColours.of(css, "background");
        assertEquals(4, texts.size(), texts.toString());
        assertEquals(2, backgrounds.size(), backgrounds.toString());
        for (String text : texts) {
            for (String background : backgrounds) {
                assertTrue(contrast(text, background) >= 4.5, text + " on " + background);
            }
        }
    }

    /** Validation: WCAG 2.1, success criterion 1.4.11 (AA): what shows where to write or tick has at least 3 to 1. */
    @Test
    void boxesCanBeSeen() {
        Set<String> borders = StyleColours.of(css, "border");
        assertTrue(borders.contains("#52626c"));
        for (String border : borders) {
            // Lines between the rows of a table only guide the eye; nothing depends on them.
            assertTrue(border.equals("#b9c2c7") || contrast(border, "#ffffff") >= 3, border);
        }
    }

    /** Validation: the extremes of the formula, and 4.54 to 1 for #767676 on white, which WCAG's own notes use. */
    @Test
    void contrastIsThatOfWcag() {
        assertEquals(21, contrast("#000000", "#ffffff"), 1e-9); // 1.05 over 0.05
        assertEquals(1, contrast("#17506b", "#17506b"), 1e-12);
        assertEquals(4.54, contrast("#767676", "#ffffff"), 0.005); // given to two decimals
    }

    @Test
    void nothingComesFromElsewhere() {
        assertFalse(css.contains("url(") || css.contains("@import") || css.contains("http"));
        assertFalse(css.contains("<") || css.contains("&"), "the page would no longer be well-formed");
    }
}

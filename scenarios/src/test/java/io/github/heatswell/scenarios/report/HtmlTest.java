package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class HtmlTest {

    @Test
    void textsAndAttributesAreEscaped() {
        String page = new Html()
                .open("p", "title", "a\"b'<c>&")
                .text("<b> & \"q\"\r\n\u0001\ud83d\udca7")
                .close()
                .end();
        assertEquals(
                "<!DOCTYPE html>\n<p title=\"a&quot;b&#39;&lt;c&gt;&amp;\">"
                        + "&lt;b&gt; &amp; &quot;q&quot;\n\n\ufffd\ud83d\udca7</p>",
                page);
    }

    @Test
    void namesOfElementsAndAttributesCannotCarryMarkup() {
        Html html = new Html();
        for (String name : List.of("p onclick", "p>", "", "P", "1a", "1", "x:y", "a\"")) {
            assertThrows(IllegalArgumentException.class, () -> html.open(name), name);
            assertThrows(IllegalArgumentException.class, () -> html.open("p", name, "x"), name);
        }
    }

    @Test
    void aPageIsNotEndedWhileSomethingIsOpen() {
        Html html = new Html().open("main").open("p").close();
        assertTrue(assertThrows(IllegalStateException.class, html::end)
                .getMessage()
                .contains("main"));
    }
}

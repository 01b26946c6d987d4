package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Only a picture gets into a page as markup. */
class PageSvgTest {

    @Test
    void idsAndWhatRefersToThemGetAPrefix() {
        String markup = markup("<desc id='d'>x</desc><clipPath id='c'/><g clip-path='url(#c)'/>");
        assertTrue(markup.contains("id=\"p1-d\"") && markup.contains("id=\"p1-c\""), markup);
        assertTrue(markup.contains("clip-path=\"url(#p1-c)\""), markup);
        assertTrue(markup.startsWith("<svg") && markup.endsWith("</svg>"), markup);
    }

    @Test
    void theWordsForThoseWhoCannotSeeItGoAlong() {
        String markup = Svg.of(svg(""), "it \"rises\"", "p1-").markup();
        assertTrue(markup.contains("aria-label=\"it &quot;rises&quot;\"") && markup.contains("role=\"img\""), markup);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "<script>x</script> | the element script",
                "<style>x</style> | the element style",
                "<foreignObject/> | the element foreignObject",
                "<image href='a.png'/> | the element image",
                "<a><text>x</text></a> | the element a",
                "<h:p xmlns:h='http://www.w3.org/1999/xhtml'/> | the element h:p",
                "<g onclick='x()'/> | the attribute onclick",
                "<g xmlns:xlink='http://www.w3.org/1999/xlink' xlink:href='#x'/> | the attribute xlink:href",
                "<g style='fill:url(//elsewhere)'/> | the attribute style",
                "<g fill='url(http://elsewhere/x)'/> | refer to url(http://elsewhere/x)",
                "<g fill='url(#a) url(//b)'/> | refer to",
                "<!-- x --> | elements and text only",
                "<?x ><script>y</script>?> | elements and text only",
                "<g> | one SVG element",
                "&undefined; | one SVG element"
            })
    void whatActsOrReachesOutIsRefused(String inside, String complaint) {
        String message = assertThrows(IllegalArgumentException.class, () -> markup(inside))
                .getMessage();
        assertTrue(message.startsWith("a picture must ") && message.contains(complaint), message);
    }

    @ParameterizedTest
    @CsvSource({"'<p/>', the element p", "'', one SVG element", "'<!DOCTYPE svg><svg/>', one SVG element"})
    void whatIsNoPictureIsRefused(String source, String complaint) {
        String message = assertThrows(IllegalArgumentException.class, () -> Svg.of(source, "", "p1-"))
                .getMessage();
        assertTrue(message.contains(complaint), message);
    }

    @Test
    void sectionsOfCharacterDataBecomeText() {
        assertEquals(markup("<text>a &lt; b</text>"), markup("<text><![CDATA[a < b]]></text>"));
    }

    private static String markup(String inside) {
        return Svg.of(svg(inside), "x", "p1-").markup();
    }

    private static String svg(String inside) {
        return "<?xml version='1.0'?><svg xmlns='http://www.w3.org/2000/svg'>" + inside + "</svg>";
    }
}

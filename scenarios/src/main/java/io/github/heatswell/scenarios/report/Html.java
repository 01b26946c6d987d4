package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Pattern;

/**
 * Writes HTML that is also well-formed XML. Texts and values of attributes can only come in through methods that escape
 * them; besides them there are our own style sheet and checked pictures, and no other way in for markup.
 */
public final class Html {

    private static final char REPLACEMENT = '\ufffd';
    private static final Pattern NAME = Pattern.compile("[a-z][A-Za-z0-9-]*");

    private final StringBuilder page = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Begins the page. */
    public Html() {
        page.append("<!DOCTYPE html>\n");
    }

    /**
     * Begins an element.
     *
     * @param element its name
     * @param attributes names and values in turn; values are escaped
     * @return this writer
     * @throws IllegalArgumentException if a name could carry markup
     */
    public Html open(String element, String... attributes) {
        start(element, attributes);
        page.append('>');
        open.push(element);
        return this;
    }

    /**
     * Ends the element begun last.
     *
     * @return this writer
     */
    public Html close() {
        page.append("</").append(open.pop()).append('>');
        return this;
    }

    /**
     * Ends the element begun last, and the line.
     *
     * @return this writer
     */
    public Html closeLine() {
        close();
        page.append('\n');
        return this;
    }

    /**
     * A text, escaped.
     *
     * @param text the text
     * @return this writer
     */
    public Html text(String text) {
        page.append(escaped(text));
        return this;
    }

    /**
     * A text of the user's inside ours, escaped; its direction does not touch what stands around it.
     *
     * @param text the text
     * @return this writer
     */
    public Html quoted(String text) {
        return open("bdi").text(text).close();
    }

    /**
     * An element with nothing but a text in it.
     *
     * @param element its name
     * @param text the text, escaped
     * @param attributes names and values in turn; values are escaped
     * @return this writer
     * @throws IllegalArgumentException if a name could carry markup
     */
    public Html leaf(String element, String text, String... attributes) {
        return open(element, attributes).text(text).closeLine();
    }

    /**
     * An element that never has content.
     *
     * @param element its name
     * @param attributes names and values in turn; values are escaped
     * @return this writer
     * @throws IllegalArgumentException if a name could carry markup
     */
    public Html empty(String element, String... attributes) {
        start(element, attributes);
        page.append(" />");
        return this;
    }

    /**
     * A checked picture.
     *
     * @param picture the picture
     * @return this writer
     */
    public Html picture(Svg picture) {
        page.append(picture.markup());
        return this;
    }

    /**
     * The style sheet of all our pages, inside the page.
     *
     * @param more what this page adds to it, possibly nothing
     * @return this writer
     */
    public Html style(String more) {
        page.append("<style>\n").append(styleSheet()).append(more).append("</style>\n");
        return this;
    }

    /**
     * The whole page.
     *
     * @return the markup
     * @throws IllegalStateException if an element is still open
     */
    public String end() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return page.toString();
    }

    /**
     * The style sheet of all our pages.
     *
     * @return the text of the style sheet
     */
    public static String styleSheet() {
        try (InputStream in = Html.class.getResourceAsStream("page.css")) {
            if (in == null) {
                throw new IllegalStateException("the style sheet is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void start(String element, String... attributes) {
        page.append('<').append(checked(element));
        for (int i = 0; i < attributes.length; i += 2) {
            page.append(' ')
                    .append(checked(attributes[i]))
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
    }

    private static String checked(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a name for markup: " + name);
        }
        return name;
    }

    /** The text with everything replaced that could be read as markup, and without characters that no page may hold. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> append(escaped, point));
        return escaped.toString();
    }

    private static void append(StringBuilder escaped, int point) {
        switch (point) {
            case '&' -> escaped.append("&amp;");
            case '<' -> escaped.append("&lt;");
            case '>' -> escaped.append("&gt;");
            case '"' -> escaped.append("&quot;");
            case '\'' -> escaped.append("&#39;");
            case '\r' -> escaped.append('\n');
            default -> escaped.appendCodePoint(allowed(point) ? point : REPLACEMENT);
        }
    }

    /** Neither a control character, nor half of a pair, nor one of the code points that are no characters. */
    private static boolean allowed(int point) {
        boolean control = point < 0x20 && point != '\t' && point != '\n' || point >= 0x7f && point < 0xa0;
        boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        boolean none = point >= 0xfdd0 && point <= 0xfdef || (point & 0xfffe) == 0xfffe;
        return !control && !half && !none;
    }
}

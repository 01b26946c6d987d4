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
final class Html {

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");

    private final StringBuilder page = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Begins the page. */
    Html() {
        page.append("<!DOCTYPE html>\n");
    }

    /** Begins an element; attributes are names and values in turn. */
    Html open(String element, String... attributes) {
        start(element, attributes);
        page.append('>');
        open.push(element);
        return this;
    }

    /** Ends the element begun last. */
    Html close() {
        page.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Ends the element begun last, and the line. */
    Html closeLine() {
        close();
        page.append('\n');
        return this;
    }

    /** A text, escaped. */
    Html text(String text) {
        page.append(Escaped.of(text));
        return this;
    }

    /** A text of the user's inside ours, escaped; its direction does not touch what stands around it. */
    Html quoted(String text) {
        return open("bdi").text(text).close();
    }

    /** An element with nothing but a text in it. */
    Html leaf(String element, String text, String... attributes) {
        return open(element, attributes).text(text).closeLine();
    }

    /** An element that never has content. */
    Html empty(String element, String... attributes) {
        start(element, attributes);
        page.append(" />");
        return this;
    }

    /** A checked picture. */
    Html picture(Svg picture) {
        page.append(picture.markup());
        return this;
    }

    /** The style sheet of the report. */
    Html style() {
        page.append("<style>\n").append(styleSheet()).append("</style>\n");
        return this;
    }

    /** The whole page. */
    String end() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return page.toString();
    }

    static String styleSheet() {
        try (InputStream in = Html.class.getResourceAsStream("report.css")) {
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
                    .append(Escaped.of(attributes[i + 1]))
                    .append('"');
        }
    }

    private static String checked(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("not a name for markup: " + name);
        }
        return name;
    }
}

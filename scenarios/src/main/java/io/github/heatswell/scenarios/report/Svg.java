package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * A picture that may be embedded in a page: one SVG element of shapes and words, without anything that acts or that refers
 * to the outside, with ids that begin with a prefix of its own.
 */
public final class Svg {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final Set<String> ELEMENTS = Set.of(
            "svg",
            "title",
            "desc",
            "defs",
            "g",
            "clipPath",
            "path",
            "rect",
            "line",
            "polyline",
            "polygon",
            "circle",
            "ellipse",
            "text",
            "tspan",
            "pattern");

    private final String markup;

    private Svg(String markup) {
        this.markup = markup;
    }

    /**
     * Checks a picture.
     *
     * @param source the markup; it may begin as a file of its own does, but without a document type
     * @param alternative what the picture shows, for those who cannot see it
     * @param prefix what its ids shall begin with
     * @return the picture, ready to stand inside a page
     * @throws IllegalArgumentException if it is not such a picture
     */
    public static Svg of(String source, String alternative, String prefix) {
        Copy copy = new Copy(alternative, prefix);
        try {
            SAXParserFactory factory = SAXParserFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            SAXParser parser = factory.newSAXParser();
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", copy);
            parser.parse(new InputSource(new StringReader(source)), copy);
        } catch (SAXException e) {
            throw new IllegalArgumentException("a picture must be one SVG element: " + e.getMessage(), e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML support", e);
        }
        return new Svg(copy.markup.toString());
    }

    /** The element alone. */
    String markup() {
        return markup;
    }

    /** Copies what is read, and refuses what must not be copied. */
    private static final class Copy extends DefaultHandler2 {
        private final String alternative;
        private final String prefix;
        private final StringBuilder markup = new StringBuilder();
        /** Whether a start tag still lacks its end, as its element may be empty. */
        private boolean open;

        Copy(String alternative, String prefix) {
            this.alternative = alternative;
            this.prefix = prefix;
        }

        @Override
        public void startElement(String namespace, String name, String written, Attributes attributes) {
            if (!NAMESPACE.equals(namespace) || !ELEMENTS.contains(name)) {
                throw new IllegalArgumentException("a picture must not contain the element " + written);
            }
            boolean root = markup.isEmpty();
            closeTag();
            markup.append('<').append(name);
            open = true;
            if (root) {
                append("xmlns", NAMESPACE);
                append("role", "img");
                append("aria-label", alternative);
            }
            for (int i = 0; i < attributes.getLength(); i++) {
                String key = attributes.getQName(i);
                if (!root || !key.equals("role") && !key.equals("aria-label")) {
                    append(key, checked(key, attributes.getValue(i)));
                }
            }
        }

        private String checked(String name, String value) {
            if (name.startsWith("on") || name.endsWith("href") || name.equals("style")) {
                throw new IllegalArgumentException("a picture must not contain the attribute " + name);
            }
            if (name.equals("id") || name.equals("aria-describedby") || name.equals("aria-labelledby")) {
                return prefix + value;
            }
            if (!value.contains("url(")) {
                return value;
            }
            if (!value.matches("url\\(#[\\w-]+\\)")) {
                throw new IllegalArgumentException("a picture must not refer to " + value);
            }
            return value.replace("#", "#" + prefix);
        }

        private void append(String name, String value) {
            markup.append(' ')
                    .append(name)
                    .append("=\"")
                    .append(Html.escaped(value))
                    .append('"');
        }

        private void closeTag() {
            if (open) {
                markup.append('>');
                open = false;
            }
        }

        @Override
        public void endElement(String namespace, String name, String written) {
            if (open) {
                markup.append("/>");
                open = false;
            } else {
                markup.append("</").append(name).append('>');
            }
        }

        @Override
        public void characters(char[] text, int start, int length) {
            closeTag();
            markup.append(Html.escaped(new String(text, start, length)));
        }

        // Where these end is another matter in HTML than in XML.

        @Override
        public void comment(char[] text, int start, int length) {
            throw onlyElements();
        }

        @Override
        public void processingInstruction(String target, String text) {
            throw onlyElements();
        }

        private static IllegalArgumentException onlyElements() {
            return new IllegalArgumentException("a picture must contain elements and text only");
        }
    }
}

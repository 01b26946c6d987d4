package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A picture that may stand inside a page: one SVG element of shapes and words, without anything that acts or that refers
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

    private final String prefix;
    private final String markup;

    private Svg(String prefix, String source, String alternative) {
        this.prefix = prefix;
        Element root = parse(source);
        check(root);
        root.setAttribute("role", "img");
        root.setAttribute("aria-label", Escaped.clean(alternative));
        this.markup = written(root);
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
        return new Svg(prefix, source, alternative);
    }

    /** The element alone. */
    String markup() {
        return markup;
    }

    private static Element parse(String source) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            factory.setCoalescing(true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            Document document = builder.parse(new InputSource(new StringReader(source)));
            return document.getDocumentElement();
        } catch (SAXException e) {
            throw new IllegalArgumentException("a picture must be one SVG element: " + e.getMessage(), e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML support", e);
        }
    }

    private void check(Element element) {
        if (!NAMESPACE.equals(element.getNamespaceURI()) || !ELEMENTS.contains(element.getLocalName())) {
            throw new IllegalArgumentException("a picture must not contain the element " + element.getTagName());
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            check((Attr) attributes.item(i));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                check(inner);
            } else if (child.getNodeType() != Node.TEXT_NODE) {
                // Where such a thing ends is another matter in HTML than in XML.
                throw new IllegalArgumentException("a picture must contain elements and text only");
            }
        }
    }

    private void check(Attr attribute) {
        String name = attribute.getName();
        String value = attribute.getValue();
        if (name.startsWith("on") || name.endsWith("href") || name.equals("style")) {
            throw new IllegalArgumentException("a picture must not contain the attribute " + name);
        }
        if (name.equals("id")) {
            attribute.setValue(prefix + value);
        } else if (name.equals("aria-describedby") || name.equals("aria-labelledby")) {
            attribute.setValue(prefix + value);
        } else if (value.contains("url(")) {
            if (!value.matches("url\\(#[\\w-]+\\)")) {
                throw new IllegalArgumentException("a picture must not refer to " + value);
            }
            attribute.setValue(value.replace("#", "#" + prefix));
        }
    }

    private static String written(Element root) {
        try {
            Transformer transformer = TransformerFactory.newDefaultInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            transformer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            StringWriter text = new StringWriter();
            transformer.transform(new DOMSource(root), new StreamResult(text));
            return text.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("this Java cannot write XML", e);
        }
    }
}

package io.github.heatswell.scenarios.release;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** An element of XML, with its children by name. */
record Xml(Element element) {

    static Xml read(String text) throws IOException {
        try {
            return new Xml(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)))
                    .getDocumentElement());
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    String name() {
        return element.getTagName();
    }

    List<Xml> children() {
        List<Xml> children = new ArrayList<>();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element found) {
                children.add(new Xml(found));
            }
        }
        return children;
    }

    /** The children of that name; with a path, those of the children before. */
    List<Xml> all(String... path) {
        List<Xml> found = List.of(this);
        for (String step : path) {
            found = found.stream()
                    .flatMap(one -> one.children().stream())
                    .filter(child -> child.name().equals(step))
                    .toList();
        }
        return found;
    }

    /** The text of the first child of that name, empty where there is none. */
    String text(String... path) {
        Optional<Xml> first = all(path).stream().findFirst();
        return first.map(found -> found.element.getTextContent().trim()).orElse("");
    }
}

package io.github.heatswell.charts.drawing;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.zip.CRC32;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Attr;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Writes a sheet as an SVG element that scales, names itself to screen readers and falls back on any font. */
final class SvgWriter {

    private static final String SVG = "http://www.w3.org/2000/svg";
    /** Families of like width first, so that words keep the room they were measured for. */
    private static final String FAMILIES = "'DejaVu Sans', Verdana, 'Bitstream Vera Sans', sans-serif";

    /** How an attribute begins that refers to an id. */
    private static final String URL = "url(#";

    private final Sheet sheet;
    private final CRC32 sum = new CRC32();
    /** Ids and what refers to them. */
    private final List<Attr> ids = new ArrayList<>();

    SvgWriter(Sheet sheet) {
        this.sheet = sheet;
    }

    void write(Appendable out) throws IOException {
        Document document = newDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setPrecision(2);
        context.setComment(null);
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension((int) Math.ceil(sheet.width()), (int) Math.ceil(sheet.height())));
        sheet.draw(g);
        Element root = g.getRoot();
        dress(root);
        StringWriter text = new StringWriter();
        g.stream(root, text, false, false);
        // Without the declarations that may stand only at the start of a file.
        String file = text.toString();
        out.append(file.substring(file.indexOf("<svg")).strip()).append("\n");
    }

    private static Document newDocument() throws IOException {
        try {
            return DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException impossible) {
            throw new IOException("this Java has no XML support", impossible);
        }
    }

    private void dress(Element root) {
        root.removeAttribute("width");
        root.removeAttribute("height");
        root.setAttribute("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", sheet.width(), sheet.height()));
        root.setAttribute("role", "img");
        root.setAttribute("aria-label", sheet.name());
        root.setAttribute("aria-describedby", "desc");
        Element description = text(root, "desc", sheet.description());
        description.setAttribute("id", "desc");
        root.insertBefore(description, root.getFirstChild());
        root.insertBefore(text(root, "title", sheet.name()), root.getFirstChild());
        clean(root);
        String prefix = String.format(Locale.ROOT, "hs%08x-", sum.getValue());
        for (Attr id : ids) {
            String value = id.getValue();
            id.setValue(value.startsWith(URL) ? URL + prefix + value.substring(URL.length()) : prefix + value);
        }
    }

    private static Element text(Element root, String name, String content) {
        Document document = root.getOwnerDocument();
        Element element = document.createElementNS(root.getNamespaceURI(), name);
        element.appendChild(document.createTextNode(content));
        return element;
    }

    /**
     * Names the fonts, and collects the ids and a sum of everything: ids begin with a prefix of the picture's own, the same
     * whenever and wherever it is drawn, since two pictures may stand in one page.
     */
    private void clean(Node node) {
        if (node instanceof Element element) {
            if (!element.getAttribute("font-family").isEmpty()) {
                element.setAttribute("font-family", FAMILIES);
            }
            if (element.getAttribute("id").equals("genericDefs")) {
                element.removeAttribute("id");
            }
            sum(element.getTagName());
            NamedNodeMap attributes = element.getAttributes();
            for (int i = 0; i < attributes.getLength(); i++) {
                Attr attribute = (Attr) attributes.item(i);
                String name = attribute.getName();
                sum(name);
                sum(attribute.getValue());
                if (name.equals("id")
                        || name.equals("aria-describedby")
                        || attribute.getValue().startsWith(URL)) {
                    ids.add(attribute);
                }
            }
        } else {
            sum(node.getNodeValue());
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            clean(child);
        }
    }

    private void sum(String text) {
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        sum.update(0);
    }
}

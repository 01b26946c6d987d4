package io.github.heatswell.charts.drawing;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import java.util.Locale;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Writes a sheet as an SVG element that scales, names itself to screen readers and falls back on any font. */
final class SvgWriter {

    private static final String SVG = "http://www.w3.org/2000/svg";
    /** Families of like width first, so that words keep the room they were measured for. */
    private static final String FAMILIES = "'DejaVu Sans', Verdana, 'Bitstream Vera Sans', sans-serif";

    private final Sheet sheet;
    /** Ids begin with a prefix of the picture's own, since two pictures may stand in one page. */
    private final String prefix;

    SvgWriter(Sheet sheet) {
        this.sheet = sheet;
        this.prefix = sheet.fingerprint();
    }

    void write(Appendable out) throws IOException {
        Document document = newDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String kind) {
                return prefix + "-" + super.generateID(kind);
            }
        });
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
        root.setAttribute("aria-describedby", prefix + "-desc");
        Element description = text(root, "desc", sheet.description());
        description.setAttribute("id", prefix + "-desc");
        root.insertBefore(description, root.getFirstChild());
        root.insertBefore(text(root, "title", sheet.name()), root.getFirstChild());
        clean(root);
    }

    private static Element text(Element root, String name, String content) {
        Document document = root.getOwnerDocument();
        Element element = document.createElementNS(root.getNamespaceURI(), name);
        element.appendChild(document.createTextNode(content));
        return element;
    }

    private static void clean(Node node) {
        if (node instanceof Element element) {
            if (!element.getAttribute("font-family").isEmpty()) {
                element.setAttribute("font-family", FAMILIES);
            }
            if (element.getAttribute("id").equals("genericDefs")) {
                element.removeAttribute("id");
            }
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            clean(child);
        }
    }
}

package io.github.heatswell.charts.drawing;

import java.awt.Dimension;
import java.io.IOException;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Writes a sheet as one SVG element that can stand alone or inside a page, next to others. */
final class SvgWriter {

    private static final String SVG = "http://www.w3.org/2000/svg";

    private final Drawn sheet;

    SvgWriter(Drawn sheet) {
        this.sheet = sheet;
    }

    void write(Appendable out) throws IOException {
        String prefix = sheet.fingerprint();
        Document document = newDocument();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setIDGenerator(new PrefixedIds(prefix));
        context.setPrecision(2);
        context.setComment(null);
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension((int) Math.ceil(sheet.width()), (int) Math.ceil(sheet.height())));
        sheet.draw(g);
        Element root = g.getRoot();
        new SvgDressing(document, prefix).dress(root, sheet);
        StringWriter text = new StringWriter();
        g.stream(root, text, false, false);
        out.append(SvgDressing.elementOnly(text.toString()));
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
}

package io.github.heatswell.charts.drawing;

import java.util.Locale;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Turns what the generator made into an element that scales, names itself to screen readers and falls back on any font. */
final class SvgDressing {

    /** Families of like width first, so that words keep the room they were measured for. */
    private static final String FAMILIES = "'DejaVu Sans', Verdana, 'Bitstream Vera Sans', sans-serif";

    private final Document document;
    private final String prefix;

    SvgDressing(Document document, String prefix) {
        this.document = document;
        this.prefix = prefix;
    }

    void dress(Element root, Drawn sheet) {
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

    /** The element without the declarations that may stand only at the start of a file. */
    static String elementOnly(String file) {
        return file.substring(file.indexOf("<svg")).strip() + "\n";
    }

    private Element text(Element root, String name, String content) {
        Element element = document.createElementNS(root.getNamespaceURI(), name);
        element.appendChild(document.createTextNode(content));
        return element;
    }

    private void clean(Node node) {
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

package io.github.heatswell.charts;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Looks at finished pictures. */
final class Pictures {

    private Pictures() {}

    static BufferedImage png(byte[] bytes) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    static int colours(BufferedImage image) {
        Set<Integer> seen = new HashSet<>();
        for (int x = 0; x < image.getWidth(); x += 5) {
            for (int y = 0; y < image.getHeight(); y += 5) {
                seen.add(image.getRGB(x, y));
            }
        }
        return seen.size();
    }

    /** Whether nothing was drawn in the outermost pixels: words that ran out of the picture would be. */
    static boolean rimIsFree(BufferedImage image) {
        int white = 0xFFFFFFFF;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int d = 0; d < 8; d++) {
                if (image.getRGB(d, y) != white || image.getRGB(image.getWidth() - 1 - d, y) != white) {
                    return false;
                }
            }
        }
        for (int x = 0; x < image.getWidth(); x++) {
            for (int d = 0; d < 8; d++) {
                if (image.getRGB(x, d) != white || image.getRGB(x, image.getHeight() - 1 - d) != white) {
                    return false;
                }
            }
        }
        return true;
    }

    static Document svg(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    static String words(Document document) {
        StringBuilder words = new StringBuilder();
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            words.append(texts.item(i).getTextContent()).append('\n');
        }
        return words.toString();
    }
}

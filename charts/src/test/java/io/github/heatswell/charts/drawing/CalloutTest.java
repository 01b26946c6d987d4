package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.Gutter.Callout;
import io.github.heatswell.charts.picture.Axis;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What leads from a curve to its name cannot be taken for the curve: it is grey, thin, and begins beyond the plot. */
class CalloutTest {

    private static final int EDGE = 60;
    private static final int SAMPLE = 8;
    private static final int NEARLY_GREY = 24;

    private static final Axis AXIS = new Axis("any", 0, 1, 1);
    private static final Frame FRAME = new Frame(new Box(10, 10, EDGE - 10, 100), AXIS, AXIS);

    @Test
    void leadersAreThinGreyLinesOfTheirOwn() {
        BufferedImage image = drawn(20, 80);
        int inked = 0;
        for (int x = 0; x < EDGE + Gutter.LEAD - SAMPLE; x++) {
            int thick = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                Color color = new Color(image.getRGB(x, y));
                int most = Math.max(color.getRed(), Math.max(color.getGreen(), color.getBlue()));
                int least = Math.min(color.getRed(), Math.min(color.getGreen(), color.getBlue()));
                assertTrue(most - least < NEARLY_GREY, "the curve's colour at " + x + ", " + y + ": " + color);
                thick += most < 200 ? 1 : 0;
            }
            assertTrue(x > EDGE + 2 || thick == 0, "it touches the curve at " + x);
            inked += thick > 0 ? 1 : 0;
        }
        assertTrue(inked > 5, "there is a leader");
    }

    @Test
    void theSampleOfTheLineStandsUprightBeforeItsName() {
        BufferedImage image = drawn(60, 58);
        int x = (int) (EDGE + Gutter.LEAD - 6);
        assertEquals(Color.RED, new Color(image.getRGB(x, 64)));
    }

    private static BufferedImage drawn(double at, double top) {
        BufferedImage image = new BufferedImage(300, 140, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Sheet.prepare(g, 300, 140);
        TextBlock words = TextBlock.of("a run", Type.LABEL, 100);
        new Callout(at, Callout.Side.WITHIN, words, Optional.of(new BasicStroke(4)), Color.RED)
                .draw(g, FRAME.area(), top);
        g.dispose();
        return image;
    }
}

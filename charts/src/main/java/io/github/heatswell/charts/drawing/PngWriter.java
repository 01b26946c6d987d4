package io.github.heatswell.charts.drawing;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes a sheet as PNG. */
final class PngWriter {

    private static final int SCALE = 2;

    private PngWriter() {}

    static void write(Drawn sheet, OutputStream out) throws IOException {
        int width = (int) Math.ceil(SCALE * sheet.width());
        int height = (int) Math.ceil(SCALE * sheet.height());
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(SCALE, SCALE);
        sheet.draw(g);
        g.dispose();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        // Not ImageIO.write, which would put a temporary file in between.
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(image);
        } finally {
            writer.dispose();
        }
    }
}

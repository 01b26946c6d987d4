package io.github.heatswell.charts.drawing;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes an image as PNG (W3C, Portable Network Graphics, Third Edition; ISO/IEC 15948): eight bits for each of red, green
 * and blue, rows unfiltered. Java's own writer tries five filters on every row, which takes twice the time and, for pictures
 * that are mostly paper, ends in larger files.
 */
final class PngWriter {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    /** Bits of a sample, red green and blue, and the only methods of compression, filtering and interlacing none. */
    private static final byte[] KIND = {8, 2, 0, 0, 0};

    private static final int BUFFER = 1 << 15;
    private static final int WHITE = 0xffffff;

    private PngWriter() {}

    /** Writes an image of the type {@link BufferedImage#TYPE_INT_RGB}. The stream stays open. */
    static void write(BufferedImage image, OutputStream out) throws IOException {
        DataOutputStream data = new DataOutputStream(out);
        data.write(SIGNATURE);
        ByteBuffer header = ByteBuffer.allocate(13);
        header.putInt(image.getWidth()).putInt(image.getHeight()).put(KIND);
        chunk(data, "IHDR", header.array());
        chunk(data, "IDAT", rows(image));
        chunk(data, "IEND", new byte[0]);
        data.flush();
    }

    private static byte[] rows(BufferedImage image) throws IOException {
        ByteArrayOutputStream rows = new ByteArrayOutputStream(BUFFER);
        try (DeflaterOutputStream out = new DeflaterOutputStream(rows)) {
            int[] pixels = new int[image.getWidth()];
            // The first byte of a row, 0, says that it is not filtered. Most of a picture is paper.
            byte[] paper = new byte[1 + 3 * pixels.length];
            Arrays.fill(paper, 1, paper.length, (byte) 0xff);
            byte[] row = new byte[paper.length];
            for (int y = 0; y < image.getHeight(); y++) {
                image.getRaster().getDataElements(0, y, pixels.length, 1, pixels);
                System.arraycopy(paper, 0, row, 0, row.length);
                for (int x = 0; x < pixels.length; x++) {
                    int pixel = pixels[x] & WHITE;
                    if (pixel != WHITE) {
                        row[1 + 3 * x] = (byte) (pixel >> 16);
                        row[2 + 3 * x] = (byte) (pixel >> 8);
                        row[3 + 3 * x] = (byte) pixel;
                    }
                }
                out.write(row);
            }
        }
        return rows.toByteArray();
    }

    private static void chunk(DataOutputStream data, String name, byte[] content) throws IOException {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(type);
        sum.update(content);
        data.writeInt(content.length);
        data.write(type);
        data.write(content);
        data.writeInt((int) sum.getValue());
    }
}

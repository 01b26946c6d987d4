package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngTest {

    @Test
    void drawsEverySituation() throws IOException {
        for (Map.Entry<String, Chart> chart : Gallery.charts(UnitSystem.US).entrySet()) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png(chart.getValue())));
            assertEquals(2080, image.getWidth(), chart.getKey());
            assertTrue(image.getHeight() >= 1400, chart.getKey());
            assertTrue(Pictures.colours(image) > 50, chart.getKey() + " is blank");
            assertTrue(Pictures.rimIsFree(image), chart.getKey() + " is clipped");
        }
    }

    @Test
    void drawsEveryDay() throws IOException {
        Map<String, RunResult> days = new LinkedHashMap<>(Houses.days());
        days.put("month", Houses.month());
        for (Map.Entry<String, RunResult> day : days.entrySet()) {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(png(Chart.of(day.getValue(), UnitSystem.SI))));
            assertTrue(Pictures.colours(image) > 50, day.getKey() + " is blank");
            assertTrue(Pictures.rimIsFree(image), day.getKey() + " is clipped");
        }
    }

    @Test
    void drawsTheSameBytesTwice() throws IOException {
        Chart chart = Chart.of(Gallery.dripping(), UnitSystem.SI);
        assertArrayEquals(png(chart), png(chart));
    }

    @Test
    void growsWithItsWords() throws IOException {
        Chart small = Chart.comparing(Gallery.six(), UnitSystem.SI).withSize(720, 520);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png(small)));
        assertEquals(1440, image.getWidth());
        assertTrue(image.getHeight() > 1040, "high enough for all names: " + image.getHeight());
        assertTrue(Pictures.rimIsFree(image));
    }

    private static byte[] png(Chart chart) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        chart.writePng(out);
        return out.toByteArray();
    }
}

package io.github.heatswell.charts.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Points.PointCollector;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PointCollectorTest {

    @Test
    void keepsFirstLowestHighestAndLastOfAColumnInTheirOrder() {
        PointCollector collector = new PointCollector(0, 2, 2);
        double[] values = {3, 5, 4, 9, 4, 1, 2, 3};
        for (int i = 0; i < values.length; i++) {
            collector.add(i * 0.1, values[i]);
        }
        collector.add(1.5, 7);
        assertArrayEquals(new double[] {3, 9, 1, 3, 7}, collector.points().toArrays()[1]);
    }

    @Test
    void keepsShortLinesWhole() {
        PointCollector collector = new PointCollector(0, 10, 1000);
        for (int i = 0; i <= 10; i++) {
            collector.add(i, i * i);
        }
        assertEquals(11, collector.points().count());
    }

    @Test
    void keepsVerticalEdges() {
        PointCollector collector = new PointCollector(0, 10, 100);
        collector.add(0, 4);
        collector.add(5, 7);
        collector.add(5, 6);
        collector.add(10, 6);
        assertArrayEquals(new double[] {4, 7, 6, 6}, collector.points().toArrays()[1]);
    }

    @Test
    void losesNoExtremeOfALongLineAndStaysSmall() {
        Random random = new Random(20_261_125);
        int count = 500_000;
        int columns = 1_000;
        PointCollector collector = new PointCollector(0, count, columns);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double value = random.nextGaussian();
            lowest = Math.min(lowest, value);
            highest = Math.max(highest, value);
            collector.add(i, value);
        }
        Points points = collector.points();
        assertEquals(lowest, points.lowest());
        assertEquals(highest, points.highest());
        assertTrue(points.count() <= 4 * columns, "kept " + points.count());
    }

    @Test
    void needsRoomForColumns() {
        assertThrows(IllegalArgumentException.class, () -> new PointCollector(1, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> new PointCollector(0, 1, 0));
    }
}

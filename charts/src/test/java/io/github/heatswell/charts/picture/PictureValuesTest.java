package io.github.heatswell.charts.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureValuesTest {

    @ParameterizedTest
    @CsvSource({"1, 1, 1", "2, 1, 1", "0, 1, 0", "0, 1, -1", "NaN, 1, 1", "0, NaN, 1", "0, 1, NaN", "0, Infinity, 1"})
    void anAxisRunsForward(double from, double to, double tick) {
        assertThrows(IllegalArgumentException.class, () -> new Axis("x", from, to, tick));
    }

    @Test
    void anAxisHoldsItsEnds() {
        Axis axis = new Axis("x", 1, 2, 0.5);
        assertTrue(axis.holds(1) && axis.holds(2));
        assertFalse(axis.holds(0.99) || axis.holds(2.01));
    }

    @Test
    void aLineNeedsPointsInTheOrderOfTime() {
        assertThrows(IllegalArgumentException.class, () -> new Points(new double[0], new double[0]));
        assertThrows(IllegalArgumentException.class, () -> new Points(new double[1], new double[2]));
        assertThrows(IllegalArgumentException.class, () -> Points.overTime(new double[] {1, 0}, new double[2]));
        assertThrows(
                IllegalArgumentException.class, () -> Points.overTime(new double[] {0, Double.NaN}, new double[2]));
    }

    @Test
    void aLineDoesNotChangeWithItsSource() {
        double[] times = {0, 1};
        Points points = new Points(times, new double[] {5, 6});
        times[1] = 9;
        points.toArrays()[1][0] = 99;
        assertEquals(1, points.across(1));
        assertEquals(5, points.up(0));
    }

    @Test
    void textFitsOnOneLineAndInXml() {
        assertEquals("a b c", PlainText.of("  a\tb\r\n\u0000 c\u2028 "));
        assertEquals("x\uFFFDy\uFFFDz", PlainText.of("x\uD800y\uFFFEz"));
        assertEquals("日本 😀", PlainText.of("日本 😀"));
        assertEquals("", PlainText.of(" \n "));
    }

    @ParameterizedTest
    @CsvSource({"719, 700", "2401, 700", "1000, 519", "1000, 2401", "-1, -1"})
    void aPictureHasABearableSize(int width, int height) {
        assertThrows(IllegalArgumentException.class, () -> new Size(width, height));
    }
}

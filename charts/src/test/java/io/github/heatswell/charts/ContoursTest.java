package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Points;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ContoursTest {

    private static final double[] PLACES = {0, 1, 2, 3, 4};

    private interface Field {
        double at(double x, double y);
    }

    private static Contours of(Field field) {
        double[][] values = new double[PLACES.length][PLACES.length];
        for (int i = 0; i < PLACES.length; i++) {
            for (int j = 0; j < PLACES.length; j++) {
                values[i][j] = field.at(PLACES[j], PLACES[i]);
            }
        }
        return new Contours(PLACES, PLACES, values);
    }

    /** Closed form: of a slope the contour is a straight line, and the patch a trapezium. */
    @Test
    void slopeHasAStraightContour() {
        Contours slope = of((x, y) -> x + 2 * y);
        List<Points> lines = slope.lines(5);
        assertEquals(1, lines.size());
        Points line = lines.get(0);
        for (int i = 0; i < line.count(); i++) {
            assertEquals(5, line.across(i) + 2 * line.up(i), 1e-12); // rounding
        }
        assertEquals(1, slope.patches(5).size());
        assertEquals(16 - 6, area(slope.patches(5)), 1e-12); // below the line from (0, 2.5) to (4, 0.5): 4 x 1.5
    }

    @Test
    void nothingAndEverything() {
        Contours slope = of((x, y) -> x);
        assertTrue(slope.patches(4.5).isEmpty() && slope.lines(4.5).isEmpty());
        assertEquals(16, area(slope.patches(-1)), 1e-12); // rounding
        assertTrue(slope.lines(-1).isEmpty(), "the rim of the grid is no contour");
    }

    @Test
    void summitHasAClosedContourAndAHollowAHole() {
        Field hill = (x, y) -> 10 - Math.hypot(x - 2, y - 2);
        assertEquals(1, of(hill).lines(8.5).size());
        assertTrue(area(of(hill).patches(8.5)) > 4);
        List<Points> around = of((x, y) -> -hill.at(x, y)).patches(-8.5);
        assertEquals(2, around.size());
        assertEquals(16, area(around) + area(of(hill).patches(8.5)), 1e-9); // what one has the other has not
    }

    @Test
    void saddlesComeApartOrTogetherButNeverFail() {
        Contours saddle = of((x, y) -> (x - 1.5) * (y - 1.5));
        for (double level = -3; level < 3; level += 0.25) {
            assertTrue(area(saddle.patches(level)) >= 0);
        }
        Contours board = of((x, y) -> (x + y) % 2);
        assertEquals(8, area(board.patches(0.5)), 1e-9); // half of everything
    }

    @Test
    void flatGroundAtTheLevelIsWithin() {
        assertEquals(16, area(of((x, y) -> 7).patches(7)), 1e-12); // rounding
        assertTrue(of((x, y) -> 7).lines(7).isEmpty());
    }

    @Test
    void bandsEndOnRoundNumbersFinestNearTheValve() {
        MapPicture.PressureBands bands =
                new MapPicture.PressureBands(new double[][] {{4.3, 20}}, OptionalDouble.of(7), "bar");
        assertEquals(List.of(5.0, 6.0, 7.0, 8.0, 10.0, 15.0), bands.levels());
        assertEquals("below 5 bar", bands.name(0));
        assertEquals("8 to 10 bar", bands.name(4));
        assertEquals("15 bar and more", bands.name(6));
        assertTrue(new MapPicture.PressureBands(new double[][] {{4.3, 4.31}}, OptionalDouble.empty(), "bar")
                .levels()
                .isEmpty());
    }

    private static double area(List<Points> rims) {
        double twice = 0;
        for (Points rim : rims) {
            for (int i = 0; i < rim.count(); i++) {
                int next = (i + 1) % rim.count();
                twice += rim.across(i) * rim.up(next) - rim.across(next) * rim.up(i);
            }
        }
        return twice / 2;
    }
}

package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bars;
import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.charts.picture.Spot;
import io.github.heatswell.charts.picture.Tint;
import io.github.heatswell.charts.picture.Trail;
import java.awt.Color;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where the words of a plane stand: never on each other, never outside. */
class PlaneLayoutTest {

    private static final Axis ACROSS = new Axis("across", 0, 10, 2);
    private static final Axis UP = new Axis("up", 0, 10, 2.5);
    private static final Frame FRAME = new Frame(new Box(60, 100, 600, 400), ACROSS, UP);
    private static final Trail LOWER_HALF = new Trail(new double[] {0, 10, 10, 0}, new double[] {0, 0, 5, 5});

    private static Plane plane(List<PlaneLine> lines, List<Spot> spots) {
        Tint drips = new Tint(Tint.Role.DRIPS, 0, "the valve drips", "drips here", List.of(LOWER_HALF));
        return new Plane(ACROSS, UP, "", List.of(drips), lines, spots);
    }

    @Test
    void wordsKeepApartAndInside() {
        List<PlaneLine> lines = new ArrayList<>();
        for (int i = 1; i < 10; i++) {
            lines.add(new PlaneLine(PlaneLine.Role.CONTOUR, "", i + " bar", Trail.straight(0, i, 10, i)));
        }
        List<Spot> spots = List.of(
                new Spot(Spot.Role.CHIEF, 5, 5, "as it is: a vessel of some size, peak 5.5 bar"),
                new Spot(Spot.Role.READING, 10, 10, "in the corner"),
                new Spot(Spot.Role.READING, 0, 0, "in the other corner"));
        List<PlaneWords.Placed> words = PlaneWords.of(plane(lines, spots), FRAME);
        assertEquals(13, words.size());
        for (int i = 0; i < words.size(); i++) {
            Box box = words.get(i).box();
            assertTrue(FRAME.area().holds(box), words.get(i).text().text() + " " + box);
            for (int j = 0; j < i; j++) {
                assertFalse(box.meets(words.get(j).box()), i + " lies on " + j);
            }
        }
        assertTrue(words.get(3).box().y() > FRAME.y(5), "inside the patch");
    }

    @Test
    void patchTooSmallForItsWordsLeavesThemToTheKey() {
        Trail tiny = new Trail(new double[] {0, 0.3, 0.3}, new double[] {0, 0, 0.3});
        Tint drips = new Tint(Tint.Role.DRIPS, 0, "the valve drips", "drips here", List.of(tiny));
        Plane plane = new Plane(ACROSS, UP, "", List.of(drips), List.of(), List.of());
        assertTrue(PlaneWords.of(plane, FRAME).isEmpty());
    }

    @Test
    void namesOfUprightLinesStandInRows() {
        List<PlaneLine> lines = List.of(
                upright(5, "the set pressure of the relief valve, 7.0 bar"),
                upright(5.2, "the working pressure of the tank, 10.0 bar"),
                upright(10, "the last of them, at the very edge of the plot"));
        List<UprightNames.Named> names =
                UprightNames.of(plane(lines, List.of()), FRAME).names();
        assertEquals(3, names.size());
        for (int i = 0; i < 3; i++) {
            assertTrue(names.get(i).box().right() <= FRAME.area().right() + 1e-9);
            for (int j = 0; j < i; j++) {
                assertFalse(names.get(i).box().meets(names.get(j).box()), i + " lies on " + j);
            }
        }
    }

    private static PlaneLine upright(double x, String label) {
        return new PlaneLine(PlaneLine.Role.RELIEF_SET, "", label, Trail.straight(x, 0, x, 10));
    }

    @Test
    void hatchingStaysInsideItsPatch() {
        Tint half = new Tint(Tint.Role.DRIPS, 0, "", "", List.of(LOWER_HALF));
        for (int slope : new int[] {1, -1}) {
            PathIterator lines = PlaneShapes.hatching(half, FRAME, 12, slope).getPathIterator(null);
            double[] at = new double[6];
            double[] start = new double[2];
            int count = 0;
            for (; !lines.isDone(); lines.next()) {
                boolean ends = lines.currentSegment(at) == PathIterator.SEG_LINETO;
                assertTrue(FRAME.area().grownBy(1e-6).holds(new Box(at[0], at[1], 0, 0)));
                assertTrue(at[1] >= FRAME.y(5) - 1e-6, "below the upper half");
                if (ends) {
                    count++;
                    assertEquals(slope, Math.signum((start[1] - at[1]) * (at[0] - start[0])), "leans as asked");
                }
                start[0] = at[0];
                start[1] = at[1];
            }
            assertTrue(count > 40, count + " lines");
        }
    }

    /** The lightness by ITU-R BT.709 (from memory) falls from band to band, so that grey prints keep the order. */
    @Test
    void bandsGrowDarker() {
        double before = 256;
        for (int i = 0; i <= 50; i++) {
            Color color = PlaneInk.band(i / 50.0);
            double lightness = 0.2126 * color.getRed() + 0.7152 * color.getGreen() + 0.0722 * color.getBlue();
            assertTrue(lightness < before, "at " + i);
            before = lightness;
        }
    }

    @Test
    void sheetGrowsUntilKeyAndBarsFit() {
        List<Bars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            bars.add(new Bars.Bar("an input with quite a long name, number " + i, i / 40.0 - 0.5));
        }
        PlanePicture picture = new PlanePicture(
                new Size(720, 520),
                new Caption("", "title", "subtitle"),
                plane(List.of(), List.of()),
                Optional.of(new Bars("what matters", "how to read it", bars)));
        PlaneSheet sheet = new PlaneSheet(picture);
        assertTrue(sheet.columnBox().bottom() < sheet.height());
        assertTrue(sheet.columnBox().right() <= sheet.width() - SheetLayout.MARGIN + 1e-9);
        assertTrue(sheet.frame().area().right() < sheet.columnBox().x());
        assertTrue(sheet.description().contains("number 39 +0.4"), sheet.description());
    }

    @Test
    void barsSayTheirSign() {
        assertEquals("+0.62", BarList.signed(0.62));
        assertEquals("\u22120.05", BarList.signed(-0.05));
        assertEquals("0.00", BarList.signed(-0.001));
        assertThrows(IllegalArgumentException.class, () -> new Bars.Bar("x", 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Bars.Bar("x", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Trail(new double[1], new double[2]));
    }

    @Test
    void ticksStandAtMultiples() {
        assertEquals(
                List.of("0.0", "2.5", "5.0", "7.5", "10.0"),
                PlaneAxes.ticks(UP).stream().map(tick -> tick.name()).toList());
    }
}

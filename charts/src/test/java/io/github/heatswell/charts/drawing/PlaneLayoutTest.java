package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.Key.BarList;
import io.github.heatswell.charts.drawing.SheetLayout.UprightNames;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Bars;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import java.awt.Color;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the words of a single panel stand: never on each other, never outside. */
class PlaneLayoutTest {

    private static final Axis ACROSS = new Axis("across", 0, 10, 2);
    private static final Axis UP = new Axis("up", 0, 10, 2.5);
    private static final Frame FRAME = new Frame(new Box(60, 100, 600, 400), ACROSS, UP);
    private static final Points LOWER_HALF = new Points(new double[] {0, 10, 10, 0}, new double[] {0, 0, 5, 5});

    private static Panel panel(List<Curve> lines, List<Mark> marks) {
        Area drips = new Area(Area.Role.DRIPS, 0, "the valve drips", "drips here", List.of(LOWER_HALF));
        return new Panel(UP, List.of(drips), lines, List.of(), marks, List.of());
    }

    @Test
    void wordsKeepApartAndInside() {
        List<Curve> lines = new ArrayList<>();
        for (int i = 1; i < 10; i++) {
            lines.add(new Curve(Curve.Role.CONTOUR, "", i + " bar", Points.straight(0, i, 10, i)));
        }
        List<Mark> marks = List.of(
                new Mark(Mark.Kind.CHIEF, 5, 5, "as it is: a vessel of some size, peak 5.5 bar"),
                new Mark(Mark.Kind.READING, 10, 10, "in the corner"),
                new Mark(Mark.Kind.READING, 0, 0, "in the other corner"));
        List<FreeSpots.Placed> words = words(panel(lines, marks));
        assertEquals(13, words.size());
        for (int i = 0; i < words.size(); i++) {
            Box box = words.get(i).box();
            assertTrue(FRAME.area().holds(box), words.get(i).words().text() + " " + box);
            for (int j = 0; j < i; j++) {
                assertFalse(box.meets(words.get(j).box()), i + " lies on " + j);
            }
        }
        assertTrue(words.get(3).box().y() > FRAME.y(5), "inside the patch");
    }

    @Test
    void patchTooSmallForItsWordsLeavesThemToTheKey() {
        Points tiny = new Points(new double[] {0, 0.3, 0.3}, new double[] {0, 0, 0.3});
        Area drips = new Area(Area.Role.DRIPS, 0, "the valve drips", "drips here", List.of(tiny));
        Panel panel = new Panel(UP, List.of(drips), List.of(), List.of(), List.of(), List.of());
        assertTrue(words(panel).isEmpty());
    }

    private static List<FreeSpots.Placed> words(Panel panel) {
        Picture.Key key = new Picture.Key("", Optional.empty());
        PanelOverlay overlay = new PanelOverlay(panel, FRAME, new Key(panel, key, 900));
        return overlay.places(overlay.notes());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ": so many words that they take more than the one line the plot is wide enough for, and then some"
            })
    void namesOfUprightLinesStandInRows(String more) {
        List<Curve> lines = List.of(
                upright(5, "the set pressure of the relief valve, 7.0 bar" + more),
                upright(5.2, "the working pressure of the tank, 10.0 bar" + more),
                upright(10, "the last of them, at the very edge of the plot" + more));
        List<UprightNames.Named> names =
                UprightNames.of(panel(lines, List.of()), FRAME).names();
        assertEquals(3, names.size());
        for (int i = 0; i < 3; i++) {
            assertTrue(names.get(i).box().right() <= FRAME.area().right() + 1e-9);
            for (int j = 0; j < i; j++) {
                assertFalse(names.get(i).box().meets(names.get(j).box()), i + " lies on " + j);
            }
        }
    }

    private static Curve upright(double x, String label) {
        return new Curve(Curve.Role.RELIEF_SET, "", label, Points.straight(x, 0, x, 10));
    }

    @Test
    void hatchingStaysInsideItsPatch() {
        Area half = new Area(Area.Role.DRIPS, 0, "", "", List.of(LOWER_HALF));
        for (int slope : new int[] {1, -1}) {
            PathIterator lines = new Patches(half, FRAME).hatching(12, slope).getPathIterator(null);
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
            Color color = Ink.band(i / 50.0);
            double lightness = 0.2126 * color.getRed() + 0.7152 * color.getGreen() + 0.0722 * color.getBlue();
            assertTrue(lightness < before, "at " + i);
            before = lightness;
        }
    }

    @Test
    void sheetGrowsUntilKeyAndBarsFit() throws IOException {
        List<Bars.Bar> bars = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            bars.add(new Bars.Bar("an input with quite a long name, number " + i, i / 40.0 - 0.5));
        }
        Picture picture = new Picture(
                new Size(720, 520),
                new Caption("", "title", "subtitle"),
                ACROSS,
                panel(List.of(), List.of()),
                new Picture.Key("", Optional.of(new Bars("what matters", "how to read it", bars))));
        Sheet sheet = Sheet.of(picture);
        Box panels = sheet.layout().panels();
        Key column = sheet.layout().column().orElseThrow();
        assertTrue(panels.y() + column.height() < sheet.height());
        assertTrue(column.width() < sheet.layout().rightOfPanels());
        assertTrue(panels.right() <= sheet.width() - SheetLayout.MARGIN + 1e-9);
        assertTrue(sheet.description().contains("number 39 +0.4"), sheet.description());
    }

    @Test
    void barsSayTheirSign() {
        assertEquals("+0.62", BarList.signed(0.62));
        assertEquals("\u22120.05", BarList.signed(-0.05));
        assertEquals("0.00", BarList.signed(-0.001));
        assertThrows(IllegalArgumentException.class, () -> new Bars.Bar("x", 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Bars.Bar("x", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Points(new double[1], new double[2]));
    }

    @Test
    void ticksStandAtMultiples() {
        assertEquals(
                List.of("0.0", "2.5", "5.0", "7.5", "10.0"),
                UP.ticks().stream().map(tick -> tick.name()).toList());
    }
}

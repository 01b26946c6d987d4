package io.github.heatswell.charts.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.drawing.FreeSpots.Note;
import io.github.heatswell.charts.drawing.FreeSpots.Skyline;
import io.github.heatswell.charts.drawing.Gutter.Callout;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Points;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Where names and words stand: never on each other, never outside their room. */
class PanelLayoutTest {

    private static final Axis TIME = new Axis("time (min)", 0, 60, 10);
    private static final Axis PRESSURE = new Axis("gauge pressure (bar)", 4, 8, 1);
    private static final Frame FRAME = new Frame(new Box(60, 100, 700, 300), TIME, PRESSURE);
    private static final double GUTTER = 210;

    @Test
    void levelsOfOneValueBothKeepTheirNames() {
        Panel panel = panel(
                List.of(
                        new Level(Level.Kind.SUPPLY, 4.2, "4.2 bar", "supply"),
                        new Level(Level.Kind.PRECHARGE, 4.2, "4.2 bar", "vessel precharge")),
                List.of());
        Gutter gutter = new Gutter(panel, FRAME, GUTTER);
        List<Callout> callouts = gutter.callouts();
        assertEquals(
                List.of("4.2 bar supply", "4.2 bar vessel precharge"),
                callouts.stream()
                        .map(callout -> String.join(" ", callout.words().text()))
                        .toList());
        assertApart(callouts, gutter.tops(callouts));
    }

    @Test
    void levelsOffTheScaleAreNamedAtTheEdge() {
        Panel panel = panel(
                List.of(
                        new Level(Level.Kind.WORKING_PRESSURE, 10, "10.0 bar", "tank working pressure"),
                        new Level(Level.Kind.PRECHARGE, 1, "1.0 bar", "vessel precharge")),
                List.of());
        List<Callout> callouts = new Gutter(panel, FRAME, GUTTER).callouts();
        assertEquals(Callout.Side.ABOVE, callouts.get(0).side());
        assertEquals(Callout.Side.BELOW, callouts.get(1).side());
        assertTrue(String.join(" ", callouts.get(0).words().text()).endsWith("off the scale"));
    }

    @Test
    void manyLongNamesAreShortenedRatherThanOverlapped() {
        List<Level> levels = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            levels.add(new Level(
                    Level.Kind.RELIEF_SET,
                    7 + i * 0.01,
                    "7.0" + i + " bar",
                    "relief opens, the combined temperature and pressure valve number " + i));
        }
        Gutter gutter = new Gutter(panel(levels, List.of()), FRAME, GUTTER);
        List<Callout> callouts = gutter.callouts();
        assertEquals(12, callouts.size());
        assertApart(callouts, gutter.tops(callouts));
    }

    @Test
    void wordsKeepClearOfCurveMarksAndEachOther() {
        List<Mark> marks = List.of(
                new Mark(Mark.Kind.HAZARD, 30, 6, "test pressure reached after 30 min: the run ends"),
                new Mark(Mark.Kind.RELIEF_OPENED, 30, 6, "opens 71 times, first after 30 min; 20 marked"),
                new Mark(Mark.Kind.HIGHEST, 59, 7.9, "highest: 7.9 bar after 59 min"),
                new Mark(Mark.Kind.VESSEL_FULL, 0, 4, "vessel full at the start"));
        PanelOverlay overlay = new PanelOverlay(panel(List.of(), marks), FRAME, OptionalDouble.empty(), GUTTER);
        List<Note> notes = overlay.notes();
        List<Box> places =
                overlay.places(notes).stream().map(FreeSpots.Placed::box).toList();
        Skyline curve = new Skyline(line(), FRAME);
        assertEquals(4, places.size());
        for (int i = 0; i < places.size(); i++) {
            assertTrue(FRAME.area().grownBy(3.1).holds(places.get(i)), "inside: " + places.get(i));
            assertEquals(0, curve.columnsThrough(places.get(i)), "clear of the curve: " + places.get(i));
            for (int j = 0; j < i; j++) {
                assertFalse(places.get(i).meets(places.get(j)), i + " lies on " + j);
            }
        }
    }

    @Test
    void aCurveThatEndsEarlyIsNamedWhereItEnds() {
        Points half = new Points(new double[] {0, 20}, new double[] {4.5, 5});
        Curve curve = new Curve(Curve.Role.RUN_2, "short", "highest 5.0 bar", half);
        Panel panel = new Panel(PRESSURE, List.of(curve), List.of(), List.of());
        assertTrue(new Gutter(panel, FRAME, GUTTER).callouts().isEmpty());
        Note note = new PanelOverlay(panel, FRAME, OptionalDouble.empty(), GUTTER)
                .notes()
                .get(0);
        assertEquals(List.of("short", "highest 5.0 bar"), note.shapes().get(0).text());
        assertEquals(FRAME.x(20), note.x(), 1e-9);
        assertEquals(Curve.Role.RUN_2, note.named().orElseThrow());
    }

    /** Two runs that end in a hazard, as in a low panel: neither name may stand where the other curve ends. */
    @Test
    void aNameStandsAtTheEndOfItsOwnCurve() {
        Frame low = new Frame(new Box(60, 100, 600, 110), TIME, new Axis("temperature", 0, 25, 5));
        Curve first = new Curve(
                Curve.Role.RUN_1, "cold fill", "highest 23.2 \u00b0C", new Points(new double[] {0, 34}, new double[] {
                    10, 23.2
                }));
        Curve second = new Curve(
                Curve.Role.RUN_2,
                "ice-cold fill, feed shut",
                "highest 23.4 \u00b0C",
                new Points(new double[] {0, 55}, new double[] {2, 23.4}));
        Panel panel = new Panel(PRESSURE, List.of(first, second), List.of(), List.of());
        PanelOverlay overlay = new PanelOverlay(panel, low, OptionalDouble.empty(), GUTTER);
        List<FreeSpots.Placed> places = overlay.places(overlay.notes());
        for (int i = 0; i < 2; i++) {
            Note own = places.get(i).note();
            Note other = places.get(1 - i).note();
            Box box = places.get(i).box();
            assertTrue(box.distanceTo(other.x(), other.y()) > 4, i + " stands on the other's end");
            assertTrue(box.distanceTo(own.x(), own.y()) < box.distanceTo(other.x(), other.y()), i + " is astray");
        }
    }

    @Test
    void wordsStayOnTheLargerSideOfAHazardsEnd() {
        Box before = roomBeside(54);
        Box behind = roomBeside(0);
        assertTrue(before.right() < FRAME.x(54));
        assertTrue(behind.x() > FRAME.x(0));
    }

    private static Box roomBeside(double end) {
        return new PanelOverlay(panel(List.of(), List.of()), FRAME, OptionalDouble.of(end), GUTTER).room();
    }

    private static Panel panel(List<Level> levels, List<Mark> marks) {
        Curve curve = new Curve(Curve.Role.PRESSURE, "", "", line());
        return new Panel(PRESSURE, List.of(curve), levels, marks);
    }

    private static Points line() {
        return new Points(new double[] {0, 60}, new double[] {4, 8});
    }

    private static void assertApart(List<Callout> callouts, double[] tops) {
        double above = FRAME.area().y() - 13;
        for (int i = 0; i < callouts.size(); i++) {
            assertTrue(tops[i] >= above, "name " + i + " starts at " + tops[i] + " above " + above);
            above = tops[i] + callouts.get(i).words().height();
        }
        assertTrue(above <= FRAME.area().bottom() + 13, "the last ends at " + above);
    }
}

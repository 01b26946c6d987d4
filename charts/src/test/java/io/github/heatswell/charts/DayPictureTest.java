package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the picture of a day shows besides pressure and temperature. */
class DayPictureTest {

    @Test
    void showsDrawsInALaneOfTheirOwnAboveTheBurner() {
        Panel lower = picture(Houses.europeanDay()).lower();
        assertEquals(
                List.of(Bands.Kind.HEATER, Bands.Kind.DRAWS),
                lower.bands().stream().map(Bands::kind).toList());
        Bands draws = lower.bands().get(1);
        assertEquals(23, draws.spans().size());
        assertTrue(draws.label().matches("23 draws, 1\\d\\d L in all"), draws.label());
    }

    @Test
    void goesByTheClock() {
        Picture day = picture(Houses.europeanDay());
        assertEquals("time of day", day.across().label());
        assertEquals(
                List.of("00:00", "03:00", "06:00", "09:00", "12:00", "15:00", "18:00", "21:00", "00:00"),
                day.across().ticks().stream().map(Tick::name).toList());
        assertEquals(
                "12:00", picture(Houses.nightMains()).across().ticks().get(0).name());
        assertEquals("0", picture(Houses.cutOut()).across().ticks().get(0).name(), "nothing there goes by the clock");
    }

    @Test
    void showsTheLayersOfATankAsARange() {
        Area layers = picture(Houses.europeanDay()).lower().areas().get(0);
        assertEquals(Area.Role.LAYERS, layers.role());
        assertTrue(layers.lowest() < 52 && layers.highest() > 59.9);
        assertTrue(picture(Houses.bypass()).lower().areas().isEmpty(), "a mixed tank has none");
    }

    @Test
    void drawsAMainsThatChangesAsACurve() {
        Panel upper = picture(Houses.nightMains()).upper();
        Curve mains = upper.curves().get(0);
        assertEquals(Curve.Role.MAINS, mains.role());
        assertEquals("mains pressure", mains.name());
        assertEquals(7.4, mains.points().highest(), 1e-6);
        assertFalse(upper.levels().stream().anyMatch(level -> level.kind() == Level.Kind.SUPPLY));
        Bands runs = upper.bands().get(0);
        assertEquals(Bands.Kind.RELIEF, runs.kind());
        assertEquals(1, runs.spans().size(), "openings by heating are no running on mains water");
    }

    @Test
    void showsBypassAndMainsOfAReducingValve() {
        Panel upper = picture(Houses.bypass()).upper();
        assertTrue(upper.levels().stream().anyMatch(level -> level.kind() == Level.Kind.MAINS));
        Bands bypass = upper.bands().get(0);
        assertEquals(Bands.Kind.BYPASS, bypass.kind());
        assertTrue(bypass.label().matches("bypass open \\d times, .* in all"), bypass.label());
    }

    @Test
    void namesAShutOff() {
        Bands off = picture(Houses.shutOff()).upper().bands().get(0);
        assertEquals("supply shut off at 06:00 for 2 h", off.label());
        assertEquals(6, off.spans().get(0).from(), 1e-9);
    }

    @Test
    void marksOpeningsByTemperatureOnTheTemperature() {
        Picture runaway = picture(Houses.runaway());
        List<Mark> hot = runaway.lower().marks();
        assertTrue(hot.size() > 20 && hot.size() < 60, hot.size() + " marks");
        assertTrue(hot.stream().allMatch(mark -> mark.kind() == Mark.Kind.RELIEF_OPENED_HOT && mark.device() == 0));
        assertEquals(99, hot.get(0).up(), 1e-3, "the temperature at which it opens");
        assertTrue(
                hot.get(0).label().startsWith("T&P valve opens fully 7"),
                hot.get(0).label());
        assertTrue(runaway.lower().levels().stream().anyMatch(level -> level.kind() == Level.Kind.RELIEF_TEMPERATURE));
        assertTrue(runaway.upper().marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.RELIEF_OPENED)
                .allMatch(mark -> mark.device() == 1));
    }

    @Test
    void marksTheTripOfACutOut() {
        Panel lower = picture(Houses.cutOut()).lower();
        assertEquals(Mark.Kind.CUT_OUT_TRIPPED, lower.marks().get(0).kind());
        assertEquals(85, lower.marks().get(0).up(), 1e-3);
        assertTrue(lower.levels().stream().anyMatch(level -> level.kind() == Level.Kind.CUT_OUT));
        assertEquals(
                lower.marks().get(0).across(),
                lower.bands().get(0).spans().get(0).to(),
                1e-9,
                "the burner stops there");
    }

    @Test
    void placesTheLineOfAHighValveWhereTheCurveMeetsIt() {
        Panel upper = picture(Houses.upstairs()).upper();
        Mark opened = upper.marks().get(0);
        Level set = upper.levels().stream()
                .filter(level ->
                        level.kind() == Level.Kind.RELIEF_SET && level.name().contains("attic"))
                .findFirst()
                .orElseThrow();
        assertEquals(opened.up(), set.value(), 2e-3, "bar, of the density of cold water");
        assertTrue(set.name().endsWith("as seen at the drain cock"));
    }

    @Test
    void comparesDaysByTheClock() {
        List<NamedRun> runs = List.of(new NamedRun("bypass", Houses.bypass()), new NamedRun("snap", Houses.snapDay()));
        assertEquals(
                "time of day",
                Chart.comparing(runs, UnitSystem.SI).picture().across().label());
    }

    private static Picture picture(RunResult result) {
        return Chart.of(result, UnitSystem.SI).picture();
    }
}

package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class RunPictureTest {

    private static final HotWaterSystem SYSTEM = Plants.bare()
            .addReliefValve(Plants.valve("lid", 7, 6.3, LiftCharacteristic.SNAP))
            .vessel(Plants.vessel(18, 4.2))
            .build();

    @Test
    void namesQuantitiesWithTheirUnits() {
        RunResult result = Handmade.run(SYSTEM, 60, 4.2, 5, 6).result();
        Picture si = Chart.of(result, UnitSystem.SI).picture();
        Picture us = Chart.of(result, UnitSystem.US).picture();
        assertEquals("gauge pressure (bar)", si.upper().axis().label());
        assertEquals("mean water temperature (°C)", si.lower().axis().label());
        assertEquals("gauge pressure (psi)", us.upper().axis().label());
        assertEquals("mean water temperature (°F)", us.lower().axis().label());
        assertEquals("time since the start (s)", si.across().label());
    }

    @Test
    void drawsSamplesInTheUnitsOfTheAxes() {
        RunResult result = Handmade.run(SYSTEM, 600, 4.2, 5, 6).result();
        Picture picture = Chart.of(result, UnitSystem.SI).picture();
        Points pressure = picture.upper().curves().get(0).points();
        assertEquals(3, pressure.count());
        assertEquals(10, pressure.across(1), 1e-9, "minutes, exact but for rounding");
        assertEquals(5, pressure.up(1), 1e-9, "bar, exact but for rounding");
        Points temperature = Chart.of(result, UnitSystem.US)
                .picture()
                .lower()
                .curves()
                .get(0)
                .points();
        assertEquals(53.6, temperature.up(0), 1e-9, "12 degC in degF");
    }

    /** A house without a vessel shows how uncertain its rise is, up to the set pressure; one with a vessel has nothing of the kind. */
    @Test
    void theRiseWithoutAVesselHasABand() {
        List<Area> areas =
                Chart.of(Gallery.dripping(), UnitSystem.SI).picture().upper().areas();
        assertEquals(
                List.of("usual uncertainty of the rise"),
                areas.stream().map(Area::name).toList());
        assertEquals(Area.Role.UNCERTAIN, areas.get(0).role());
        assertEquals(
                List.of(),
                Chart.of(Gallery.calm(), UnitSystem.SI).picture().upper().areas());
    }

    @Test
    void keepsTheSharpEdgeOfASnapBetweenSamples() {
        RunResult result = Handmade.run(SYSTEM, 60, 4.2, 6.5, 6.6)
                .event(90, Event.Kind.RELIEF_OPENED, "lid", 7)
                .event(90, Event.Kind.RELIEF_RESEATED, "lid", 6.3)
                .result();
        Points line = Chart.of(result, UnitSystem.SI)
                .picture()
                .upper()
                .curves()
                .get(0)
                .points();
        assertEquals(5, line.count());
        assertEquals(90, line.across(2), 1e-9);
        assertEquals(7, line.up(2), 1e-9);
        assertEquals(90, line.across(3), 1e-9);
        assertEquals(6.3, line.up(3), 1e-9);
    }

    @Test
    void showsTheFallWhenAModulatingValveOpensAsShortAsItWas() {
        RunResult coarse = Gallery.dripping();
        double opened = coarse.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        Points line = Chart.of(coarse, UnitSystem.SI)
                .picture()
                .upper()
                .curves()
                .get(0)
                .points();
        double fallen = fallenTo(line, 6.32);
        RunResult fine = Simulation.of(coarse.system(), Duration.ofMinutes(10))
                .sampledEvery(Duration.ofSeconds(1))
                .run();
        double trulyFallen = fallenTo(
                Chart.of(fine, UnitSystem.SI).picture().upper().curves().get(0).points(), 6.32);
        assertEquals(trulyFallen, fallen, 2.0 / 60, "2 s, in minutes; samples are 60 s apart");
        assertTrue(fallen * 60 < opened + 3, "fallen after " + fallen + " min");
    }

    private static double fallenTo(Points line, double pressure) {
        boolean high = false;
        for (int i = 0; i < line.count(); i++) {
            high |= line.up(i) > 6.9;
            if (high && line.up(i) < pressure) {
                return line.across(i);
            }
        }
        throw new AssertionError("never");
    }

    @Test
    void marksValvesWhereTheyOpenedAndReseated() {
        RunResult result = Gallery.dripping();
        Event opened = result.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        List<Mark> marks = Chart.of(result, UnitSystem.SI).picture().upper().marks();
        assertEquals(Mark.Kind.RELIEF_OPENED, marks.get(0).kind());
        assertEquals(opened.time() / 60, marks.get(0).across(), 1e-9);
        assertEquals(7, marks.get(0).up(), 1e-6, "the set pressure; the engine locates it to far less than that");
        assertTrue(marks.get(0).label().startsWith("opens after "), marks.get(0).label());
        assertEquals(Mark.Kind.RELIEF_RESEATED, marks.get(1).kind());
        assertTrue(
                marks.get(1).label().startsWith("reseats after "), marks.get(1).label());
    }

    @Test
    void thinsOutMarksThatWouldCoverEachOtherAndSaysSo() {
        RunResult result = Gallery.popping();
        int openings = result.totals().relief().get(0).openings();
        Picture picture = Chart.of(result, UnitSystem.SI).picture();
        List<Mark> opened = picture.upper().marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.RELIEF_OPENED)
                .toList();
        assertTrue(openings > 70, "a valve that cycles: " + openings);
        assertTrue(opened.size() < 60 && opened.size() > 5, "thinned to " + opened.size());
        assertTrue(
                opened.get(0)
                        .label()
                        .matches("opens " + openings + " times, first after .*; " + opened.size() + " marked"),
                opened.get(0).label());
        for (int i = 1; i < opened.size(); i++) {
            assertTrue(opened.get(i).label().isEmpty());
        }
    }

    @Test
    void putsTheHazardFirst() {
        Picture picture = Chart.of(Gallery.bursting(), UnitSystem.SI).picture();
        Mark first = picture.upper().marks().get(0);
        assertEquals(Mark.Kind.HAZARD, first.kind());
        assertTrue(
                picture.caption()
                        .hazard()
                        .startsWith("Hazard: After 21 min 42 s the pressure reaches 20 bar. A tank is tested"),
                picture.caption().hazard());
        assertEquals(first.across(), picture.end().orElseThrow(), 1e-9);
        assertTrue(picture.across().to() > 1.1 * first.across(), "the axis goes on, so that the end is seen");
        assertTrue(picture.upper().levels().stream().anyMatch(level -> level.kind() == Level.Kind.TEST_PRESSURE));
    }

    /** A hazard that ends no run is one all the same: a thermostat that never switches off, held by a valve. */
    @Test
    void warnsOfAHazardThatDoesNotEndTheRun() {
        Picture picture = Chart.of(Houses.runaway(), UnitSystem.SI).picture();
        assertTrue(
                picture.caption().hazard().startsWith("Hazard: 'T&P valve' opened because the water had reached"),
                picture.caption().hazard());
        assertTrue(picture.end().isEmpty());
        assertEquals(
                "",
                Chart.of(Houses.snapDay(), UnitSystem.SI).picture().caption().hazard());
    }

    @Test
    void warnsOfEveryHazard() {
        for (Event.Kind kind : Event.Kind.values()) {
            if (kind.endsRun()) {
                RunResult result =
                        Handmade.run(SYSTEM, 60, 4.2, 5).event(60, kind, "", 5).result();
                Picture picture = Chart.of(result, UnitSystem.SI).picture();
                assertTrue(picture.caption().hazard().contains(kind.meaning()), kind::toString);
                assertEquals(Mark.Kind.HAZARD, picture.upper().marks().get(0).kind(), kind::toString);
            }
        }
    }

    @Test
    void namesEveryLevelWithItsValue() {
        Panel panel = Chart.of(Gallery.calm(), UnitSystem.SI).picture().upper();
        List<String> words = panel.levels().stream()
                .map(level -> level.amount() + " " + level.name())
                .toList();
        assertEquals(
                List.of(
                        "10 bar tank working pressure",
                        "7 bar relief opens",
                        "4.2 bar supply",
                        "6.3 bar relief reseats",
                        "4.2 bar vessel precharge"),
                words);
    }

    @Test
    void saysWhichValveWhenThereAreSeveral() {
        Panel panel = Chart.of(Gallery.rivals(), UnitSystem.SI).picture().upper();
        assertTrue(panel.levels().stream()
                .anyMatch(level -> level.name().equals("relief opens, Cold branch safety group, cellar")));
        assertTrue(panel.marks().get(0).label().startsWith("Cold branch safety group, cellar opens after"));
    }

    @Test
    void drawsManyValvesAsOneLineForEachPressure() {
        HotWaterSystem.Builder many = Plants.bare();
        for (int i = 0; i < 9; i++) {
            many.addReliefValve(Plants.valve("valve " + i, i < 6 ? 7 : 8, 6, LiftCharacteristic.SNAP));
        }
        Panel panel = Chart.of(Handmade.run(many.build(), 60, 4.2, 5).result(), UnitSystem.SI)
                .picture()
                .upper();
        assertEquals(
                List.of("relief opens, 6 valves", "relief opens, 3 valves"),
                panel.levels().stream()
                        .filter(level -> level.kind() == Level.Kind.RELIEF_SET)
                        .map(Level::name)
                        .toList());
    }

    @Test
    void keepsFarLevelsFromSquashingTheCurve() {
        Panel panel = Chart.of(Gallery.calm(), UnitSystem.SI).picture().upper();
        assertTrue(panel.axis().holds(7), "the relief set pressure is the question");
        assertFalse(panel.axis().holds(10), "the working pressure is named at the edge");
        Points line = panel.curves().get(0).points();
        double share = (line.highest() - line.lowest())
                / (panel.axis().to() - panel.axis().from());
        assertTrue(share > 0.15, "the curve has " + share + " of the height");
    }

    @Test
    void showsWhenTheBurnerWasOn() {
        Bands bands = Chart.of(Gallery.week(), UnitSystem.SI)
                .picture()
                .lower()
                .bands()
                .get(0);
        long switchedOn = Gallery.week().events().stream()
                .filter(event -> event.kind() == Event.Kind.HEATER_ON)
                .count();
        assertEquals(switchedOn, bands.spans().size());
        assertTrue(bands.label().matches("burner on \\d+ times, .* in all"), bands.label());
        assertEquals(
                List.of(),
                Chart.of(Handmade.run(SYSTEM, 60, 4.2, 5).result(), UnitSystem.SI)
                        .picture()
                        .lower()
                        .bands());
    }

    @Test
    void marksTheHighestPressureAndAFullVessel() {
        List<Mark> calm =
                Chart.of(Gallery.calm(), UnitSystem.SI).picture().upper().marks();
        assertEquals(Mark.Kind.HIGHEST, calm.get(calm.size() - 1).kind());
        assertEquals(
                "highest: 5.14 bar after 1 h 14 min", calm.get(calm.size() - 1).label());
        assertTrue(Chart.of(Gallery.cramped(), UnitSystem.SI).picture().upper().marks().stream()
                .anyMatch(mark -> mark.kind() == Mark.Kind.VESSEL_FULL));
    }

    @Test
    void drawsARunOfASingleSample() {
        RunResult result = Handmade.run(SYSTEM, 60, 4.2)
                .event(0, Event.Kind.VAPOUR_FORMS, "", 4.2)
                .result();
        Picture picture = Chart.of(result, UnitSystem.SI).picture();
        assertTrue(picture.across().to() > 0);
        assertEquals(0, picture.end().orElseThrow());
    }
}

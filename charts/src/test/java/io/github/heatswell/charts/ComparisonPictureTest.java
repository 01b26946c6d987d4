package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

class ComparisonPictureTest {

    @Test
    void laysPressuresOverEachOtherAndWhatWasGivenOffBelow() {
        Picture picture = Chart.comparing(Gallery.waysOut(), UnitSystem.SI).picture();
        assertEquals("gauge pressure (bar)", picture.upper().axis().label());
        assertEquals(
                "water discharged since the start (L)", picture.lower().axis().label());
        assertEquals(
                List.of("no vessel", "18 L vessel", "2 L vessel"),
                picture.upper().curves().stream().map(Curve::name).toList());
        assertEquals(
                List.of(Curve.Role.RUN_1, Curve.Role.RUN_2, Curve.Role.RUN_3),
                picture.lower().curves().stream().map(Curve::role).toList());
        assertEquals("discharges 0 L", picture.lower().curves().get(1).label());
        assertTrue(picture.upper().curves().get(0).label().startsWith("highest 7 bar"));
    }

    @Test
    void saysOnceWhatAllHaveInCommon() {
        Picture picture = Chart.comparing(Gallery.waysOut(), UnitSystem.SI).picture();
        assertEquals(
                "All runs: 190 L tank, set point 60 °C, supply 4.2 bar at 12 °C with no way back to the mains, relief valve"
                        + " set at 7 bar.",
                picture.caption().subtitle());
        assertEquals(
                1,
                picture.upper().levels().stream()
                        .filter(level -> level.kind() == Level.Kind.RELIEF_SET)
                        .count());
    }

    @Test
    void saysWhoseALevelIsWhereTheyDiffer() {
        List<NamedRun> runs = List.of(run("low", 6), run("high", 8), run("as high", 8));
        List<String> sets = Chart.comparing(runs, UnitSystem.SI).picture().upper().levels().stream()
                .filter(level -> level.kind() == Level.Kind.RELIEF_SET)
                .map(level -> level.amount() + " " + level.name())
                .toList();
        assertEquals(List.of("6 bar relief opens: “low”", "8 bar relief opens: 2 runs"), sets);
    }

    @Test
    void marksAHazardByTheNameOfItsRun() {
        Picture picture = Chart.comparing(Gallery.six(), UnitSystem.SI).picture();
        assertTrue(picture.caption().hazard().startsWith("Hazard: “relief valve removed”: test pressure reached"));
        Mark hazard = picture.upper().marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.HAZARD)
                .findFirst()
                .orElseThrow();
        assertTrue(hazard.label().startsWith("relief valve removed: test pressure reached after 21 min 42 s"));
        assertEquals(5, picture.lower().curves().size(), "a system without relief valve discharges nothing");
    }

    @Test
    void showsTemperaturesWhereNothingCanBeGivenOff() {
        RunResult one = Handmade.run(Plants.bare().build(), 60, 4.2, 5).result();
        List<NamedRun> runs = List.of(new NamedRun("a", one), new NamedRun("b", one));
        Picture picture = Chart.comparing(runs, UnitSystem.US).picture();
        assertEquals("mean water temperature (°F)", picture.lower().axis().label());
        assertEquals("highest 55 °F", picture.lower().curves().get(0).label());
        // with relief valves that stay shut, the lower half was an empty frame
        RunResult dry = Handmade.run(Plants.at(Place.EN), 60, 4.2, 5).result();
        Picture shut = Chart.comparing(List.of(new NamedRun("a", dry), new NamedRun("b", dry)), UnitSystem.US)
                .picture();
        assertEquals("mean water temperature (°F)", shut.lower().axis().label());
    }

    /** One of two valves with the same set pressure is stuck open: the picture must not say so of both. */
    @Test
    void aFaultIsSaidOfTheRunThatHasItAlone() {
        List<String> sets = Chart.comparing(
                        List.of(new NamedRun("stuck", Houses.stuckOpen()), run("sound", 7)), UnitSystem.SI)
                .picture()
                .upper()
                .levels()
                .stream()
                .filter(level -> level.kind() == Level.Kind.RELIEF_SET)
                .map(level -> level.amount() + " " + level.name())
                .toList();
        assertEquals(List.of("7 bar relief set, but stuck open: “stuck”", "7 bar relief opens: “sound”"), sets);
    }

    private static NamedRun run(String name, double set) {
        return new NamedRun(
                name,
                Handmade.run(
                                Plants.bare()
                                        .addReliefValve(Plants.valve("lid", set, 5, LiftCharacteristic.SNAP))
                                        .build(),
                                60,
                                4.2,
                                5.5)
                        .result());
    }
}

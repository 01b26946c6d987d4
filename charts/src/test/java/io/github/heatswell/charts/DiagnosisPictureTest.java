package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.LoggedRuns.NamedReadings;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.place.Place;
import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The picture of a diagnosis shows what was read, and nothing where nobody read. */
class DiagnosisPictureTest {

    private static Panel readings(List<Double> times) {
        List<Double> gauge =
                IntStream.range(0, times.size()).mapToObj(i -> 4e5 + 1e4 * i).toList();
        LoggedRuns logged = new LoggedRuns(
                Statement.plain("Found."),
                "House",
                Plants.at(Place.US_UPC),
                PressureLog.builder(
                                times.stream().mapToDouble(Double::doubleValue).toArray(),
                                gauge.stream().mapToDouble(Double::doubleValue).toArray())
                        .build(),
                List.of(new NamedReadings("a run", gauge, HypothesisFit.Course.NONE)));
        return new DiagnosisPicture(logged, UnitSystem.SI, new Size(1040, 700))
                .compose()
                .panels()
                .get(0);
    }

    /** Regression: readings stood beside nothing, and the limit that decides was nowhere in the picture. */
    @Test
    void theReadingsAreHeldAgainstTheLimits() {
        assertEquals(
                List.of("relief opens 7", "limit here 5.52"),
                readings(List.of(0.0, 300.0, 600.0)).levels().stream()
                        .map(level -> level.name() + " "
                                + String.format(Locale.ROOT, "%.3g", level.value())
                                        .replaceAll("\\.?0+$", ""))
                        .toList());
    }

    /** Regression: three runs beside the readings, which agree about as well, could not be told apart. */
    @Test
    void theReadingsStandBesideTwoRunsAtMost() {
        NamedReadings run = new NamedReadings("a run", List.of(4e5, 5e5, 6e5), HypothesisFit.Course.NONE);
        PressureLog log = PressureLog.builder(new double[] {0, 60, 120}, new double[] {4e5, 5e5, 6e5})
                .build();
        assertThrows(
                IllegalArgumentException.class,
                () -> new LoggedRuns(
                        Statement.plain("Found."), "House", Plants.at(Place.US_UPC), log, List.of(run, run, run)));
    }

    private static List<Points> ofReadings(Panel panel) {
        return panel.curves().stream()
                .filter(curve -> curve.role() == Curve.Role.RUN_1)
                .map(Curve::points)
                .toList();
    }

    /** An evening's readings every five minutes and the one of the next morning: the line ends in the evening. */
    @Test
    void noLineRunsAcrossANight() {
        Panel panel = readings(List.of(0.0, 300.0, 600.0, 900.0, 1_800.0, 30_000.0));
        List<Points> lines = ofReadings(panel);
        assertEquals(6 + 1, lines.size(), "each reading, and the line of the evening");
        assertTrue(
                lines.stream().allMatch(line -> line.across(line.count() - 1) - line.across(0) < 2_100),
                "half an hour is the longest");
        assertEquals(
                List.of("readings"),
                panel.curves().stream()
                        .filter(curve -> curve.role() == Curve.Role.RUN_1)
                        .map(Curve::name)
                        .filter(name -> !name.isEmpty())
                        .toList());
    }

    /**
     * Regression: a heat-up of two hours, read again at night and in the morning, took up a twelfth of an axis in hours since the start,
     * though clock times had been typed.
     */
    @Test
    void theAxisShowsWhenTheGaugeWasRead() {
        double[] times = {0, 2_100, 2_280, 2_520, 2_760, 3_120, 3_660, 7_200, 23_400, 57_600, 85_500};
        double[] gauge = new double[times.length];
        Arrays.setAll(gauge, i -> 5e5);
        PressureLog log = PressureLog.builder(times, gauge).timeOfDay(23_400.0).build();
        LogTimes axis = new LogTimes(log, Plants.at(Place.US_UPC), 12);
        assertEquals("time of day", axis.axis().label());
        List<String> names = axis.axis().ticks().stream().map(Axis.Tick::name).toList();
        assertTrue(names.containsAll(List.of("7 am", "8 am", "1 pm", "10:30 pm", "6:15 am")), names.toString());
        assertEquals(4, axis.shown().size());
        assertTrue(axis.of(7_200) > 0.6 * axis.axis().to(), "the heat-up fills most of it");
        assertEquals(axis.axis().to(), axis.of(85_500), 1e-9);
        for (int i = 1; i < times.length; i++) {
            assertTrue(axis.of(times[i]) > axis.of(times[i - 1]), "reading " + i);
        }
        PressureLog elapsed = PressureLog.builder(times, gauge).build();
        assertTrue(new LogTimes(elapsed, Plants.at(Place.US_UPC), 12)
                .axis().ticks().stream().map(Axis.Tick::name).toList().contains("0:30"));
    }

    @Test
    void aLoggerHasOneLine() {
        List<Double> minutes = IntStream.range(0, 200).mapToObj(i -> 60.0 * i).toList();
        assertEquals(1, ofReadings(readings(minutes)).size());
    }
}

package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.DailyFigures.DailyCollector;
import io.github.heatswell.charts.DailyFigures.Day;
import io.github.heatswell.charts.DaysPicture.DayBins;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DaysPictureTest {

    @Test
    void isDrawnByItselfForALongRun() {
        Picture month = Chart.of(Houses.month(), UnitSystem.SI).picture();
        assertEquals(Area.Role.PRESSURE_RANGE, month.upper().areas().get(0).role());
        assertEquals("date", month.across().label());
        assertEquals("1 Mar", month.across().ticks().get(0).name());
        assertTrue(Chart.of(Gallery.week(), UnitSystem.SI)
                .picture()
                .upper()
                .areas()
                .isEmpty());
    }

    @Test
    void saysOnHowManyDaysAndWhenMost() {
        HotWaterSystem house = Houses.seasonalWithoutVessel();
        RunResult result = Simulation.of(house, Duration.ofDays(20)).run();
        Picture picture = Chart.of(result, UnitSystem.SI).picture();
        String title = picture.caption().title();
        assertTrue(
                title.matches("The relief valve discharges water on every one of 20 days, [0-9.]+ L in all, most on"
                        + " \\d+ Mar: [0-9.]+ L"),
                title);
        assertEquals("water discharged per day (L)", picture.lower().axis().label());
        assertEquals(
                List.of("tank working pressure", "relief opens", "supply", "relief reseats"),
                picture.upper().levels().stream().map(Level::name).toList());
        assertEquals(7, picture.upper().areas().get(0).highest(), 1e-5, "openings between samples count");
    }

    @Test
    void showsDrawsWhereNothingWasGivenOff() {
        Picture month = Chart.of(Houses.month(), UnitSystem.US).picture();
        assertEquals(
                "no water discharged; hot water drawn per day (gal)",
                month.lower().axis().label());
        assertEquals(
                30 * 4 + 2, month.lower().areas().get(0).rims().get(0).count(), "a bar for each day, and the foot");
    }

    @Test
    void putsAHazardFirst() {
        RunResult result = Gallery.bursting();
        Picture picture = Chart.ofDays(result.summary(), Doubts.NONE, DailyFigures.of(result), UnitSystem.SI)
                .picture();
        assertTrue(picture.caption()
                .hazard()
                .startsWith("Hazard: After 21 min 42 s the pressure reaches 20 bar. A tank is tested"));
        assertTrue(picture.end().isPresent());
    }

    @Test
    void countsDaysWhereTheSeasonIsNotKnown() {
        HotWaterSystem house = Plants.bare().build();
        Axis axis = TimeScale.days(Moments.of(house, 40 * DailyFigures.DAY), 40, new Size(1040, 700));
        assertEquals("time since the start (d)", axis.label());
        assertEquals("0", axis.ticks().get(0).name());
        assertEquals("day 3", Moments.of(house, 40 * DailyFigures.DAY).day(2));
    }

    /** A run of years that a hazard ends at once: its curves are in days all the same. */
    @Test
    void aScaleOfDaysStaysOneForARunThatEndsAtOnce() {
        for (double end : new double[] {0, 0.01, 2}) {
            Axis undated =
                    TimeScale.days(Moments.of(Plants.bare().build(), 40 * DailyFigures.DAY), end, new Size(1040, 700));
            assertEquals("time since the start (d)", undated.label());
            assertTrue(undated.to() >= end);
            Axis dated = TimeScale.days(dates(1, 300), end, new Size(1040, 700));
            assertEquals("date", dated.label());
            assertEquals(Math.max(1, end), dated.to());
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 1 Jan", "1, 58, 28 Feb", "1, 59, 1 Mar", "60, 0, 1 Mar", "365, 0, 31 Dec", "365, 1, 1 Jan"})
    void knowsTheCalendar(int start, int day, String date) {
        assertEquals(date, dates(start, 300).day(day));
    }

    @Test
    void namesTheYearOnlyWhereThereAreSeveral() {
        assertEquals("2 Jan of year 2", dates(365, 800).day(2));
        List<String> names = TimeScale.days(dates(60, 365), 365, new Size(1040, 700)).ticks().stream()
                .map(Tick::name)
                .toList();
        assertEquals(List.of("Mar", "Apr", "May"), names.subList(0, 3));
        assertEquals(13, names.size());
        assertEquals(
                "0",
                TimeScale.days(dates(60, 5000), 5000, new Size(1040, 700))
                        .ticks()
                        .get(0)
                        .name());
    }

    @Test
    void sharesStepsWhereDaysAreTooMany() {
        QuantityFormat amounts = QuantityFormat.unicode(UnitSystem.SI);
        Day day = new Day(4e5, 5e5, 1e-3, 0.1, 330);
        DayBins few = new DayBins(Collections.nCopies(700, day), 700, amounts);
        DayBins many = new DayBins(Collections.nCopies(1400, day), 1400, amounts);
        assertEquals("per day", few.each());
        assertEquals("per week", many.each());
        assertEquals(7, many.most(Day::relieved), 1e-9, "L in a week");
        assertEquals(400, many.highest().count(), "two corners for each of 200 weeks");
        assertFalse(many.pressureRange().name().contains("day"));
    }

    @Test
    void survivesAnUnfinishedDay() {
        HotWaterSystem house = Houses.seasonal();
        DailyCollector collector = DailyFigures.collector(house);
        RunSummary summary = Simulation.of(house, Duration.ofHours(20 * 24 + 1)).stream(collector);
        Picture picture = Chart.ofDays(summary, Doubts.NONE, collector.figures(), UnitSystem.SI)
                .picture();
        assertEquals(21, collector.figures().days().size());
        assertEquals(20 + 1 / 24.0, picture.across().to(), 1e-9);
    }

    private static Moments dates(int start, double days) {
        HotWaterSystem house = Houses.seasonal().toBuilder()
                .start(Start.builder().dayOfYear(start).build())
                .build();
        return Moments.of(house, days * DailyFigures.DAY);
    }
}

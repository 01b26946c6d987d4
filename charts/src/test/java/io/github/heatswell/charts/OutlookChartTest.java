package io.github.heatswell.charts;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.ageing.Outlook;
import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.ageing.PrechargeLoss;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.table.OutlookTable;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the picture and the table of the years say. */
class OutlookChartTest {

    /** How far a peak may lie outside of what is known from three rates, a month's fading apart (bar). */
    private static final double BETWEEN_KNOWN = 0.1;

    private static HotWaterSystem house(double litres, double prechargeBar) {
        return Plants.bare()
                .addReliefValve(Plants.valve("safety valve", 7, 6.3, LiftCharacteristic.MODULATING))
                .vessel(Plants.vessel(litres, prechargeBar))
                .build();
    }

    private static OutlookResult years(HotWaterSystem house, int years, double... larger) {
        return Outlook.builder(house, Duration.ofHours(4))
                .years(years)
                .fading(new PrechargeLoss.Range(
                        new PrechargeLoss(0.1), new PrechargeLoss(0.05), new PrechargeLoss(0.3)))
                .larger(DoubleStream.of(larger).boxed().toList())
                .sampled(study -> study.samples(16))
                .build()
                .simulate();
    }

    @Test
    void theTitleSaysWhenDrippingBegins() {
        HotWaterSystem house = house(18, 4.2);
        OutlookResult found = years(house, 12);
        OutlookCourse.Month first = found.expected().firstDripping().orElseThrow();
        Chart chart = Chart.of(found, house, UnitSystem.SI);
        assertTrue(
                chart.headline()
                        .matches("A relief valve drips from [A-Z][a-z]+ of year " + (first.year() + 1)
                                + ", once the precharge is below \\d(\\.\\d\\d?)? bar; one house in twenty drips by year "
                                + (1 + (int) found.onset().early().orElseThrow())),
                chart.headline());
        Mark mark = chart.picture().upper().marks().get(0);
        assertEquals(Mark.Kind.RELIEF_OPENED, mark.kind());
        assertEquals(first.years(), mark.across());
        assertEquals(7, mark.up(), 0.2); // bar, the set pressure and what lifts the valve
    }

    /** A valve that never opens is no line at which one does. */
    @Test
    void aBlockedValveIsNoLevel() {
        HotWaterSystem blocked = Plants.bare()
                .addReliefValve(ReliefValve.builder()
                        .name("safety valve")
                        .setPressure(Pressure.gauge(7, BAR))
                        .reseatPressure(Pressure.gauge(6.3, BAR))
                        .fullFlow(20, FlowUnit.LITRE_PER_MINUTE)
                        .fullLiftPressure(Pressure.gauge(7.7, BAR))
                        .liftCharacteristic(LiftCharacteristic.MODULATING)
                        .fault(ReliefFault.blocked())
                        .build())
                .vessel(Plants.vessel(35, 4.2))
                .build();
        List<String> levels = Chart.of(years(blocked, 1), blocked, UnitSystem.SI).picture().upper().levels().stream()
                .map(Level::name)
                .toList();
        assertEquals(List.of("limit of the sizing", "tank working pressure", "supply"), levels);
    }

    @Test
    void otherEndingsHaveOtherTitles() {
        HotWaterSystem dry = house(35, 4.2);
        assertEquals(
                "No relief valve drips within a year",
                Chart.of(years(dry, 1), dry, UnitSystem.SI).headline());
        HotWaterSystem small = house(3, 4.2);
        assertEquals(
                "A relief valve drips with today's precharge; loss of precharge is not the cause",
                Chart.of(years(small, 2), small, UnitSystem.SI).headline());
        HotWaterSystem over = house(35, 6.8);
        assertTrue(Chart.of(years(over, 20), over, UnitSystem.SI)
                .headline()
                .startsWith("Too much precharge makes a relief valve drip now, too little from "));
        HotWaterSystem closed = Plants.bare().vessel(Plants.vessel(18, 4.2)).build();
        OutlookResult found = years(closed, 20);
        Chart hazard = Chart.of(found, closed, UnitSystem.SI);
        assertTrue(hazard.headline().startsWith("At the expected loss: test pressure reached in "), hazard.headline());
        assertTrue(
                hazard.picture().caption().hazard().startsWith("Hazard: Test pressure reached on the worst day of "));
        int earliest = found.fast().gravest().orElseThrow().year() + 1;
        assertTrue(earliest < found.expected().gravest().orElseThrow().year() + 1);
        assertTrue(
                hazard.picture().caption().hazard().contains(" of year " + earliest + ", at the fastest loss, with "),
                "the earliest hazard goes first");
        List<Mark> marks = hazard.picture().upper().marks();
        assertEquals(2, marks.size());
        assertTrue(marks.stream().allMatch(mark -> mark.kind() == Mark.Kind.HAZARD));
    }

    /** Contract: with too much charge at first the band holds the peaks of every rate between its ends, too. */
    @Test
    void theBandHoldsEveryRateBetween() {
        HotWaterSystem house = house(35, 6.8);
        Picture picture = Chart.of(years(house, 10), house, UnitSystem.SI).picture();
        Area band = picture.upper().areas().get(0);
        for (double rate : new double[] {0.07, 0.1, 0.15, 0.2}) {
            PrechargeLoss loss = new PrechargeLoss(rate);
            List<OutlookCourse.Month> months = Outlook.builder(house, Duration.ofHours(4))
                    .fading(new PrechargeLoss.Range(loss, loss, loss))
                    .sampled(study -> study.samples(16))
                    .build()
                    .simulate()
                    .expected()
                    .months();
            for (int i = 0; i < months.size(); i++) {
                double peak = UnitSystem.SI.pressure().fromSi(months.get(i).peakGauge());
                String where = rate + " a year, month " + i + ": " + peak;
                assertTrue(peak > low(band, i) - BETWEEN_KNOWN, where + " below " + low(band, i));
                assertTrue(peak < high(band, i) + BETWEEN_KNOWN, where + " above " + high(band, i));
            }
        }
    }

    /** Contract: ticks of quarters of a year are written as such. */
    @Test
    void aYearHasQuarters() throws Exception {
        HotWaterSystem house = house(35, 4.2);
        StringBuilder svg = new StringBuilder();
        Chart.of(years(house, 1), house, UnitSystem.SI).writeSvg(svg);
        String words = Pictures.words(Pictures.svg(svg.toString())).toString();
        assertTrue(words.contains("0.25") && words.contains("0.75"), words);
    }

    /** Contract: every line reaches from edge to edge, the band lies around the expected peaks, the bars add up. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void thePanelsShowTheCourses(UnitSystem units) {
        HotWaterSystem house = house(18, 4.2);
        OutlookResult found = years(house, 12, 0.024, 0.035);
        Picture picture = Chart.of(found, house, units).picture();
        List<Curve> curves = picture.upper().curves();
        assertEquals(4, curves.size());
        assertEquals(4, curves.stream().map(Curve::role).distinct().count(), "no two lines look alike");
        for (Curve curve : curves) {
            assertEquals(12, curve.points().across(curve.points().count() - 1));
        }
        Area band = picture.upper().areas().get(0);
        for (int i = 0; i < band.rims().get(0).count() / 2; i++) {
            double expected = curves.get(0).points().up(i);
            assertTrue(low(band, i) <= expected + 1e-9 && expected <= high(band, i) + 1e-9);
        }
        Panel lower = picture.lower();
        assertEquals(
                4,
                lower.curves().stream().map(Curve::role).distinct().count(),
                "two larger vessels, fastest and slowest loss");
        double sum = 0;
        for (int year = 0; year < 12; year++) {
            sum += high(lower.areas().get(0), 2 * year);
        }
        assertEquals(units.volume().fromSi(found.expected().relieved()), sum, 1e-9 * sum);
    }

    @Test
    void nothingGivenOffIsSaid() {
        HotWaterSystem house = house(35, 4.2);
        Panel lower = Chart.of(years(house, 1), house, UnitSystem.SI).picture().lower();
        assertEquals("no water discharged each year (L)", lower.axis().label());
        assertEquals(List.of(), lower.areas());
    }

    @Test
    void thePictureFitsItsPaper() throws Exception {
        HotWaterSystem house = house(18, 4.2);
        Chart chart = Chart.of(years(house, 12, 0.024, 0.035), house, UnitSystem.US);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        chart.withSize(760, 620).writePng(png);
        BufferedImage image = Pictures.png(png.toByteArray());
        assertTrue(image.getWidth() == 1520 && Pictures.rimIsFree(image));
        StringBuilder svg = new StringBuilder();
        chart.writeSvg(svg);
        assertTrue(Pictures.words(Pictures.svg(svg.toString())).contains("precharge left"));
        assertThrows(
                IllegalArgumentException.class, () -> chart.withSize(100, 620).writePng(png));
    }

    @Test
    void theTableHasEveryMonthOfEveryCourse() throws IOException {
        OutlookResult found = years(house(18, 4.2), 2, 0.024);
        StringBuilder si = new StringBuilder();
        OutlookTable.write(found, UnitSystem.SI, si);
        List<String> rows = si.toString().lines().toList();
        assertEquals(
                "course,vessel_L,month,years,day_of_year,precharge_gauge_bar,peak_pressure_gauge_bar,relieved_daily_L,alarm",
                rows.get(0));
        assertEquals(1 + 4 * 24, rows.size());
        assertTrue(rows.get(1).startsWith("expected,18.0000,1,0.0000,1,4.20000,"), rows.get(1));
        assertTrue(rows.get(25).startsWith("slow,18.0000,1,"), rows.get(25));
        assertTrue(rows.get(73).startsWith("larger,24.0000,1,"), rows.get(73));
        StringBuilder us = new StringBuilder();
        OutlookTable.write(found, UnitSystem.US, us);
        assertTrue(us.toString().startsWith("course,vessel_gal,month,years,day_of_year,precharge_gauge_psi,"));
    }

    /** The rim of a band follows its upper edge, then the lower one back. */
    private static double high(Area band, int corner) {
        return band.rims().get(0).up(corner);
    }

    private static double low(Area band, int corner) {
        Points rim = band.rims().get(0);
        return rim.up(rim.count() - 1 - corner);
    }
}

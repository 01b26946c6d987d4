package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;

/** What the picture of a map says. */
class MapChartTest {

    private static final PeakMap CALM = Maps.calm();

    @Test
    void saysWhereTheHouseStandsAndWhereTheValveDrips() {
        assertEquals(
                "With 12 L at 3 bar the peak is 6.37 bar, above the limit of 5.52 bar; below 7.73 L the valve drips at every precharge",
                Chart.of(CALM, UnitSystem.SI).headline()); // regression: peaks and volume are those of the map
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < CALM.prechargeCount(); j++) {
            least = Math.min(least, CALM.dripVolume(j).orElse(least));
        }
        assertEquals(7.7, 1000 * least, 0.05); // half a unit of the last digit shown
        assertEquals(6.4, CALM.present().orElseThrow().peakGauge() / 1e5, 0.05); // the same
    }

    @Test
    void saysThatTheValveDripsAlready() {
        String headline = Chart.of(Maps.dripping(), UnitSystem.SI).headline();
        assertTrue(
                headline.matches(
                        "With 5 L at 2 bar the relief valve drips; below .* L the valve drips at every precharge"),
                headline);
    }

    @Test
    void saysThatTheSupplyAloneOpensTheValve() {
        String headline = Chart.of(Maps.fed(), UnitSystem.SI).headline();
        assertTrue(headline.endsWith("; the supply alone, 7.5 bar, opens the relief valve set at 7 bar"), headline);
    }

    @Test
    void saysThatWhatLeaksInAfterwardsIsNotShown() {
        String facts =
                Chart.of(Maps.creeping(), UnitSystem.SI).picture().caption().subtitle();
        assertTrue(facts.contains("what leaks in past the reducing valve raises the pressure further"), facts);
        assertFalse(Chart.of(CALM, UnitSystem.SI).picture().caption().subtitle().contains("leaks in"));
    }

    @Test
    void saysThatNoVesselMattersInAnOpenHouse() {
        Chart chart = Chart.of(Maps.open(), UnitSystem.SI);
        assertEquals("The peak is 4.2 bar with every vessel: the house is open to the mains", chart.headline());
        Panel plane = chart.picture().upper();
        assertEquals(List.of("4.2 bar"), plane.areas().stream().map(Area::name).toList());
    }

    @Test
    void warnsFirstWhereNothingLimitsThePressure() {
        Picture picture = Chart.of(Maps.unguarded(), UnitSystem.SI).picture();
        assertTrue(picture.caption()
                .hazard()
                .startsWith("Hazard: No relief valve is described: nothing keeps the tank from bursting"));
        assertFalse(picture.caption().subtitle().contains("taken out"));
        assertTrue(picture.upper().curves().stream().noneMatch(line -> line.role() == Curve.Role.DRIP));
        assertEquals(
                "", Chart.of(Maps.open(), UnitSystem.SI).picture().caption().hazard());
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void showsWhatTheMapHolds(UnitSystem units) {
        Panel plane = Chart.of(CALM, units).picture().upper();
        assertEquals(
                1,
                plane.curves().stream()
                        .filter(line -> line.role() == Curve.Role.STATIC)
                        .count());
        Curve drip = only(plane, Curve.Role.DRIP);
        for (int i = 0; i < drip.points().count(); i++) {
            double bar = drip.points().across(i) * units.pressure().factor() / 1e5;
            assertTrue(bar < 7, "gas above the set pressure cannot help");
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < drip.points().count(); i++) {
            least = Math.min(
                    least, units.volume().toSi(Math.pow(10, drip.points().up(i))));
        }
        assertEquals(7.7e-3, least, 0.05e-3); // m3; as in the headline
        Mark present = plane.marks().get(0);
        assertEquals(units.pressure().fromSi(3e5), present.across(), 1e-9); // rounding
        assertEquals(12e-3, units.volume().toSi(Math.pow(10, present.up())), 1e-9); // m3; rounding
        assertTrue(present.label().startsWith("as it is: "), present.label());
        assertEquals(Area.Role.BAND, plane.areas().get(0).role());
        assertTrue(plane.areas().stream().anyMatch(tint -> tint.label().equals("valve drips here")));
        assertTrue(plane.areas().stream().anyMatch(tint -> tint.label().startsWith("at least ")));
    }

    private static Curve only(Panel plane, Curve.Role role) {
        List<Curve> found =
                plane.curves().stream().filter(line -> line.role() == role).toList();
        assertEquals(1, found.size());
        return found.get(0);
    }

    /** Bands grow darker with the peak, and each lies within the one before it. */
    @Test
    void bandsFollowEachOther() {
        List<Area> bands = Chart.of(CALM, UnitSystem.SI).picture().upper().areas().stream()
                .filter(tint -> tint.role() == Area.Role.BAND)
                .toList();
        assertTrue(bands.size() >= 5 && bands.size() <= 12, bands.size() + " bands");
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bands.size(); i++) {
            assertTrue(i == 0 || bands.get(i).shade() > bands.get(i - 1).shade());
            double area =
                    bands.get(i).rims().stream().mapToDouble(MapChartTest::area).sum();
            assertTrue(Math.abs(area) < before, "band " + bands.get(i).name());
            before = Math.abs(area);
        }
        assertEquals("below 5 bar", bands.get(0).name());
        assertEquals("15 bar and more", bands.get(bands.size() - 1).name());
    }

    /** Edges of bands bend one way; stairs would bend back again and again. Angles as drawn, on a square plane. */
    @Test
    void edgesOfBandsHaveNoStairs() {
        Picture picture = Chart.of(CALM, UnitSystem.SI).picture();
        List<Curve> edges = picture.upper().curves().stream()
                .filter(line -> line.role() == Curve.Role.CONTOUR)
                .toList();
        assertTrue(edges.size() >= 5);
        double wide = CALM.prechargeGauge(CALM.prechargeCount() - 1) / 1e5 - CALM.prechargeGauge(0) / 1e5;
        double high = Math.log10(CALM.volume(CALM.volumeCount() - 1) / CALM.volume(0));
        for (Curve edge : edges) {
            Points points = edge.points();
            double back = 0;
            for (int i = 2; i < points.count(); i++) {
                back += Math.max(0, angle(points, i - 1, wide, high) - angle(points, i, wide, high));
            }
            assertTrue(back < 30, edge.label() + " bends back by " + back + " degrees");
        }
    }

    private static double angle(Points points, int end, double wide, double high) {
        return Math.toDegrees(Math.atan2(
                (points.up(end) - points.up(end - 1)) / high, (points.across(end) - points.across(end - 1)) / wide));
    }

    private static double area(Points rim) {
        double twice = 0;
        for (int i = 0; i < rim.count(); i++) {
            int next = (i + 1) % rim.count();
            twice += rim.across(i) * rim.up(next) - rim.across(next) * rim.up(i);
        }
        return twice / 2;
    }

    @Test
    void drawsEveryMap() throws Exception {
        for (UnitSystem units : UnitSystem.values()) {
            for (Map.Entry<String, Chart> chart : Maps.charts(units).entrySet()) {
                BufferedImage image = Pictures.png(png(chart.getValue()));
                assertEquals(2080, image.getWidth());
                assertTrue(Pictures.colours(image) > 40, chart.getKey() + " is blank");
                assertTrue(Pictures.rimIsFree(image), chart.getKey() + " is clipped");
                Document svg = Pictures.svg(svg(chart.getValue()));
                assertFalse(svg.getDocumentElement().getAttribute("aria-label").isBlank());
                assertFalse(svg.getElementsByTagName("desc")
                        .item(0)
                        .getTextContent()
                        .isBlank());
            }
        }
    }

    @Test
    void keepsWordsAsWords() throws Exception {
        Document svg = Pictures.svg(svg(Chart.of(CALM, UnitSystem.SI)));
        String words = Pictures.words(svg);
        for (String expected : List.of(
                "precharge = static pressure (4.2 bar)",
                "valve drips here",
                "at least 20 bar",
                "6 bar",
                "target: the peak is 5.52 bar",
                "vessel volume (L, logarithmic scale)",
                "vessel's precharge (gauge, bar)")) {
            assertTrue(words.contains(expected), expected);
        }
        String description = svg.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(description.contains("bands of peak pressure (gauge): below 5 bar"), description);
        assertTrue(description.contains("as it is: peak 6.37 bar"), description);
    }

    @Test
    void isTheSameEachTimeAndSharesNoIds() throws IOException {
        Chart chart = Chart.of(CALM, UnitSystem.SI);
        assertArrayEquals(png(chart), png(chart));
        String svg = svg(chart);
        assertEquals(svg, svg(chart));
        String id = svg.substring(svg.indexOf("aria-describedby=\"") + 18).substring(0, 10);
        assertTrue(id.matches("hs[0-9a-f]{8}"), id);
        assertNotEquals(svg(Chart.of(CALM, UnitSystem.US)).indexOf(id), svg.indexOf(id));
        assertFalse(svg(Chart.of(CALM, UnitSystem.US)).contains(id));
    }

    /** The axes speak as the place does. */
    @Test
    void inTheUsTheVesselIsAnExpansionTank() throws IOException {
        assertTrue(svg(Chart.of(CALM, UnitSystem.US)).contains("expansion tank volume (gal"));
        assertTrue(svg(Chart.of(CALM, UnitSystem.SI)).contains("vessel volume (L"));
    }

    @Test
    void comesInOtherSizes() throws IOException {
        Chart chart = Chart.of(CALM, UnitSystem.US);
        BufferedImage small = Pictures.png(png(chart.withSize(720, 520)));
        assertEquals(1440, small.getWidth());
        assertTrue(Pictures.rimIsFree(small));
        assertThrows(IllegalArgumentException.class, () -> chart.withSize(719, 700));
        assertThrows(NullPointerException.class, () -> Chart.of((PeakMap) null, UnitSystem.SI));
    }

    private static byte[] png(Chart chart) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        chart.writePng(out);
        return out.toByteArray();
    }

    private static String svg(Chart chart) throws IOException {
        StringBuilder out = new StringBuilder();
        chart.writeSvg(out);
        return out.toString();
    }
}

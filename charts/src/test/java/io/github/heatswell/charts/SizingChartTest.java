package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.sizing.NominalSize;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** What the picture of a sizing says. */
class SizingChartTest {

    private static SizeAdvice advice(Supply supply, double... litres) {
        HotWaterSystem house =
                Maps.house().supply(supply).vessel(Plants.vessel(12, 3)).build();
        SizingTarget target =
                SizingTarget.builder(house).vesselRating(Plants.bar(10)).build();
        VesselSizing.Builder sizing = VesselSizing.builder(house, target).precharge(VesselSizing.Precharge.STATIC);
        if (litres.length > 0) {
            sizing.sizes(Arrays.stream(litres)
                    .mapToObj(each -> NominalSize.of(each, VolumeUnit.LITRE))
                    .toList());
        }
        return new SizeAdvice(sizing.build().size(), house, Optional.empty());
    }

    private static Supply behindCheckValve(double bar) {
        return Plants.supply(Supply.Arrangement.CHECK_VALVE, bar);
    }

    @Test
    void showsWhatTheSizingFound() {
        SizeAdvice advice = advice(behindCheckValve(4.2));
        SizingResult result = advice.sizing();
        Picture picture = Chart.of(advice, UnitSystem.SI).picture();
        Panel plane = picture.upper();
        SizingResult.Vessel chosen = result.smallestOnSale().orElseThrow();
        Mark chief = plane.marks().get(0);
        assertEquals(Mark.Kind.CHIEF, chief.kind());
        assertEquals(chosen.volume(), Math.pow(10, chief.across()) / 1000, 1e-12); // m3; rounding
        double gauge = result.target().gauge() - chosen.margin();
        assertEquals(gauge / 1e5, chief.up(), 1e-9); // bar; rounding
        Curve target = plane.curves().stream()
                .filter(line -> line.role() == Curve.Role.TARGET)
                .findFirst()
                .orElseThrow();
        assertEquals(result.target().gauge() / 1e5, target.points().up(0), 1e-12); // bar; rounding
        for (Mark spot : plane.marks()) {
            assertEquals(
                    spot.kind() == Mark.Kind.FAILING,
                    spot.up() > target.points().up(0) + 1e-6, // bar; the smallest lies on the line
                    "at " + spot.across());
        }
        assertTrue(picture.caption()
                .title()
                .startsWith("A vessel of 18 L, precharged to 4.2 bar, keeps the peak of the worst heat-up at "));
        assertTrue(picture.caption().subtitle().contains("above the top of the picture"));
    }

    @Test
    void saysWhenNoSizeIsEnough() {
        Chart chart = Chart.of(advice(behindCheckValve(4.2), 4, 8, 12), UnitSystem.SI);
        assertTrue(chart.headline().startsWith("No vessel on the list is large enough to stay within the limit of "));
        assertTrue(chart.picture().upper().marks().stream().noneMatch(spot -> spot.kind() == Mark.Kind.CHIEF));
    }

    /** Regression: where supply and limit lie close together, every size on sale was above an empty frame. */
    @Test
    void showsTheBestOfSizesThatAreAllTooSmall() {
        Picture picture = Chart.of(advice(behindCheckValve(5.3), 4, 8, 12, 18, 24, 35), UnitSystem.SI)
                .picture();
        assertEquals(
                4,
                picture.upper().marks().stream()
                        .filter(spot -> spot.kind() == Mark.Kind.FAILING)
                        .count(),
                "beside the smallest that would do");
    }

    @Test
    void saysWhenNoneIsNeeded() {
        Chart chart = Chart.of(advice(Plants.supply(Supply.Arrangement.DIRECT, 4.2)), UnitSystem.SI);
        assertEquals(
                "No vessel is needed: without one the peak of the worst heat-up stays within the limit of 5.52 bar",
                chart.headline());
    }

    @Test
    void refusesASizingWithoutAnyVessel() {
        SizeAdvice result = advice(behindCheckValve(6));
        String message = assertThrows(IllegalArgumentException.class, () -> Chart.of(result, UnitSystem.SI))
                .getMessage();
        assertTrue(message.startsWith("result: there is no vessel to draw. No vessel of any size can"), message);
    }

    @Test
    void drawsEveryOutcome() throws Exception {
        List<SizeAdvice> results = List.of(
                advice(behindCheckValve(4.2)),
                advice(behindCheckValve(4.2), 4),
                advice(behindCheckValve(5.3)),
                advice(Plants.supply(Supply.Arrangement.DIRECT, 4.2)));
        for (UnitSystem units : UnitSystem.values()) {
            for (SizeAdvice result : results) {
                Chart chart = Chart.of(result, units);
                for (Chart each : List.of(chart, chart.withSize(720, 520))) {
                    ByteArrayOutputStream out = new ByteArrayOutputStream();
                    each.writePng(out);
                    BufferedImage image = Pictures.png(out.toByteArray());
                    assertTrue(Pictures.colours(image) > 20, "blank");
                    assertTrue(Pictures.rimIsFree(image), "clipped");
                }
                StringBuilder svg = new StringBuilder();
                chart.writeSvg(svg);
                Document document = Pictures.svg(svg.toString());
                String description =
                        document.getElementsByTagName("desc").item(0).getTextContent();
                assertTrue(description.contains("target, "), description);
                assertFalse(description.contains("null"), description);
            }
        }
    }
}

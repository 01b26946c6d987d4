package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Bars;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.SampledPeaks.Influence;
import io.github.heatswell.units.UnitSystem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

/** What the picture of many samples says. */
class SpreadChartTest {

    /** Peaks at 5.00, 5.01 ... bar, given in falling order. */
    private static SampledPeaks.Builder even(int count) {
        return SampledPeaks.builder(IntStream.range(0, count)
                .mapToDouble(i -> 5e5 + 1e3 * (count - 1 - i))
                .toArray());
    }

    private static SampledPeaks whole() {
        return even(400)
                .reliefSet(7e5)
                .workingPressure(8.9e5)
                .subject("A house of which little is known.")
                .influence(new Influence("tank volume", 0.05))
                .influence(new Influence("vessel precharge", -0.62))
                .influence(new Influence("mains pressure", 0.41))
                .build();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "400 | 200 | 200 of 400 samples (50 %, give or take 2.5 %)",
                "400 | 0 | none of the 400 samples (so in at most about 0.75 % of such houses, with 95 % confidence)",
                "400 | 400 | all 400 samples (so in at least about 99 % of such houses, with 95 % confidence)",
                "400 | 1 | 1 of 400 samples (0.25 %, give or take 0.25 %)",
                "400 | 399 | 399 of 400 samples (over 99 %, give or take 0.25 %)",
                "100 | 62 | 62 of 100 samples (62 %, give or take 4.9 %)",
                "20 | 1 | 1 of 20 samples (5 %, give or take 4.9 %)"
            })
    void saysInHowManyTheValveDrips(int count, int dripping, String words) {
        SampledPeaks sampled = even(count).dripping(dripping).reliefSet(7e5).build();
        assertEquals(
                "A relief valve discharges in " + words,
                Chart.of(sampled, UnitSystem.SI).headline());
    }

    @Test
    void countsWhatReachesTheSetPressure() {
        SampledPeaks sampled = whole();
        assertEquals(200, sampled.dripping()); // 5.00 to 6.99 bar stay below
        assertEquals(200, sampled.countBelow(7e5));
        assertEquals(5e5, sampled.peakGauge(0));
    }

    /** Closed form: of 400 evenly spaced peaks the lowest that 5 % do not exceed is the twentieth. */
    @Test
    void quantilesAreSamples() {
        SampledPeaks sampled = whole();
        assertEquals(5e5 + 19e3, sampled.quantileGauge(0.05));
        assertEquals(5e5 + 199e3, sampled.quantileGauge(0.5));
        assertEquals(5e5 + 379e3, sampled.quantileGauge(0.95));
        assertEquals(5e5, sampled.quantileGauge(0));
        assertEquals(5e5 + 399e3, sampled.quantileGauge(1));
    }

    @Test
    void strongestInfluenceStandsFirst() {
        Bars bars = Chart.of(whole(), UnitSystem.SI)
                .picture()
                .key()
                .orElseThrow()
                .bars()
                .orElseThrow();
        assertEquals(
                List.of("vessel precharge", "mains pressure", "tank volume"),
                bars.bars().stream().map(Bars.Bar::name).toList());
        assertEquals(-0.62, bars.bars().get(0).value());
        Bars inTheUs = Chart.of(whole(), UnitSystem.US)
                .picture()
                .key()
                .orElseThrow()
                .bars()
                .orElseThrow();
        assertEquals(
                List.of("expansion tank precharge", "city water pressure", "tank volume"),
                inTheUs.bars().stream().map(Bars.Bar::name).toList());
        SampledPeaks.Builder many = even(50);
        for (int i = 0; i < 15; i++) {
            many.influence(new Influence("input " + i, i / 20.0));
        }
        Bars most = Chart.of(many.build(), UnitSystem.SI)
                .picture()
                .key()
                .orElseThrow()
                .bars()
                .orElseThrow();
        assertEquals(12, most.bars().size());
        assertTrue(most.note().endsWith("3 weaker ones are left out."), most.note());
    }

    /** The limit that decides on a vessel is drawn wherever it lies, with how many of the peaks are above it. */
    @Test
    void theLimitOfASizingIsAlwaysDrawn() {
        for (double limit : new double[] {5.5e5, 40e5}) {
            List<Curve> lines = Chart.of(even(400).limit(limit).build(), UnitSystem.SI)
                    .picture()
                    .upper()
                    .curves();
            Curve drawn = lines.stream()
                    .filter(curve -> curve.role() == Curve.Role.TARGET)
                    .findFirst()
                    .orElseThrow();
            assertEquals(
                    limit < 10e5
                            ? "limit of the sizing, 5.5 bar: exceeded in 349 of 400 samples"
                            : "limit of the sizing, 40 bar: exceeded in none of 400 samples (off the scale)",
                    drawn.label());
        }
    }

    @Test
    void curveClimbsFromNothingToAll() {
        for (int count : new int[] {2, 400, 5000}) {
            Panel plane = Chart.of(even(count).build(), UnitSystem.US).picture().upper();
            Points curve = plane.curves().get(plane.curves().size() - 1).points();
            assertTrue(curve.count() <= 1602, curve.count() + " corners");
            assertEquals(0, curve.up(0));
            assertEquals(100, curve.up(curve.count() - 1));
            for (int i = 1; i < curve.count(); i++) {
                assertTrue(curve.up(i) >= curve.up(i - 1) && curve.across(i) >= curve.across(i - 1));
            }
        }
    }

    @Test
    void linesSayHowManyReachThem() {
        Panel plane = Chart.of(whole(), UnitSystem.SI).picture().upper();
        List<String> labels = plane.curves().stream()
                .map(Curve::label)
                .filter(label -> !label.isEmpty())
                .toList();
        assertEquals(
                List.of(
                        "working pressure, 8.9 bar: exceeded in 9 of 400 samples", // 8.91 to 8.99 bar
                        "relief valve set, 7 bar: reached in 200 of 400 samples"),
                labels);
    }

    /** The limit that decides is drawn where it is described, though every sample has its own. */
    @Test
    void aSetPressureThatVariesIsDrawnAndCountsWhatDischarges() {
        SampledPeaks sampled =
                even(400).reliefSet(7e5).reliefVaries(true).dripping(180).build();
        String label = Chart.of(sampled, UnitSystem.SI)
                .picture()
                .upper()
                .curves()
                .get(0)
                .label();
        assertEquals("relief valve set, about 7 bar: discharges in 180 of 400 samples", label);
        SampledPeaks dry =
                even(100).reliefSet(7e5).reliefVaries(true).dripping(0).build();
        assertTrue(Chart.of(dry, UnitSystem.SI).headline().startsWith("Half of the peaks are at least "));
    }

    @Test
    void lineFarAwayIsNamedAtTheEdge() {
        SampledPeaks sampled = even(10).reliefSet(20e5).build();
        Picture picture = Chart.of(sampled, UnitSystem.SI).picture();
        String label = picture.upper().curves().get(0).label();
        assertEquals("relief valve set, 20 bar: reached in none of 10 samples (off the scale)", label);
        assertTrue(picture.across().to() < 6);
    }

    @Test
    void warnsFirstOfATankThatMayBurst() {
        Picture picture =
                Chart.of(even(400).endedEarly(3).build(), UnitSystem.SI).picture();
        assertTrue(picture.caption()
                .hazard()
                .startsWith("Hazard: In 3 of 400 samples (0.75 %, give or take 0.43 %) the run ends"));
        assertEquals("", Chart.of(whole(), UnitSystem.SI).picture().caption().hazard());
    }

    @Test
    void saysThatSharesAreThoseOfTheSamples() {
        String subtitle = Chart.of(whole(), UnitSystem.SI).picture().caption().subtitle();
        assertTrue(subtitle.startsWith("A house of which little is known. Nine in ten of the 400 samples"), subtitle);
        assertTrue(subtitle.contains("shares of the samples"), subtitle);
        String few =
                Chart.of(even(5).build(), UnitSystem.SI).picture().caption().subtitle();
        assertTrue(few.startsWith("The 5 samples peak between 5 bar and 5.04 bar"), few);
    }

    @Test
    void drawsWithAndWithoutBars() throws Exception {
        Map<String, SampledPeaks> all = Map.of(
                "whole", whole(),
                "bare", even(2).build(),
                "same", SampledPeaks.builder(6e5, 6e5, 6e5).reliefSet(6e5).build(),
                "hazard", even(30).reliefSet(5.1e5).endedEarly(30).build());
        for (UnitSystem units : UnitSystem.values()) {
            for (Map.Entry<String, SampledPeaks> each : all.entrySet()) {
                Chart chart = Chart.of(each.getValue(), units);
                for (Chart sized : List.of(chart, chart.withSize(720, 520))) {
                    ByteArrayOutputStream out = new ByteArrayOutputStream();
                    sized.writePng(out);
                    BufferedImage image = Pictures.png(out.toByteArray());
                    assertTrue(Pictures.colours(image) > 20, each.getKey() + " is blank");
                    assertTrue(Pictures.rimIsFree(image), each.getKey() + " is clipped");
                }
                StringBuilder svg = new StringBuilder();
                chart.writeSvg(svg);
                Document document = Pictures.svg(svg.toString());
                assertFalse(document.getElementsByTagName("desc")
                        .item(0)
                        .getTextContent()
                        .isBlank());
            }
        }
    }

    @Test
    void describesItselfInWords() throws Exception {
        StringBuilder svg = new StringBuilder();
        Chart.of(whole(), UnitSystem.SI).writeSvg(svg);
        Document document = Pictures.svg(svg.toString());
        String description = document.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(description.contains("50 % peak at or below 6.99 bar"), description);
        assertTrue(description.contains("vessel precharge \u22120.62; mains pressure +0.41"), description);
        assertTrue(Pictures.words(document).contains("What moves the peak most"));
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                refused("peaks: 1 are too few", () -> SampledPeaks.builder(5e5)),
                refused("peaks: NaN", () -> SampledPeaks.builder(5e5, Double.NaN)),
                refused("relief-set: Infinity", () -> even(2).reliefSet(Double.POSITIVE_INFINITY)),
                refused("working-pressure: NaN", () -> even(2).workingPressure(Double.NaN)),
                refused("dripping: 3 ", () -> even(2).dripping(3)),
                refused("dripping: -1 ", () -> even(2).dripping(-1)),
                refused("ended-early: 3 ", () -> even(2).endedEarly(3)),
                refused("influence: needs a name", () -> new Influence(" ", 0)),
                refused("influence: 1.2 of", () -> new Influence("x", 1.2)),
                refused("influence: NaN of", () -> new Influence("x", Double.NaN)),
                refused("share: 1.1", () -> even(2).build().quantileGauge(1.1)),
                refused("width: ", () -> Chart.of(whole(), UnitSystem.SI).withSize(1, 600)));
    }

    private static Arguments refused(String beginning, Executable call) {
        return Arguments.of(beginning, call);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refusals")
    void refusesWithAReason(String beginning, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.startsWith(beginning), message);
    }
}

package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.study.SizeCertainty;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Regression: the terminal said 24 L, while the files, the run with the vessel and the page went on recommending 18 L. */
class OneRecommendedSizeTest {

    @Test
    void everyReportAndFileRecommendsTheSameSize() throws IOException {
        VesselAnswer answer =
                VesselChoice.of(Catalogue.read("orchard-lodge")).build().answer();
        double volume = answer.recommended().orElseThrow().volume();
        assertEquals(0.024, volume, 1e-12);
        assertTrue(
                SizingReport.answer(answer, UnitSystem.SI).report().get().text().contains("A vessel of 24 L"));
        assertEquals(
                volume,
                answer.proposed().orElseThrow().system().vessel().orElseThrow().volume(),
                1e-12);
        Map<String, String> files = new HashMap<>();
        for (ResultFile file : SizingReport.answer(answer, UnitSystem.SI).files()) {
            if (!file.name().endsWith(".png")) {
                ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                file.writeTo(bytes);
                files.put(file.name(), bytes.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " "));
            }
        }
        String json = files.get("sizing.json");
        assertTrue(json.contains("\"recommended\" : { \"volume_m3\" : 0.024,"), json);
        assertTrue(json.contains("\"smallest_on_sale\" : { \"volume_m3\" : 0.018,"), json);
        assertTrue(json.contains("\"holds\" : true"), json);
        assertTrue(files.get("before-after.svg").contains("with 24"), "the run with the vessel");
        assertFalse(files.get("before-after.svg").contains("with 18"), "the run with the vessel");
        String page = files.get("report.html");
        assertTrue(page.contains("A vessel of 24"), "the answer and the title of the picture");
        assertFalse(page.contains("A vessel of 18"), "the bare smallest is named as what it is");
        assertTrue(page.contains("by the best estimates alone"), page);
        assertTrue(page.contains("yes, recommended"), page);
        assertFalse(files.get("sizes.svg").contains("A vessel of 18"), "the title of the picture");
    }

    /** Regression: 24 L was to be bought for a vessel of 23 L that is enough, as only the sizes on sale were tried. */
    @Test
    void aVesselThatIsEnoughIsKeptWhateverIsOnSale() {
        VesselAnswer answer = VesselChoice.of(Catalogue.read("orchard-lodge-vessel")
                        .with(List.of(Change.of("vessel.volume=23L"), Change.of("vessel.precharge=4.2bar"))))
                .build()
                .answer();
        assertEquals(0.023, answer.recommended().orElseThrow().volume(), 1e-12);
        assertEquals(0.023, answer.advice().kept().orElseThrow().volume(), 1e-12);
        QuantityFormat shown = QuantityFormat.ascii(UnitSystem.SI);
        for (List<String> row : PageSizes.supplies(answer, shown).orElseThrow().rows()) {
            answer.sizing().nominal().stream()
                    .filter(size -> shown.volume(size.volume()).equals(row.get(0))
                            && row.get(1).matches("[\\d.]+ .*"))
                    .forEach(size -> assertEquals(
                            PressureUnit.BAR.fromSi(size.peakAbsolute()
                                    - answer.scenario().system().site().atmosphere()),
                            Double.parseDouble(row.get(1).split(" ")[0]),
                            0.006, // half of the last digit
                            row::toString));
        }
        String text =
                SizingReport.answer(answer, UnitSystem.SI).report().get().text().replaceAll("\\s+", " ");
        assertTrue(text.contains("there is nothing to buy"), text);
        assertFalse(text.contains("24 L cheapest"), text);
    }

    /** A supply of which next to nothing is known: no size on the list is sure enough, so none is recommended anywhere. */
    @Test
    void whereNoSizeIsSureNoneIsRecommended() throws IOException {
        VesselAnswer answer = VesselChoice.of(
                        Catalogue.read("orchard-lodge").with(List.of(Change.of("supply.pressure=4.2 bar +/- 2 bar"))))
                .build()
                .answer();
        assertTrue(answer.recommended().isEmpty());
        assertTrue(answer.proposed().isEmpty());
        SizeCertainty found = answer.certainty().orElseThrow();
        assertEquals(0.08, found.tried().get(found.tried().size() - 1).volume(), 1e-12, "the largest was looked at");
        assertTrue(found.tried().size() <= 6, "and not every one");
        String text =
                SizingReport.answer(answer, UnitSystem.SI).report().get().text().replaceAll("\\s+", " ");
        assertTrue(
                text.contains(
                        "Too little is known about this house to name one size: it may take anything from 18 L to more than"
                                + " 80 L, the largest on the list. Read a gauge on a cold tap with no water running first: the"
                                + " supply pressure decides."),
                text);
        assertTrue(text.contains("No size on the list is sure to be enough in nine of ten such houses."), text);
        assertFalse(text.contains("yes, recommended"), "no row is marked");
    }
}

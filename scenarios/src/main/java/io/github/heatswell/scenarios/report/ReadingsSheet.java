package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How readings of a gauge are taken, and a sheet of paper to write them on. What it asks for is common practice, no source. */
public final class ReadingsSheet {

    /** How readings are taken, a paragraph each; the last one is the caution. */
    public static final List<String> HOW = List.of(
            "Begin with the heater off and no water running. Note a reading then, one every five minutes while the heater is on, and a"
                    + " few afterwards: an hour later, the next morning.",
            "Write down what you see: heater came on, dripping, paper under the outlet wet or dry, showered, nobody used water, caught"
                    + " 0.3 L, vessel heavy, hot tap 58 C. All of that counts.",
            "Never catch or touch what comes out of a relief valve while it may be hot: it scalds.");

    /** So long after the heater came on (min) each reading is due. */
    private static final int STEP = 5;

    private static final int STEPS = 12;

    private static final List<String> COLUMNS =
            List.of("When", "Time on the clock", "Pressure", "What you saw: heater, drips, water used");

    private ReadingsSheet() {}

    /**
     * The sheet as a page to print.
     *
     * @param name the name of the file, without a folder
     * @param units whose words it uses
     * @return the file
     */
    public static ResultFile page(String name, UnitSystem units) {
        Document document = Document.of("Gauge readings", "", List.of(), List.of(sheet()), CommandResult.onPage(units))
                .calm("Before you go to the heater:");
        return ResultFile.ofText(name, out -> HtmlPage.write(document, out));
    }

    private static Document.Section sheet() {
        Stream<String> heating = IntStream.rangeClosed(1, STEPS).mapToObj(i -> STEP * i + " min later");
        List<List<String>> rows = Stream.of(
                        Stream.of("Heater off, no water running", "The heater comes on"),
                        heating,
                        Stream.of(
                                "The heater goes off",
                                "1 h after that",
                                "Last thing at night",
                                "In the morning, before anybody uses water"))
                .flatMap(one -> one)
                .map(when -> List.of(when, "", "", ""))
                .toList();
        return new Document.Section(
                "A sheet to fill in",
                List.of(
                        new Block.Items(HOW, Block.ListKind.BULLETS),
                        new Block.Blanks(
                                "House, date and gauge",
                                List.of(
                                        Block.Blanks.Line.open("House and date"),
                                        Block.Blanks.Line.open("Unit of the gauge: psi, bar or kPa"),
                                        Block.Blanks.Line.open("Reading of the gauge with no pressure on it")),
                                false),
                        new Block.Grid("The readings", COLUMNS, rows),
                        new Block.Paragraph(
                                "Then type them in as you wrote them: heatswell readings.", Block.Tone.PLAIN)));
    }
}

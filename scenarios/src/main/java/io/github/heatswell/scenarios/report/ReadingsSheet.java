package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How readings of a gauge are taken, and a sheet of paper to write them on. What it asks for is common practice, no source. */
public final class ReadingsSheet {

    /** So long after the heater came on (min) each reading is due: as many as leave room for the cautions on one sheet of Letter. */
    private static final int[] DUE = {5, 10, 15, 20, 25, 30, 45, 60};

    private static final List<String> COLUMNS =
            List.of("When", "Time", "Pressure", "What you saw: heater, drips, water");

    private ReadingsSheet() {}

    /**
     * How readings are taken.
     *
     * @param units in which people write them, and whose words they use
     * @return a paragraph each; the last one is the caution
     */
    public static List<String> how(UnitSystem units) {
        return Stream.of(
                        "Screw the gauge onto the drain cock of the tank, with the heater off and cool, or onto a tap that the cold feed of the"
                                + " tank also feeds. A tap outside may branch off before the reducing valve or check valve: there the gauge"
                                + " shows the mains pressure only.",
                        "Begin with the heater off and no water running. Note a reading then, one every five minutes in the first half hour"
                                + " of heating, one every quarter of an hour after that, one an hour later and one the next morning.",
                        "Write down what you see: heater came on, dripping, paper under the outlet wet or dry, showered, nobody"
                                + " used water, caught " + (units == UnitSystem.US ? "1 pint" : "0.3 L")
                                + ", vessel heavy, hot tap " + (units == UnitSystem.US ? "136 F" : "58 C")
                                + ". All of that counts.",
                        "Never catch or touch what comes out of a relief valve while it may be hot: it scalds.")
                .map(units::spelled)
                .toList();
    }

    /**
     * Lines such as a list of readings has.
     *
     * @param units in which people write them
     * @return two of them, within a sentence
     */
    public static String examples(UnitSystem units) {
        return "6:45 am 61 psi heater came on, or "
                + (units == UnitSystem.US ? "7:05 148 psi dripping" : "18:45 4,2 bar tropft");
    }

    /**
     * The sheet as a page to print.
     *
     * @param name the name of the file, without a folder
     * @param units whose words it uses
     * @return the file
     */
    public static ResultFile page(String name, UnitSystem units) {
        Document document = Document.of(
                        "Gauge readings", "", List.of(), List.of(sheet(units)), CommandResult.onPage(units))
                .calm("Before you go to the heater:");
        return ResultFile.ofText(name, out -> HtmlPage.write(document, out));
    }

    private static Document.Section sheet(UnitSystem units) {
        Stream<String> heating = IntStream.of(DUE).mapToObj(due -> due + " min later");
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
                        new Block.Items(how(units), Block.ListKind.BULLETS),
                        new Block.Blanks(
                                "House, date and gauge",
                                List.of(
                                        Block.Blanks.Line.open("House and date"),
                                        Block.Blanks.Line.open(
                                                units == UnitSystem.US
                                                        ? "Unit of the gauge, such as psi"
                                                        : "Unit of the gauge: bar, kPa or psi"),
                                        Block.Blanks.Line.open("What the gauge shows in your hand")),
                                false),
                        new Block.Grid("The readings", COLUMNS, rows),
                        new Block.Paragraph(
                                "Then type them in as you wrote them, with heatswell readings or in heatswell guide (type paper).",
                                Block.Tone.PLAIN)));
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** What a result rests on beside what its scenario says, as the printed report shows it. */
final class PageBasis {

    private PageBasis() {}

    /**
     * What a result rests on.
     *
     * @param scenario what was run
     * @param checked whether a check sheet is given, whose range rests on uncertainties
     * @param shown the units
     */
    static Document.Section of(Scenario scenario, boolean checked, QuantityFormat shown) {
        return of(scenario, checked ? usual(VariedHouse.of(scenario), "; for the check sheet only") : List.of(), shown);
    }

    /** What an outlook rests on. */
    static Document.Section ofYears(Scenario scenario, QuantityFormat shown) {
        return of(scenario, usual(VariedHouse.of(scenario).withUnread(scenario), ""), shown);
    }

    private static Document.Section of(Scenario scenario, List<List<String>> usual, QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        assumed(scenario, shown, blocks);
        if (!scenario.changes().isEmpty()) {
            blocks.add(new Block.Subheading("Changed from outside the file"));
            blocks.add(new Block.Items(
                    scenario.changes().stream().map(Change::toString).toList(), Block.ListKind.QUOTED_BULLETS));
        }
        List<List<String>> uncertain = scenario.uncertain().isEmpty() ? usual : given(scenario);
        if (!uncertain.isEmpty()) {
            Grid ranges = new Grid(
                    "Known within a range only", List.of("Input", "Range", "What that means"), uncertain, true);
            blocks.add(
                    scenario.uncertain().isEmpty()
                            ? ranges.onPage()
                            : ranges.captionedOnScreen("Known within a range only; this run took the best estimates"));
        }
        return new Document.Section("Assumptions", blocks);
    }

    private static void assumed(Scenario scenario, QuantityFormat shown, List<Block> blocks) {
        if (scenario.assumptions().isEmpty()) {
            blocks.add(new Block.Paragraph(
                            "Nothing had to be assumed: the scenario says everything the model needs.",
                            Block.Tone.PLAIN)
                    .onPage());
            return;
        }
        blocks.add(new Block.Paragraph(
                        "The scenario does not say these. If you know better, write it into the file and run it again.",
                        Block.Tone.PLAIN)
                .onPage());
        blocks.add(new Grid(
                        "Filled in with typical values",
                        List.of("Field", "Value", "Why this value"),
                        scenario.assumptions().stream()
                                .map(value ->
                                        List.of(value.field(), PageWords.inBoth(value.value(), shown), value.basis()))
                                .toList())
                .orOnScreen(new Grid(
                        "Assumed, since the file does not say (report.html gives the reasons)",
                        List.of("Field", "Value"),
                        scenario.assumptions().stream()
                                .map(value -> List.of(value.field(), PageWords.inUnits(value.value(), shown)))
                                .toList(),
                        true)));
    }

    private static List<List<String>> given(Scenario scenario) {
        return scenario.uncertain().stream()
                .map(field -> List.of(field.field(), field.text(), "taken as " + field.centre()))
                .toList();
    }

    /** What a range rests on where nothing was said. */
    private static List<List<String>> usual(VariedHouse varied, String use) {
        return varied.inputs().stream()
                .map(input -> List.of(input.name(), input.words(), "usual; common practice, no source" + use))
                .toList();
    }
}

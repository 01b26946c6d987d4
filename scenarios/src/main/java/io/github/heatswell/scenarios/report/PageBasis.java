package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.scenarios.wording.Typed;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
        return of(
                scenario,
                checked ? usual(Check.unread(VariedHouse.of(scenario), scenario), ", for the check sheet", shown) : "",
                shown);
    }

    /** What an outlook rests on. */
    static Document.Section ofYears(Scenario scenario, QuantityFormat shown) {
        return of(scenario, usual(VariedHouse.of(scenario).withUnread(scenario), "", shown), shown);
    }

    private static Document.Section of(Scenario scenario, String usual, QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        live(scenario).map(Block::onPage).ifPresent(blocks::add);
        PageInputs.of(scenario, shown).forEach(block -> blocks.add(block.onPage()));
        assumed(scenario, shown).ifPresent(blocks::add);
        if (!scenario.changes().isEmpty()) {
            blocks.add(new Block.Subheading("Changed for this answer").onScreen());
            blocks.add(new Block.Items(
                            scenario.changes().stream().map(Change::toString).toList(), Block.ListKind.QUOTED_BULLETS)
                    .onScreen());
        }
        if (!scenario.uncertain().isEmpty()) {
            blocks.add(ranges(
                            "Known within a range only",
                            given(scenario, shown).stream()
                                    .map(PageBasis::inWords)
                                    .toList())
                    .orOnScreen(ranges(
                            "Known within a range only; this run used the best estimates", given(scenario, shown))));
        } else if (!usual.isEmpty()) {
            blocks.add(new Block.Paragraph(usual, Block.Tone.PLAIN).onPage());
        }
        return new Document.Section("Inputs and assumptions", blocks);
    }

    /** The command that writes this very house as a page in which its values can be changed. */
    private static Optional<Block> live(Scenario scenario) {
        List<String> house = scenario.words();
        return house.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Formula(
                        "Try other values and watch what happens",
                        Typed.command(
                                Stream.concat(Stream.of("page"), house.stream()).toList()),
                        (Catalogue.names().contains(house.get(0)) ? "" : ", typed where its file is,")
                                + " writes this house as one page for a browser, on a phone too."));
    }

    private static Grid ranges(String caption, List<List<String>> rows) {
        return new Grid(caption, List.of("Input", "Range", "In this run"), rows, true);
    }

    private static Optional<Block> assumed(Scenario scenario, QuantityFormat shown) {
        return scenario.assumptions().isEmpty()
                ? Optional.empty()
                : Optional.of(new Grid(
                                "Assumed, since the file does not say (report.html gives the reasons)",
                                List.of("Field", "Value"),
                                scenario.assumptions().stream()
                                        .map(value -> List.of(
                                                value.field(),
                                                PageWords.typical(PageWords.asWritten(value.value()), shown)))
                                        .toList(),
                                true)
                        .onScreen());
    }

    private static List<List<String>> given(Scenario scenario, QuantityFormat shown) {
        return scenario.uncertain().stream()
                .map(field -> List.of(
                        field.field(),
                        PageWords.inUnits(field.text(), shown),
                        "taken as " + PageWords.inUnits(field.centre(), shown)))
                .toList();
    }

    /** What is varied where nothing was said of ranges. */
    private static String usual(VariedHouse varied, String use, QuantityFormat shown) {
        return "Known within a range only" + use + ", by common practice, no source: "
                + varied.inputs().stream()
                        .map(input -> input.label() + " " + PageWords.inUnits(input.words(), shown))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static List<String> inWords(List<String> row) {
        return List.of(PageInputs.name(row.get(0)), row.get(1), row.get(2));
    }
}

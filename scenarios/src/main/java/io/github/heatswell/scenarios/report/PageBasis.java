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
        onScreen(scenario).map(Block::onScreen).ifPresent(blocks::add);
        if (!scenario.changes().isEmpty()) {
            blocks.add(new Block.Subheading("Changed for this answer").onScreen());
            blocks.add(new Block.Items(
                            scenario.changes().stream().map(Change::toString).toList(), Block.ListKind.QUOTED_BULLETS)
                    .onScreen());
        }
        if (!scenario.uncertain().isEmpty()) {
            blocks.add(new Grid(
                            "Known within a range only",
                            List.of("Input", "Range", "In this run"),
                            scenario.uncertain().stream()
                                    .map(field -> List.of(
                                            PageInputs.name(field.field()),
                                            PageWords.inUnits(field.text(), shown),
                                            "taken as " + PageWords.inUnits(field.centre(), shown)))
                                    .toList(),
                            true)
                    .onPage());
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

    /** How much of it nobody said, or only as a range: the page names each value. */
    private static Optional<Block> onScreen(Scenario scenario) {
        List<String> counts = new ArrayList<>();
        int assumed = scenario.assumptions().size();
        int ranges = scenario.uncertain().size();
        if (assumed > 0) {
            counts.add(assumed
                    + (assumed == 1
                            ? " value that the file does not give is"
                            : " values that the file does not give are")
                    + " assumed");
        }
        if (ranges > 0) {
            counts.add(ranges + (ranges == 1 ? " is" : " are")
                    + " known within a range only and taken as the best estimate");
        }
        return counts.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Paragraph(
                        String.join("; ", counts) + ". report.html lists them, with the reasons.", Block.Tone.QUIET));
    }

    /** What is varied where nothing was said of ranges. */
    private static String usual(VariedHouse varied, String use, QuantityFormat shown) {
        return "Known within a range only" + use + ", by common practice, no source: "
                + varied.inputs().stream()
                        .map(input -> input.label() + " " + PageWords.inUnits(input.words(), shown))
                        .collect(Collectors.joining("; "))
                + ".";
    }
}

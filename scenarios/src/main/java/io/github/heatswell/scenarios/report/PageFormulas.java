package io.github.heatswell.scenarios.report;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.scenarios.choice.VesselAnswer.FormulaAnswer;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.VesselFormula;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Formulas as the printed report shows them. */
final class PageFormulas {

    /** A difference that moves the vessel by less than this (m3) is not worth a line. */
    private static final double WORTH_SAYING = 0.005e-3;

    private static final int DIGITS = 6;

    /** Enough for a calculator to come out within a percent. */
    private static final int HAND_DIGITS = 4;

    /** Less than this (K) is the difference of two temperatures of water. */
    private static final double MIN_TEMPERATURE = 250;

    private PageFormulas() {}

    /** What a formula says about the size of the vessel, and why the simulation says otherwise. */
    static List<Block> of(FormulaAnswer formula, QuantityFormat shown) {
        List<Block> blocks = new ArrayList<>();
        String name = PageWords.capitalised(formula.name());
        blocks.add(new Block.Subheading(name
                        + formula.result()
                                .filter(result -> formula.differences().isEmpty())
                                .map(result -> ": " + shown.volume(result.volume()) + ", for comparison only")
                                .orElse(""))
                .onScreen());
        String remark = formula.remark().isBlank() ? "" : PageWords.capitalised(formula.remark()) + ".";
        Optional<Block> said = remark.isEmpty()
                ? Optional.empty()
                : Optional.of(new Block.Paragraph(remark, Block.Tone.PLAIN).onScreen());
        blocks.add(formula.result()
                .<Block>map(result -> new Block.Formula(
                        name,
                        PageWords.inUnits(result.expression(), shown),
                        " gives " + shown.volume(result.volume()) + own(result, shown) + "."
                                + (remark.isEmpty() ? "" : " " + remark)))
                .orElseGet(() -> new Block.Quote(name, remark))
                .onPage());
        said.ifPresent(blocks::add);
        formula.result().ifPresent(result -> {
            List<Block> more = new ArrayList<>();
            rests(result, shown, more);
            formula.differences().ifPresent(differences -> differences(differences, shown, more));
            if (!more.isEmpty()) {
                blocks.add(new Block.Folded("what went into a formula, and why the simulation says otherwise", more));
            }
        });
        return blocks;
    }

    /** The numbers that a formula brings along itself: who works it out finds them nowhere else on paper. */
    private static String own(VesselFormula.Result result, QuantityFormat shown) {
        String numbers = result.inputs().stream()
                .filter(input -> input.source().standing() != Citation.Standing.GIVEN)
                .map(input -> input.symbol() + " = " + value(input, shown) + " ("
                        + PageWords.inUnits(input.meaning(), shown) + ")")
                .collect(Collectors.joining(", "));
        return numbers.isEmpty() ? "" : " with " + numbers;
    }

    /**
     * The size by the first of the formulas, with its numbers, for somebody with a calculator.
     *
     * @param formulas the formulas
     * @param below how much less than the supply the vessel is charged to (Pa, difference), 0 or more
     * @param shown the units
     * @return a sentence; empty where that formula does not apply
     */
    static Optional<String> byHand(List<FormulaAnswer> formulas, double below, QuantityFormat shown) {
        return formulas.stream()
                .limit(1)
                .flatMap(formula -> formula
                        .result()
                        .map(result -> byHand(result, below, shown)
                                + formula.differences()
                                        .map(found -> ", and " + shown.volume(found.simulated()) + " by the simulation")
                                        .orElse("")
                                + ".")
                        .stream())
                .findFirst();
    }

    private static String byHand(VesselFormula.Result result, double below, QuantityFormat shown) {
        Map<String, Double> in = result.inputs().stream()
                .collect(Collectors.toMap(VesselFormula.Input::symbol, VesselFormula.Input::value));
        double water = in.get("v2") / in.get("v1") - 1;
        double tank = 3 * in.get("a") * in.get("dT");
        double supply = in.get("P1");
        double limit = in.get("P2");
        double charge = supply - below;
        boolean less = below > 0;
        double volume = in.get("Vs") * (water - tank) / (charge / supply - charge / limit);
        return "By hand: " + shown.volume(in.get("Vs")) + " of water heated by "
                + shown.temperatureDifference(in.get("dT")) + " grow by " + percent(water) + " and the tank by "
                + percent(tank) + ", which leaves " + shown.volume(in.get("Vs") * (water - tank)) + "; divided by "
                + (less
                        ? ratio(charge, supply, shown) + " - " + ratio(charge, limit, shown)
                        : "1 - " + ratio(supply, limit, shown))
                + (less ? " (precharge, supply and limit, " : " (supply and limit, ")
                + shown.symbol(shown.units().pressure()) + " absolute), " + shown.volume(volume)
                + " is just enough by the handbook's formula in the appendix"
                + (less ? " for this precharge" : "");
    }

    /** Two pressures (Pa, absolute) as a calculator takes them. */
    private static String ratio(double one, double other, QuantityFormat shown) {
        return Stream.of(one, other)
                .map(pressure -> Decimals.significant(shown.units().pressure().fromSi(pressure), HAND_DIGITS))
                .collect(Collectors.joining("/"));
    }

    private static String percent(double share) {
        return Decimals.significant(RatioUnit.PERCENT.fromSi(share), HAND_DIGITS - 1) + " %";
    }

    /** Every number that went in, and where the formula comes from. */
    private static void rests(VesselFormula.Result result, QuantityFormat shown, List<Block> blocks) {
        if (!result.inputs().isEmpty()) {
            blocks.add(new Grid(
                            "What went into the formula",
                            List.of("Letter", "Value", "Meaning", "Source"),
                            result.inputs().stream()
                                    .map(input -> input(input, shown))
                                    .toList())
                    .onPage());
        }
        if (!result.source().text().isBlank()) {
            String standing = standing(result.source());
            blocks.add(new Block.Paragraph(
                            "Source: " + result.source().text() + (standing.isBlank() ? "" : " (" + standing + ")"),
                            Block.Tone.QUIET)
                    .onPage());
        }
    }

    private static List<String> input(VesselFormula.Input input, QuantityFormat shown) {
        Citation source = input.source();
        return List.of(
                input.symbol(),
                value(input, shown),
                PageWords.inUnits(input.meaning(), shown),
                source.standing() == Citation.Standing.GIVEN ? source.text() : source.text() + ", " + standing(source));
    }

    /** The number in units of the reader. */
    private static String value(VesselFormula.Input input, QuantityFormat shown) {
        double number = input.value();
        String given = (Decimals.significant(number, DIGITS) + " " + input.unit()).strip();
        return switch (input.unit()) {
            case "m3" -> shown.volume(number);
            case "Pa abs" -> shown.pressure(number) + " absolute";
            case "m3/kg" -> perMass(number, shown);
            case "K" -> number < MIN_TEMPERATURE ? shown.temperatureDifference(number) : shown.temperature(number);
            default -> PageWords.inUnits(given, shown);
        };
    }

    private static String perMass(double specificVolume, QuantityFormat shown) {
        UnitSystem units = shown.units();
        return Decimals.significant(
                        units.volume().fromSi(specificVolume * units.mass().toSi(1)), DIGITS)
                + " " + shown.symbol(units.volume()) + "/" + shown.symbol(units.mass());
    }

    private static void differences(SizingReconciliation differences, QuantityFormat shown, List<Block> blocks) {
        List<List<String>> rows = new ArrayList<>();
        differences.terms().stream()
                .filter(term -> Math.abs(term.volume()) >= WORTH_SAYING)
                .map(term -> List.of(PageWords.capitalised(term.effect().description()), signed(term.volume(), shown)))
                .forEach(rows::add);
        if (!rows.isEmpty()) {
            rows.add(
                    0, List.of("The formula", shown.volume(differences.formula().volume())));
            rows.add(List.of("The simulation", shown.volume(differences.simulated())));
            blocks.add(new Grid("From the formula to the simulation", List.of("Effect", "Volume"), rows, true)
                    .captionedOnScreen(""));
        }
    }

    private static String signed(double volume, QuantityFormat shown) {
        String words = shown.volume(volume);
        return volume < 0 ? words : "+" + words.replace("(", "(+");
    }

    /** How far a source was checked, in words. */
    static String standing(Citation source) {
        return switch (source.standing()) {
            case SEEN -> "original text read";
            case SECOND_HAND -> "read as quoted elsewhere";
            case FROM_MEMORY -> "no source was checked for it";
            case GIVEN -> "";
        };
    }
}

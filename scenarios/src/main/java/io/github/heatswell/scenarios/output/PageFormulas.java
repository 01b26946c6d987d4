package io.github.heatswell.scenarios.output;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.scenarios.choice.FormulaAnswer;
import io.github.heatswell.scenarios.report.FormulaNote;
import io.github.heatswell.sizing.FormulaInput;
import io.github.heatswell.sizing.FormulaResult;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.OptionalDouble;

/** Formulas as the printed report shows them. */
final class PageFormulas {

    /** A difference that moves the vessel by less than this (m3) is not worth a line. */
    private static final double WORTH_SAYING = 0.005e-3;

    private static final int DIGITS = 6;

    /** Less than this (K) is the difference of two temperatures of water. */
    private static final double LEAST_TEMPERATURE = 250;

    private PageFormulas() {}

    static FormulaNote of(FormulaAnswer formula, QuantityFormat shown) {
        List<FormulaNote.Effect> effects =
                formula.differences().map(PageFormulas::effects).orElse(List.of());
        String name = PageWords.capitalised(formula.name());
        String remark =
                PageWords.capitalised(formula.remark()) + (formula.remark().isEmpty() ? "" : ".");
        return formula.result()
                .map(result -> note(name, result, effects, remark, shown))
                .orElseGet(
                        () -> new FormulaNote(name, "", OptionalDouble.empty(), List.of(), "", "", List.of(), remark));
    }

    private static FormulaNote note(
            String name, FormulaResult result, List<FormulaNote.Effect> effects, String remark, QuantityFormat shown) {
        return new FormulaNote(
                name,
                result.expression(),
                OptionalDouble.of(result.volume()),
                result.inputs().stream().map(input -> input(input, shown)).toList(),
                result.source().text(),
                standing(result.source()),
                effects,
                remark);
    }

    private static FormulaNote.Input input(FormulaInput input, QuantityFormat shown) {
        Citation source = input.source();
        return new FormulaNote.Input(
                input.symbol(),
                value(input, shown),
                input.meaning(),
                source.standing() == Citation.Standing.GIVEN ? source.text() : source.text() + ", " + standing(source));
    }

    /** The number as the formula wants it, and what it is in units of the house. */
    private static String value(FormulaInput input, QuantityFormat shown) {
        double number = input.value();
        String given = (Decimals.significant(number, DIGITS) + " " + input.unit()).strip();
        return switch (input.unit()) {
            case "m3" -> given + " = " + shown.volume(number);
            case "Pa abs" -> given + " = " + shown.pressure(number) + " absolute";
            case "K" ->
                number < LEAST_TEMPERATURE ? PageWords.inBoth(given, shown) : given + " = " + shown.temperature(number);
            default -> PageWords.inBoth(given, shown);
        };
    }

    private static List<FormulaNote.Effect> effects(SizingReconciliation differences) {
        return differences.terms().stream()
                .filter(term -> Math.abs(term.volume()) >= WORTH_SAYING)
                .map(term -> new FormulaNote.Effect(
                        PageWords.capitalised(term.effect().description()), term.volume()))
                .toList();
    }

    /** How far a source was checked, in words. */
    static String standing(Citation source) {
        return switch (source.standing()) {
            case SEEN -> "the text itself was read";
            case SECOND_HAND -> "read where somebody else quotes it";
            case FROM_MEMORY -> "from memory, not checked against a copy";
            case GIVEN -> "";
        };
    }
}

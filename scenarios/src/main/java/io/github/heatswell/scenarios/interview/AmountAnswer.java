package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.Amount;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.Locale;
import java.util.Set;

/** A number with a unit, or, where a question allows it, the word "none". */
final class AmountAnswer implements AnswerKind {

    /** The answer that there is no such thing. */
    static final String NONE = "none";

    /** More digits than any label or gauge has. */
    private static final int DIGITS = 9;

    private static final Set<String> NONE_SPELLINGS = Set.of(NONE, "no", "nothing");

    private final Kind<?> kind;
    private final Choice example;
    private final String none;

    private AmountAnswer(Kind<?> kind, Choice example, String none) {
        this.kind = kind;
        this.example = example;
        this.none = none;
    }

    /**
     * An amount.
     *
     * @param kind its kind; pressures are gauge readings
     * @param example a sound answer in both unit systems
     */
    static AmountAnswer of(Kind<?> kind, Choice example) {
        return new AmountAnswer(kind, example, "");
    }

    /** The same, where "none" is an answer too; the words say when. */
    AmountAnswer orNone(String when) {
        return new AmountAnswer(kind, example, when);
    }

    @Override
    public String understand(String line) {
        if (!none.isEmpty() && NONE_SPELLINGS.contains(line.toLowerCase(Locale.ROOT))) {
            return NONE;
        }
        return text(read(line));
    }

    @Override
    public String reaching(String value, Reach reach) {
        return value.isEmpty() || value.equals(NONE) ? value : reach.of(value, kind);
    }

    private Amount<? extends Unit> read(String line) {
        if (kind != Kind.PRESSURE) {
            return QuantityReader.read(line, kind);
        }
        if (QuantityReader.pressure(line).reference() == Pressure.Reference.ABSOLUTE) {
            throw new IllegalArgumentException(
                    "give the pressure as the gauge shows it, without 'abs'");
        }
        String bare = line.strip().replaceFirst("(?i)( ?gauge| ?\\(gauge\\)| ?\\(g\\)|(?<=bar|psi)g)$", "");
        return QuantityReader.read(bare, kind);
    }

    private static String text(Amount<? extends Unit> amount) {
        return Decimals.significant(amount.value(), DIGITS) + " "
                + amount.unit().symbol();
    }

    @Override
    public String offer(UnitSystem units) {
        String article = kind.noun().startsWith("e") ? "an " : "a ";
        return article + kind.noun() + " with its unit, such as " + example.in(units)
                + (none.isEmpty() ? "" : "; none " + none);
    }
}

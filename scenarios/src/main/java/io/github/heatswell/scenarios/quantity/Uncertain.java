package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An uncertain quantity: {@code 4.2 bar +- 0.2 bar}, which means that the true value lies within with a probability of
 * 95 %, or {@code 4.0 bar to 4.6 bar}, in which every value is equally likely.
 *
 * @param distribution how its values are spread, in the unit
 * @param unit the unit as it was written, with the reference of a pressure if that was said
 */
public record Uncertain(Distribution distribution, String unit) {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern PLUS_MINUS = Pattern.compile("(.+?)\\s*(?:\\+-|\\+/-|\u00b1)\\s*(.+)");
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s+to\\s+(.+)", Pattern.CASE_INSENSITIVE);
    private static final int DIGITS = 12;
    /** Longer than any two quantities; bounds the backtracking of the patterns. */
    private static final int MAX_LENGTH = 200;

    /**
     * Reads an uncertain quantity.
     *
     * @param text such as {@code 58 degC +- 3 K} or {@code 4 to 4.6 bar}
     * @param kind what it must be
     * @return the quantity, or empty if the text is not of this form, such as a plain quantity
     * @throws IllegalArgumentException if the text is of this form but makes no sense; the message says how to write it
     */
    public static Optional<Uncertain> read(String text, Kind<? extends Unit> kind) {
        String plain = BLANKS.matcher(text.strip()).replaceAll(" ");
        if (plain.length() > MAX_LENGTH) {
            return Optional.empty();
        }
        Matcher around = PLUS_MINUS.matcher(plain);
        if (around.matches()) {
            return Optional.of(around(around.group(1), around.group(2), kind));
        }
        Matcher between = RANGE.matcher(plain);
        return between.matches() ? Optional.of(between(between.group(1), between.group(2), kind)) : Optional.empty();
    }

    private static Uncertain around(String centre, String spread, Kind<? extends Unit> kind) {
        QuantityText middle = withUnit(centre, spread);
        Unit unit = QuantityReader.unit(middle, kind);
        double half = half(middle.number(), unit, spread, kind);
        if (!(half > 0)) {
            throw new IllegalArgumentException(
                    "the uncertainty " + Printable.quote(spread) + " must be above 0; leave it out if there is none");
        }
        return new Uncertain(Distribution.around(middle.number(), half), middle.unit());
    }

    /** What stands behind the sign, in the unit before it. */
    private static double half(double value, Unit unit, String spread, Kind<? extends Unit> kind) {
        QuantityText half = QuantityText.of(spread);
        if (half.unit().isEmpty()) {
            return half.number();
        }
        if (half.unit().equals(RatioUnit.PERCENT.symbol()) && unit != RatioUnit.PERCENT) {
            if (unit instanceof TemperatureUnit) {
                throw new IllegalArgumentException(
                        "a percentage of a temperature is meaningless; write, for example, '+- 3 K'");
            }
            return half.number() / 100 * Math.abs(value);
        }
        if (unit instanceof TemperatureUnit) {
            double kelvin = half.unit().toLowerCase(Locale.ROOT).endsWith("c")
                    ? half.number()
                    : inSi(QuantityReader.read(spread, Kind.TEMPERATURE_DIFFERENCE));
            return unit.fromSi(unit.toSi(value) + kelvin) - value;
        }
        Unit own = QuantityReader.unit(half, kind);
        return unit.fromSi(own.toSi(half.number())) - unit.fromSi(own.toSi(0));
    }

    private static Uncertain between(String low, String high, Kind<? extends Unit> kind) {
        QuantityText first = withUnit(low, high);
        Unit lower = QuantityReader.unit(first, kind);
        QuantityText last = QuantityText.of(high);
        if (QuantityReader.unit(last, kind) != lower || reference(first) != reference(last)) {
            throw new IllegalArgumentException("both ends of a range must have the same unit");
        }
        if (!(first.number() < last.number())) {
            throw new IllegalArgumentException(Printable.quote(low + " to " + high) + " must start with its lower end");
        }
        return new Uncertain(Distribution.between(first.number(), last.number()), last.unit());
    }

    /** A quantity that may leave its unit to another. */
    private static QuantityText withUnit(String text, String other) {
        QuantityText own = QuantityText.of(text);
        return own.unit().isEmpty()
                ? QuantityText.of(text + " " + QuantityText.of(other).unit())
                : own;
    }

    private static <U extends Unit> double inSi(Amount<U> amount) {
        return amount.unit().toSi(amount.value());
    }

    private static Pressure.Reference reference(QuantityText text) {
        return QuantityText.ReferenceText.of(text.unit()).reference();
    }

    /**
     * A plain quantity out of the spread.
     *
     * @param value the number, in the unit
     * @return the quantity as a file would write it
     */
    public String at(double value) {
        return Decimals.significant(value, DIGITS) + " " + unit;
    }

    /**
     * The best estimate as a plain quantity.
     *
     * @return the quantity as a file would write it
     */
    public String centre() {
        return at(distribution.centre());
    }
}

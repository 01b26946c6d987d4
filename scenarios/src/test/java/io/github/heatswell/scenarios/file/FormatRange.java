package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.units.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range as the table of keys says it, such as {@code above 0 bar to 25 bar}.
 *
 * @param low the lowest value, in SI if it has a unit
 * @param lowAllowed whether that itself is allowed
 * @param high the highest value, in SI if it has a unit; infinite if the table names none
 */
public record FormatRange(double low, boolean lowAllowed, double high) {

    private static final Pattern BOTH = Pattern.compile("(above )?([-\\d.]+(?: \\S+)?) to ([-\\d.]+(?: \\S+)?)");
    private static final Pattern LOW_ONLY = Pattern.compile("(above )?([-\\d.]+(?: \\S+)?) (?:to|and) [a-z ]+");

    static Optional<FormatRange> of(String text, Optional<Kind<?>> kind) {
        Matcher both = BOTH.matcher(text);
        if (both.matches()) {
            return Optional.of(
                    new FormatRange(number(both.group(2), kind), both.group(1) == null, number(both.group(3), kind)));
        }
        Matcher low = LOW_ONLY.matcher(text);
        return low.matches()
                ? Optional.of(
                        new FormatRange(number(low.group(2), kind), low.group(1) == null, Double.POSITIVE_INFINITY))
                : Optional.empty();
    }

    private static double number(String text, Optional<Kind<?>> kind) {
        return kind.isEmpty() || text.indexOf(' ') < 0 ? Double.parseDouble(text) : si(text, kind.get());
    }

    private static <U extends Unit> double si(String text, Kind<U> kind) {
        Amount<U> amount = QuantityReader.read(text, kind);
        return amount.unit().toSi(amount.value());
    }

    /** Whether a value in SI lies in the range. */
    public boolean contains(double si) {
        return (lowAllowed ? si >= low : si > low) && si <= high;
    }
}

package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.Unit;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads written quantities.
 */
public final class QuantityReader {

    /** What stands between the quantities of a range. */
    private static final Pattern PARTS = Pattern.compile("\\+-|\\+/-|\u00b1|\\sto\\s", Pattern.CASE_INSENSITIVE);

    /** Text without any digit, so without a quantity. */
    private static final Pattern WORDS = Pattern.compile("[\\p{ASCII}&&\\D]*");

    private QuantityReader() {}

    /**
     * Reads a number and its unit.
     *
     * @param text such as {@code 230 L}
     * @param kind what it must be
     * @param <U> the units of that kind
     * @return the amount
     * @throws IllegalArgumentException if the text is no such quantity; the message says how to write it
     */
    public static <U extends Unit> Amount<U> read(String text, Kind<U> kind) {
        QuantityText parts = QuantityText.of(text);
        return new Amount<>(parts.number(), unit(parts, parts.unit(), kind));
    }

    /**
     * Reads a pressure: {@code 4.2 bar} as a gauge shows it, {@code 5.2 bar abs} against vacuum.
     *
     * @param text the pressure
     * @return the pressure with its reference
     * @throws IllegalArgumentException if the text is no pressure; the message says how to write it
     */
    public static Pressure pressure(String text) {
        QuantityText parts = QuantityText.of(text);
        QuantityText.ReferenceText reference = QuantityText.ReferenceText.of(parts.unit());
        PressureUnit unit = unit(parts, reference.unit(), Kind.PRESSURE);
        return new Pressure(unit.toSi(parts.number()), reference.reference());
    }

    /**
     * Whether a text is a unit of a kind; of pressure also one with its reference, {@code bar abs}.
     *
     * @param text such as {@code psi}
     * @param kind the kind
     * @return whether a number before it makes a quantity of that kind
     */
    public static boolean isUnit(String text, Kind<?> kind) {
        try {
            String unit = QuantityText.of("1 " + text).unit();
            return kind.unit(
                            kind == Kind.PRESSURE
                                    ? QuantityText.ReferenceText.of(unit).unit()
                                    : unit)
                    .isPresent();
        } catch (IllegalArgumentException notAQuantity) {
            return false;
        }
    }

    /**
     * The units in a text, of whatever kind.
     *
     * @param text such as {@code 60 psi +- 2 psi}
     * @return the unit of each quantity in it; none if it is something else
     */
    public static List<Unit> units(String text) {
        return WORDS.matcher(text).matches()
                ? List.of()
                : Stream.of(PARTS.split(text)).flatMap(QuantityReader::unitOf).toList();
    }

    private static Stream<Unit> unitOf(String text) {
        String unit;
        try {
            unit = QuantityText.ReferenceText.of(QuantityText.of(text).unit()).unit();
        } catch (IllegalArgumentException notAQuantity) {
            return Stream.empty();
        }
        return Kind.all().stream()
                .<Unit>flatMap(kind -> kind.unit(unit).stream())
                .limit(1);
    }

    /** The unit of a quantity of a kind; of a pressure without its reference. */
    static <U extends Unit> U unit(QuantityText parts, Kind<U> kind) {
        String unit = parts.unit();
        return unit(
                parts,
                kind == Kind.PRESSURE ? QuantityText.ReferenceText.of(unit).unit() : unit,
                kind);
    }

    private static <U extends Unit> U unit(QuantityText parts, String text, Kind<U> kind) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("'" + parts.digits() + "' has no unit; " + giveIn(kind));
        }
        return kind.unit(text)
                .orElseThrow(() -> new IllegalArgumentException(
                        Printable.quote(text) + " is " + misfit(text) + "; " + giveIn(kind) + suggestion(text, kind)));
    }

    private static String giveIn(Kind<?> kind) {
        return "give " + (kind.noun().startsWith("e") ? "an " : "a ") + kind.noun() + " in " + kind.symbols();
    }

    private static String misfit(String text) {
        String kinds = Kind.all().stream()
                .filter(kind -> kind.unit(text).isPresent())
                .map(Kind::noun)
                .collect(Collectors.joining(" or "));
        return kinds.isEmpty() ? "not a known unit" : "a unit of " + kinds;
    }

    private static String suggestion(String text, Kind<?> kind) {
        boolean known = Kind.all().stream().anyMatch(other -> other.unit(text).isPresent());
        List<String> spellings =
                kind.units().stream().flatMap(unit -> unit.spellings().stream()).toList();
        return known || text.length() < 3 || !Character.isLetter(text.charAt(0)) ? "" : Nearest.hint(text, spellings);
    }

    /**
     * A number and its unit.
     *
     * @param value the number, in {@code unit}
     * @param unit the unit
     * @param <U> the kind of unit
     */
    public record Amount<U extends Unit>(double value, U unit) {}
}

package io.github.heatswell.scenarios.generated;

import io.github.heatswell.scenarios.file.FormatKey.Single;
import io.github.heatswell.scenarios.file.FormatRange;
import io.github.heatswell.scenarios.generated.Part.Quantity;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * Draws quantities out of the range of their key: around its example in a tame file, out of the whole range and often at its limits
 * in a wild one, in any unit and with any number of digits.
 */
final class Numbers {

    /** What is drawn of a range above 0 begins at this share of its end. */
    private static final double MIN_SHARE = 1e-5;
    /** Ranges over more than so many times their beginning are drawn evenly on logarithms. */
    private static final double WIDE = 30;
    /** A draw that no file needs more of has this end in SI, where the table names none. */
    private static final double OPEN_END = 10;

    private static final List<Integer> DIGITS = List.of(2, 2, 3, 3, 4, 6, 9);
    private static final int ALL_DIGITS = 15;

    private final Chance chance;
    private final Wildness wildness;

    Numbers(Chance chance, Wildness wildness) {
        this.chance = chance;
        this.wildness = wildness;
    }

    /** A value of a key, in any of its units. */
    Quantity drawn(Single single) {
        FormatRange range = single.range().orElseThrow();
        Unit unit = unit(single);
        if (chance.with(wildness.limits())) {
            boolean high = !range.lowAllowed() || chance.with(0.5);
            if (Double.isFinite(high ? range.high() : range.low())) {
                return all(high ? range.high() : range.low(), unit);
            }
        }
        return rounded(middle(single, range), unit, range);
    }

    /** A value between two others in SI, in the unit of a key's example or any other. */
    Quantity between(Single single, double low, double high) {
        return rounded(chance.between(low, high), unit(single), new FormatRange(low, true, high));
    }

    /** A value in SI with as many digits as a number has. */
    Quantity exactly(Single single, double si) {
        return all(si, unit(single));
    }

    private Unit unit(Single single) {
        List<? extends Unit> units = single.kind().orElseThrow().units();
        return chance.with(0.6) ? exampleUnit(single, units) : chance.of(units);
    }

    /** The unit of a key's example, which is that of the table of keys. */
    static Unit exampleUnit(Single single) {
        return exampleUnit(single, single.kind().orElseThrow().units());
    }

    private static Unit exampleUnit(Single single, List<? extends Unit> units) {
        String symbol = single.example().replaceFirst("^[-0-9.]+ ?", "");
        return units.stream()
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    private double middle(Single single, FormatRange range) {
        double low = range.low();
        double high = Double.isFinite(range.high()) ? range.high() : Math.max(low, OPEN_END * exampleSi(single));
        if (!chance.with(wildness.anywhere())) {
            return Math.max(low, Math.min(high, near(single, exampleSi(single), high - low)));
        }
        double first = low == 0 ? MIN_SHARE * high : low;
        return first > 0 && high / first > WIDE ? chance.evenlyOnLogarithms(first, high) : chance.between(low, high);
    }

    private double near(Single single, double example, double span) {
        boolean scale =
                exampleUnit(single, single.kind().orElseThrow().units()) instanceof TemperatureUnit || example == 0;
        return scale ? example + span * chance.between(-0.1, 0.1) : example * Math.exp(chance.between(-0.6, 0.6));
    }

    private static double exampleSi(Single single) {
        Unit unit = exampleUnit(single, single.kind().orElseThrow().units());
        return unit.toSi(Double.parseDouble(single.example().replaceFirst(" .*", "")));
    }

    /** To few digits, unless that leads out of the range. */
    private Quantity rounded(double si, Unit unit, FormatRange range) {
        Quantity few = quantity(unit.fromSi(si), chance.of(DIGITS), unit);
        return range.contains(few.si()) ? few : all(si, unit);
    }

    private static Quantity all(double si, Unit unit) {
        return quantity(unit.fromSi(si), ALL_DIGITS, unit);
    }

    private static Quantity quantity(double value, int digits, Unit unit) {
        BigDecimal number = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        return new Quantity(number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros(), unit, "");
    }

    /** The same quantity in another unit, to all its digits. */
    static Quantity in(Unit unit, Quantity quantity) {
        Quantity other = all(quantity.si(), unit);
        return new Quantity(other.number(), unit, quantity.suffix());
    }
}

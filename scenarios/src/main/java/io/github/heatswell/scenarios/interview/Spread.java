package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import java.util.function.BiFunction;

/**
 * Uncertainty of a reading, at 95 % confidence. Common practice of the trade, not from any standard or maker.
 */
final class Spread {

    private static final Spread NONE = new Spread((value, times) -> "", "");

    private final BiFunction<String, Double, String> deviation;
    private final String reason;

    private Spread(BiFunction<String, Double, String> deviation, String reason) {
        this.deviation = deviation;
        this.reason = reason;
    }

    /** Of what holds exactly, such as a word or a rating. */
    static Spread none() {
        return NONE;
    }

    /** A fixed pressure (bar). */
    static Spread bar(double bar, String reason) {
        return new Spread((value, times) -> pressure(value, PressureUnit.BAR.toSi(bar * times)), reason);
    }

    /** A fixed difference of temperatures (K). */
    static Spread kelvin(double kelvin, String reason) {
        return new Spread((value, times) -> difference(value, kelvin * times), reason);
    }

    /** A share of the value (1 being all of it). */
    static Spread share(double share, String reason) {
        return new Spread((value, times) -> share(value, share * times), reason);
    }

    /** The deviation of a value with its unit, such as {@code 0.2 bar}, or some times that; empty if it has none. */
    String of(String value, double times) {
        return deviation.apply(value, times);
    }

    /** Why it is so much; empty if there is none. */
    String reason() {
        return reason;
    }

    private static String pressure(String value, double pascals) {
        PressureUnit unit = QuantityReader.read(value, Kind.PRESSURE).unit();
        return Decimals.significant(unit.fromSi(pascals), 1) + " " + unit.symbol();
    }

    private static String difference(String value, double kelvin) {
        TemperatureDifferenceUnit unit =
                QuantityReader.read(value, Kind.TEMPERATURE).unit() == TemperatureUnit.FAHRENHEIT
                        ? TemperatureDifferenceUnit.FAHRENHEIT_DEGREE
                        : TemperatureDifferenceUnit.KELVIN;
        return Decimals.significant(unit.fromSi(kelvin), 1) + " " + unit.symbol();
    }

    private static String share(String value, double share) {
        Amount<? extends Unit> amount = amount(value);
        if (amount.value() == 0) {
            return "";
        }
        return Decimals.significant(Math.abs(amount.value()) * share, 1) + " "
                + amount.unit().symbol();
    }

    private static Amount<? extends Unit> amount(String value) {
        for (Kind<?> kind : new Kind<?>[] {Kind.VOLUME, Kind.POWER}) {
            try {
                return QuantityReader.read(value, kind);
            } catch (IllegalArgumentException e) {
                continue;
            }
        }
        return QuantityReader.read(value, Kind.PRESSURE);
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.function.Function;

/** Quantities as a reader wants them: in the chosen units, with no more digits than matter. */
final class Amounts {

    private static final char NO_BREAK_SPACE = '\u00A0';

    private final UnitSystem units;
    private final Optional<Amounts> beside;

    Amounts(UnitSystem units) {
        this(units, Optional.empty());
    }

    private Amounts(UnitSystem units, Optional<Amounts> beside) {
        this.units = units;
        this.beside = beside;
    }

    /** Every quantity in one unit system, and behind it in brackets in the other. */
    static Amounts inBoth(UnitSystem units) {
        UnitSystem other = units == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
        return new Amounts(units, Optional.of(new Amounts(other)));
    }

    UnitSystem units() {
        return units;
    }

    String pressureUnit() {
        return units.pressure().symbol();
    }

    String temperatureUnit() {
        return units.temperature() == TemperatureUnit.CELSIUS ? "°C" : "°F";
    }

    String volumeUnit() {
        return units.volume().symbol();
    }

    /** A pressure that somebody chose: all the digits it was likely given with. */
    String chosenPressure(double pascal) {
        int least = leastPressureDecimals();
        String first = trimmed(units.pressure().fromSi(pascal), least, least + 1) + " " + pressureUnit();
        return with(first, other -> other.chosenPressure(pascal));
    }

    /** A pressure that a run found. */
    String foundPressure(double pascal) {
        return foundPressure(pascal, 0);
    }

    /** A pressure that a run found, with more digits than usual to tell it from another. */
    String foundPressure(double pascal, int moreDecimals) {
        String first =
                fixed(units.pressure().fromSi(pascal), leastPressureDecimals() + moreDecimals) + " " + pressureUnit();
        return with(first, other -> other.foundPressure(pascal, moreDecimals));
    }

    /** How many digits more than usual it takes before a difference shows: 0 to 2, or -1 if even they do not do. */
    int decimalsToShow(double differencePascal) {
        double difference = Math.abs(units.pressure().fromSi(differencePascal));
        for (int more = 0; more <= 2; more++) {
            if (difference >= Math.pow(10, -(leastPressureDecimals() + more))) {
                return more;
            }
        }
        return -1;
    }

    /** A volume that a run found: two or three digits, down to a hundredth of the unit. */
    String foundVolume(double cubicMetres) {
        return with(volumeAlone(cubicMetres), other -> other.foundVolume(cubicMetres));
    }

    private String volumeAlone(double cubicMetres) {
        double volume = units.volume().fromSi(cubicMetres);
        if (!(volume > 0)) {
            return "0 " + volumeUnit();
        }
        if (volume < 0.01) {
            return "less than 0.01 " + volumeUnit();
        }
        if (volume >= 999.5) {
            return grouped(volume) + " " + volumeUnit();
        }
        return fixed(volume, volume < 0.995 ? 2 : volume < 99.95 ? 1 : 0) + " " + volumeUnit();
    }

    /** A volume that somebody chose, such as that of the tank. */
    String chosenVolume(double cubicMetres) {
        double volume = units.volume().fromSi(cubicMetres);
        String first = trimmed(volume, 0, volume < 99.5 ? 1 : 0) + " " + volumeUnit();
        return with(first, other -> other.chosenVolume(cubicMetres));
    }

    String temperature(double kelvin) {
        String first = trimmed(units.temperature().fromSi(kelvin), 0, 1) + " " + temperatureUnit();
        return with(first, other -> other.temperature(kelvin));
    }

    private String with(String first, Function<Amounts, String> second) {
        return beside.map(other -> first + " (" + second.apply(other) + ")").orElse(first);
    }

    private int leastPressureDecimals() {
        return units == UnitSystem.SI ? 1 : 0;
    }

    private static String fixed(double value, int decimals) {
        return decimal(value, decimals).toPlainString();
    }

    /** Three digits that matter, in groups of three held together by a space that does not break. */
    private static String grouped(double value) {
        StringBuilder text = new StringBuilder(new BigDecimal(value)
                .round(new MathContext(3, RoundingMode.HALF_UP))
                .setScale(0, RoundingMode.UNNECESSARY)
                .toPlainString());
        for (int at = text.length() - 3; at > 0; at -= 3) {
            text.insert(at, NO_BREAK_SPACE);
        }
        return text.toString();
    }

    private static String trimmed(double value, int least, int most) {
        BigDecimal rounded = decimal(value, most).stripTrailingZeros();
        return (rounded.scale() < least ? rounded.setScale(least, RoundingMode.UNNECESSARY) : rounded).toPlainString();
    }

    private static BigDecimal decimal(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Our own words as the printed report has them. */
final class PageWords {

    /** A value keeps the digits it is written with in a file. */
    private static final int DIGITS = 6;

    /** A number with its unit, as assumptions have it. */
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (\\S+)");

    /** Units of scenario files that have a counterpart in the other system, and how it is written there. */
    private static final List<Known> UNITS = List.of(
            new Known(PressureUnit.BAR, QuantityFormat::pressure),
            new Known(PressureUnit.PSI, QuantityFormat::pressure),
            new Known(TemperatureUnit.CELSIUS, QuantityFormat::temperature),
            new Known(TemperatureUnit.FAHRENHEIT, QuantityFormat::temperature),
            new Known(TemperatureDifferenceUnit.KELVIN, QuantityFormat::temperatureDifference),
            new Known(VolumeUnit.LITRE, QuantityFormat::volume),
            new Known(VolumeUnit.MILLILITRE, QuantityFormat::volume),
            new Known(VolumeUnit.US_GALLON, QuantityFormat::volume),
            new Known(VolumeUnit.US_QUART, QuantityFormat::volume),
            new Known(VolumeUnit.US_PINT, QuantityFormat::volume),
            new Known(FlowUnit.LITRE_PER_MINUTE, QuantityFormat::flow),
            new Known(FlowUnit.US_GALLON_PER_MINUTE, QuantityFormat::flow),
            new Known(PowerUnit.KILOWATT, QuantityFormat::power),
            new Known(PowerUnit.BTU_PER_HOUR, QuantityFormat::power),
            new Known(ConductanceUnit.WATT_PER_KELVIN, PageWords::conductance),
            new Known(ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT, PageWords::conductance),
            new Known(LengthUnit.METRE, PageWords::metres),
            new Known(LengthUnit.MILLIMETRE, QuantityFormat::length),
            new Known(LengthUnit.FOOT, QuantityFormat::length),
            new Known(LengthUnit.INCH, QuantityFormat::length));

    private static final List<Unit> OF_THE_US = List.of(
            PressureUnit.PSI,
            TemperatureUnit.FAHRENHEIT,
            VolumeUnit.US_GALLON,
            VolumeUnit.US_QUART,
            VolumeUnit.US_PINT,
            FlowUnit.US_GALLON_PER_MINUTE,
            PowerUnit.BTU_PER_HOUR,
            ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT,
            LengthUnit.FOOT,
            LengthUnit.INCH);

    /** A unit, and how a quantity given in it is written in the other system. */
    private record Known(Unit unit, BiFunction<QuantityFormat, Double, String> written) {

        UnitSystem system() {
            return OF_THE_US.contains(unit) ? UnitSystem.US : UnitSystem.SI;
        }

        String inUnits(double number, QuantityFormat shown) {
            return written.apply(shown, unit.toSi(number));
        }

        String inBoth(double number, QuantityFormat shown) {
            String given = shown.given(number, unit, DIGITS);
            String other = inUnits(number, shown.only(system().other()));
            return shown.units() == system() ? given + " (" + other + ")" : other + " (" + given + ")";
        }
    }

    private PageWords() {}

    /** In feet what a file has in metres, also if it is nothing. */
    private static String metres(QuantityFormat shown, double metres) {
        return shown.units() == UnitSystem.US
                ? shown.given(LengthUnit.FOOT.fromSi(metres), LengthUnit.FOOT, 3)
                : shown.length(metres);
    }

    private static String conductance(QuantityFormat shown, double wattPerKelvin) {
        ConductanceUnit unit = shown.units() == UnitSystem.US
                ? ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT
                : ConductanceUnit.WATT_PER_KELVIN;
        return shown.given(unit.fromSi(wattPerKelvin), unit, 3);
    }

    static String capitalised(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A value as a scenario file has it, or that there is none. */
    static String asWritten(String value) {
        return value.equals("[]") ? "none" : value;
    }

    /** A value as a scenario file has it, in the units of a screen where they have one for it. */
    static String inUnits(String value, QuantityFormat shown) {
        Matcher quantity = QUANTITY.matcher(value);
        if (!quantity.matches()) {
            return asWritten(value);
        }
        double number = Double.parseDouble(quantity.group(1));
        return UNITS.stream()
                .filter(known -> known.unit().symbol().equals(quantity.group(2)) && known.system() != shown.units())
                .findFirst()
                .map(known -> known.inUnits(number, shown))
                .orElse(value);
    }

    /** A value as a scenario file has it, in both unit systems where they have different units for it. */
    static String inBoth(String value, QuantityFormat shown) {
        Matcher quantity = QUANTITY.matcher(value);
        if (!quantity.matches()) {
            return asWritten(value);
        }
        double number = Double.parseDouble(quantity.group(1));
        return UNITS.stream()
                .filter(known -> known.unit().symbol().equals(quantity.group(2)))
                .findFirst()
                .map(known -> known.inBoth(number, shown))
                .orElse(value);
    }
}

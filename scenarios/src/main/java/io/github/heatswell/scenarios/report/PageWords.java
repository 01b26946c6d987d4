package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Symbols;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Our own words, and values of scenario files, as readers have them. */
final class PageWords {

    /** A value keeps the digits it is written with in a file; one in other units has fewer. */
    private static final int DIGITS = 6;

    private static final int SIGNIFICANT = 3;

    /** From this length on (m), metres and feet are shown; below it, millimetres and inches. */
    private static final double LONG = 1;

    private static final String NUMBER = "-?\\d+(?:\\.\\d+)?";

    /** Units of scenario files by their spellings in lower case; a kelvin is one of a difference. */
    private static final Map<String, Known> UNITS = known();

    /** A number with its unit, as values and assumptions have it; two numbers may share one. */
    private static final Pattern QUANTITY = Pattern.compile(
            "(\\+- ?)?(?<![\\w.-])(?:(" + NUMBER + ")( to | and ))?(" + NUMBER + ") ?("
                    + UNITS.keySet().stream()
                            .sorted(Comparator.comparingInt(String::length)
                                    .reversed()
                                    .thenComparing(Comparator.naturalOrder()))
                            .map(Pattern::quote)
                            .collect(Collectors.joining("|"))
                    + ")(?![\\w/\u00b2\u00b3])( hotter)?",
            Pattern.CASE_INSENSITIVE);

    /** A unit, and how a quantity of its kind (in SI units) is written. */
    private record Known(Unit unit, BiFunction<QuantityFormat, Double, String> written) {

        /** As it was written if the reader uses the unit, and else in one that the reader does use. */
        String shown(String number, boolean difference, QuantityFormat shown) {
            double value = Double.parseDouble(number);
            if (shown.units().uses(unit)) {
                return shown.given(value, unit, DIGITS);
            }
            return difference && unit instanceof TemperatureUnit
                    ? shown.temperatureDifference(value * unit.factor())
                    : written.apply(shown, unit.toSi(value));
        }
    }

    private PageWords() {}

    private static Map<String, Known> known() {
        Map<String, Known> units = new HashMap<>();
        add(units, PressureUnit.values(), QuantityFormat::pressure);
        units.put("k", new Known(TemperatureDifferenceUnit.KELVIN, QuantityFormat::temperatureDifference));
        add(units, TemperatureUnit.values(), QuantityFormat::temperature);
        add(units, VolumeUnit.values(), QuantityFormat::volume);
        add(units, FlowUnit.values(), QuantityFormat::flow);
        add(units, PowerUnit.values(), QuantityFormat::power);
        add(units, MassUnit.values(), QuantityFormat::mass);
        add(units, ConductanceUnit.values(), PageWords::conductance);
        add(units, LengthUnit.values(), PageWords::length);
        return units;
    }

    private static void add(
            Map<String, Known> units, Unit[] added, BiFunction<QuantityFormat, Double, String> written) {
        for (Unit unit : added) {
            unit.spellings().stream()
                    .filter(spelling -> Character.isLetter(spelling.charAt(spelling.length() - 1)))
                    .forEach(
                            spelling -> units.putIfAbsent(spelling.toLowerCase(Locale.ROOT), new Known(unit, written)));
        }
    }

    private static String length(QuantityFormat shown, double metres) {
        boolean isLong = metres == 0 || Math.abs(metres) >= LONG;
        boolean us = shown.units() == UnitSystem.US;
        LengthUnit unit =
                us ? isLong ? LengthUnit.FOOT : LengthUnit.INCH : isLong ? LengthUnit.METRE : LengthUnit.MILLIMETRE;
        return unit == LengthUnit.INCH
                ? shown.only(UnitSystem.US).length(metres)
                : shown.given(unit.fromSi(metres), unit, SIGNIFICANT);
    }

    private static String conductance(QuantityFormat shown, double wattPerKelvin) {
        ConductanceUnit unit = shown.units() == UnitSystem.US
                ? ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT
                : ConductanceUnit.WATT_PER_KELVIN;
        return shown.given(unit.fromSi(wattPerKelvin), unit, SIGNIFICANT);
    }

    static String capitalised(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A value as a scenario file has it, or that there is none. */
    static String asWritten(String value) {
        return value.equals("[]") ? "none" : value;
    }

    /** The question of a scenario; one that is bundled asks in the words and units of the reader, and an owner's stays as written. */
    static String question(Scenario scenario, QuantityFormat shown) {
        String asked = scenario.question();
        boolean bundled = Catalogue.names().contains(scenario.name())
                && asked.equals(Catalogue.listing(scenario.name()).question());
        return bundled ? inUnits(shown.units().spelled(asked), shown) : asked;
    }

    /**
     * A value, a range or a reason as scenario files and their typical values have it, with every quantity in units of the reader.
     *
     * @param words such as {@code 4.2 bar}, {@code 58 psi +- 4 psi} or {@code usual sheet thickness for 6 to 10 bar}
     * @param shown the units
     * @return the same; what is in units of the reader keeps its digits
     */
    static String inUnits(String words, QuantityFormat shown) {
        String read = QUANTITY.matcher(words).replaceAll(found -> Matcher.quoteReplacement(quantity(found, shown)));
        return shown.symbols() == Symbols.ASCII ? read : read.replace("+- ", "\u00b1 ");
    }

    /**
     * A typical value, which nobody gave: with no more digits than its kind deserves.
     *
     * @param value such as {@code 20 L/min} or {@code 190.2 degF}
     * @param shown the units
     * @return such as {@code 5.3 gal/min} or {@code 190 degF}
     */
    static String typical(String value, QuantityFormat shown) {
        Matcher found = QUANTITY.matcher(value);
        if (!found.matches() || found.group(1) != null || found.group(2) != null) {
            return inUnits(value, shown);
        }
        Unit unit = UNITS.get(found.group(5).toLowerCase(Locale.ROOT)).unit();
        double si = unit.toSi(Double.parseDouble(found.group(4)));
        if (unit instanceof TemperatureUnit) {
            return shown.temperature(si);
        }
        boolean converted = shown.units() == UnitSystem.US
                && UnitSystem.of(unit).filter(UnitSystem.SI::equals).isPresent();
        return (converted ? american(unit, si) : Optional.<Unit>empty())
                .map(each -> shown.given(each.fromSi(si), each, coarse(each.fromSi(si))))
                .orElseGet(() -> inUnits(value, shown));
    }

    /** The US unit for what nobody measured; none where others write it. */
    private static Optional<Unit> american(Unit unit, double si) {
        if (unit instanceof FlowUnit) {
            return Optional.of(FlowUnit.US_GALLON_PER_MINUTE);
        }
        if (unit instanceof PressureUnit) {
            return Optional.of(PressureUnit.PSI);
        }
        if (unit instanceof ConductanceUnit) {
            return Optional.of(ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT);
        }
        return unit instanceof LengthUnit && si > 0 && si < LONG ? Optional.of(LengthUnit.INCH) : Optional.empty();
    }

    /** Two significant digits, and all that stand before the point. */
    private static int coarse(double value) {
        return Math.max(2, (int) Math.floor(Math.log10(Math.abs(value))) + 1);
    }

    /**
     * Words of a rule, which keep the units they are written in.
     *
     * @param words such as {@code 25 degC or less}
     * @param shown how units are spelled
     * @return the same with these spellings
     */
    static String typeset(String words, QuantityFormat shown) {
        return shown.symbols() == Symbols.ASCII ? words : words.replaceAll(" deg([CF])\\b", "\u00a0\u00b0$1");
    }

    private static String quantity(MatchResult found, QuantityFormat shown) {
        String around = found.group(1) == null ? "" : found.group(1);
        Known known = UNITS.get(found.group(5).toLowerCase(Locale.ROOT));
        String hotter = found.group(6) == null ? "" : found.group(6);
        boolean difference = !around.isEmpty() || !hotter.isEmpty();
        String last = around + known.shown(found.group(4), difference, shown) + hotter;
        return found.group(2) == null ? last : known.shown(found.group(2), false, shown) + found.group(3) + last;
    }
}

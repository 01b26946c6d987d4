package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Our own words as the printed report has them. */
final class PageWords {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(bar|psi|L|gal|\u00b0C|\u00b0F|kWh|Btu|min|h|s|d)\\b)");

    /** A number with its unit, as assumptions have it. */
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (\\S+)");

    /** Units of scenario files, and what stands for them in the other unit system. */
    private static final Map<Unit, Unit> OTHERS = Map.of(
            UnitSystem.SI.pressure(),
            UnitSystem.US.pressure(),
            UnitSystem.SI.temperature(),
            UnitSystem.US.temperature(),
            UnitSystem.SI.temperatureDifference(),
            UnitSystem.US.temperatureDifference(),
            UnitSystem.SI.volume(),
            UnitSystem.US.volume(),
            UnitSystem.SI.flow(),
            UnitSystem.US.flow(),
            UnitSystem.SI.power(),
            UnitSystem.US.power(),
            LengthUnit.METRE,
            LengthUnit.FOOT,
            LengthUnit.MILLIMETRE,
            LengthUnit.INCH);

    private PageWords() {}

    /** A sentence in which no number parts from its unit at the end of a line. */
    static String glued(String sentence) {
        return NUMBER_AND_UNIT.matcher(sentence).replaceAll("\u00a0");
    }

    static String capitalised(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A value as a scenario file has it, with the other unit system in brackets where it has another unit for it. */
    static String inBoth(String value) {
        if (value.equals("[]")) {
            return "none";
        }
        Matcher quantity = QUANTITY.matcher(value);
        if (!quantity.matches()) {
            return value;
        }
        double number = Double.parseDouble(quantity.group(1));
        String symbol = quantity.group(2);
        return OTHERS.entrySet().stream()
                .filter(pair -> pair.getKey().symbol().equals(symbol))
                .findFirst()
                .map(pair -> beside(value, pair.getValue(), pair.getKey().toSi(number)))
                .orElse(value);
    }

    private static String beside(String value, Unit other, double si) {
        return (value + " (" + Digits.significant(other.fromSi(si), 3) + " " + other.symbol() + ")")
                .replace(' ', '\u00a0')
                .replace("\u00a0(", " (");
    }
}

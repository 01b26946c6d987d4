package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Digits;
import io.github.heatswell.scenarios.wording.Shown;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Our own words as the printed report has them. */
final class PageWords {

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(bar|psi|L|gal|\u00b0C|\u00b0F|kWh|Btu|min|h|s|d)\\b)");

    /** A number with its unit, as assumptions have it. */
    private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?) (\\S+)");

    /** Units of scenario files for the same kind of quantity, metric and US. */
    private static final List<Pair> PAIRS = List.of(
            new Pair(UnitSystem.SI.pressure(), UnitSystem.US.pressure()),
            new Pair(UnitSystem.SI.temperature(), UnitSystem.US.temperature()),
            new Pair(UnitSystem.SI.temperatureDifference(), UnitSystem.US.temperatureDifference()),
            new Pair(UnitSystem.SI.volume(), UnitSystem.US.volume()),
            new Pair(UnitSystem.SI.flow(), UnitSystem.US.flow()),
            new Pair(UnitSystem.SI.power(), UnitSystem.US.power()),
            new Pair(LengthUnit.METRE, LengthUnit.FOOT),
            new Pair(LengthUnit.MILLIMETRE, LengthUnit.INCH));

    /** Units for the same kind of quantity. */
    private record Pair(Unit metric, Unit us) {}

    private static final Pattern BARS = Pattern.compile("(?<![\\d.])(\\d+(?:\\.\\d+)?) bar\\b");

    private PageWords() {}

    /** A sentence in which no number parts from its unit at the end of a line. */
    static String glued(String sentence) {
        return NUMBER_AND_UNIT.matcher(sentence).replaceAll("\u00a0");
    }

    static String capitalised(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A sentence whose bars are followed or preceded by psi. */
    static String pressuresInBoth(String sentence, Shown shown) {
        return BARS.matcher(sentence).replaceAll(match -> inBoth(match.group(1) + " bar", shown.units()));
    }

    /** A value as a scenario file has it, in both unit systems where they have different units for it. */
    static String inBoth(String value, UnitSystem first) {
        if (value.equals("[]")) {
            return "none";
        }
        Matcher quantity = QUANTITY.matcher(value);
        if (!quantity.matches()) {
            return value;
        }
        double number = Double.parseDouble(quantity.group(1));
        String symbol = quantity.group(2);
        for (Pair pair : PAIRS) {
            if (pair.metric().symbol().equals(symbol)) {
                return ordered(value, written(pair.metric().toSi(number), pair.us()), first == UnitSystem.SI);
            }
            if (pair.us().symbol().equals(symbol)) {
                return ordered(value, written(pair.us().toSi(number), pair.metric()), first == UnitSystem.US);
            }
        }
        return value;
    }

    private static String written(double si, Unit unit) {
        return Digits.significant(unit.fromSi(si), 3) + " " + unit.symbol();
    }

    private static String ordered(String given, String converted, boolean givenFirst) {
        String first = givenFirst ? given : converted;
        String second = givenFirst ? converted : given;
        return printed(first) + " (" + printed(second) + ")";
    }

    private static String printed(String quantity) {
        return quantity.replace(" deg", " \u00b0").replace(' ', '\u00a0');
    }
}

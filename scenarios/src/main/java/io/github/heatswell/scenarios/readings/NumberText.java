package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.wording.Printable;
import java.util.regex.Pattern;

/**
 * Numbers of a log as they are written.
 *
 * @param commas whether decimals may stand behind a comma
 */
record NumberText(boolean commas) {

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?");
    private static final int LONGEST = 40;

    double read(String field, String text) {
        String plain = commas ? text.replace(',', '.') : text;
        if (plain.length() > LONGEST
                || !NUMBER.matcher(plain).matches()
                || Double.isInfinite(Double.parseDouble(plain))) {
            throw new IllegalArgumentException(field + ": " + Printable.quote(text) + " is not a number; write digits"
                    + (commas ? "" : " with a point for the decimals"));
        }
        return Double.parseDouble(plain);
    }
}

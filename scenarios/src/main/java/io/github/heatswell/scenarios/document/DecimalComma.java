package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Scalar;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number with a decimal comma inside braces. YAML treats the comma as the end of the value, so that <code>{ pressure:
 * 4,2 bar }</code> has the keys {@code pressure} and {@code 2 bar}. Rejoined, it gets the proper error message.
 */
final class DecimalComma {

    private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,9}");
    private static final Pattern FRACTION = Pattern.compile("\\d.{0,40}");

    private DecimalComma() {}

    /**
     * Rejoins what one comma has split.
     *
     * @param last the entry before, or null
     * @param entry the entry that may be its fraction
     * @return the entry before with the number as it was meant, or empty if these are two entries indeed
     */
    static Optional<Entry> rejoin(Entry last, Entry entry) {
        if (last == null
                || !(last.value() instanceof Scalar whole)
                || !(entry.value() instanceof Scalar nothing)
                || !nothing.text().isEmpty()) {
            return Optional.empty();
        }
        Scalar fraction = entry.key();
        boolean touching = whole.at().line() == fraction.at().line()
                && whole.at().column() + whole.text().length() + 1
                        == fraction.at().column();
        boolean number = WHOLE.matcher(whole.text()).matches()
                && FRACTION.matcher(fraction.text()).matches();
        return touching && number
                ? Optional.of(new Entry(last.key(), new Scalar(whole.text() + "," + fraction.text(), whole.at())))
                : Optional.empty();
    }
}

package io.github.heatswell.charts.table;

import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Text cells that a spreadsheet takes for text. Names come from the user; one that begins like a formula would be run when
 * the table is opened.
 */
final class PlainCell {

    /** What makes spreadsheets see a formula, the full-width forms included. */
    private static final String STARTS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private PlainCell() {}

    /**
     * The text, after an apostrophe if it begins with {@code = + - @}, a tab or a line break. Any other control character would
     * be taken for the end of a text, or move the cursor of a terminal; it is written as its code.
     */
    static String of(String text) {
        String shown = text.codePoints()
                .mapToObj(point ->
                        isHidden(point) ? String.format(Locale.ROOT, "[U+%04X]", point) : Character.toString(point))
                .collect(Collectors.joining());
        return !shown.isEmpty() && STARTS_FORMULA.indexOf(shown.charAt(0)) >= 0 ? "'" + shown : shown;
    }

    private static boolean isHidden(int point) {
        return Character.isISOControl(point) && "\t\r\n".indexOf(point) < 0;
    }
}

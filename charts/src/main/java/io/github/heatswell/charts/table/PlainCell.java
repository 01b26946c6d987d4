package io.github.heatswell.charts.table;

/**
 * Text cells that a spreadsheet takes for text. Names come from the user; one that begins like a formula would be run when
 * the table is opened.
 */
final class PlainCell {

    /** What makes spreadsheets see a formula, the full-width forms included. */
    private static final String STARTS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private PlainCell() {}

    /** The text, after an apostrophe if it begins with {@code = + - @}, a tab or a line break. */
    static String of(String text) {
        return !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}

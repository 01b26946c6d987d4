package io.github.heatswell.charts.table;

import java.io.IOException;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

/** Writes rows as in RFC 4180, except that lines end in LF. */
final class Rows {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setQuoteMode(QuoteMode.MINIMAL)
            .get();

    /** What makes spreadsheets see a formula, the full-width forms included. */
    private static final String STARTS_FORMULA = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

    private final CSVPrinter printer;

    Rows(Appendable out) throws IOException {
        printer = new CSVPrinter(out, FORMAT);
    }

    void add(String... cells) throws IOException {
        printer.printRecord((Object[]) cells);
    }

    /** Flushes what is buffered; the target stays open. */
    void end() throws IOException {
        printer.flush();
    }

    /**
     * A cell that a spreadsheet takes for text. Names come from the user; one that begins like a formula would be run when the
     * table is opened.
     *
     * @return the text, after an apostrophe if it begins with {@code = + - @}, a tab or a line break. Any other control character would
     * be taken for the end of a text, or move the cursor of a terminal; it is written as its code.
     */
    static String plain(String text) {
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

package io.github.heatswell.charts.table;

import java.io.IOException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.QuoteMode;

/** Writes rows as RFC 4180 has them, but for lines that end in LF alone. */
final class Rows {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setQuoteMode(QuoteMode.MINIMAL)
            .get();

    private final CSVPrinter printer;

    Rows(Appendable out) throws IOException {
        printer = new CSVPrinter(out, FORMAT);
    }

    void add(String... cells) throws IOException {
        printer.printRecord((Object[]) cells);
    }

    /** Passes on what is still held back; the target stays open. */
    void end() throws IOException {
        printer.flush();
    }
}

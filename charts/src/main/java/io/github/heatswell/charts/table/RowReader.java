package io.github.heatswell.charts.table;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads rows of delimited text one by one, as in RFC 4180 but with any delimiter.
 */
public final class RowReader implements AutoCloseable {

    /** More characters than this in one row mean that a quote was never closed. */
    private static final int MAX_ROW = 1 << 20;

    private final Limit source;
    private final CSVParser parser;
    private final Iterator<CSVRecord> rows;
    private long line = 1;

    /**
     * Begins to read.
     *
     * @param in the text; closed together with this reader
     * @param delimiter what separates the cells of a row
     * @throws IOException if the text cannot be read
     */
    public RowReader(Reader in, char delimiter) throws IOException {
        source = new Limit(in);
        parser = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreEmptyLines(true)
                .get()
                .parse(source);
        rows = parser.iterator();
    }

    /** Lets no row grow without end. */
    private static final class Limit extends FilterReader {
        private long since;

        Limit(Reader in) {
            super(in);
        }

        @Override
        public int read() throws IOException {
            count(1);
            return super.read();
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            int read = super.read(buffer, offset, length);
            count(read);
            return read;
        }

        private void count(int read) throws IOException {
            since += read;
            if (since > MAX_ROW) {
                throw new IOException("a row is longer than " + MAX_ROW + " characters; a quote is not closed");
            }
        }
    }

    /**
     * The next row that is not empty.
     *
     * @return its cells, or empty at the end of the text
     * @throws IOException if the text cannot be read or its quotes do not match
     */
    public Optional<List<String>> next() throws IOException {
        source.since = 0;
        try {
            if (!rows.hasNext()) {
                return Optional.empty();
            }
            List<String> cells = rows.next().toList();
            line = parser.getCurrentLineNumber();
            return Optional.of(cells);
        } catch (UncheckedIOException failure) {
            line = parser.getCurrentLineNumber() + 1;
            throw failure.getCause();
        }
    }

    /**
     * The line on which the row read last ends.
     *
     * @return the line, 1 being the first
     */
    public long line() {
        return Math.max(1, line);
    }

    @Override
    public void close() throws IOException {
        parser.close();
    }
}

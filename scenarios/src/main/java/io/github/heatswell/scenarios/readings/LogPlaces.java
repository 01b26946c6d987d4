package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.fault.Location;
import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds where in the file of a log something stands, by going through it again: rows are read without their places. */
final class LogPlaces {

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private static final String OPEN =
            "a quotation mark opens here and never closes; remove it, or close it at the end of" + " the cell";
    private static final String BEHIND =
            "there is text after the closing quotation mark; remove the quotation marks around this cell";
    private static final String LONG =
            "the row goes on for more than a million characters from here; a quotation mark may be" + " missing";
    /** As many characters as a row may have. */
    private static final int MAX_ROW = 1 << 20;

    private final Path file;
    private final char delimiter;

    LogPlaces(Path file, char delimiter) {
        this.file = file;
        this.delimiter = delimiter;
    }

    /** Where a cell of a row begins; the beginning of the row if that goes over several lines or cannot be found again. */
    Location cell(long line, int cell) throws IOException {
        Location begin = new Location((int) Math.min(Integer.MAX_VALUE, line), 1);
        if (cell == 0 || !Files.isRegularFile(file)) {
            return begin;
        }
        try (Walk walk = new Walk()) {
            walk.toLine(line);
            return walk.toCell(cell, delimiter) && walk.line == line ? walk.place() : begin;
        }
    }

    /**
     * Why the cells of a row cannot be told apart.
     *
     * @param line the first line that may be at fault
     */
    Flaw flaw(long line) throws IOException {
        if (!Files.isRegularFile(file)) {
            return new Flaw(new Location((int) Math.min(Integer.MAX_VALUE, line), 1), OPEN);
        }
        try (Walk walk = new Walk()) {
            walk.toLine(line);
            return walk.toFlaw(delimiter);
        }
    }

    /**
     * What is wrong with a row.
     *
     * @param at where
     * @param message what, and what to do
     */
    record Flaw(Location at, String message) {}

    /** Goes through the file character by character. */
    private final class Walk implements AutoCloseable {
        private final Reader text;
        private long line = 1;
        private int column = 1;
        private int next;
        private long read;

        Walk() throws IOException {
            BufferedInputStream bytes = new BufferedInputStream(Files.newInputStream(file));
            text = new BufferedReader(
                    new InputStreamReader(bytes, LogEncoding.of(bytes).charset()));
            next = text.read();
            if (next == BYTE_ORDER_MARK) {
                next = text.read();
            }
        }

        private boolean atEnd() {
            return next < 0;
        }

        private boolean atLineEnd() {
            return next == '\n' || next == '\r';
        }

        private void step() throws IOException {
            read++;
            int gone = next;
            next = text.read();
            if (gone == '\n' || gone == '\r' && next != '\n') {
                line++;
                column = 1;
            } else if (gone != '\r' && !Character.isLowSurrogate((char) gone)) {
                column++;
            }
        }

        private void toLine(long wanted) throws IOException {
            while (!atEnd() && line < wanted) {
                step();
            }
            read = 0;
        }

        private Location place() {
            return new Location((int) Math.min(Integer.MAX_VALUE, line), column);
        }

        private boolean toCell(int cell, char delimiter) throws IOException {
            for (int i = 0; i < cell; i++) {
                skipCell(delimiter);
                if (next != delimiter) {
                    return false;
                }
                step();
            }
            return true;
        }

        /** To the delimiter or the end of the line behind a cell; the flaw of its quotes, or null if there is none. */
        private Flaw skipCell(char delimiter) throws IOException {
            Location begin = place();
            long before = read;
            boolean quoted = next == '"';
            while (quoted && next == '"') {
                do {
                    step();
                } while (!atEnd() && next != '"' && read - before <= MAX_ROW);
                if (next != '"') {
                    return new Flaw(begin, atEnd() ? OPEN : LONG);
                }
                step();
            }
            if (quoted && !atEnd() && !atLineEnd() && next != delimiter) {
                return new Flaw(place(), BEHIND);
            }
            while (!atEnd() && !atLineEnd() && next != delimiter && read - before <= MAX_ROW) {
                step();
            }
            return read - before > MAX_ROW ? new Flaw(begin, LONG) : null;
        }

        private Flaw toFlaw(char delimiter) throws IOException {
            Location begin = place();
            Flaw flaw = null;
            while (!atEnd() && flaw == null && read <= 2L * MAX_ROW) {
                flaw = skipCell(delimiter);
                if (!atEnd() && flaw == null) {
                    step();
                }
            }
            return flaw == null ? new Flaw(begin, LONG) : flaw;
        }

        @Override
        public void close() throws IOException {
            text.close();
        }
    }
}

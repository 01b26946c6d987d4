package io.github.heatswell.scenarios.readings;

/** Something is wrong with one cell of a row. */
final class CellException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private static final long LAST_READ = 0;

    /** The line of its row, or 0 if that is the row read last. */
    private final long line;
    /** Which cell of its row, 0 being the first. */
    private final int cell;

    /** For the row read last. */
    CellException(int cell, String message) {
        this(LAST_READ, cell, message);
    }

    /** For a row read before. */
    CellException(long line, int cell, String message) {
        super(message);
        this.line = line;
        this.cell = cell;
    }

    /**
     * The line of its row.
     *
     * @param lastRead the line of the row read last
     */
    long line(long lastRead) {
        return line == LAST_READ ? lastRead : line;
    }

    int cell() {
        return cell;
    }
}

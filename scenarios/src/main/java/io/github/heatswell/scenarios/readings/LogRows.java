package io.github.heatswell.scenarios.readings;

import java.util.Arrays;

/**
 * Readings as they come, in bounded memory: when there are more than {@link #MAX_READINGS}, every other one is dropped, and from then on
 * only every second is kept, and so on.
 */
final class LogRows {

    /** The largest number of readings that are kept. */
    static final int MAX_READINGS = 1_000_000;

    private static final int FIRST = 1_024;

    private double[][] columns = new double[4][FIRST];
    private int count;
    private long seen;
    private long stride = 1;

    void add(double time, double gauge, double temperature, boolean burner) {
        if (seen++ % stride != 0) {
            return;
        }
        if (count == MAX_READINGS) {
            halve();
            if ((seen - 1) % stride != 0) {
                return;
            }
        }
        if (count == columns[0].length) {
            for (int i = 0; i < columns.length; i++) {
                columns[i] = Arrays.copyOf(columns[i], Math.min(MAX_READINGS, 2 * count));
            }
        }
        double[] row = {time, gauge, temperature, burner ? 1 : 0};
        for (int i = 0; i < row.length; i++) {
            columns[i][count] = row[i];
        }
        count++;
    }

    private void halve() {
        for (double[] column : columns) {
            for (int i = 0; 2 * i < count; i++) {
                column[i] = column[2 * i];
            }
        }
        count = (count + 1) / 2;
        stride *= 2;
    }

    int count() {
        return count;
    }

    /** How many readings there were for each that is kept. */
    long stride() {
        return stride;
    }

    double[] times() {
        double[] times = Arrays.copyOf(columns[0], count);
        for (int i = count - 1; i >= 0; i--) {
            times[i] -= times[0];
        }
        return times;
    }

    double[] gauge() {
        return Arrays.copyOf(columns[1], count);
    }

    double[] temperature() {
        return Arrays.copyOf(columns[2], count);
    }

    boolean[] burner() {
        boolean[] burner = new boolean[count];
        for (int i = 0; i < count; i++) {
            burner[i] = columns[3][i] != 0;
        }
        return burner;
    }

    /** Something is wrong with one cell of a row. */
    static final class CellException extends IllegalArgumentException {

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

        /** For the row read last, where what is wrong was found while reading on. */
        CellException(int cell, IllegalArgumentException wrong) {
            this(cell, wrong.getMessage());
            initCause(wrong);
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
}

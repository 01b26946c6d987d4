package io.github.heatswell.water;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * A table of reference values beside the tests: comment lines that begin with {@code #}, one line of column names,
 * rows.
 *
 * <p>The reader is strict: the test that uses a table states the column names it expects, in order, and every row must
 * have as many fields. A file that was changed, sorted anew or cut short fails instead of being misread.
 */
final class ReferenceTable {
    private final List<String> columns;
    private final List<String[]> rows;

    private ReferenceTable(List<String> columns, List<String[]> rows) {
        this.columns = columns;
        this.rows = rows;
    }

    static ReferenceTable read(String file, int expectedRows, String... expectedColumns) {
        List<String> lines = lines(file).stream()
                .filter(Predicate.not(line -> line.startsWith("#")))
                .toList();
        List<String> columns = List.of(expectedColumns);
        if (!lines.get(0).equals(String.join(",", columns))) {
            throw new IllegalStateException(file + " has the columns " + lines.get(0) + ", expected " + columns);
        }
        List<String[]> rows =
                lines.stream().skip(1).map(line -> line.split(",", -1)).toList();
        if (rows.size() != expectedRows) {
            throw new IllegalStateException(file + " has " + rows.size() + " rows, expected " + expectedRows);
        }
        for (String[] row : rows) {
            if (row.length != columns.size()) {
                throw new IllegalStateException(file + " has a row of another length: " + Arrays.toString(row));
            }
        }
        return new ReferenceTable(columns, rows);
    }

    int size() {
        return rows.size();
    }

    double number(int row, String column) {
        return Double.parseDouble(text(row, column));
    }

    String text(int row, String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalStateException("no column " + column + " among " + columns);
        }
        return rows.get(row)[index];
    }

    private static List<String> lines(String file) {
        try (InputStream stream = ReferenceTable.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("no resource " + file);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

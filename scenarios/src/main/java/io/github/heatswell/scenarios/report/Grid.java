package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;

/**
 * A table of words. The first cell of a row says what the row is about.
 *
 * @param caption what the table shows
 * @param columns the heads of the columns
 * @param rows the rows, each with a cell for every column
 */
record Grid(String caption, List<String> columns, List<List<String>> rows) implements Block {

    Grid {
        Objects.requireNonNull(caption, "caption");
        columns = List.copyOf(columns);
        rows = List.copyOf(rows.stream().map(List::copyOf).toList());
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "rows: " + row.size() + " cells do not fit " + columns.size() + " columns");
            }
        }
    }

    @Override
    public void show(Renderer renderer) {
        renderer.grid(this);
    }
}

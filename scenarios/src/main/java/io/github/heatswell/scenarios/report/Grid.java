package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;

/**
 * A table of words. The first cell of a row says what the row is about.
 *
 * @param caption what the table shows
 * @param columns the heads of the columns
 * @param rows the rows, each with a cell for every column
 * @param plain whether the cells speak for themselves, so that the screen does without the heads of the columns
 */
record Grid(String caption, List<String> columns, List<List<String>> rows, boolean plain) implements Block {

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

    Grid(String caption, List<String> columns, List<List<String>> rows) {
        this(caption, columns, rows, false);
    }

    /** The same table, whose cells speak for themselves. */
    Grid asPlain() {
        return new Grid(caption, columns, rows, true);
    }

    /** The same table with another caption on the screen. */
    Block captionedOnScreen(String other) {
        return orOnScreen(new Grid(other, columns, rows, plain));
    }

    @Override
    public void show(Renderer renderer) {
        renderer.grid(this);
    }
}

package io.github.heatswell.scenarios.report;

import java.util.List;

/** Tables of words. The first cell of every row is its head. */
final class Tables {

    /** A table of more columns than this may be wider than a phone and then scrolls in its own box. */
    private static final int FEW_COLUMNS = 3;

    /** A table of no more rows and characters than this stays on one sheet of paper. */
    private static final int FEW_ROWS = 14;

    private static final int FEW_CHARACTERS = 500;

    /** A word longer than this may be broken anywhere. */
    private static final int LONG_WORD = 10;

    private Tables() {}

    static void grid(Html html, Grid grid) {
        boolean wide = grid.columns().size() > FEW_COLUMNS;
        if (wide) {
            html.leaf("p", "On a narrow screen this table scrolls sideways.", "class", "hint");
            html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", grid.caption());
        }
        begin(html, grid.caption(), grid.columns(), isShort(grid));
        for (List<String> row : grid.rows()) {
            html.open("tr");
            for (int i = 0; i < row.size(); i++) {
                cell(html, row.get(i), i == 0);
            }
            html.closeLine();
        }
        html.closeLine().closeLine();
        if (wide) {
            html.closeLine();
        }
    }

    /** Begins a table and its body; both are to be closed. What is in one piece is not parted between sheets of paper. */
    static void begin(Html html, String caption, List<String> columns, boolean inOnePiece) {
        html.open("table", "class", inOnePiece ? "short" : "tall");
        html.leaf("caption", caption);
        html.open("thead").open("tr");
        columns.forEach(column -> html.leaf("th", column, "scope", "col"));
        html.close().closeLine();
        html.open("tbody");
    }

    static void cell(Html html, String text, boolean head) {
        String breaks = breaks(text);
        if (head) {
            html.leaf("th", text, "scope", "row", "class", breaks, "dir", "auto");
        } else {
            html.leaf("td", text, "class", breaks, "dir", "auto");
        }
    }

    /** The class of an element that holds a text: whether its words must be broken to fit a narrow screen. */
    static String breaks(String text) {
        return longest(text) > LONG_WORD ? "long" : "plain";
    }

    private static boolean isShort(Grid grid) {
        int characters = grid.rows().stream()
                .flatMap(List::stream)
                .mapToInt(String::length)
                .sum();
        return grid.rows().size() <= FEW_ROWS && characters <= FEW_CHARACTERS;
    }

    private static int longest(String text) {
        int longest = 0;
        for (String word : text.split("[\\s-]+")) {
            longest = Math.max(longest, word.length());
        }
        return longest;
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.report.Block.Grid;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A table for a terminal: numbers right-aligned, words left-aligned and broken into lines where the table would be too wide. */
final class TextTable {

    private static final int WIDTH = 79;
    private static final String GAP = "  ";
    /** A column of words is not made narrower than this. */
    private static final int MIN_WORDS = 16;
    /** The head of a column may make it as wide as this. */
    private static final int MAX_HEAD = 12;

    private static final Pattern NUMBER =
            Pattern.compile("(over |under )?[-+]?\\d[\\d.]*( (?!to )\\S+){0,3}|none|never|not given|-|");

    private final List<List<String>> heads;
    private final List<List<String>> rows;
    private final String indent;
    private final boolean[] right;
    private final int[] widths;
    private final int[] least;

    private TextTable(Grid grid, String indent) {
        this.indent = indent;
        this.rows = grid.rows().stream()
                .map(row -> row.stream().map(TextPage::plain).toList())
                .toList();
        this.heads = grid.plain() ? List.of() : List.of(grid.columns());
        int columns = grid.columns().size();
        this.right = new boolean[columns];
        this.widths = new int[columns];
        this.least = new int[columns];
        for (int i = 0; i < columns; i++) {
            right[i] = i > 0 && isNumbers(i);
            widths[i] = width(i, MAX_HEAD);
            least[i] = right[i] ? width(i, 1) : Math.min(MIN_WORDS, width(i, 1));
        }
        while (total() > WIDTH && narrowed()) {
            continue;
        }
    }

    /** The lines of a table, each behind some blanks. */
    static String of(Grid grid, String indent) {
        return new TextTable(grid, indent).lines();
    }

    private boolean isNumbers(int column) {
        return rows.stream()
                .map(row -> row.get(column))
                .allMatch(cell -> NUMBER.matcher(cell).matches());
    }

    /** As wide as the cells, and as the head is when it is broken into lines of some length. */
    private int width(int column, int headLine) {
        int width =
                rows.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
        for (List<String> head : heads) {
            String words = head.get(column);
            width = Math.max(width, Math.max(longestWord(words), Math.min(words.length(), headLine)));
        }
        return width;
    }

    private static int longestWord(String words) {
        return List.of(words.split(" ")).stream().mapToInt(String::length).max().orElse(0);
    }

    private int total() {
        return indent.length()
                + GAP.length() * (widths.length - 1)
                + IntStream.of(widths).sum();
    }

    /** Takes a blank off the widest column of words, or off the head of one of numbers; false if there is none to be had. */
    private boolean narrowed() {
        int widest = -1;
        for (int i = 0; i < widths.length; i++) {
            if (widths[i] > least[i] && (widest < 0 || rank(i) >= rank(widest))) {
                widest = i;
            }
        }
        if (widest >= 0) {
            widths[widest]--;
        }
        return widest >= 0;
    }

    private int rank(int column) {
        return right[column] ? WIDTH : widths[column];
    }

    private String lines() {
        StringBuilder text = new StringBuilder();
        heads.forEach(head -> row(head, true, text));
        rows.forEach(row -> row(row, false, text));
        return text.toString();
    }

    private void row(List<String> cells, boolean head, StringBuilder text) {
        List<List<String>> parts = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            parts.add(parts(cells.get(i), widths[i]));
        }
        int height = parts.stream().mapToInt(List::size).max().orElse(0);
        for (int line = 0; line < height; line++) {
            StringBuilder words = new StringBuilder(indent);
            for (int i = 0; i < parts.size(); i++) {
                // heads stand on the line above the rows, cells begin together
                int part = head ? line - height + parts.get(i).size() : line;
                String cell =
                        part >= 0 && part < parts.get(i).size() ? parts.get(i).get(part) : "";
                String blanks = " ".repeat(Math.max(0, widths[i] - cell.length()));
                words.append(i == 0 ? "" : GAP).append(right[i] ? blanks + cell : cell + blanks);
            }
            text.append(words.toString().stripTrailing()).append('\n');
        }
    }

    /** A text in parts no longer than a column is wide. */
    private static List<String> parts(String cell, int width) {
        List<String> parts = new ArrayList<>();
        String rest = cell;
        while (rest.length() > width) {
            int blank = rest.lastIndexOf(' ', width);
            int end = blank > 0 ? blank : width;
            parts.add(rest.substring(0, end));
            rest = rest.substring(end).stripLeading();
        }
        parts.add(rest);
        return parts;
    }
}

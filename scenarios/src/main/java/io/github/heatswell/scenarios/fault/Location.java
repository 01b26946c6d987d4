package io.github.heatswell.scenarios.fault;

import java.io.Serializable;
import java.util.Comparator;

/**
 * A place in a text.
 *
 * @param line the line, 1 being the first; 0 for what was put in from outside
 * @param column the character in the line, 1 being the first
 * @serial exclude
 */
public record Location(int line, int column) implements Comparable<Location>, Serializable {

    private static final Comparator<Location> READING_ORDER =
            Comparator.comparingInt(Location::line).thenComparingInt(Location::column);

    /**
     * The first character.
     *
     * @return line 1, column 1
     */
    public static Location first() {
        return new Location(1, 1);
    }

    /**
     * A place that is not in the text at all: something was put in from outside.
     *
     * @param number which of the things put in, 1 being the first
     * @return a place before everything in the text
     */
    public static Location outside(int number) {
        return new Location(0, number);
    }

    /**
     * Whether the place is in the text.
     *
     * @return false if something was put in from outside
     */
    public boolean inText() {
        return line > 0;
    }

    /**
     * The place right behind a text.
     *
     * @param text what stands before the place, from the beginning
     * @return the place of the next character
     */
    public static Location after(CharSequence text) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean first = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !first) {
                line++;
                lineStart = i + 1;
            }
        }
        return new Location(line, 1 + Character.codePointCount(text, lineStart, text.length()));
    }

    @Override
    public int compareTo(Location other) {
        return READING_ORDER.compare(this, other);
    }

    /** {@return line and column as compilers print them: {@code 4:18}} */
    @Override
    public String toString() {
        return line + ":" + column;
    }
}

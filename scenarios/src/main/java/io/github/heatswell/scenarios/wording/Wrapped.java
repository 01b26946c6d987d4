package io.github.heatswell.scenarios.wording;

import java.util.regex.Pattern;

/**
 * Text broken into lines that fit a terminal of 80 columns.
 */
public final class Wrapped {

    private static final int WIDTH = 79;

    /** The blank between the digits of one number, such as {@code 46 800}. */
    private static final Pattern WITHIN_NUMBER = Pattern.compile("(?<=(?<!\\d)\\d{1,3}) (?=\\d{3}(?!\\d))");

    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private static final char KEPT = '\u00a0';

    private Wrapped() {}

    /**
     * Breaks a text between words, never within a number. Words longer than a line stay whole.
     *
     * @param text the text; any white space counts as one blank
     * @param first what stands before the first line
     * @param rest what stands before every other line
     * @return the lines, each ended by a line feed
     */
    public static String lines(String text, String first, String rest) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder(first);
        boolean begun = false;
        for (String word : BLANKS.split(whole(text))) {
            if (begun && line.length() + 1 + word.length() > WIDTH) {
                lines.append(line).append('\n');
                line.setLength(0);
                line.append(rest);
                begun = false;
            }
            line.append(begun ? " " : "").append(word.replace(KEPT, ' '));
            begun = true;
        }
        return lines.append(line).append('\n').toString();
    }

    private static String whole(String text) {
        String plain = text.strip();
        for (int i = plain.indexOf(' '); i > 0; i = plain.indexOf(' ', i + 1)) {
            // most texts hold no such number, and the pattern looks back from every blank
            if (Character.isDigit(plain.charAt(i - 1)) && Character.isDigit(plain.charAt(i + 1))) {
                return WITHIN_NUMBER.matcher(plain).replaceAll(String.valueOf(KEPT));
            }
        }
        return plain;
    }
}

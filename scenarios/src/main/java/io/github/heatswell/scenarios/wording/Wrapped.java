package io.github.heatswell.scenarios.wording;

/**
 * Text broken into lines that fit a terminal of 80 columns.
 */
public final class Wrapped {

    private static final int WIDTH = 79;

    private Wrapped() {}

    /**
     * Breaks a text between words. Words longer than a line stay whole.
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
        for (String word : text.strip().split("\\s+")) {
            if (begun && line.length() + 1 + word.length() > WIDTH) {
                lines.append(line).append('\n');
                line.setLength(0);
                line.append(rest);
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        return lines.append(line).append('\n').toString();
    }
}

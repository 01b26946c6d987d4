package io.github.heatswell.scenarios.wording;

/**
 * Makes external text safe for a terminal: control characters could move the cursor or recolour the screen, and an
 * endless text would bury the message around it.
 */
public final class Printable {

    private static final int MAX_QUOTE = 40;
    private static final int MAX_LINE = 100;

    private Printable() {}

    /**
     * Whether a text contains only visible characters.
     *
     * @param text the text
     * @return true if it has no control, formatting or unassigned characters
     */
    public static boolean shows(String text) {
        return text.codePoints().allMatch(Printable::shows);
    }

    /**
     * The text with every invisible character replaced by a question mark.
     *
     * @param text the text
     * @return the text, in one line
     */
    public static String line(String text) {
        return text.codePoints()
                .map(c -> shows(c) ? c : '?')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /**
     * The text in single quotes, cut if it is long.
     *
     * @param text the text
     * @return at most about forty characters of it, in quotes
     */
    public static String quote(String text) {
        if (text.codePointCount(0, text.length()) <= MAX_QUOTE) {
            return "'" + line(text) + "'";
        }
        return "'" + line(text.substring(0, text.offsetByCodePoints(0, MAX_QUOTE - 3))) + "...'";
    }

    /**
     * The text in one line, cut if it is longer than anybody writes by hand.
     *
     * @param text the text
     * @return at most about a hundred characters of it
     */
    public static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= MAX_LINE
                ? line(text)
                : line(text.substring(0, text.offsetByCodePoints(0, MAX_LINE - 3))) + "...";
    }

    private static boolean shows(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}

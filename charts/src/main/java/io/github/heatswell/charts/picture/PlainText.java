package io.github.heatswell.charts.picture;

/**
 * Text that can be drawn on one line and written to any XML file. Names come from the user and may contain anything.
 */
final class PlainText {

    private static final int REPLACEMENT = 0xFFFD;

    private PlainText() {}

    /**
     * Puts one space in place of white space and control characters, and the replacement character in place of what XML
     * cannot hold.
     *
     * @param text any text
     * @return the text on one line, without white space at its ends
     */
    static String of(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().map(PlainText::printable).forEach(point -> {
            boolean doubled = point == ' ' && (plain.isEmpty() || plain.charAt(plain.length() - 1) == ' ');
            if (!doubled) {
                plain.appendCodePoint(point);
            }
        });
        return plain.toString().strip();
    }

    private static int printable(int point) {
        if (Character.isISOControl(point) || Character.isWhitespace(point)) {
            return ' ';
        }
        boolean surrogate = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        boolean outsideXml = (point & 0xFFFE) == 0xFFFE;
        return surrogate || outsideXml ? REPLACEMENT : point;
    }
}

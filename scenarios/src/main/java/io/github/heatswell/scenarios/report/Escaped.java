package io.github.heatswell.scenarios.report;

/** Text made harmless for markup, inside elements and inside attributes. */
final class Escaped {

    private static final char REPLACEMENT = '\ufffd';

    private Escaped() {}

    /** The text with everything replaced that could be read as markup, and without characters that no page may hold. */
    static String of(String text) {
        StringBuilder escaped = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> append(escaped, point));
        return escaped.toString();
    }

    private static void append(StringBuilder escaped, int point) {
        switch (point) {
            case '&' -> escaped.append("&amp;");
            case '<' -> escaped.append("&lt;");
            case '>' -> escaped.append("&gt;");
            case '"' -> escaped.append("&quot;");
            case '\'' -> escaped.append("&#39;");
            case '\r' -> escaped.append('\n');
            default -> escaped.appendCodePoint(allowed(point) ? point : REPLACEMENT);
        }
    }

    /** Neither a control character, nor half of a pair, nor one of the code points that are no characters. */
    private static boolean allowed(int point) {
        boolean control = point < 0x20 && point != '\t' && point != '\n' || point >= 0x7f && point < 0xa0;
        boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        boolean none = point >= 0xfdd0 && point <= 0xfdef || (point & 0xfffe) == 0xfffe;
        return !control && !half && !none;
    }
}

package io.github.heatswell.charts.drawing;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Fills lines with words, one after another. */
final class LineBreaker {

    /** A space, but not one between a number and its unit, which mean nothing apart. */
    private static final Pattern WHERE_LINES_MAY_END =
            Pattern.compile("(?<!\\d) | (?!(?:L|gal|bar|psi|°C|°F|h|min|s|d|m)\\b|°)");

    private final double width;
    private final List<TextBlock.Line> lines = new ArrayList<>();
    private final List<Words> pieces = new ArrayList<>();
    private double used;

    LineBreaker(double width) {
        this.width = width;
    }

    void add(Words words) {
        if (words.startsLine()) {
            endLine();
        }
        for (String word : WHERE_LINES_MAY_END.split(words.text())) {
            String rest = word;
            while (Type.width(rest, words.font()) > width && rest.codePointCount(0, rest.length()) > 1) {
                int fits = fitting(rest, words.font());
                put(rest.substring(0, fits), words.font());
                rest = rest.substring(fits);
            }
            put(rest, words.font());
        }
    }

    List<TextBlock.Line> lines() {
        endLine();
        return lines;
    }

    private void put(String word, Font font) {
        double wide = Type.width(word, font);
        if (used > 0 && used + wide > width) {
            endLine();
        }
        int last = pieces.size() - 1;
        if (last >= 0 && pieces.get(last).font().equals(font)) {
            pieces.set(last, new Words(pieces.get(last).text() + " " + word, font, false));
        } else {
            pieces.add(new Words(word, font, false));
        }
        used += wide + Type.width(" ", font);
    }

    private void endLine() {
        if (!pieces.isEmpty()) {
            lines.add(new TextBlock.Line(pieces));
        }
        pieces.clear();
        used = 0;
    }

    /** How much of a word fits on a line, at least one character. */
    private int fitting(String word, Font font) {
        int fits = word.offsetByCodePoints(0, 1);
        int next = fits;
        while (next < word.length() && Type.width(word.substring(0, next), font) <= width) {
            fits = next;
            next = word.offsetByCodePoints(next, 1);
        }
        return fits;
    }
}

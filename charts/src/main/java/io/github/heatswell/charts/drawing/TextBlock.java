package io.github.heatswell.charts.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Words broken into lines of a given width. A word that is wider than a line is broken too: nothing is clipped. */
final class TextBlock {

    private final List<Line> lines;
    private final double lineHeight;
    private final double ascent;

    private TextBlock(List<Line> lines, Font font) {
        this.lines = List.copyOf(lines);
        this.lineHeight = Type.lineHeight(font);
        this.ascent = Type.ascent(font);
    }

    /** Breaks words in one font. */
    static TextBlock of(String text, Font font, double width) {
        return of(List.of(new Words(text, font, false)), width);
    }

    /** Breaks words in fonts of one size. */
    static TextBlock of(List<Words> words, double width) {
        LineBreaker breaker = new LineBreaker(width);
        words.forEach(breaker::add);
        return new TextBlock(breaker.lines(), words.get(0).font());
    }

    /** The same words in at most so many lines; an ellipsis stands for the rest. */
    TextBlock inLines(int most) {
        if (lines.size() <= most) {
            return this;
        }
        List<Line> kept = new ArrayList<>(lines.subList(0, most));
        kept.set(most - 1, kept.get(most - 1).withEllipsis());
        return new TextBlock(kept, kept.get(0).pieces().get(0).font());
    }

    int lineCount() {
        return lines.size();
    }

    double width() {
        return lines.stream().mapToDouble(Line::width).max().orElse(0);
    }

    double height() {
        return lines.size() * lineHeight;
    }

    /** The words as they stand, one string for each line. */
    List<String> text() {
        return lines.stream().map(Line::text).toList();
    }

    /** Draws the block with its upper left corner at a point. */
    void draw(Graphics2D g, double x, double y, Color color) {
        g.setPaint(color);
        double gap = lineHeight - ascent;
        for (int i = 0; i < lines.size(); i++) {
            double along = x;
            for (Words piece : lines.get(i).pieces()) {
                g.setFont(piece.font());
                g.drawString(piece.text(), (float) along, (float) (y + i * lineHeight + ascent + gap / 4));
                along += Type.width(piece.text() + " ", piece.font());
            }
        }
    }

    /** Draws the block into a box, on paper that keeps lines from running through it. */
    void drawOnPaper(Graphics2D g, Box box, Color color) {
        g.setPaint(Ink.PAPER);
        g.fill(box.grownBy(2).shape());
        draw(g, box.x(), box.y(), color);
    }

    /**
     * One line: pieces that each have one font, one space apart.
     *
     * @param pieces the pieces, at least one
     */
    record Line(List<Words> pieces) {

        Line {
            pieces = List.copyOf(pieces);
        }

        double width() {
            double width = 0;
            for (int i = 0; i < pieces.size(); i++) {
                String space = i == pieces.size() - 1 ? "" : " ";
                width += Type.width(pieces.get(i).text() + space, pieces.get(i).font());
            }
            return width;
        }

        String text() {
            return String.join(" ", pieces.stream().map(Words::text).toList());
        }

        Line withEllipsis() {
            List<Words> shorter = new ArrayList<>(pieces);
            Words last = shorter.remove(shorter.size() - 1);
            int kept = last.text()
                    .offsetByCodePoints(last.text().length(), last.text().length() > 2 ? -1 : 0);
            shorter.add(new Words(last.text().substring(0, kept).strip() + "…", last.font(), false));
            return new Line(shorter);
        }
    }

    /** Fills lines with words, one after another. */
    private static final class LineBreaker {

        /** A space, but not one between a number and its unit, which mean nothing apart. */
        private static final Pattern WHERE_LINES_MAY_END =
                Pattern.compile("(?<!\\d) | (?!(?:L|gal|bar|psi|°C|°F|h|min|s|d|m)\\b|°)");

        private final double width;
        private final List<Line> lines = new ArrayList<>();
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

        List<Line> lines() {
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
                lines.add(new Line(pieces));
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

    /**
     * Words in one font.
     *
     * @param text the words
     * @param font the font
     * @param startsLine whether they begin a new line
     */
    record Words(String text, Font font, boolean startsLine) {

        static Words plain(String text) {
            return new Words(text, Type.LABEL, false);
        }

        static Words strong(String text) {
            return new Words(text, Type.LABEL_STRONG, false);
        }

        Words onNewLine() {
            return new Words(text, font, true);
        }
    }
}

package io.github.heatswell.charts.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

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
}

package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Mark;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** The text above the panels. A hazard comes first, light on dark, after its symbol. */
final class Header {

    private static final double PADDING = 11;
    private static final double MARK_ROOM = 44;
    private static final double BELOW_WARNING = 15;
    private static final double BELOW_TITLE = 5;

    /** A title with more lines than this is set smaller. */
    private static final int MAX_LARGE_LINES = 2;

    private final Optional<TextBlock> warning;
    private final TextBlock title;
    private final TextBlock subtitle;
    private final double width;

    private Header(Optional<TextBlock> warning, TextBlock title, TextBlock subtitle, double width) {
        this.warning = warning;
        this.title = title;
        this.subtitle = subtitle;
        this.width = width;
    }

    static Header of(Caption caption, double width) {
        Optional<TextBlock> warning = caption.hazard().isEmpty()
                ? Optional.empty()
                : Optional.of(TextBlock.of(caption.hazard(), Type.WARNING, width - MARK_ROOM - PADDING));
        TextBlock title = TextBlock.of(caption.title(), Type.TITLE, width);
        return new Header(
                warning,
                title.lineCount() > MAX_LARGE_LINES ? TextBlock.of(caption.title(), Type.LONG_TITLE, width) : title,
                TextBlock.of(caption.subtitle(), Type.SUBTITLE, width),
                width);
    }

    double height() {
        return warningHeight() + title.height() + BELOW_TITLE + subtitle.height();
    }

    void draw(Graphics2D g, double x, double y) {
        warning.ifPresent(words -> {
            double tall = words.height() + 2 * PADDING;
            g.setPaint(Ink.ALARM);
            g.fill(new Rectangle2D.Double(x, y, width, tall));
            MarkShapes.draw(g, Mark.Kind.HAZARD, 0, x + MARK_ROOM / 2, y + tall / 2);
            words.draw(g, x + MARK_ROOM, y + PADDING, Ink.PAPER);
        });
        double below = y + warningHeight();
        title.draw(g, x, below, Ink.TEXT);
        subtitle.draw(g, x, below + title.height() + BELOW_TITLE, Ink.QUIET_TEXT);
    }

    private double warningHeight() {
        return warning.map(words -> words.height() + 2 * PADDING + BELOW_WARNING)
                .orElse(0.0);
    }
}

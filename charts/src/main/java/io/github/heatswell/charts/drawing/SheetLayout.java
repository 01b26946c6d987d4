package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How the sheet is divided: words above, panels below, names or a column with the key at the right.
 *
 * @param width the width of the sheet
 * @param height its height
 * @param header the words above the panels
 * @param panels where the panels stand with their scales and what is beside them
 * @param rightOfPanels the room for what is beside the panels
 * @param column the column with the key, or empty where the names of lines stand beside them
 */
record SheetLayout(double width, double height, Header header, Box panels, double rightOfPanels, Optional<Key> column) {

    /** The free rim of the sheet. */
    static final double MARGIN = 26;
    /** The room for a panel's heading. */
    static final double ABOVE_PANELS = 26;
    /** The room between the panels, which holds the heading of the lower one. */
    static final double BETWEEN_PANELS = 46;
    /** The room above a single panel that half a number at the end of its scale takes. */
    static final double ABOVE_SINGLE = 12;
    /** The room below a single panel for numbers and the name of its axis. */
    static final double BELOW_SINGLE = 46;

    private static final double BELOW_HEADER = 20;
    private static final double MIN_PANELS = 380;
    private static final double MAX_PANELS = 1600;
    private static final double MIN_SINGLE = 300;
    /** What the time axis takes, a little more than it does. */
    private static final double BELOW_PANELS = 52;

    static SheetLayout of(Picture picture) {
        return picture.key().map(key -> withKey(picture, key)).orElseGet(() -> withNames(picture));
    }

    private static SheetLayout withNames(Picture picture) {
        double width = picture.size().width();
        Header header = Header.of(picture.caption(), width - 2 * MARGIN);
        double top = MARGIN + header.height() + BELOW_HEADER;
        double gutter = Math.max(180, Math.min(0.205 * width, 300));
        double needed = Math.min(MAX_PANELS, Math.max(MIN_PANELS, heightForNames(picture, gutter)));
        double height = Math.max(picture.size().height(), Math.ceil(top + needed + MARGIN / 2));
        Box panels = new Box(MARGIN, top, width - 2 * MARGIN, height - top - MARGIN / 2);
        return new SheetLayout(width, height, header, panels, gutter, Optional.empty());
    }

    private static double heightForNames(Picture picture, double gutter) {
        int shares = 0;
        double most = 0;
        for (Panel panel : picture.panels()) {
            int share = ChartAssembly.share(picture, panel);
            shares += share;
            most = Math.max(most, Gutter.neededHeight(panel, picture.across(), gutter) / share);
        }
        double gaps = (picture.panels().size() - 1) * BETWEEN_PANELS;
        return shares * most + ABOVE_PANELS + gaps + BELOW_PANELS;
    }

    private static SheetLayout withKey(Picture picture, Picture.Key key) {
        double width = picture.size().width();
        double inner = width - 2 * MARGIN;
        Header header = Header.of(picture.caption(), inner);
        Panel panel = picture.upper();
        Key column = new Key(panel, key, inner);
        double right = column.width() + Key.BESIDE_PANEL;
        Axis up = panel.axis();
        double plotWidth = inner - right - leftOf(up);
        Box flat = new Box(MARGIN + leftOf(up), 0, plotWidth, 1);
        UprightNames names = UprightNames.of(panel, new Frame(flat, picture.across(), up));
        double besides = MARGIN + header.height() + BELOW_HEADER;
        double top = besides + UprightNames.HEADING + names.height();
        double needed = Math.max(top + MIN_SINGLE + BELOW_SINGLE, besides + column.height() + MARGIN);
        double height = Math.ceil(Math.max(picture.size().height(), needed));
        double above = top - ABOVE_SINGLE;
        Box panels = new Box(MARGIN, above, inner, height - above - MARGIN / 2);
        return new SheetLayout(width, height, header, panels, right, Optional.of(column));
    }

    /** The room left of a single panel for its numbers and ticks. */
    static double leftOf(Axis up) {
        return up.ticks().stream()
                        .mapToDouble(tick -> Type.width(tick.name(), Type.TICK))
                        .max()
                        .orElse(0)
                + 15;
    }

    /** The text above the panels. A hazard comes first, light on dark, after its symbol. */
    static final class Header {

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

    /** The words of upright lines, in rows above the plot so that none stands on another. */
    static final class UprightNames {

        /** The room above them for the name of the axis upwards. */
        static final double HEADING = 23;

        private static final double ROW_GAP = 2;
        private static final double BETWEEN = 10;

        private final List<Named> names;
        private final double height;

        private UprightNames(List<Named> names, double height) {
            this.names = names;
            this.height = height;
        }

        /**
         * The words of one line.
         *
         * @param line the line
         * @param text its words
         * @param box the room they take
         */
        record Named(Curve line, TextBlock text, Box box) {

            private Named at(double top) {
                return new Named(line, text, new Box(box.x(), top, box.width(), box.height()));
            }
        }

        /** Places the names over a plot of which only left and right edge need to be right. */
        static UprightNames of(Panel panel, Frame frame) {
            List<Row> rows = new ArrayList<>();
            List<Curve> upright = panel.curves().stream()
                    .filter(line -> line.points().isUpright() && !line.label().isEmpty())
                    .sorted(Comparator.comparingDouble(line -> line.points().across(0)))
                    .toList();
            for (Curve line : upright) {
                TextBlock text =
                        TextBlock.of(line.label(), Type.LABEL, frame.area().width());
                double x = Math.max(
                        frame.area().x(),
                        Math.min(
                                frame.x(line.points().across(0)) - text.width() / 2,
                                frame.area().right() - text.width()));
                if (rows.stream().noneMatch(row -> row.hasRoomAt(x))) {
                    rows.add(new Row());
                }
                rows.stream()
                        .filter(row -> row.hasRoomAt(x))
                        .findFirst()
                        .orElseThrow()
                        .add(line, text, x);
            }
            List<Named> names = new ArrayList<>();
            double height = 0;
            for (Row row : rows) {
                height += row.height;
                double top = frame.area().y() - height;
                row.names.forEach(name -> names.add(name.at(top)));
            }
            return new UprightNames(names, height);
        }

        /** Names beside each other. */
        private static final class Row {
            private final List<Named> names = new ArrayList<>();
            private double end = Double.NEGATIVE_INFINITY;
            private double height;

            private boolean hasRoomAt(double x) {
                return end <= x - BETWEEN;
            }

            private void add(Curve line, TextBlock text, double x) {
                names.add(new Named(line, text, new Box(x, 0, text.width(), text.height())));
                end = x + text.width();
                height = Math.max(height, text.height() + ROW_GAP);
            }
        }

        List<Named> names() {
            return names;
        }

        double height() {
            return height;
        }

        void draw(Graphics2D g, Frame frame) {
            for (Named name : names) {
                double x = frame.x(name.line().points().across(0));
                g.setPaint(Ink.of(name.line().role()));
                g.setStroke(Ink.line(name.line().role()));
                g.draw(new Line2D.Double(x, name.box().bottom(), x, frame.area().y()));
            }
            for (Named name : names) {
                name.text().drawOnPaper(g, name.box(), Ink.of(name.line().role()));
            }
        }
    }
}

package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
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
    private static final double LEAST_PANELS = 380;
    private static final double MAX_PANELS = 1600;
    private static final double LEAST_SINGLE = 300;
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
        double needed = Math.min(MAX_PANELS, Math.max(LEAST_PANELS, heightForNames(picture, gutter)));
        double height = Math.max(picture.size().height(), Math.ceil(top + needed + MARGIN / 2));
        Box panels = new Box(MARGIN, top, width - 2 * MARGIN, height - top - MARGIN / 2);
        return new SheetLayout(width, height, header, panels, gutter, Optional.empty());
    }

    private static double heightForNames(Picture picture, double gutter) {
        double upper = Gutter.neededHeight(picture.upper(), picture.across(), gutter);
        double lower = Gutter.neededHeight(picture.lower(), picture.across(), gutter);
        double both = ChartAssembly.UPPER_SHARE + ChartAssembly.LOWER_SHARE;
        double plots = Math.max(upper * both / ChartAssembly.UPPER_SHARE, lower * both / ChartAssembly.LOWER_SHARE);
        return plots + ABOVE_PANELS + BETWEEN_PANELS + BELOW_PANELS;
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
        double needed = Math.max(top + LEAST_SINGLE + BELOW_SINGLE, besides + column.height() + MARGIN);
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
}

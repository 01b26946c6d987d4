package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Picture;

/**
 * How the sheet is divided: words above, panels below, names at the right.
 *
 * @param width the width of the sheet
 * @param height its height
 * @param header the words above the panels
 * @param panels where the panels stand with their scales and names
 */
record SheetLayout(double width, double height, Header header, Box panels) {

    /** The free rim of the sheet. */
    static final double MARGIN = 26;

    /** The room for a panel's heading. */
    static final double ABOVE_PANELS = 26;

    /** The room between the panels, which holds the heading of the lower one. */
    static final double BETWEEN_PANELS = 46;

    private static final double BELOW_HEADER = 20;
    private static final double LEAST_PANELS = 380;
    private static final double MAX_PANELS = 1600;

    /** What the time axis takes, a little more than it does. */
    private static final double BELOW_PANELS = 52;

    static SheetLayout of(Picture picture) {
        double width = picture.size().width();
        Header header = Header.of(picture.caption(), width - 2 * MARGIN);
        double top = MARGIN + header.height() + BELOW_HEADER;
        double needed = Math.min(MAX_PANELS, Math.max(LEAST_PANELS, heightForNames(picture)));
        double height = Math.max(picture.size().height(), Math.ceil(top + needed + MARGIN / 2));
        Box panels = new Box(MARGIN, top, width - 2 * MARGIN, height - top - MARGIN / 2);
        return new SheetLayout(width, height, header, panels);
    }

    /** The room for the names at the right. */
    double gutterWidth() {
        return gutterWidth(width);
    }

    private static double gutterWidth(double width) {
        return Math.max(180, Math.min(0.205 * width, 300));
    }

    private static double heightForNames(Picture picture) {
        double gutter = gutterWidth(picture.size().width());
        double upper = Gutter.neededHeight(picture.upper(), picture.time(), gutter);
        double lower = Gutter.neededHeight(picture.lower(), picture.time(), gutter);
        double both = ChartAssembly.UPPER_SHARE + ChartAssembly.LOWER_SHARE;
        double plots = Math.max(upper * both / ChartAssembly.UPPER_SHARE, lower * both / ChartAssembly.LOWER_SHARE);
        return plots + ABOVE_PANELS + BETWEEN_PANELS + BELOW_PANELS;
    }
}

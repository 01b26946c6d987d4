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

    static SheetLayout of(Picture picture) {
        double width = picture.size().width();
        Header header = Header.of(picture.caption(), width - 2 * MARGIN);
        double top = MARGIN + header.height() + BELOW_HEADER;
        double height = Math.max(picture.size().height(), Math.ceil(top + LEAST_PANELS + MARGIN / 2));
        Box panels = new Box(MARGIN, top, width - 2 * MARGIN, height - top - MARGIN / 2);
        return new SheetLayout(width, height, header, panels);
    }

    /** The room for the names at the right. */
    double gutterWidth() {
        return Math.max(176, Math.min(0.2 * width, 300));
    }
}

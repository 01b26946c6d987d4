package io.github.heatswell.charts.drawing;

import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import java.awt.Graphics2D;
import java.util.Optional;

/**
 * The column beside a single panel: bars, if there are any, and the key.
 *
 * @param width its width
 * @param bars the bars, or empty
 * @param key what the lines and patches are
 */
record KeyColumn(double width, Optional<BarList> bars, Key key) {

    /** The room between the panel and the column. */
    static final double BESIDE_PANEL = 24;

    private static final double BELOW_BARS = 18;
    private static final double SHARE = 0.235;
    private static final double SHARE_WITH_BARS = 0.40;
    private static final double LEAST = 190;

    /** The column of a picture of this width. */
    static KeyColumn of(Panel panel, Picture.Key key, double inner) {
        double width = Math.max(LEAST, (key.bars().isPresent() ? SHARE_WITH_BARS : SHARE) * inner);
        return new KeyColumn(
                width, key.bars().map(bars -> new BarList(bars, width)), new Key(panel, key.measured(), width));
    }

    double height() {
        return keyTop() + key.height();
    }

    private double keyTop() {
        return bars.map(list -> list.height() + BELOW_BARS).orElse(0.0);
    }

    void draw(Graphics2D g, double x, double top) {
        bars.ifPresent(list -> list.draw(g, x, top));
        key.draw(g, x, top + keyTop());
    }
}

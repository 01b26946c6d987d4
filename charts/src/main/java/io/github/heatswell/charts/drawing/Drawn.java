package io.github.heatswell.charts.drawing;

import java.awt.Graphics2D;

/** A sheet that can be drawn onto anything, with the words for those who cannot see it. */
interface Drawn {

    /** The width in logical pixels. */
    double width();

    /** The height in logical pixels. */
    double height();

    /** What the picture is called. */
    String name();

    /** What the picture shows. */
    String description();

    /** A short name for its content, fit for the start of an XML id. */
    String fingerprint();

    /** Draws everything. */
    void draw(Graphics2D g);
}

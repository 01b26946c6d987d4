package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * A picture.
 *
 * @param svg its markup, one SVG element without scripts, style sheets and references to the outside
 * @param caption what is said below it
 * @param alternative what it shows, for those who cannot see it
 */
record Illustration(String svg, String caption, String alternative) implements Block {

    Illustration {
        Objects.requireNonNull(svg, "svg");
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(alternative, "alternative");
    }

    @Override
    public void show(Renderer renderer) {
        renderer.picture(this);
    }
}

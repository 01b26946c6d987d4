package io.github.heatswell.charts.picture;

/**
 * The room a picture takes, in logical pixels. A picture whose words need more lines than usual grows taller, so that
 * nothing is clipped.
 *
 * @param width the width, 720 to 2400
 * @param height the least height, 520 to 2400
 */
public record Size(int width, int height) {

    /** Fits the width of a printed page and of a laptop's window (logical pixels). */
    public static final int USUAL_WIDTH = 1040;

    /**
     * Checks the ranges.
     *
     * @param width the width, 720 to 2400
     * @param height the least height, 520 to 2400
     * @throws IllegalArgumentException if the width or the height is outside its range
     */
    public Size {
        require("width", width, 720);
        require("height", height, 520);
    }

    private static void require(String name, int value, int least) {
        if (value < least || value > 2400) {
            throw new IllegalArgumentException(
                    name + ": " + value + " is outside the allowed range, " + least + " to 2400 logical pixels");
        }
    }
}

package io.github.heatswell.charts.picture;

/**
 * Size of a picture, in logical pixels. A picture whose words need more lines than usual grows taller, so that nothing
 * is clipped.
 *
 * @param width the width, 720 to 2400
 * @param height the least height, 520 to 2400
 */
public record Size(int width, int height) {

    /** Fits the width of a printed page and of a laptop's window (logical pixels). */
    public static final int USUAL_WIDTH = 1040;

    /** The room for the scale at the left and the names at the right (logical pixels). */
    private static final int BESIDE = 320;

    private static final int TICK_DISTANCE = 62;
    private static final int SHORT_TICK_DISTANCE = 42;
    private static final double MARK_DISTANCE = 15;

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

    /**
     * How many ticks with names of clock times or numbers fit side by side.
     *
     * @return the number of ticks
     */
    public int mostTicks() {
        return plotWidth() / TICK_DISTANCE;
    }

    /**
     * How many ticks with names of three letters fit side by side.
     *
     * @return the number of ticks
     */
    public int mostShortTicks() {
        return plotWidth() / SHORT_TICK_DISTANCE;
    }

    /**
     * Columns a line is thinned to: those of a picture drawn at twice its logical size.
     *
     * @return the number of columns
     */
    public int columns() {
        return 2 * plotWidth();
    }

    /**
     * The distance below which two marks would cover each other.
     *
     * @param across the axis to the right
     * @return the distance, in the unit of that axis
     */
    public double leastMarkDistance(Axis across) {
        return MARK_DISTANCE / plotWidth() * (across.to() - across.from());
    }

    /** About what scale and names leave of the width (logical pixels). */
    private int plotWidth() {
        return width - BESIDE;
    }
}

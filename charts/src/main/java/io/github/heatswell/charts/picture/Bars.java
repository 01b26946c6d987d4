package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * A list of signed shares as bars to the right and to the left of a middle line.
 *
 * @param heading what the bars are
 * @param note how they are read
 * @param bars the bars from above to below
 */
public record Bars(String heading, String note, List<Bar> bars) {

    /**
     * Copies the bars and makes the words printable.
     *
     * @param heading what the bars are
     * @param note how they are read
     * @param bars the bars from above to below
     */
    public Bars {
        heading = PlainText.of(Objects.requireNonNull(heading, "heading"));
        note = PlainText.of(Objects.requireNonNull(note, "note"));
        bars = List.copyOf(Objects.requireNonNull(bars, "bars"));
    }

    /**
     * One bar.
     *
     * @param name what it stands for
     * @param value its length (-), -1 to 1
     */
    public record Bar(String name, double value) {

        /**
         * Makes the name printable.
         *
         * @param name what it stands for
         * @param value its length (-), -1 to 1
         * @throws IllegalArgumentException if the length is outside its range
         */
        public Bar {
            name = PlainText.of(Objects.requireNonNull(name, "name"));
            if (!(Math.abs(value) <= 1)) {
                throw new IllegalArgumentException(name + ": " + value + " is outside the allowed range, -1 to 1");
            }
        }
    }
}

package io.github.heatswell.charts.picture;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A picture of stacked panels over one axis. With a key it has one panel, and the key says what its lines and patches are;
 * without a key, their names are at the right end of each.
 *
 * @param size the room it takes
 * @param caption the words above
 * @param across the axis to the right that the panels share
 * @param end where a hazard ended the run, in the unit of the axis to the right, or empty
 * @param panels the panels, the uppermost first
 * @param key what stands beside the panel, or empty
 */
public record Picture(
        Size size, Caption caption, Axis across, OptionalDouble end, List<Panel> panels, Optional<Key> key) {

    /**
     * Checks that everything is there.
     *
     * @param size the room it takes
     * @param caption the words above
     * @param across the axis to the right that the panels share
     * @param end where a hazard ended the run, in the unit of the axis to the right, or empty
     * @param panels the panels, the uppermost first
     * @param key what stands beside the panel, or empty
     * @throws IllegalArgumentException if there are no panels, or several with a key
     */
    public Picture {
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(across, "across");
        Objects.requireNonNull(end, "end");
        panels = List.copyOf(Objects.requireNonNull(panels, "panels"));
        if (panels.isEmpty() || key.isPresent() && panels.size() > 1) {
            throw new IllegalArgumentException("panels: " + panels.size() + " cannot be drawn");
        }
    }

    /**
     * The same below a hazard, unless it tells of one itself.
     *
     * @param hazard the hazard, or empty if there is none
     * @return the picture
     */
    public Picture below(String hazard) {
        return caption.hazard().isEmpty()
                ? new Picture(size, new Caption(hazard, caption.title(), caption.subtitle()), across, end, panels, key)
                : this;
    }

    /**
     * Two panels over time.
     *
     * @param size the room it takes
     * @param caption the words above
     * @param time the time axis
     * @param end where a hazard ended the run, in the unit of the time axis, or empty
     * @param upper the upper panel
     * @param lower the lower panel
     */
    public Picture(Size size, Caption caption, Axis time, OptionalDouble end, Panel upper, Panel lower) {
        this(size, caption, time, end, List.of(upper, lower), Optional.empty());
    }

    /**
     * One panel with its key beside it.
     *
     * @param size the room it takes
     * @param caption the words above
     * @param across the axis to the right
     * @param panel the panel
     * @param key what stands beside it
     */
    public Picture(Size size, Caption caption, Axis across, Panel panel, Key key) {
        this(size, caption, across, OptionalDouble.empty(), List.of(panel), Optional.of(key));
    }

    /**
     * The uppermost panel.
     *
     * @return the first panel
     */
    public Panel upper() {
        return panels.get(0);
    }

    /**
     * The lowest panel.
     *
     * @return the last panel
     */
    public Panel lower() {
        return panels.get(panels.size() - 1);
    }

    /**
     * What stands beside a single panel: what its patches measure, and bars if there are any.
     *
     * @param measured the quantity whose bands the key names, or empty
     * @param bars the bars above the key, or empty
     */
    public record Key(String measured, Optional<Bars> bars) {

        /**
         * Makes the words printable.
         *
         * @param measured the quantity whose bands the key names, or empty
         * @param bars the bars above the key, or empty
         */
        public Key {
            measured = PlainText.of(Objects.requireNonNull(measured, "measured"));
            Objects.requireNonNull(bars, "bars");
        }
    }

    /**
     * The words above a picture, in the order they are read: the hazard, if there is one, then what was found, then the
     * facts of the system.
     *
     * @param hazard the hazard at which a run ended, or empty if there is none
     * @param title what was found
     * @param subtitle the facts of the system
     */
    public record Caption(String hazard, String title, String subtitle) {

        /**
         * Makes every text printable.
         *
         * @param hazard the hazard at which a run ended, or empty if there is none
         * @param title what was found
         * @param subtitle the facts of the system
         */
        public Caption {
            hazard = PlainText.of(Objects.requireNonNull(hazard, "hazard"));
            title = PlainText.of(Objects.requireNonNull(title, "title"));
            subtitle = PlainText.of(Objects.requireNonNull(subtitle, "subtitle"));
        }

        /**
         * The words of a narrative.
         *
         * @param narrative what was found
         * @param amounts how quantities are written
         * @return the caption, with the hazard first if there is one
         */
        public static Caption of(Narrative narrative, QuantityFormat amounts) {
            return new Caption(
                    narrative
                            .hazard()
                            .map(what -> "Hazard: " + what.text(amounts))
                            .orElse(""),
                    narrative.headline().text(amounts),
                    narrative.facts().text(amounts));
        }
    }

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
}

package io.github.heatswell.charts.picture;

import java.util.List;
import java.util.Objects;

/**
 * Stretches of time in which something was on, drawn as bars in a lane of their own at the foot of a panel.
 *
 * @param kind what was on, which determines its look
 * @param label the same in words
 * @param spans the stretches, in the order of time
 */
public record Bands(Kind kind, String label, List<Span> spans) {

    /**
     * Copies the stretches and makes the label printable.
     *
     * @param kind what was on, which determines its look
     * @param label the same in words
     * @param spans the stretches, in the order of time
     */
    public Bands {
        Objects.requireNonNull(kind, "kind");
        label = PlainText.of(Objects.requireNonNull(label, "label"));
        spans = List.copyOf(Objects.requireNonNull(spans, "spans"));
    }

    /** What was on. */
    public enum Kind {
        /** The burner or an element. */
        HEATER,
        /** A tap. */
        DRAWS,
        /** The bypass of the reducing valve. */
        BYPASS,
        /** A relief valve that runs on water from the supply. */
        RELIEF,
        /** The shut-off of the supply. */
        SUPPLY_OFF
    }

    /**
     * A stretch of time.
     *
     * @param from its start, in the unit of the time axis
     * @param to its end, in the same unit, not before its start
     */
    public record Span(double from, double to) {}
}

package io.github.heatswell.diagnosis;

import java.util.Objects;

/**
 * Something seen at the house at a time of a log, or between two of its readings. People are seldom wrong about what they see, but now and
 * then take condensation for a drip. So a cause that misses a sighting becomes a hundred times less likely, and no more. Immutable.
 *
 * @param kind what was seen
 * @param from from when on (s, in the time of the log)
 * @param until until when (s, in the time of the log), not before
 * @param volume the water that was caught (m3); 0 where none was measured
 */
public record Sighting(Kind kind, double from, double until, double volume) {

    /**
     * Checks the values.
     *
     * @param kind what was seen
     * @param from from when on (s, in the time of the log)
     * @param until until when (s, in the time of the log), not before
     * @param volume the water that was caught (m3), 0 or more
     * @throws IllegalArgumentException if a time is not finite, the end comes before the beginning, or the volume is below 0
     */
    public Sighting {
        Objects.requireNonNull(kind, "kind");
        if (!(Double.isFinite(from) && until >= from && Double.isFinite(until))) {
            throw new IllegalArgumentException("a sighting lasts from a time of the log to a later one, not from "
                    + from + " s to " + until + " s");
        }
        if (!(volume >= 0 && Double.isFinite(volume))) {
            throw new IllegalArgumentException("volume: " + volume + " m3 is below 0 m3");
        }
    }

    /**
     * Something seen, of which nothing was measured.
     *
     * @param kind what was seen
     * @param from from when on (s, in the time of the log)
     * @param until until when (s, in the time of the log), not before
     * @return the sighting
     */
    public static Sighting of(Kind kind, double from, double until) {
        return new Sighting(kind, from, until, 0);
    }

    /** What can be seen without a gauge. */
    public enum Kind {
        /** Water came out of the relief pipe at some time in between. */
        DRIPS,
        /** No water came out of the relief pipe all the while. */
        DRY,
        /** Burner or element were on at some time in between. */
        HEATER_ON,
        /** Burner and element were off at some time in between. */
        HEATER_OFF,
        /** So much water came out of the relief pipe in between. */
        CAUGHT,
        /** Nobody drew water in between. */
        TAPS_SHUT;

        /** What it is evidence of. */
        Evidence.Part part() {
            return switch (this) {
                case HEATER_ON, HEATER_OFF -> Evidence.Part.SEEN_HEATER;
                case DRIPS, DRY, CAUGHT -> Evidence.Part.SEEN_DISCHARGE;
                case TAPS_SHUT -> Evidence.Part.SEEN_TAPS;
            };
        }
    }
}

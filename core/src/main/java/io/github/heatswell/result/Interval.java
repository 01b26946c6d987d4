package io.github.heatswell.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * Time span in which something lasted. Immutable.
 *
 * @param from start (s since the start of the run), 0 if it was already under way
 * @param to end (s since the start of the run), the end of the run if it was not over
 * @param device the relief valve, the element, the vessel, or empty, as in {@link Event#device()}
 */
public record Interval(double from, double to, String device) {

    /**
     * Checks that the device is there and that time runs forward.
     *
     * @param from its beginning (s since the start of the run)
     * @param to its end (s since the start of the run)
     * @param device the relief valve, the element, the vessel, or empty
     * @throws IllegalArgumentException if the end lies before the beginning
     */
    public Interval {
        Objects.requireNonNull(device, "device");
        if (!(from <= to)) {
            throw new IllegalArgumentException("an interval from " + from + " s to " + to + " s runs backward");
        }
    }

    /**
     * How long it lasted.
     *
     * @return the length (s)
     */
    public double length() {
        return to - from;
    }

    /**
     * Whether a moment lies in it, its ends included.
     *
     * @param time the moment (s since the start of the run)
     * @return true if it does
     */
    public boolean contains(double time) {
        return time >= from && time <= to;
    }

    /**
     * Length of the overlap with another interval.
     *
     * @param other the other
     * @return the length both have in common (s), 0 if none
     */
    public double overlap(Interval other) {
        return Math.max(0, Math.min(to, other.to) - Math.max(from, other.from));
    }

    /**
     * Union of the intervals of several devices; overlapping or touching intervals are merged.
     *
     * @param intervals the intervals, in any order
     * @return the intervals in the order of time, apart from each other, without a device
     */
    public static List<Interval> joined(List<Interval> intervals) {
        List<Interval> joined = new ArrayList<>();
        for (Interval next : intervals.stream()
                .sorted(Comparator.comparingDouble(Interval::from))
                .toList()) {
            int last = joined.size() - 1;
            if (joined.isEmpty() || next.from > joined.get(last).to) {
                joined.add(new Interval(next.from, next.to, ""));
            } else {
                Interval before = joined.get(last);
                joined.set(last, new Interval(before.from, Math.max(before.to, next.to), ""));
            }
        }
        return List.copyOf(joined);
    }

    /**
     * Total length of intervals.
     *
     * @param intervals the intervals
     * @return the sum of their lengths (s); overlaps count more than once
     */
    public static double total(List<Interval> intervals) {
        return intervals.stream().mapToDouble(Interval::length).sum();
    }

    /**
     * A phase that lasts from one kind of event to another: {@link RunSummary#intervals(Phase)} tells when.
     */
    public enum Phase {
        /** A relief valve was off its seat. One that is stuck open never reseats, and has no events. */
        RELIEF_OPEN(Event.Kind.RELIEF_OPENED, Event.Kind.RELIEF_RESEATED),
        /** A burner or element was on. */
        HEATER_ON(Event.Kind.HEATER_ON, Event.Kind.HEATER_OFF),
        /** A tap was open. */
        DRAW(Event.Kind.DRAW_STARTED, Event.Kind.DRAW_ENDED),
        /** The supply was shut off. */
        SUPPLY_SHUT_OFF(Event.Kind.SUPPLY_SHUT_OFF, Event.Kind.SUPPLY_RESTORED),
        /** The supply held the pressure, or let water in towards its own. It ends when its valve closes or it is shut off. */
        SUPPLY_FEEDING(Event.Kind.SUPPLY_OPENED, Event.Kind.SUPPLY_CLOSED),
        /** The bypass of the reducing valve returned water to the mains. */
        BYPASS_OPEN(Event.Kind.BYPASS_OPENED, Event.Kind.BYPASS_CLOSED),
        /** An expansion vessel held water: its diaphragm was off its seat. */
        VESSEL_HOLDS_WATER(Event.Kind.VESSEL_LIFTED, Event.Kind.VESSEL_SEATED),
        /** An expansion vessel was at its acceptance limit and took no more water. */
        VESSEL_FULL(Event.Kind.VESSEL_BOTTOMED_OUT, Event.Kind.VESSEL_FREED);

        private final Event.Kind begins;
        private final Event.Kind ends;

        Phase(Event.Kind begins, Event.Kind ends) {
            this.begins = begins;
            this.ends = ends;
        }

        /**
         * The kind of event with which it begins.
         *
         * @return the kind
         */
        public Event.Kind begins() {
            return begins;
        }

        /**
         * Whether it ends with a kind of event.
         *
         * @param kind what happens
         * @return true if the phase is over then
         */
        public boolean endsWith(Event.Kind kind) {
            return kind == ends || this == SUPPLY_FEEDING && kind == Event.Kind.SUPPLY_SHUT_OFF;
        }
    }
}

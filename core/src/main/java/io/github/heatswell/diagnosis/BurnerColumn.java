package io.github.heatswell.diagnosis;

/** What a log says about the heater. */
final class BurnerColumn {

    private final PressureLog log;

    BurnerColumn(PressureLog log) {
        this.log = log;
    }

    /** When the heater was first seen on (s); NaN if the log does not say. */
    double firstSeenOn() {
        int on = next(0, true);
        return on < 0 ? Double.NaN : log.time(on);
    }

    /** When the heater was last seen off before it came on (s): somewhere from here to {@link #firstSeenOn()} it did. */
    double lastSeenOff() {
        int on = next(0, true);
        return on < 0 ? Double.NaN : log.time(Math.max(0, on - 1));
    }

    /** How long the heater was on at first (s); NaN if the log does not show its beginning and its end. */
    double firstBurn() {
        int on = next(0, true);
        int off = on < 0 ? -1 : next(on, false);
        return on <= 0 || off < 0 ? Double.NaN : edge(off) - edge(on);
    }

    private int next(int from, boolean state) {
        for (int i = from; log.hasBurner() && i < log.count(); i++) {
            if (log.burnerOn(i) == state) {
                return i;
            }
        }
        return -1;
    }

    private double edge(int index) {
        return index == 0 ? 0 : 0.5 * (log.time(index - 1) + log.time(index));
    }
}

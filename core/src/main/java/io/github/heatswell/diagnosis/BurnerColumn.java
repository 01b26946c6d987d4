package io.github.heatswell.diagnosis;

import java.util.stream.Stream;

/** What a log says about the heater, by its column or else by what was seen. */
final class BurnerColumn {

    private final PressureLog log;

    BurnerColumn(PressureLog log) {
        this.log = log;
    }

    /** When the heater was first seen on (s); NaN if the log does not say. */
    double firstSeenOn() {
        int on = next(0, true);
        return on >= 0
                ? log.time(on)
                : seen(Sighting.Kind.HEATER_ON)
                        .mapToDouble(Sighting::until)
                        .min()
                        .orElse(Double.NaN);
    }

    /** When the heater was last seen off before it came on (s): somewhere from here to {@link #firstSeenOn()} it did; NaN if never. */
    double lastSeenOff() {
        int on = next(0, true);
        double first = firstSeenOn();
        return on >= 0
                ? log.time(Math.max(0, on - 1))
                : seen(Sighting.Kind.HEATER_OFF)
                        .mapToDouble(Sighting::from)
                        .filter(time -> time < first)
                        .max()
                        .orElse(Double.NaN);
    }

    /** How long (s) the heater was on from when it was first seen on until it was seen off, or else to the end of the log. */
    double seenHeating() {
        double on =
                seen(Sighting.Kind.HEATER_ON).mapToDouble(Sighting::until).min().orElse(log.end());
        return seen(Sighting.Kind.HEATER_OFF)
                        .mapToDouble(Sighting::from)
                        .filter(time -> time > on)
                        .min()
                        .orElse(log.end())
                - on;
    }

    private Stream<Sighting> seen(Sighting.Kind kind) {
        return log.sightings().stream().filter(one -> one.kind() == kind);
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

package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.Outage;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.Limits;

/** A while without supply, while being read. */
final class OutageDraft {

    /** No run is longer (s). */
    private static final Limits TIME = Limits.between("time", 0, 36_525 * 86_400.0);

    private double from;
    private double to;

    void from(double value, DurationUnit unit) {
        from = checked(value, unit);
    }

    void to(double value, DurationUnit unit) {
        to = checked(value, unit);
    }

    Outage end() {
        if (to <= from) {
            throw new DraftException("to", "must be later than from; both count from the start of the run");
        }
        return new Outage(from, to);
    }

    private static double checked(double value, DurationUnit unit) {
        double seconds = unit.toSi(value);
        if (!TIME.contains(seconds)) {
            throw new IllegalArgumentException(
                    TIME.outside(value, unit) + " is outside the allowed range, 0 s to 36525 d");
        }
        return seconds;
    }
}

package io.github.heatswell.units;

import java.util.List;

/**
 * Units of elapsed time.
 */
public enum DurationUnit implements Unit {
    /** The SI unit (s). */
    SECOND(1.0, "s", "sec", "second", "seconds"),

    /** Minute, 60 s. */
    MINUTE(60.0, "min", "minute", "minutes"),

    /** Hour, 3600 s. */
    HOUR(3600.0, "h", "hr", "hour", "hours"),

    /** Day of 24 hours. */
    DAY(86400.0, "d", "day", "days");

    private final double factor;
    private final List<String> spellings;

    DurationUnit(double factor, String... spellings) {
        this.factor = factor;
        this.spellings = List.of(spellings);
    }

    @Override
    public double factor() {
        return factor;
    }

    @Override
    public List<String> spellings() {
        return spellings;
    }
}

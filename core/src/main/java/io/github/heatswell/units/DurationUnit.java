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

    private static final double YEAR = 365.25 * 86_400;

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

    /** A time (s) in its two largest useful units: {@code 10 min 16 s}, or {@code 2.3 years} of 365.25 days. */
    static String twoLargest(double seconds) {
        if (seconds < 0) {
            String ahead = twoLargest(-seconds);
            return ahead.equals("0 s") ? ahead : "-" + ahead;
        }
        if (!(seconds >= 10)) {
            return Decimals.atMost(seconds, 1) + " s";
        }
        long whole = Math.round(seconds);
        if (whole < MINUTE.factor) {
            return whole + " s";
        }
        if (whole < HOUR.factor) {
            return pair(whole, 60, "min", "s");
        }
        long minutes = Math.round(MINUTE.fromSi(seconds));
        if (minutes < 2 * 24 * 60) {
            return pair(minutes, 60, "h", "min");
        }
        long hours = Math.round(HOUR.fromSi(seconds));
        if (hours < 14 * 24) {
            return pair(hours, 24, "d", "h");
        }
        return seconds < 2 * YEAR
                ? Math.round(DAY.fromSi(seconds)) + " d"
                : Decimals.atMost(seconds / YEAR, 1) + " years";
    }

    /**
     * A time of day.
     *
     * @param minutes whole minutes since midnight (min), 0 or more
     * @return hours and minutes, two digits each: {@code 07:05}
     */
    public static String clock(long minutes) {
        return (minutes < 600 ? "0" : "") + minutes / 60 + (minutes % 60 < 10 ? ":0" : ":") + minutes % 60;
    }

    private static String pair(long small, int inLarge, String large, String smallUnit) {
        long rest = small % inLarge;
        return small / inLarge + " " + large + (rest == 0 ? "" : " " + rest + " " + smallUnit);
    }
}

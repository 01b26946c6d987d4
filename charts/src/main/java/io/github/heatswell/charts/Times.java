package io.github.heatswell.charts;

import java.util.Locale;

/** Spans of time in words, rounded to what a reader would say. */
final class Times {

    private static final double MINUTE = 60;
    private static final double HOUR = 60 * MINUTE;
    private static final double DAY = 24 * HOUR;
    private static final double YEAR = 365.25 * DAY;

    private Times() {}

    /** When something happened: {@code after 10 min}, or {@code at the start}. */
    static String after(double seconds) {
        return seconds < 0.5 ? "at the start" : "after " + span(seconds);
    }

    /** A span of time: {@code 42 s}, {@code 4.5 min}, {@code 22 min}, {@code 2 h 15 min}, {@code 3 d 6 h}. */
    static String span(double seconds) {
        if (seconds < 119.5) {
            return String.format(Locale.ROOT, "%d s", Math.round(seconds));
        }
        if (seconds < 9.95 * MINUTE) {
            String tenths = String.format(Locale.ROOT, "%.1f", seconds / MINUTE);
            return (tenths.endsWith(".0") ? tenths.substring(0, tenths.length() - 2) : tenths) + " min";
        }
        if (seconds < 99.5 * MINUTE) {
            return String.format(Locale.ROOT, "%d min", Math.round(seconds / MINUTE));
        }
        if (seconds < 2 * DAY - 0.5 * MINUTE) {
            return pair(Math.round(seconds / MINUTE), 60, "h", "min");
        }
        if (seconds < 14 * DAY - 0.5 * HOUR) {
            return pair(Math.round(seconds / HOUR), 24, "d", "h");
        }
        return seconds < 2 * YEAR
                ? String.format(Locale.ROOT, "%d d", Math.round(seconds / DAY))
                : String.format(Locale.ROOT, "%.1f years", seconds / YEAR);
    }

    private static String pair(long small, long inLarge, String large, String smallUnit) {
        String head = small / inLarge + " " + large;
        return small % inLarge == 0 ? head : head + " " + small % inLarge + " " + smallUnit;
    }
}

package io.github.heatswell.units;

/** Durations, in their two largest useful units. */
final class Spans {

    private static final int MINUTE = 60;
    private static final int HOUR = 3_600;
    private static final int DAY = 86_400;
    private static final double YEAR = 365.25 * DAY;

    private Spans() {}

    static String text(double seconds) {
        if (seconds < 0) {
            String ahead = text(-seconds);
            return ahead.equals("0 s") ? ahead : "-" + ahead;
        }
        if (!(seconds >= 10)) {
            return Decimals.atMost(seconds, 1) + " s";
        }
        long whole = Math.round(seconds);
        if (whole < MINUTE) {
            return whole + " s";
        }
        if (whole < HOUR) {
            return pair(whole, MINUTE, "min", "s");
        }
        long minutes = Math.round(seconds / MINUTE);
        if (minutes < 2 * DAY / MINUTE) {
            return pair(minutes, HOUR / MINUTE, "h", "min");
        }
        long hours = Math.round(seconds / HOUR);
        if (hours < 14 * DAY / HOUR) {
            return pair(hours, DAY / HOUR, "d", "h");
        }
        return seconds < 2 * YEAR ? Math.round(seconds / DAY) + " d" : Decimals.atMost(seconds / YEAR, 1) + " years";
    }

    private static String pair(long small, int inLarge, String large, String smallUnit) {
        long rest = small % inLarge;
        return small / inLarge + " " + large + (rest == 0 ? "" : " " + rest + " " + smallUnit);
    }
}

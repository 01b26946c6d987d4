package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.ClockTime;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;

/**
 * The clock of a list as written by hand, whose lines may leave out the date, the day, and am or pm: each time follows the one
 * before. What cannot be is refused by an {@link IllegalArgumentException}.
 */
final class PaperClock {

    private static final int HALF_A_DAY = 43_200;
    private static final int DAY = 2 * HALF_A_DAY;
    private static final int HOUR = 3_600;
    /** A time that is certain follows within so long (s); later than that it is rather one out of order. Our own judgement. */
    private static final int LATEST = 18 * HOUR;
    /** A time without am or pm that would come later than this (s) is rather one out of order. Our own judgement. */
    private static final int FAR_AHEAD = 10 * HOUR;
    /** At night a clock without am or pm that shows so much (s) or more is before midnight. */
    private static final int EVENING = 6 * HOUR;

    private static final int MINUTE = 60;
    private static final int NOON = 12;

    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    /** Whether some line says am or pm. */
    private final boolean twelveHours;

    private String day = "";
    private String date = "";
    private double last = Double.NaN;
    private boolean inferred;

    PaperClock(boolean twelveHours) {
        this.twelveHours = twelveHours;
    }

    /** Whether a time without am or pm was taken as the next such time after the one before. */
    boolean isInferred() {
        return inferred;
    }

    /** The time of a line as the clock of a log reads it. */
    String read(Matcher parts) {
        String on = parts.group("date") == null ? "" : parts.group("date");
        double seconds = clock(parts);
        if (on.equals(date)) {
            seconds = afterLast(parts, seconds);
            followDay(parts, seconds);
        }
        day = parts.group("day") == null
                ? seconds < last ? "" : day
                : parts.group("day").toLowerCase(Locale.ROOT);
        boolean next = on.isEmpty() && seconds < last && last - seconds <= HALF_A_DAY;
        date = on;
        last = seconds;
        int whole = (int) seconds;
        String clock =
                String.format(Locale.ROOT, "%02d:%02d:%02d", whole / HOUR, whole / MINUTE % MINUTE, whole % MINUTE);
        return on.isEmpty() ? (next ? LogClock.NEXT_DAY : "") + clock : on + " " + clock;
    }

    /** Without a date a list goes on from one reading to the next within hours; a day of the week must say the same. */
    private void followDay(Matcher parts, double seconds) {
        boolean next = isOfNextDay(parts) && !Double.isNaN(last);
        if (!next && (parts.group("day") == null || day.isEmpty()) || parts.group("date") != null) {
            return;
        }
        int later = next
                ? 1
                : Math.floorMod(DAYS.indexOf(parts.group("day").toLowerCase(Locale.ROOT)) - DAYS.indexOf(day), 7);
        if (later != (seconds < last ? 1 : 0)) {
            throw new IllegalArgumentException(
                    "this reading is not within a day of the one before; write the date before each time, such as"
                            + " '2026-03-01 6:45 am 78 psi'");
        }
    }

    private static boolean isOfNextDay(Matcher parts) {
        return parts.group("part") != null
                && parts.group("part").toLowerCase(Locale.ROOT).matches("ne?xt.*");
    }

    /** Whether a time can be no other half of the day than it says. */
    private boolean isCertain(Matcher parts, double seconds) {
        return parts.group("half") != null
                || parts.group("word") != null
                || parts.group("part") != null
                        && !parts.group("part").toLowerCase(Locale.ROOT).endsWith("day")
                || seconds >= (NOON + 1) * HOUR
                || !twelveHours && last >= (NOON + 1) * HOUR;
    }

    /** The time of day (s), in the half of the day that the words before it name. */
    private double clock(Matcher parts) {
        double seconds = written(parts);
        boolean late = parts.group("part") != null
                && parts.group("half") == null
                && parts.group("part").toLowerCase(Locale.ROOT).endsWith("night");
        return late && seconds >= EVENING && seconds < NOON * HOUR ? seconds + HALF_A_DAY : seconds;
    }

    private static double written(Matcher parts) {
        if (parts.group("minutes") != null) {
            return Integer.parseInt(parts.group("minutes")) * MINUTE;
        }
        if (parts.group("word") != null) {
            return parts.group("word").equalsIgnoreCase("noon") ? NOON * HOUR : 0;
        }
        try {
            return parts.group("half") == null
                    ? ClockTime.read(parts.group("clock").replaceAll("[hH.]", ":"))
                    : ClockTime.read(parts.group("hour") + ":" + or(parts.group("minute"), "00") + ":"
                            + or(parts.group("second"), "00") + " "
                            + parts.group("half").charAt(0) + "m");
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException("time: " + wrong.getMessage());
        }
    }

    private static String or(String text, String otherwise) {
        return text == null ? otherwise : text;
    }

    /** In a list with am and pm, a time without goes on from the one before: after 11:50 am, 12:10 is past noon. */
    private double afterLast(Matcher parts, double seconds) {
        boolean open = twelveHours && !isCertain(parts, seconds);
        if (open && Double.isNaN(last)) {
            throw new IllegalArgumentException("write am or pm after the first time, as after others");
        }
        if (open) {
            inferred = true;
            double other = (seconds + HALF_A_DAY) % DAY;
            double next = ahead(other) < ahead(seconds) ? other : seconds;
            if (ahead(next) > FAR_AHEAD) {
                throw new IllegalArgumentException(
                        "this time is either earlier than the one before or more than ten hours later; put the readings in order, or"
                                + " write am or pm after it");
            }
            return next;
        }
        if (ahead(seconds) > (isCertain(parts, seconds) ? LATEST : HALF_A_DAY) && !isOfNextDay(parts)) {
            throw new IllegalArgumentException(
                    "this time is earlier than the one before; put the readings in order, and write am or pm, or"
                            + " hours from 0 to 23; for the day after, write 'next day' before it");
        }
        return seconds;
    }

    /** How long (s) after the last reading a time comes. */
    private double ahead(double seconds) {
        return Double.isNaN(last) ? 0 : (seconds - last + DAY) % DAY;
    }
}

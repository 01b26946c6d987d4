package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.wording.Printable;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

/** Turns dates and times on a clock into seconds; times on a clock go on past midnight. */
final class LogClock {

    private static final double DAY = 86_400;
    private static final double PAST_MIDNIGHT = 0.5 * DAY;

    private double days;
    private double last = Double.NaN;
    private double firstOfDay = Double.NaN;

    /** The time (s) since some midnight. */
    double read(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("time: missing; give every reading a time");
        }
        double time = text.length() <= 8 ? onTheClock(text) : dated(text);
        if (Double.isNaN(firstOfDay)) {
            firstOfDay = ((time % DAY) + DAY) % DAY;
        }
        return time;
    }

    /** The clock time of the first reading (s since midnight). */
    double firstOfDay() {
        return firstOfDay;
    }

    private double onTheClock(String text) {
        double time = clockTime(text);
        if (last - time > PAST_MIDNIGHT) {
            days++;
        }
        last = time;
        return days * DAY + time;
    }

    private static double clockTime(String text) {
        try {
            return ClockTime.read(text);
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException("time: " + wrong.getMessage(), wrong);
        }
    }

    private static double dated(String text) {
        String iso = text.replace(' ', 'T');
        try {
            LocalDateTime local = iso.matches(".*(?:[zZ]|[+-]\\d\\d:?\\d\\d)") && iso.indexOf('T') > 0 && zoned(iso)
                    ? OffsetDateTime.parse(iso).toLocalDateTime()
                    : LocalDateTime.parse(iso);
            return local.toEpochSecond(ZoneOffset.UTC) + local.getNano() * 1e-9;
        } catch (DateTimeException unknown) {
            throw new IllegalArgumentException(
                    "time: " + Printable.quote(text)
                            + " is neither a date with a time nor a time of day; write 2026-01-31 06:30 or 06:30",
                    unknown);
        }
    }

    /** A sign behind the T belongs to a zone, one before it to the date. */
    private static boolean zoned(String iso) {
        String time = iso.substring(iso.indexOf('T'));
        return time.indexOf('+') > 0 || time.indexOf('-') > 0 || time.endsWith("Z") || time.endsWith("z");
    }
}

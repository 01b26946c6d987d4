package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.wording.Printable;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns dates and times on a clock into seconds; times on a clock go on past midnight. */
final class LogClock {

    private static final double DAY = 86_400;
    private static final double HALF_A_DAY = 0.5 * DAY;
    private static final int MONTHS = 12;
    private static final int CENTURY = 2_000;
    private static final Pattern DATED = Pattern.compile("(\\d{1,4})([-./])(\\d{1,2})\\2(\\d{1,4})(?:[T,\\s]+(.+))?");

    /** Which of two numbers parted by a stroke is the day. */
    private enum Order {
        OPEN,
        DAY_FIRST,
        MONTH_FIRST
    }

    private Order order = Order.OPEN;
    private int firstOne;
    private int firstTwo;
    private long shift;
    private double days;
    private double last = Double.NaN;
    private double firstOfDay = Double.NaN;

    /** The time (s) since some midnight. */
    double read(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("time: missing; give every reading a time");
        }
        double time = DATED.matcher(text).lookingAt() ? dated(text) : onTheClock(text);
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
        if (last - time > HALF_A_DAY) {
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

    private double dated(String text) {
        try {
            String iso = text.replace(' ', 'T');
            LocalDateTime local = iso.matches(".*(?:[zZ]|[+-]\\d\\d:?\\d\\d)") && iso.indexOf('T') > 0 && zoned(iso)
                    ? OffsetDateTime.parse(iso).toLocalDateTime()
                    : LocalDateTime.parse(iso);
            return local.toEpochSecond(ZoneOffset.UTC) + local.getNano() * 1e-9;
        } catch (DateTimeException another) {
            return asWritten(text);
        }
    }

    private double asWritten(String text) {
        Matcher parts = DATED.matcher(text);
        if (!parts.matches() || parts.group(5) == null) {
            throw neither(text, null);
        }
        try {
            return DAY * day(parts.group(1), parts.group(2), parts.group(3), parts.group(4))
                    + clockTime(parts.group(5));
        } catch (DateTimeException | IllegalArgumentException wrong) {
            throw neither(text, wrong);
        }
    }

    private static IllegalArgumentException neither(String text, RuntimeException cause) {
        return new IllegalArgumentException(
                "time: " + Printable.quote(text)
                        + " is neither a date with a time nor a time of day; write 2026-01-31 06:30 or 06:30",
                cause);
    }

    /**
     * Days since 1970. With points the day comes first. With strokes either may: a number above 12 is a day, and from one day to the
     * next only the day changes; until one of these shows, the month is taken to come first, which changes no time between rows.
     */
    private long day(String first, String mark, String second, String last) {
        int one = Integer.parseInt(first);
        int two = Integer.parseInt(second);
        if (first.length() > 2) {
            return LocalDate.of(one, two, Integer.parseInt(last)).toEpochDay();
        }
        int year = Integer.parseInt(last) + (last.length() == 2 ? CENTURY : 0);
        if (".".equals(mark)) {
            return LocalDate.of(year, two, one).toEpochDay();
        }
        if (order == Order.OPEN) {
            order = decided(one, two);
            if (order == Order.DAY_FIRST && firstOne > 0) {
                shift = LocalDate.of(year, firstOne, firstTwo).toEpochDay()
                        - LocalDate.of(year, firstTwo, firstOne).toEpochDay();
            }
            firstOne = one;
            firstTwo = two;
        }
        return order == Order.DAY_FIRST
                ? shift + LocalDate.of(year, two, one).toEpochDay()
                : LocalDate.of(year, one, two).toEpochDay();
    }

    private Order decided(int one, int two) {
        if (one > MONTHS || two > MONTHS) {
            return one > MONTHS ? Order.DAY_FIRST : Order.MONTH_FIRST;
        }
        boolean same = firstOne == 0 || one == firstOne && two == firstTwo;
        return same ? Order.OPEN : two == firstTwo ? Order.DAY_FIRST : Order.MONTH_FIRST;
    }

    /** A sign behind the T belongs to a zone, one before it to the date. */
    private static boolean zoned(String iso) {
        String time = iso.substring(iso.indexOf('T'));
        return time.indexOf('+') > 0 || time.indexOf('-') > 0 || time.endsWith("Z") || time.endsWith("z");
    }
}

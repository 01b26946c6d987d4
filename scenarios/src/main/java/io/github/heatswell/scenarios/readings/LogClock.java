package io.github.heatswell.scenarios.readings;

import io.github.heatswell.scenarios.quantity.ClockTime;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.Decimals;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** Turns dates and times on a clock into seconds; times on a clock go on past midnight. */
final class LogClock {

    /** Stands before a time of the day after that comes more than half a day after the one before. */
    static final String NEXT_DAY = "next day ";

    private static final double DAY = 86_400;
    private static final double HALF_A_DAY = 0.5 * DAY;
    private static final int MONTHS = 12;
    private static final int CENTURY = 2_000;
    private static final Pattern DATED = Pattern.compile("(\\d{1,4})([-./])(\\d{1,2})\\2(\\d{1,4})(?:[T,\\s]+(.+))?");

    private static final Pattern NUMBER = Pattern.compile("\\d{1,13}(?:[.,]\\d+)?");
    /** A date as spreadsheets number it, and a time of day. */
    private static final Pattern SERIAL = Pattern.compile("([3-6]\\d{4}) (0(?:[.,]\\d+)?|\\d{1,2}:.+)");

    /** No time is written with so many characters, and of that many blanks some patterns try each. */
    private static final int MAX_LENGTH = 100;

    private static final Pattern HOURS = Pattern.compile("\\b(\\d{1,2}) ?[hH] ?(\\d{2})\\b");
    private static final Pattern HALF = Pattern.compile("\\s*([apAP])\\.?\\s?[mM]\\b\\.?");
    private static final Pattern ELAPSED = Pattern.compile("(\\d{1,4}):(\\d{2})(?::(\\d{2}(?:[.,]\\d+)?))?");
    private static final Pattern DAY_MONTH =
            Pattern.compile("(?<d>\\d{1,2})[-. ]+(?<m>\\p{L}{3,10})\\.?[-., ]+(?<y>\\d{4}|\\d{2})[,T ]+(?<t>\\d.*)");
    private static final Pattern MONTH_DAY =
            Pattern.compile("(?<m>\\p{L}{3,10})\\.? (?<d>\\d{1,2}),? (?<y>\\d{4})[,T ]+(?<t>\\d.*)");
    /** How the names of months begin in English, German, French, Spanish, Dutch and Italian. */
    private static final List<String> MONTH_NAMES = List.of(
            "jan j\u00e4n ene gen",
            "feb f\u00e9v fev",
            "mar m\u00e4r maa mrt",
            "apr avr abr",
            "may mai mei mag",
            "jun juin giu",
            "jul juil lug",
            "aug ao\u00fb aou ago",
            "sep set",
            "oct okt ott",
            "nov",
            "dec dez d\u00e9c dic");

    private static final double HOUR = 3_600;
    private static final double MINUTE = 60;
    /** Dates as spreadsheets number them: from 1982 to 2091. */
    private static final double MIN_DATE = 30_000;

    private static final double MAX_DATE = 70_000;
    /** Seconds since 1970, from 2001 on. */
    private static final double MIN_EPOCH = 1e9;

    private static final double MIN_MILLIS = 1e12;

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
    private final boolean elapsed;
    private ZoneOffset zone;
    private LocalDateTime lastLocal;
    private double lastStep = Double.NaN;
    private double summer;
    private String numbered = "";

    /**
     * A clock that has shown nothing yet.
     *
     * @param elapsed whether it runs from the beginning of the log, and shows no time of day
     */
    LogClock(boolean elapsed) {
        this.elapsed = elapsed;
    }

    /** The time (s) since some midnight. */
    double read(String text) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("time: missing; give every reading a time");
        }
        String plain = plain(text);
        if (elapsed) {
            return elapsed(plain);
        }
        if (NUMBER.matcher(plain).matches()) {
            return numbered(Double.parseDouble(plain.replace(',', '.')));
        }
        Matcher serial = SERIAL.matcher(plain);
        if (serial.matches()) {
            String of = serial.group(2).replace(',', '.');
            return numbered(Integer.parseInt(serial.group(1))
                    + (NUMBER.matcher(of).matches() ? Double.parseDouble(of) : clockTime(of) / DAY));
        }
        double time = DATED.matcher(plain).lookingAt() ? inSummer(dated(plain)) : onTheClock(plain);
        if (Double.isNaN(firstOfDay)) {
            firstOfDay = ((time % DAY) + DAY) % DAY;
        }
        return time;
    }

    /** A time as most write it: months as numbers, h for a colon, am and pm without points. */
    private static String plain(String text) {
        if (text.length() > MAX_LENGTH) {
            return text;
        }
        String plain = HOURS.matcher(text).replaceAll("$1:$2");
        plain = HALF.matcher(plain).replaceAll(" $1m");
        Matcher named = DAY_MONTH.matcher(plain);
        if (named.matches()) {
            return iso(named).orElse(plain);
        }
        Matcher american = MONTH_DAY.matcher(plain);
        return american.matches() ? iso(american).orElse(plain) : plain;
    }

    private static Optional<String> iso(Matcher parts) {
        String name = parts.group("m").toLowerCase(Locale.ROOT);
        int number = IntStream.range(0, MONTH_NAMES.size())
                .filter(i -> Arrays.stream(MONTH_NAMES.get(i).split(" ")).anyMatch(name::startsWith))
                .findFirst()
                .orElse(-1);
        String in = parts.group("y").length() == 2 ? "20" + parts.group("y") : parts.group("y");
        return number < 0
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%s-%02d-%02d %s",
                        in,
                        number + 1,
                        Integer.parseInt(parts.group("d")),
                        parts.group("t")));
    }

    private static double elapsed(String text) {
        Matcher parts = ELAPSED.matcher(text);
        if (!parts.matches()) {
            throw new IllegalArgumentException("time: " + Printable.quote(text)
                    + " is not the time since the beginning; write hours, minutes and seconds: 0:05:00");
        }
        double seconds =
                parts.group(3) == null ? 0 : Double.parseDouble(parts.group(3).replace(',', '.'));
        return Integer.parseInt(parts.group(1)) * HOUR + Integer.parseInt(parts.group(2)) * MINUTE + seconds;
    }

    /** The number of a spreadsheet for a date or a time of day, or the seconds or milliseconds since 1970. */
    private double numbered(double number) {
        if (number < 1) {
            numbered = "as parts of a day, as spreadsheets keep times";
            return onTheClock(number * DAY);
        }
        if (number >= MIN_DATE && number < MAX_DATE) {
            numbered = "as days since 1900, as spreadsheets keep dates";
            double time = number * DAY;
            firstOfDay = Double.isNaN(firstOfDay) ? time % DAY : firstOfDay;
            return time;
        }
        if (number >= MIN_EPOCH) {
            numbered = "as time since 1970 in " + (number >= MIN_MILLIS ? "milliseconds" : "seconds");
            return number >= MIN_MILLIS ? number / 1000 : number;
        }
        throw new IllegalArgumentException("time: " + Decimals.significant(number, 9)
                + " is not a time of day; write 06:30, or name the unit of the numbers, for"
                + " example, 'time_s' or 'time_min'");
    }

    /** How times that are plain numbers were taken; empty if there are none. */
    Optional<String> understood() {
        return numbered.isEmpty() ? Optional.empty() : Optional.of("The times were taken " + numbered + ".");
    }

    /** Whether the time of day is known. */
    boolean tellsTheTimeOfDay() {
        return !Double.isNaN(firstOfDay);
    }

    /** What is to be said of the clock, without capital and point. */
    Optional<String> remark() {
        return summer < HOUR
                ? Optional.empty()
                : Optional.of("the clock was put forward to summer time; that hour was left out");
    }

    /** In the small hours of a Sunday a clock that is an hour too far ahead was put forward. */
    private double inSummer(double time) {
        LocalDateTime local = LocalDateTime.ofEpochSecond((long) Math.floor(time), 0, ZoneOffset.UTC);
        if (lastLocal != null && zone == null) {
            double step = Duration.between(lastLocal, local).toSeconds();
            boolean small =
                    lastLocal.getDayOfWeek() == DayOfWeek.SUNDAY && lastLocal.getHour() < 3 && local.getHour() >= 2;
            if (small && lastStep <= HOUR / 2 && Math.abs(step - lastStep - HOUR) <= lastStep / 2 && summer < HOUR) {
                summer = HOUR;
                step = lastStep;
            }
            lastStep = step > 0 ? step : lastStep;
        }
        lastLocal = local;
        return time - summer;
    }

    /** The clock time of the first reading (s since midnight). */
    double firstOfDay() {
        return firstOfDay;
    }

    private double onTheClock(String text) {
        boolean next = text.startsWith(NEXT_DAY);
        last = next ? Double.POSITIVE_INFINITY : last;
        return onTheClock(clockTime(next ? text.substring(NEXT_DAY.length()) : text));
    }

    private double onTheClock(double time) {
        firstOfDay = Double.isNaN(firstOfDay) ? time : firstOfDay;
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
                    ? inZone(OffsetDateTime.parse(iso))
                    : LocalDateTime.parse(iso);
            return local.toEpochSecond(ZoneOffset.UTC) + local.getNano() * 1e-9;
        } catch (DateTimeException another) {
            return asWritten(text);
        }
    }

    /** Times with a zone are told by the first zone throughout, whatever a clock was set to meanwhile. */
    private LocalDateTime inZone(OffsetDateTime time) {
        zone = zone == null ? time.getOffset() : zone;
        return time.withOffsetSameInstant(zone).toLocalDateTime();
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
                        + " is neither a date with a time nor a time of day; write 2026-01-31 06:30 or 06:30"
                        + (text.contains("24:00") ? ", and midnight as 00:00 of the next day" : ""),
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

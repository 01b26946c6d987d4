package io.github.heatswell.scenarios.quantity;

import io.github.heatswell.scenarios.wording.Printable;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a day of the year: its number, or its date in a year of 365 days.
 */
public final class DayOfYear {

    private static final int LAST = 366;
    private static final int MIN_LETTERS = 3;
    private static final int COMMON_YEAR = 2001;
    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");
    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.? +([A-Za-z]+)\\.?");
    private static final Pattern MONTH_FIRST = Pattern.compile("([A-Za-z]+)\\.? +(\\d{1,2})");

    private DayOfYear() {}

    /**
     * Reads a day.
     *
     * @param text such as {@code 196}, {@code 15 Jul} or {@code July 15}
     * @return the number of the day, 1 for the first of January, up to 366
     * @throws IllegalArgumentException if the text is no such day; the message says how to write it
     */
    public static int read(String text) {
        String plain = text.strip();
        if (NUMBER.matcher(plain).matches()) {
            return inRange(Integer.parseInt(plain));
        }
        Matcher dayFirst = DAY_FIRST.matcher(plain);
        if (dayFirst.matches()) {
            return date(plain, dayFirst.group(2), Integer.parseInt(dayFirst.group(1)));
        }
        Matcher monthFirst = MONTH_FIRST.matcher(plain);
        if (monthFirst.matches()) {
            return date(plain, monthFirst.group(1), Integer.parseInt(monthFirst.group(2)));
        }
        throw noDay(text);
    }

    private static int inRange(int number) {
        if (number < 1 || number > LAST) {
            throw new IllegalArgumentException(number + " is outside the allowed range, 1 to " + LAST);
        }
        return number;
    }

    private static int date(String text, String month, int day) {
        Month named = month(month).orElseThrow(() -> noDay(text));
        try {
            return LocalDate.of(COMMON_YEAR, named, day).getDayOfYear();
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(
                    Printable.quote(text) + " is not a day of a 365-day year; that month has " + named.minLength()
                            + " days",
                    e);
        }
    }

    private static Optional<Month> month(String name) {
        String folded = name.toUpperCase(Locale.ROOT);
        return folded.length() < MIN_LETTERS
                ? Optional.empty()
                : Stream.of(Month.values())
                        .filter(month -> month.name().startsWith(folded))
                        .findFirst();
    }

    private static IllegalArgumentException noDay(String text) {
        return new IllegalArgumentException(Printable.quote(text)
                + " is not a day of the year; write a date such as 15 Jan, or a number from 1 to 366");
    }
}

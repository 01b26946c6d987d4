package io.github.heatswell.narrative;

import io.github.heatswell.system.HotWaterSystem;

/**
 * Days of a run in words: by their dates, if the day of the year at which it starts is known, else by the time since the
 * start. The year has 365 days always; which year it is nobody says.
 */
public final class Dates {

    private static final String[] MONTHS = {
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
    };
    private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    private static final int YEAR = 365;

    private final int firstDay;
    private final boolean known;
    private final boolean severalYears;

    private Dates(int firstDay, boolean known, boolean severalYears) {
        this.firstDay = firstDay;
        this.known = known;
        this.severalYears = severalYears;
    }

    /**
     * The dates of a run. The first of January is what a description has that says nothing; it counts only where the
     * season matters.
     */
    public static Dates of(HotWaterSystem system, double end) {
        int day = system.start().dayOfYear();
        return new Dates(day, day != 1 || !system.supply().water().isConstant(), end > (YEAR + 1) * 86_400.0);
    }

    public boolean known() {
        return known;
    }

    /** A day by its number, counted from 0: {@code on 14 Jan}, {@code on day 14}. */
    public String on(int day) {
        return "on " + name(day);
    }

    /** A day without a preposition: {@code 14 Jan}, {@code day 14}. */
    public String name(int day) {
        if (!known) {
            return "day " + (day + 1);
        }
        int left = (firstDay - 1 + day) % YEAR;
        int year = (firstDay - 1 + day) / YEAR;
        int month = 0;
        while (left >= LENGTHS[month]) {
            left -= LENGTHS[month];
            month++;
        }
        return (left + 1) + " " + MONTHS[month] + (year > 0 && severalYears ? " of year " + (year + 1) : "");
    }

    /** The number of a day within its month, counted from 0. */
    public int dayOfMonth(int day) {
        int left = (firstDay - 1 + day) % YEAR;
        for (int length : LENGTHS) {
            if (left < length) {
                return left;
            }
            left -= length;
        }
        throw new IllegalStateException("a year has no day " + left);
    }

    /** The month a day lies in, counted from 0. */
    public int month(int day) {
        int left = (firstDay - 1 + day) % YEAR;
        int month = 0;
        while (left >= LENGTHS[month]) {
            left -= LENGTHS[month];
            month++;
        }
        return month;
    }

    public static String monthName(int month) {
        return MONTHS[month];
    }
}

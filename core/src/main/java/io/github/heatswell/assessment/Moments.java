package io.github.heatswell.assessment;

import io.github.heatswell.place.Customs;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.DurationUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * Moments and days of a run in words. A run of about a day in which something follows the clock is told in clock times, any other in time
 * since its start. Days have dates where the season matters, in years of 365 days. Immutable.
 */
public final class Moments {

    private static final double DAY = 86_400;
    private static final double MIN_BY_CLOCK = 3 * 3_600;
    private static final double MAX_BY_CLOCK = 3 * DAY;
    private static final int YEAR = 365;

    /** Any year of 365 days. */
    private static final int COMMON_YEAR = 2001;

    private final double clockStart;
    private final boolean byClock;
    private final double end;
    private final int firstDay;
    private final boolean dated;
    private final boolean halfDays;

    private Moments(double clockStart, boolean byClock, double end, int firstDay, boolean dated, boolean halfDays) {
        this.clockStart = clockStart;
        this.byClock = byClock;
        this.end = end;
        this.firstDay = firstDay;
        this.dated = dated;
        this.halfDays = halfDays;
    }

    /**
     * The moments of a run.
     *
     * @param system what is run
     * @param end the length of the run (s)
     * @return the moments
     */
    public static Moments of(HotWaterSystem system, double end) {
        double start = system.start().timeOfDay();
        boolean timetable =
                !system.draws().draws().isEmpty() || !system.supply().mains().isConstant() || start > 0;
        int day = system.start().dayOfYear();
        // A description that says nothing about the day begins on the first of January.
        boolean dated = day != 1 || !system.supply().water().isConstant();
        return new Moments(
                start,
                timetable && end >= MIN_BY_CLOCK && end <= MAX_BY_CLOCK,
                end,
                day,
                dated,
                system.site().place().customs().filter(Customs::halfDays).isPresent());
    }

    /**
     * The moments of several runs: clock times if all follow the clock and begin at the same time of day.
     *
     * @param systems what is run
     * @param end the length of the run (s)
     * @return the moments
     */
    public static Moments common(List<HotWaterSystem> systems, double end) {
        List<Moments> all = systems.stream().map(system -> of(system, end)).toList();
        Moments first = all.get(0);
        boolean clock = all.stream().allMatch(own -> own.byClock && own.clockStart == first.clockStart);
        return clock ? first : sinceStart();
    }

    /**
     * Moments as time since the start, whatever is run.
     *
     * @return the moments
     */
    public static Moments sinceStart() {
        return new Moments(0, false, 0, 1, false, false);
    }

    /**
     * Whether moments are clock times.
     *
     * @return true if they are
     */
    public boolean byClock() {
        return byClock;
    }

    /**
     * The clock time at the start.
     *
     * @return the time since midnight (s)
     */
    public double clockStart() {
        return clockStart;
    }

    /**
     * A moment.
     *
     * @param seconds the time since the start (s)
     * @return such as {@code after 10 min}, {@code at 06:12} or {@code at 06:12 the next day}
     */
    public Statement at(double seconds) {
        if (seconds < 0.5) {
            return Statement.plain("at the start");
        }
        if (!byClock) {
            return Statement.plain("after ").then(Measure.time(seconds));
        }
        long minutes = Math.round((clockStart + seconds) / 60);
        long day = minutes / 1440;
        boolean severalDays = clockStart + end > DAY + 60;
        String which = day == 0 || !severalDays ? "" : day == 1 ? " the next day" : " on day " + (day + 1);
        return Statement.plain("at " + clock(minutes % 1440) + which);
    }

    /**
     * A clock time, as people write it where the house stands.
     *
     * @param minutes the time since midnight (min), below 1440
     * @return such as {@code 06:12}; in the United States {@code 6:12 am}, {@code 6 am} or {@code noon}
     */
    public String clock(long minutes) {
        if (halfDays) {
            long hour = minutes / 60;
            return minutes % 720 == 0
                    ? hour == 0 ? "midnight" : "noon"
                    : (hour + 11) % 12
                            + 1
                            + (minutes % 60 == 0
                                    ? ""
                                    : DurationUnit.clock(minutes % 60).substring(2))
                            + (hour < 12 ? " am" : " pm");
        }
        return DurationUnit.clock(minutes);
    }

    /**
     * Whether days are told as dates.
     *
     * @return false where they are counted
     */
    public boolean dated() {
        return dated;
    }

    /**
     * A day of the run.
     *
     * @param day its number, counted from 0
     * @return such as {@code 14 Jan}, {@code 14 Jan of year 2} or {@code day 14}
     */
    public String day(int day) {
        if (!dated) {
            return "day " + (day + 1);
        }
        int year = (firstDay - 1 + day) / YEAR;
        boolean severalYears = end > (YEAR + 1) * DAY;
        LocalDate date = date(day);
        return date.getDayOfMonth() + " " + month(date) + (year > 0 && severalYears ? " of year " + (year + 1) : "");
    }

    /**
     * The date of a day of the run, in a year that stands for all.
     *
     * @param day its number, counted from 0
     * @return the date
     */
    public LocalDate date(int day) {
        return LocalDate.ofYearDay(COMMON_YEAR, (firstDay - 1 + day) % YEAR + 1);
    }

    /**
     * The month of a date.
     *
     * @param date the date
     * @return such as {@code Jan}
     */
    public static String month(LocalDate date) {
        return named(date).substring(0, 3);
    }

    /**
     * The month of a day of the year.
     *
     * @param dayOfYear the day, 1 to 365
     * @return such as {@code January}
     */
    public static String monthOf(int dayOfYear) {
        return named(LocalDate.ofYearDay(COMMON_YEAR, dayOfYear));
    }

    private static String named(LocalDate date) {
        String name = date.getMonth().name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }
}

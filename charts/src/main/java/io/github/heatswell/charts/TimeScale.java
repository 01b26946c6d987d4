package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.units.DurationUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Unit and ticks of a time axis, in customary divisions of time. */
final class TimeScale {

    private static final int[] SECONDS = {1, 2, 5, 10, 15, 30, 60};
    private static final int[] MINUTES = {1, 2, 5, 10, 20, 30, 60};
    private static final int[] HOURS = {1, 2, 3, 6, 12, 24};
    private static final int[] DAYS = {1, 2, 7, 14, 28, 100, 200, 365, 730, 1825, 3650, 7300};

    /** Runs longer than this (d) have years on their axis, not months. */
    private static final double MAX_MONTHS_DAYS = 1_200;

    /** Shorter scales (d) would be in hours or less, which the curves of days are not. */
    private static final double MIN_UNDATED_DAYS = 3.5;

    private static final int[] WEEKS = {1, 2, 7, 14};
    private static final int[] MONTHS = {1, 2, 3, 6};

    private final DurationUnit unit;
    private final Axis axis;

    private TimeScale(DurationUnit unit, Axis axis) {
        this.unit = unit;
        this.axis = axis;
    }

    /** A scale from the start of a run to its end, with at most so many ticks. */
    static TimeScale to(double endSeconds, int mostTicks) {
        double end = Math.max(endSeconds, 1);
        if (end <= 180) {
            return scale(DurationUnit.SECOND, end, SECONDS, mostTicks);
        }
        if (end <= 3 * 3600) {
            return scale(DurationUnit.MINUTE, end, MINUTES, mostTicks);
        }
        return end <= 3 * 86_400
                ? scale(DurationUnit.HOUR, end, HOURS, mostTicks)
                : scale(DurationUnit.DAY, end, DAYS, mostTicks);
    }

    /** A scale for a run, in clock time where the run has one. */
    static TimeScale of(Moments moments, double endSeconds, int mostTicks) {
        TimeScale since = to(endSeconds, mostTicks);
        if (!moments.byClock()) {
            return since;
        }
        double end = DurationUnit.HOUR.fromSi(endSeconds);
        double start = DurationUnit.HOUR.fromSi(moments.clockStart());
        int step = stepOf(end, HOURS, mostTicks);
        List<Tick> ticks = new ArrayList<>();
        for (double clock = Math.ceil(start / step) * step; clock <= start + end; clock += step) {
            ticks.add(new Tick(clock - start, moments.clock(Math.round(60 * clock) % 1440)));
        }
        return new TimeScale(DurationUnit.HOUR, new Axis("time of day", 0, end, ticks));
    }

    Axis axis() {
        return axis;
    }

    double of(double seconds) {
        return unit.fromSi(seconds);
    }

    private static TimeScale scale(DurationUnit unit, double end, int[] steps, int mostTicks) {
        double to = unit.fromSi(end);
        int step = stepOf(to, steps, mostTicks);
        return new TimeScale(unit, new Axis("time since the start (" + unit.symbol() + ")", 0, to, step));
    }

    private static int stepOf(double to, int[] steps, int mostTicks) {
        int chosen = steps[steps.length - 1];
        for (int i = steps.length - 1; i >= 0 && to / steps[i] <= mostTicks; i--) {
            chosen = steps[i];
        }
        return chosen;
    }

    /** An axis in days, with dates or months where the season is known; of a day at least, for a run that a hazard ends at once. */
    static Axis days(Moments moments, double end, Size size) {
        int most = size.mostTicks();
        if (!moments.dated() || end > MAX_MONTHS_DAYS) {
            return to(Math.max(end, MIN_UNDATED_DAYS) * DailyFigures.DAY, most).axis();
        }
        double days = Math.max(end, 1);
        for (int step : WEEKS) {
            if (days / step <= most) {
                return dated(moments, days, step);
            }
        }
        for (int step : MONTHS) {
            if (days / 30.4 / step <= size.mostShortTicks()) {
                return monthly(moments, days, step);
            }
        }
        return to(days * DailyFigures.DAY, most).axis();
    }

    private static Axis dated(Moments moments, double days, int step) {
        List<Tick> ticks = new ArrayList<>();
        for (int day = 0; day <= days; day += step) {
            String name = moments.day(day);
            int year = name.indexOf(" of ");
            ticks.add(new Tick(day, year < 0 ? name : name.substring(0, year)));
        }
        return new Axis("date", 0, days, ticks);
    }

    private static Axis monthly(Moments moments, double days, int step) {
        List<Tick> ticks = new ArrayList<>();
        for (int day = 0; day <= days; day++) {
            LocalDate date = moments.date(day);
            if (date.getDayOfMonth() == 1 && (date.getMonthValue() - 1) % step == 0) {
                ticks.add(new Tick(day, Moments.month(date)));
            }
        }
        return new Axis("date; each name marks the first of its month", 0, days, ticks);
    }
}

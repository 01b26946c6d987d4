package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Axis.Tick;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Moments;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A time axis in days, with dates or months where the season is known. */
final class DayScale {

    /** Runs longer than this (d) have years on their axis, not months. */
    private static final double MAX_MONTHS_DAYS = 1_200;

    /** Shorter scales (d) would be in hours or less, which the curves of days are not. */
    private static final double MIN_UNDATED_DAYS = 3.5;

    private static final int[] WEEKS = {1, 2, 7, 14};
    private static final int[] MONTHS = {1, 2, 3, 6};

    private DayScale() {}

    /** A scale in days; of a day at least, for a run that a hazard ends at once. */
    static Axis axis(Moments moments, double end, Size size) {
        int most = size.mostTicks();
        if (!moments.dated() || end > MAX_MONTHS_DAYS) {
            return TimeScale.to(Math.max(end, MIN_UNDATED_DAYS) * DailyFigures.DAY, most)
                    .axis();
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
        return TimeScale.to(days * DailyFigures.DAY, most).axis();
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
        return new Axis("date; each name stands at the first of its month", 0, days, ticks);
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.charts.DailyFigures.Day;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The figures of days as lines and bars. A picture has room for some hundred days side by side; of a longer run, as many
 * days as need be share one step: the lowest and highest pressure of them all, and what they discharged together.
 */
final class DayBins {

    private static final int MOST = 740;
    private static final int[] WIDTHS = {1, 7, 28, 91, 365};
    private static final String[] NAMES = {"per day", "per week", "per 4 weeks", "per quarter", "per year"};

    /** With more bars than this there is no room for gaps between them. */
    private static final int MAX_WITH_GAPS = 120;

    private static final double GAP = 0.12;

    private final List<Day> bins = new ArrayList<>();
    private final QuantityFormat amounts;
    private final double days;
    private final int width;
    private final String each;

    DayBins(List<Day> figures, double days, QuantityFormat amounts) {
        this.amounts = amounts;
        this.days = days;
        int chosen = 0;
        while (chosen < WIDTHS.length - 1 && figures.size() > MOST * WIDTHS[chosen]) {
            chosen++;
        }
        width = WIDTHS[chosen];
        each = NAMES[chosen];
        for (int from = 0; from < figures.size(); from += width) {
            bins.add(together(figures.subList(from, Math.min(from + width, figures.size()))));
        }
    }

    /** What a bar stands for: {@code per day}. */
    String each() {
        return each;
    }

    Points lowest() {
        return steps(false);
    }

    Points highest() {
        return steps(true);
    }

    Area pressureRange() {
        String of = width == 1 ? "of each day" : "of each step";
        return Area.between(Area.Role.PRESSURE_RANGE, "lowest to highest " + of, lowest(), highest());
    }

    /** The most that one bar shows, in the unit shown. */
    double most(ToDoubleFunction<Day> volume) {
        return bins.stream()
                .mapToDouble(bin -> amounts.units().volume().fromSi(volume.applyAsDouble(bin)))
                .max()
                .orElse(0);
    }

    /** Bars of a volume (m3) from zero up. */
    Area bars(Area.Role role, ToDoubleFunction<Day> volume) {
        double gap = bins.size() > MAX_WITH_GAPS ? 0 : GAP * width;
        List<double[]> corners = new ArrayList<>();
        for (int bin = 0; bin < bins.size(); bin++) {
            double value = amounts.units().volume().fromSi(volume.applyAsDouble(bins.get(bin)));
            double from = Math.min(start(bin) + gap, days);
            double to = Math.max(from, start(bin + 1) - gap);
            corners.add(new double[] {from, 0});
            corners.add(new double[] {from, value});
            corners.add(new double[] {to, value});
            corners.add(new double[] {to, 0});
        }
        Points foot = Points.overTime(new double[] {0, days}, new double[] {0, 0});
        return Area.between(role, "", foot, points(corners));
    }

    private Points steps(boolean high) {
        List<double[]> corners = new ArrayList<>();
        for (int bin = 0; bin < bins.size(); bin++) {
            Day day = bins.get(bin);
            double gauge = high ? day.highestPressure() : day.lowestPressure();
            double value = amounts.units().pressure().fromSi(gauge);
            corners.add(new double[] {start(bin), value});
            corners.add(new double[] {start(bin + 1), value});
        }
        return points(corners);
    }

    private double start(int bin) {
        return Math.min((double) bin * width, days);
    }

    private static Points points(List<double[]> corners) {
        return Points.overTime(
                corners.stream().mapToDouble(corner -> corner[0]).toArray(),
                corners.stream().mapToDouble(corner -> corner[1]).toArray());
    }

    private static Day together(List<Day> days) {
        return new Day(
                days.stream().mapToDouble(Day::lowestPressure).min().orElseThrow(),
                days.stream().mapToDouble(Day::highestPressure).max().orElseThrow(),
                days.stream().mapToDouble(Day::relieved).sum(),
                days.stream().mapToDouble(Day::drawn).sum(),
                days.stream().mapToDouble(Day::highestTemperature).max().orElseThrow());
    }
}

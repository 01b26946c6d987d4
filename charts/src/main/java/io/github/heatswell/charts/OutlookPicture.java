package io.github.heatswell.charts;

import io.github.heatswell.ageing.OutlookCourse;
import io.github.heatswell.ageing.OutlookResult;
import io.github.heatswell.assessment.PrechargeTarget;
import io.github.heatswell.charts.ValueScale.PressureScale;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.OutlookStory;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** Composes the picture of the years: peaks and remaining precharge above, yearly discharge below. */
final class OutlookPicture {

    private static final double[] STEPS = {0.25, 0.5, 1, 2, 5, 10};

    /** Larger vessels shown beside the present one. */
    private static final int MAX_LARGER = 3;

    private final OutlookResult result;
    private final HotWaterSystem house;
    private final QuantityFormat amounts;
    private final Size size;

    OutlookPicture(OutlookResult result, HotWaterSystem house, UnitSystem units, Size size) {
        this.result = result;
        this.house = house;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
    }

    Picture compose() {
        Caption caption = Caption.of(Narrative.of(result, house), amounts);
        return new Picture(size, caption, time(), OptionalDouble.empty(), pressures(), givenOff());
    }

    private Axis time() {
        int tick = 0;
        while (tick < STEPS.length - 1 && result.years() / STEPS[tick] > size.mostTicks()) {
            tick++;
        }
        return new Axis("years from now", 0, result.years(), STEPS[tick]);
    }

    private Panel pressures() {
        Points peaks = monthly(result.expected(), OutlookCourse.Month::peakGauge);
        Points charge = monthly(result.expected(), OutlookCourse.Month::prechargeGauge);
        Area band = band();
        List<Curve> curves = new ArrayList<>();
        curves.add(new Curve(Curve.Role.RUN_1, "peak, " + vessel(result.expected()), "", peaks));
        ValueScale.Range range = new ValueScale.Range(charge.lowest(), peaks.highest())
                .with(band.lowest())
                .with(band.highest());
        List<OutlookCourse> larger = larger();
        for (int i = 0; i < larger.size(); i++) {
            Points line = monthly(larger.get(i), OutlookCourse.Month::peakGauge);
            range = range.with(line.lowest());
            curves.add(new Curve(Curve.Role.ofRun(i + 1), "peak, " + vessel(larger.get(i)), "", line));
        }
        curves.add(new Curve(Curve.Role.ofRun(Curve.Role.MAX_RUNS - 1), "precharge left" + where(), "", charge));
        List<Level> levels = levels();
        Axis axis = PressureScale.around(range, levels, 0, amounts);
        return new Panel(axis, List.of(band), curves, levels, marks(), List.of());
    }

    /** Whose precharge is drawn, where there are several. */
    private String where() {
        return house.hasSeveralVessels()
                ? " in “"
                        + house.vesselNames().get(PrechargeTarget.leading(house).orElseThrow()) + "”"
                : "";
    }

    private Area band() {
        LossRange range = new LossRange(result);
        return Area.between(
                Area.Role.PRESSURE_RANGE,
                "peak from the slowest to the fastest loss",
                monthly(range.low()),
                monthly(range.high()));
    }

    private List<OutlookCourse> larger() {
        return result.larger().subList(0, Math.min(MAX_LARGER, result.larger().size()));
    }

    private List<Level> levels() {
        double atmosphere = house.site().atmosphere();
        List<Level> levels = Levels.limits(house, amounts);
        levels.add(level(
                Level.Kind.WORKING_PRESSURE,
                house.tank().workingPressure().gauge(atmosphere),
                Limit.workingPressureName(house)));
        levels.add(level(Level.Kind.SUPPLY, house.supplyAtStart().gauge(atmosphere), "supply"));
        return levels;
    }

    private Level level(Level.Kind kind, double gauge, String name) {
        return new Level(kind, amounts.units().pressure().fromSi(gauge), amounts.pressure(gauge), name);
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        Stream.concat(result.gravest().stream(), result.expected().gravest().stream())
                .distinct()
                .map(this::alarm)
                .forEach(marks::add);
        result.expected()
                .firstDripping()
                .ifPresent(month -> marks.add(mark(Mark.Kind.RELIEF_OPENED, month, "drips from ")));
        result.expected()
                .drippingAgain()
                .ifPresent(month -> marks.add(mark(Mark.Kind.RELIEF_OPENED, month, "drips again from ")));
        return marks.stream().sorted(Comparator.comparingDouble(Mark::across)).toList();
    }

    private Mark alarm(OutlookCourse.Month month) {
        Mark.Kind kind = month.isHazard() ? Mark.Kind.HAZARD : Mark.Kind.WORKING_PRESSURE_EXCEEDED;
        return mark(kind, month, month.alarm().orElseThrow().description() + ", ");
    }

    private Mark mark(Mark.Kind kind, OutlookCourse.Month month, String what) {
        double peak = amounts.units().pressure().fromSi(month.peakGauge());
        return new Mark(kind, month.years(), peak, what + OutlookStory.month(month) + OutlookStory.loss(result, month));
    }

    private Panel givenOff() {
        List<Curve> curves = new ArrayList<>();
        List<OutlookCourse> larger = larger();
        for (int i = 0; i < larger.size(); i++) {
            curves.add(new Curve(Curve.Role.ofRun(i + 1), vessel(larger.get(i)), "", yearly(larger.get(i))));
        }
        if (!result.slow().loss().equals(result.fast().loss())) {
            String vessel = vessel(result.expected());
            curves.add(new Curve(Curve.Role.FAST_FADING, vessel + ", fastest loss", "", yearly(result.fast())));
            curves.add(new Curve(Curve.Role.SLOW_FADING, vessel + ", slowest loss", "", yearly(result.slow())));
        }
        Points bars = yearly(result.expected());
        double most = bars.highest();
        for (Curve curve : curves) {
            most = Math.max(most, curve.points().highest());
        }
        String unit = " each year (" + amounts.symbol(amounts.units().volume()) + ")";
        if (most == 0) {
            Axis axis = ValueScale.fromZero("no water discharged" + unit, 1);
            return new Panel(axis, List.of(), List.of(), List.of(), List.of(), List.of());
        }
        Axis axis = ValueScale.fromZero("water discharged" + unit, most);
        Points foot = Points.overTime(bars.toArrays()[0], new double[bars.count()]);
        Area area = Area.between(Area.Role.GIVEN_OFF, vessel(result.expected()), foot, bars);
        return new Panel(axis, List.of(area), curves, List.of(), List.of(), List.of());
    }

    private Points monthly(OutlookCourse course, Function<OutlookCourse.Month, Double> pascal) {
        return monthly(course.months().stream().map(pascal).toList());
    }

    /** One corner for the worst day of each month; the last one holds to the end of the axis. */
    private Points monthly(List<Double> pascal) {
        int last = pascal.size();
        double[] times = new double[last + 1];
        double[] values = new double[last + 1];
        for (int i = 0; i < last; i++) {
            times[i] = result.expected().months().get(i).years();
            values[i] = amounts.units().pressure().fromSi(pascal.get(i));
        }
        times[last] = result.years();
        values[last] = values[last - 1];
        return Points.overTime(times, values);
    }

    /** Steps, a year wide each. */
    private Points yearly(OutlookCourse course) {
        double[] times = new double[2 * result.years()];
        double[] values = new double[2 * result.years()];
        for (int year = 0; year < result.years(); year++) {
            double given = amounts.units().volume().fromSi(course.relievedInYear(year));
            times[2 * year] = year;
            times[2 * year + 1] = year + 1.0;
            values[2 * year] = given;
            values[2 * year + 1] = given;
        }
        return Points.overTime(times, values);
    }

    private String vessel(OutlookCourse course) {
        return amounts.volume(course.vesselVolume());
    }

    /**
     * Range of each month's peak for rates of precharge loss from slowest to fastest. Starting overcharged, the peak
     * falls before it rises, so an extreme may occur at a rate in between. It is therefore taken over all precharges in
     * between: the worst days of the same month differ in nothing else.
     */
    private static final class LossRange {

        private final List<Double> low = new ArrayList<>();
        private final List<Double> high = new ArrayList<>();

        LossRange(OutlookResult result) {
            List<OutlookCourse.Month> known = Stream.of(result.expected(), result.slow(), result.fast())
                    .flatMap(course -> course.months().stream())
                    .toList();
            for (int i = 0; i < result.expected().months().size(); i++) {
                add(result.fast().months().get(i), result.slow().months().get(i), known);
            }
        }

        private void add(OutlookCourse.Month fast, OutlookCourse.Month slow, List<OutlookCourse.Month> known) {
            double lowest = Math.min(fast.peakGauge(), slow.peakGauge());
            double highest = Math.max(fast.peakGauge(), slow.peakGauge());
            for (OutlookCourse.Month month : known) {
                if (month.dayOfYear() == fast.dayOfYear()
                        && month.prechargeGauge() >= fast.prechargeGauge()
                        && month.prechargeGauge() <= slow.prechargeGauge()) {
                    lowest = Math.min(lowest, month.peakGauge());
                    highest = Math.max(highest, month.peakGauge());
                }
            }
            low.add(lowest);
            high.add(highest);
        }

        /** The lowest peak of each month (Pa, gauge). */
        List<Double> low() {
            return List.copyOf(low);
        }

        /** The highest peak of each month (Pa, gauge). */
        List<Double> high() {
            return List.copyOf(high);
        }
    }
}

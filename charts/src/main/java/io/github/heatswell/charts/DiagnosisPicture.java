package io.github.heatswell.charts;

import io.github.heatswell.charts.LoggedRuns.NamedReadings;
import io.github.heatswell.charts.ValueScale.PressureScale;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** Composes the picture of a diagnosis: the readings over the runs above, what is left unexplained below. */
final class DiagnosisPicture {

    /** How long the stroke of a reading is (-), as a share of the axis. */
    private static final double STROKE = 0.008;

    private final LoggedRuns logged;
    private final QuantityFormat amounts;
    private final Size size;
    private final LogTimes scale;

    DiagnosisPicture(LoggedRuns logged, UnitSystem units, Size size) {
        this.logged = logged;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        this.scale = new LogTimes(logged.log(), logged.house(), size.mostTicks());
    }

    Picture compose() {
        String found = logged.found().text(amounts);
        Caption caption = new Caption(
                "",
                found.substring(0, found.length() - 1),
                logged.title()
                        + ". Above: the readings and what comes closest to them. Below: what each leaves unexplained."
                        + (scale.shown().size() > 1 ? " Hours without readings are cut out." : ""));
        return new Picture(size, caption, scale.axis(), OptionalDouble.empty(), readings(), residuals());
    }

    private Panel readings() {
        List<Curve> curves = new ArrayList<>();
        Points log = points(logged.readings());
        curves.addAll(pieces(logged.readings(), Curve.Role.RUN_1, "readings"));
        ValueScale.Range range = new ValueScale.Range(log.lowest(), log.highest());
        for (int i = 0; i < logged.runs().size(); i++) {
            NamedReadings run = logged.runs().get(i);
            for (Curve curve :
                    course(run, Curve.Role.ofRun(i + 1), amounts.units().spelled(run.name()))) {
                range = range.with(new ValueScale.Range(
                        curve.points().lowest(), curve.points().highest()));
                curves.add(curve);
            }
        }
        List<Panel.Level> levels = Levels.limits(logged.house(), amounts);
        return new Panel(PressureScale.around(range, levels, 0, amounts), curves, levels, List.of());
    }

    private Panel residuals() {
        List<Curve> curves = new ArrayList<>();
        ValueScale.Range range = new ValueScale.Range(0, 0);
        for (int i = 0; i < logged.runs().size(); i++) {
            List<Double> differences = differences(logged.runs().get(i));
            Points points = points(differences);
            range = range.with(new ValueScale.Range(points.lowest(), points.highest()));
            String name = amounts.units().spelled(logged.runs().get(i).name());
            curves.addAll(pieces(differences, Curve.Role.ofRun(i + 1), name));
        }
        Axis axis = ValueScale.around(
                "reading minus run (" + amounts.symbol(amounts.units().pressure()) + ")",
                range.atLeast(leastSpan()),
                0.1,
                0.1);
        return new Panel(axis, curves, List.of(), List.of());
    }

    /** A tenth of a bar, in the unit of the axis: about what a gauge resolves. */
    private double leastSpan() {
        return amounts.units().pressure().fromSi(1e4);
    }

    private List<Double> differences(NamedReadings run) {
        List<Double> differences = new ArrayList<>();
        for (int i = 0; i < logged.log().count(); i++) {
            differences.add(logged.log().gauge(i) - run.gauge().get(i));
        }
        return differences;
    }

    /** What the gauge shows in a run, as far as the axis shows that time; at the readings, if no more is known. */
    private List<Curve> course(NamedReadings run, Curve.Role role, String name) {
        boolean known = !run.course().times().isEmpty();
        List<Double> times = known ? run.course().times() : logged.times();
        List<Double> gauge = known ? run.course().gauge() : run.gauge();
        List<Points> lines = new ArrayList<>();
        for (LogTimes.Window window : scale.shown()) {
            int[] within = IntStream.range(0, times.size())
                    .filter(i -> window.holds(times.get(i)))
                    .toArray();
            if (within.length > 0) {
                int end = within[within.length - 1] + 1;
                lines.add(points(times.subList(within[0], end), gauge.subList(within[0], end)));
            }
        }
        return curves(lines, role, name);
    }

    /**
     * What is known at the readings, as lines between neighbours and nothing across a gap: nobody saw what the gauge did meanwhile. Few
     * readings are each a short stroke besides, for a person took them one by one.
     */
    private List<Curve> pieces(List<Double> pascal, Curve.Role role, String name) {
        List<Double> times = logged.times();
        Axis axis = scale.axis();
        double half = STROKE * axis.to();
        List<Points> lines = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < times.size(); i++) {
            boolean ends = i == times.size() - 1 || scale.isGapBefore(i + 1);
            if (scale.areFew() || ends && first == i) {
                double at = scale.of(times.get(i));
                double up = amounts.units().pressure().fromSi(pascal.get(i));
                lines.add(Points.straight(Math.max(0, at - half), up, Math.min(axis.to(), at + half), up));
            }
            if (ends) {
                if (first < i) {
                    lines.add(points(times.subList(first, i + 1), pascal.subList(first, i + 1)));
                }
                first = i + 1;
            }
        }
        return curves(lines, role, name);
    }

    /** Lines of one kind, of which the last bears the name. */
    private static List<Curve> curves(List<Points> lines, Curve.Role role, String name) {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Curve(role, i == lines.size() - 1 ? name : "", "", lines.get(i)))
                .toList();
    }

    private Points points(List<Double> pascal) {
        return points(logged.times(), pascal);
    }

    private Points points(List<Double> seconds, List<Double> pascal) {
        double[] times = new double[pascal.size()];
        double[] values = new double[pascal.size()];
        for (int i = 0; i < values.length; i++) {
            times[i] = scale.of(seconds.get(i));
            values[i] = amounts.units().pressure().fromSi(pascal.get(i));
        }
        return Points.overTime(times, values);
    }
}

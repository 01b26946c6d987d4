package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
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

    /** A gap is so many times as long as the usual distance of two readings; our own judgement. */
    private static final double GAP = 6;
    /** So few readings are shown one by one. */
    private static final int FEW = 60;
    /** How long the stroke of a reading is (-), as a share of the log. */
    private static final double STROKE = 0.008;

    private final LoggedRuns logged;
    private final QuantityFormat amounts;
    private final Size size;
    private final TimeScale scale;

    DiagnosisPicture(LoggedRuns logged, UnitSystem units, Size size) {
        this.logged = logged;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        double end = logged.log().end();
        this.scale = TimeScale.of(Moments.sinceStart(), end, size.mostTicks());
    }

    Picture compose() {
        String found = logged.found().text(amounts);
        Caption caption = new Caption(
                "",
                found.substring(0, found.length() - 1),
                logged.title()
                        + ". Above: the readings and what comes closest to them. Below: what each leaves unexplained.");
        return new Picture(size, caption, scale.axis(), OptionalDouble.empty(), readings(), residuals());
    }

    private Panel readings() {
        List<Curve> curves = new ArrayList<>();
        Points log = points(logged.readings());
        curves.addAll(pieces(logged.readings(), Curve.Role.RUN_1, "readings"));
        ValueScale.Range range = new ValueScale.Range(log.lowest(), log.highest());
        for (int i = 0; i < logged.runs().size(); i++) {
            NamedReadings run = logged.runs().get(i);
            Points points = run.course().times().isEmpty()
                    ? points(run.gauge())
                    : points(run.course().times(), run.course().gauge());
            range = range.with(new ValueScale.Range(points.lowest(), points.highest()));
            curves.add(new Curve(Curve.Role.ofRun(i + 1), amounts.units().spelled(run.name()), "", points));
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

    /**
     * What is known at the readings, as lines between neighbours and nothing across a gap: nobody saw what the gauge did meanwhile. Few
     * readings are each a short stroke besides, for a person took them one by one.
     */
    private List<Curve> pieces(List<Double> pascal, Curve.Role role, String name) {
        List<Double> times = logged.times();
        double[] steps = IntStream.range(1, times.size())
                .mapToDouble(i -> times.get(i) - times.get(i - 1))
                .sorted()
                .toArray();
        double longest = steps.length == 0 ? 0 : GAP * steps[steps.length / 2];
        double end = times.get(times.size() - 1);
        double half = STROKE * end;
        List<Points> lines = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < times.size(); i++) {
            boolean ends = i == times.size() - 1 || times.get(i + 1) - times.get(i) > longest;
            if (times.size() <= FEW || ends && first == i) {
                lines.add(points(
                        List.of(Math.max(0, times.get(i) - half), Math.min(end, times.get(i) + half)),
                        List.of(pascal.get(i), pascal.get(i))));
            }
            if (ends) {
                if (first < i) {
                    lines.add(points(times.subList(first, i + 1), pascal.subList(first, i + 1)));
                }
                first = i + 1;
            }
        }
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

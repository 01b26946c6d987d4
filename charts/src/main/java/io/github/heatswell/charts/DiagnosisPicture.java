package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.LoggedRuns.NamedReadings;
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

/** Composes the picture of a diagnosis: the readings over the runs above, what is left unexplained below. */
final class DiagnosisPicture {

    private final LoggedRuns logged;
    private final QuantityFormat amounts;
    private final Size size;
    private final TimeScale scale;

    DiagnosisPicture(LoggedRuns logged, UnitSystem units, Size size) {
        this.logged = logged;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        double end = logged.times().get(logged.times().size() - 1);
        this.scale = TimeScale.of(Moments.sinceStart(), end, size.mostTicks());
    }

    Picture compose() {
        String found = logged.found().text(amounts);
        Caption caption = new Caption(
                "",
                found.substring(0, found.length() - 1),
                logged.house()
                        + ". Above the readings and what comes closest to them, below what each leaves unexplained.");
        return new Picture(size, caption, scale.axis(), OptionalDouble.empty(), readings(), residuals());
    }

    private Panel readings() {
        List<Curve> curves = new ArrayList<>();
        Points log = points(logged.readings());
        curves.add(new Curve(Curve.Role.RUN_1, "readings", "", log));
        ValueScale.Range range = new ValueScale.Range(log.lowest(), log.highest());
        for (int i = 0; i < logged.runs().size(); i++) {
            NamedReadings run = logged.runs().get(i);
            Points points = run.course().times().isEmpty()
                    ? points(run.gauge())
                    : points(run.course().times(), run.course().gauge());
            range = range.with(new ValueScale.Range(points.lowest(), points.highest()));
            curves.add(new Curve(Curve.Role.ofRun(i + 1), amounts.units().spelled(run.name()), "", points));
        }
        // While the heater is off a gauge may show the same all day.
        Axis axis = ValueScale.around(
                "gauge pressure (" + amounts.symbol(amounts.units().pressure()) + ")",
                range.atLeast(leastSpan()),
                0.06,
                0.08);
        return new Panel(axis, curves, List.of(), List.of());
    }

    private Panel residuals() {
        List<Curve> curves = new ArrayList<>();
        ValueScale.Range range = new ValueScale.Range(0, 0);
        for (int i = 0; i < logged.runs().size(); i++) {
            Points points = points(differences(logged.runs().get(i)));
            range = range.with(new ValueScale.Range(points.lowest(), points.highest()));
            String name = amounts.units().spelled(logged.runs().get(i).name());
            curves.add(new Curve(Curve.Role.ofRun(i + 1), name, "", points));
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
        for (int i = 0; i < logged.readings().size(); i++) {
            differences.add(logged.readings().get(i) - run.gauge().get(i));
        }
        return differences;
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

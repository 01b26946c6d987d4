package io.github.heatswell.charts;

import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.ValueScale.PressureScale;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Composes the picture of several runs: their pressures above, and below what each discharged, since the question is
 * usually which of them stops the dripping. Where none discharges anything it shows the water temperatures instead.
 */
final class ComparisonPicture {

    /** How far the time axis extends beyond a hazard, so that the end of that run is visible. */
    private static final double BEYOND_HAZARD = 1.08;

    private final List<NamedRun> runs;
    private final OptionalDouble limitGauge;
    private final Narrative narrative;
    private final QuantityFormat amounts;
    private final Size size;
    private final Moments moments;
    private final TimeScale scale;

    /**
     * A picture still to be composed.
     *
     * @param runs the runs
     * @param limitGauge what the pressure is to be kept below (Pa, gauge); empty for no limit but those of the houses
     * @param narrative what is said of the runs
     * @param units the units to show them in
     * @param size its size
     */
    ComparisonPicture(
            List<NamedRun> runs, OptionalDouble limitGauge, Narrative narrative, UnitSystem units, Size size) {
        this.runs = runs;
        this.limitGauge = limitGauge;
        this.narrative = narrative;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        double end = runs.stream()
                .map(NamedRun::result)
                .mapToDouble(result -> result.hazard().isPresent() ? BEYOND_HAZARD * result.end() : result.end())
                .max()
                .orElseThrow();
        this.moments =
                Moments.common(runs.stream().map(run -> run.result().system()).toList(), end);
        this.scale = TimeScale.of(moments, end, size.mostTicks());
    }

    Picture compose() {
        Caption caption = Caption.of(narrative, amounts);
        boolean relief = runs.stream().anyMatch(run -> run.result().totals().relieved() > 0);
        return new Picture(
                size,
                caption,
                scale.axis(),
                OptionalDouble.empty(),
                pressurePanel(),
                relief ? relievedPanel() : temperaturePanel());
    }

    private Panel pressurePanel() {
        List<Curve> curves = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        ValueScale.Range range = course(runs.get(0)).pressureRange();
        for (int i = 0; i < runs.size(); i++) {
            RunResult result = runs.get(i).result();
            RunLines course = course(runs.get(i));
            range = range.with(course.pressureRange());
            String highest = "highest " + amounts.pressure(result.peak().value());
            // A hazard's mark names its run already.
            String name = result.hazard().isPresent() ? "" : runs.get(i).name();
            curves.add(new Curve(Curve.Role.ofRun(i), name, highest, course.pressure()));
            marks.addAll(marks(runs.get(i)));
        }
        List<Level> levels = Levels.shared(runs, limitGauge, amounts);
        Axis axis = PressureScale.around(range, levels, 0, amounts);
        return new Panel(axis, curves, levels, marks);
    }

    /** The few moments marked on one of several curves: the hazard, and the first opening of a relief valve. */
    private List<Mark> marks(NamedRun run) {
        List<Mark> marks = new ArrayList<>();
        run.result()
                .hazard()
                .ifPresent(event -> marks.add(mark(
                        run,
                        Mark.Kind.HAZARD,
                        event,
                        run.name() + ": " + event.kind().description() + " "
                                + moments.at(event.time()).text(amounts))));
        run.result()
                .first(Event.Kind.RELIEF_OPENED)
                .ifPresent(event -> marks.add(mark(run, Mark.Kind.RELIEF_OPENED, event, "")));
        return marks;
    }

    private Mark mark(NamedRun run, Mark.Kind kind, Event event, String label) {
        double gauge = run.result().gauge(event.pressureAbsolute());
        return new Mark(kind, scale.of(event.time()), amounts.units().pressure().fromSi(gauge), label);
    }

    private Panel relievedPanel() {
        List<Curve> curves = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < runs.size(); i++) {
            RunResult result = runs.get(i).result();
            if (result.system().reliefValves().isEmpty()) {
                continue;
            }
            double volume = result.totals().relieved();
            most = Math.max(most, volume);
            curves.add(new Curve(
                    Curve.Role.ofRun(i),
                    runs.get(i).name(),
                    "discharges " + amounts.volume(volume),
                    course(runs.get(i)).relieved()));
        }
        return new Panel(relievedAxis(most, amounts), curves, List.of(), List.of());
    }

    /** An axis for what was discharged since the start, up to a volume (m3). */
    static Axis relievedAxis(double most, QuantityFormat amounts) {
        return volumeAxis("water discharged", most, amounts);
    }

    /** An axis for a volume since the start, up to so much (m3). */
    static Axis volumeAxis(String what, double most, QuantityFormat amounts) {
        double high = most > 0 ? amounts.units().volume().fromSi(most) : 1;
        return ValueScale.fromZero(
                what + " since the start (" + amounts.symbol(amounts.units().volume()) + ")", high);
    }

    private Panel temperaturePanel() {
        List<Curve> curves = new ArrayList<>();
        ValueScale.Range range = null;
        for (int i = 0; i < runs.size(); i++) {
            RunResult result = runs.get(i).result();
            Points line = course(runs.get(i)).temperature();
            ValueScale.Range own = new ValueScale.Range(line.lowest(), line.highest());
            range = range == null ? own : range.with(own);
            String highest = "highest "
                    + amounts.temperature(result.extremes().highestTemperature().value());
            curves.add(new Curve(Curve.Role.ofRun(i), runs.get(i).name(), highest, line));
        }
        String label =
                "mean water temperature (" + amounts.symbol(amounts.units().temperature()) + ")";
        Axis axis = ValueScale.around(
                label, range.atLeast(amounts.units().temperatureDifference().fromSi(10)), 0.06, 0.1);
        return new Panel(axis, curves, List.of(), List.of());
    }

    private RunLines course(NamedRun run) {
        return new RunLines(run.result(), amounts, scale, size.columns());
    }
}

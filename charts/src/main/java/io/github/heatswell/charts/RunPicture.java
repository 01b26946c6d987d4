package io.github.heatswell.charts;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Moments;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Composes the picture of one run: pressure above, water temperature, heater and taps below. */
final class RunPicture {

    /** How far the time axis extends beyond a hazard, so that the end of the run is visible. */
    private static final double BEYOND_HAZARD = 1.12;

    private final RunResult result;
    private final Doubts doubts;
    private final QuantityFormat amounts;
    private final Size size;
    private final Lanes lanes;
    private final Marks marks;
    private final TimeScale scale;
    private final Course course;

    RunPicture(RunResult result, Doubts doubts, UnitSystem units, Size size) {
        this.result = result;
        this.doubts = doubts;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        Moments moments = Moments.of(result.system(), result.end());
        double end = result.hazard().isPresent() ? BEYOND_HAZARD * result.end() : result.end();
        this.scale = TimeScale.of(moments, end, size.mostTicks());
        this.course = new Course(result, amounts, scale, size.columns());
        this.lanes = new Lanes(result.summary(), amounts, scale, moments);
        this.marks = new Marks(result, amounts, scale, size.leastMarkDistance(scale.axis()));
    }

    Picture compose() {
        Optional<Event> hazard = result.hazard();
        Caption caption = Caption.of(Narrative.of(result.summary(), doubts), amounts);
        OptionalDouble end =
                hazard.stream().mapToDouble(event -> scale.of(event.time())).findFirst();
        Panel temperature = new TemperaturePanel(result, amounts, course, lanes, marks).panel();
        return new Picture(size, caption, scale.axis(), end, pressurePanel(), temperature);
    }

    private Panel pressurePanel() {
        List<Level> levels = new Levels(result.summary(), amounts).all();
        List<Bands> bands = lanes.underPressure();
        List<Curve> curves = new ArrayList<>();
        ValueScale.Range range = course.pressureRange();
        if (!result.system().supply().mains().isConstant()) {
            Points mains = course.mains();
            range = range.with(mains.lowest()).with(mains.highest());
            curves.add(new Curve(Curve.Role.MAINS, "mains pressure", "", mains));
        }
        curves.add(new Curve(Curve.Role.PRESSURE, "", "", course.pressure()));
        Axis axis = PressureScale.around(range, levels, bands.size(), amounts);
        return new Panel(axis, List.of(), curves, levels, marks.all(), bands);
    }
}

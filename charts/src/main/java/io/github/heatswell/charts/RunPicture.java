package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.plant.Heater;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Composes the picture of one run: pressure above, water temperature and heater below. */
final class RunPicture {

    /** The narrowest range (K) the temperature is shown in. */
    private static final double NARROWEST = 10;

    /** How far beyond a hazard the time axis goes on, so that the end of the run is seen to be one. */
    private static final double BEYOND_HAZARD = 1.12;

    private final RunResult result;
    private final Amounts amounts;
    private final Size size;
    private final TimeScale scale;
    private final Course course;

    RunPicture(RunResult result, UnitSystem units, Size size) {
        this.result = result;
        this.amounts = new Amounts(units);
        this.size = size;
        double end = result.hazard().isPresent() ? BEYOND_HAZARD * result.end() : result.end();
        this.scale = TimeScale.to(end, PlotWidth.mostTicks(size));
        this.course = new Course(result, amounts, scale, PlotWidth.columns(size));
    }

    Picture compose() {
        Optional<Event> hazard = result.hazard();
        Caption caption = new Caption(
                hazard.map(HazardWords::warning).orElse(""),
                Headline.of(result, amounts.units()),
                new Facts(amounts).of(result));
        OptionalDouble end =
                hazard.stream().mapToDouble(event -> scale.of(event.time())).findFirst();
        return new Picture(size, caption, scale.axis(), end, pressurePanel(), temperaturePanel());
    }

    private Panel pressurePanel() {
        List<Level> levels = new Levels(result, amounts).all();
        Axis axis = PressureScale.around(course.pressureRange(), levels, amounts);
        Curve curve = new Curve(Curve.Role.PRESSURE, "", "", course.pressure());
        Marks marks = new Marks(result, amounts, scale, PlotWidth.leastMarkDistance(size, scale.axis()));
        return new Panel(axis, List.of(curve), levels, marks.all(), Bands.none());
    }

    private Panel temperaturePanel() {
        Points line = course.temperature();
        Heater heater = result.system().heater();
        double setPoint = amounts.units().temperature().fromSi(heater.setPoint());
        ValueScale.Range range = new ValueScale.Range(line.lowest(), line.highest())
                .with(setPoint)
                .atLeast(amounts.units().temperatureDifference().fromSi(NARROWEST));
        Axis axis = ValueScale.around("mean water temperature (" + amounts.temperatureUnit() + ")", range, 0.16, 0.1);
        Level level = new Level(
                Level.Kind.SET_POINT, setPoint, amounts.temperature(heater.setPoint()), "thermostat set point");
        Curve curve = new Curve(Curve.Role.TEMPERATURE, "", "", line);
        return new Panel(axis, List.of(curve), List.of(level), List.of(), new HeaterSpans(result, scale).bands());
    }
}

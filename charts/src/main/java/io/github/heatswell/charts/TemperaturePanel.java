package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Bands;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** The lower panel of one run: the water's temperature, what limits it, and when heater and taps were on. */
final class TemperaturePanel {

    /** The narrowest range (K) the temperature is shown in. */
    private static final double NARROWEST = 10;

    /** A limit this far (K) above the hottest water is not shown. */
    private static final double FAR = 12;

    /** The share of the height that a lane of bars takes at the foot. */
    private static final double LANE = 0.1;

    private final RunResult result;
    private final QuantityFormat amounts;
    private final Course course;
    private final Lanes lanes;
    private final Marks marks;

    TemperaturePanel(RunResult result, QuantityFormat amounts, Course course, Lanes lanes, Marks marks) {
        this.result = result;
        this.amounts = amounts;
        this.course = course;
        this.lanes = lanes;
        this.marks = marks;
    }

    Panel panel() {
        Points line = course.temperature();
        List<Area> areas = result.system().tank().layers() > 1 ? List.of(course.layers()) : List.of();
        List<Level> levels = levels();
        ValueScale.Range range = new ValueScale.Range(line.lowest(), line.highest());
        for (Area area : areas) {
            range = range.with(area.lowest()).with(area.highest());
        }
        for (Level level : levels) {
            range = range.with(level.value());
        }
        range = range.atLeast(amounts.units().temperatureDifference().fromSi(NARROWEST));
        List<Bands> bands = lanes.underTemperature();
        double below = 0.06 + LANE * Math.max(1, bands.size());
        Axis axis = ValueScale.around(
                "mean water temperature (" + amounts.symbol(amounts.units().temperature()) + ")", range, below, 0.1);
        Curve curve = new Curve(Curve.Role.TEMPERATURE, "", "", line);
        return new Panel(axis, areas, List.of(curve), levels, marks.byTemperature(), bands);
    }

    private List<Level> levels() {
        Heater heater = result.system().heater();
        List<Level> levels = new ArrayList<>();
        levels.add(level(Level.Kind.SET_POINT, heater.setPoint(), "thermostat set point"));
        double limit = result.extremes().highestTemperature().value() + FAR;
        heater.cutOut().stream()
                .filter(at -> at <= limit)
                .forEach(at -> levels.add(level(Level.Kind.CUT_OUT, at, "high-limit cut-out")));
        for (ReliefValve valve : result.system().reliefValves()) {
            valve.setTemperature().stream()
                    .filter(at -> at <= limit)
                    .forEach(at -> levels.add(level(Level.Kind.RELIEF_TEMPERATURE, at, setPressure(valve))));
        }
        return levels;
    }

    private String setPressure(ReliefValve valve) {
        String name = result.system().reliefValves().size() == 1 ? "relief" : valve.name();
        return valve.condition() == ReliefFault.Condition.BLOCKED
                ? name + " would open, but is blocked"
                : name + " opens by temperature";
    }

    private Level level(Level.Kind kind, double kelvin, String name) {
        return new Level(kind, amounts.units().temperature().fromSi(kelvin), amounts.temperature(kelvin), name);
    }
}

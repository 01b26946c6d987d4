package io.github.heatswell.charts;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.charts.ValueScale.PressureScale;
import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Bands;
import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.UncertainRise;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Composes the picture of one run: pressure above, water temperature, heater and taps below, and what was discharged if asked for. */
final class RunPicture {

    /** How far the time axis extends beyond a hazard, so that the end of the run is visible. */
    private static final double BEYOND_HAZARD = 1.12;

    /** A rise that is over within this share of the run looks like a stroke, and no band is drawn. */
    private static final double MIN_SHARE = 0.03;

    private final RunResult result;
    private final Doubts doubts;
    private final boolean discharge;
    private final QuantityFormat amounts;
    private final Size size;
    private final Lanes lanes;
    private final Marks marks;
    private final TimeScale scale;
    private final RunLines course;

    RunPicture(RunResult result, Doubts doubts, boolean discharge, UnitSystem units, Size size) {
        this.discharge = discharge;
        this.result = result;
        this.doubts = doubts;
        this.amounts = QuantityFormat.unicode(units);
        this.size = size;
        Moments moments = Moments.of(result.system(), result.end());
        double end = result.hazard().isPresent() ? BEYOND_HAZARD * result.end() : result.end();
        this.scale = TimeScale.of(moments, end, size.mostTicks());
        this.course = new RunLines(result, amounts, scale, size.columns());
        this.lanes = new Lanes(result.summary(), amounts, scale, moments);
        this.marks = new Marks(result, amounts, scale, size.leastMarkDistance(scale.axis()));
    }

    Picture compose() {
        Optional<Event> hazard = result.hazard();
        Caption caption = Caption.of(Narrative.of(result.summary(), doubts), amounts);
        OptionalDouble end =
                hazard.stream().mapToDouble(event -> scale.of(event.time())).findFirst();
        Panel temperature = new TemperaturePanel(result, amounts, course, lanes, marks).panel();
        List<Panel> panels =
                discharge ? List.of(pressurePanel(), temperature, lostPanel()) : List.of(pressurePanel(), temperature);
        return new Picture(size, caption, scale.axis(), end, panels, Optional.empty());
    }

    /** What was discharged, or, where nothing was, what went back to the mains. */
    private Panel lostPanel() {
        double volume = result.totals().relieved();
        double returned = result.totals().returned();
        if (volume == 0 && returned > 0) {
            Curve curve = new Curve(Curve.Role.ofRun(0), "returned " + amounts.volume(returned), "", course.returned());
            return new Panel(
                    ComparisonPicture.volumeAxis("water returned to the mains", returned, amounts),
                    List.of(curve),
                    List.of(),
                    List.of());
        }
        Curve curve = new Curve(Curve.Role.ofRun(0), "discharged " + amounts.volume(volume), "", course.relieved());
        return new Panel(ComparisonPicture.relievedAxis(volume, amounts), List.of(curve), List.of(), List.of());
    }

    private Panel pressurePanel() {
        List<Level> levels = new Levels(result.summary(), amounts).all();
        List<Bands> bands = lanes.underPressure();
        List<Curve> curves = new ArrayList<>();
        ValueScale.Range range = course.pressureRange();
        if (!result.system().supply().mains().isConstant()) {
            Points mains = course.mains();
            range = range.with(mains.lowest()).with(mains.highest());
            curves.add(new Curve(Curve.Role.MAINS, amounts.units().spelled("mains pressure"), "", mains));
        }
        curves.add(new Curve(Curve.Role.PRESSURE, "", "", course.pressure()));
        Axis axis = PressureScale.around(range, levels, bands.size(), amounts);
        UncertainRise rise = UncertainRise.of(result.summary());
        boolean seen = rise.instants().stream().anyMatch(instant -> instant.time() > MIN_SHARE * result.end());
        List<Area> areas = seen ? List.of(course.rise(rise)) : List.of();
        return new Panel(axis, areas, curves, levels, marks.all(), bands);
    }

    /** The lower panel of one run: the water's temperature, what limits it, and when heater and taps were on. */
    private static final class TemperaturePanel {

        /** The narrowest range (K) the temperature is shown in. */
        private static final double NARROWEST = 10;

        /** A limit this far (K) above the hottest water is not shown. */
        private static final double FAR = 12;

        /** The share of the height that a lane of bars takes at the foot. */
        private static final double LANE = 0.1;

        private final RunResult result;
        private final QuantityFormat amounts;
        private final RunLines course;
        private final Lanes lanes;
        private final Marks marks;

        TemperaturePanel(RunResult result, QuantityFormat amounts, RunLines course, Lanes lanes, Marks marks) {
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
            List<Curve> curves = new ArrayList<>();
            if (!result.system().piping(PipeRun.Carries.HOT).isEmpty()) {
                Points branch = course.hotBranch();
                range = range.with(branch.lowest()).with(branch.highest());
                curves.add(new Curve(Curve.Role.HOT_BRANCH, "hot branch", "", branch));
            }
            if (result.system().circulation().isPresent()) {
                Points loop = course.loop();
                range = range.with(loop.lowest()).with(loop.highest());
                curves.add(new Curve(Curve.Role.LOOP, "loop", "", loop));
            }
            curves.add(new Curve(Curve.Role.TEMPERATURE, curves.isEmpty() ? "" : "tank", "", line));
            for (Level level : levels) {
                range = range.with(level.value());
            }
            range = range.atLeast(amounts.units().temperatureDifference().fromSi(NARROWEST));
            List<Bands> bands = lanes.underTemperature();
            double below = 0.06 + LANE * Math.max(1, bands.size());
            Axis axis = ValueScale.around(
                    (curves.size() > 1 ? "water temperature (" : "mean water temperature (")
                            + amounts.symbol(amounts.units().temperature()) + ")",
                    range,
                    below,
                    0.1);
            return new Panel(axis, areas, curves, levels, marks.byTemperature(), bands);
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
                    : name + " opens on temperature";
        }

        private Level level(Level.Kind kind, double kelvin, String name) {
            return new Level(kind, amounts.units().temperature().fromSi(kelvin), amounts.temperature(kelvin), name);
        }
    }

    /** The lanes of bars at the foot of the panels of one run: what was on, and for how long. */
    private static final class Lanes {

        private final RunSummary summary;
        private final QuantityFormat amounts;
        private final TimeScale scale;
        private final Moments moments;

        Lanes(RunSummary summary, QuantityFormat amounts, TimeScale scale, Moments moments) {
            this.summary = summary;
            this.amounts = amounts;
            this.scale = scale;
            this.moments = moments;
        }

        /** Lanes that concern the pressure: an open bypass, a valve discharging supply water, the supply shut off. */
        List<Bands> underPressure() {
            List<Bands> lanes = new ArrayList<>();
            add(lanes, Bands.Kind.BYPASS, summary.joined(Interval.Phase.BYPASS_OPEN), "bypass open");
            String valve = summary.system().reliefValves().size() == 1 ? "relief valve runs" : "relief valves run";
            add(lanes, Bands.Kind.RELIEF, Interval.joined(summary.fedRelief()), valve + " on water from the supply");
            add(lanes, Bands.Kind.SUPPLY_OFF, summary.joined(Interval.Phase.SUPPLY_SHUT_OFF), "supply shut off");
            return lanes;
        }

        /** Lanes that concern the temperature: the heater, and above it the taps. */
        List<Bands> underTemperature() {
            List<Bands> lanes = new ArrayList<>();
            String what = summary.system().heater().energy() == Heater.Energy.GAS ? "burner on" : "heater on";
            add(lanes, Bands.Kind.HEATER, summary.joined(Interval.Phase.HEATER_ON), what);
            List<Interval> draws = summary.intervals(Interval.Phase.DRAW);
            if (!draws.isEmpty()) {
                String label = (draws.size() == 1 ? "1 draw of " : draws.size() + " draws, ")
                        + amounts.volume(summary.totals().drawn())
                        + (draws.size() == 1 ? "" : " in all");
                lanes.add(new Bands(Bands.Kind.DRAWS, label, onScale(draws)));
            }
            return lanes;
        }

        private void add(List<Bands> lanes, Bands.Kind kind, List<Interval> stretches, String what) {
            if (!stretches.isEmpty()) {
                lanes.add(new Bands(kind, label(kind, what, stretches), onScale(stretches)));
            }
        }

        private String label(Bands.Kind kind, String what, List<Interval> stretches) {
            String length = amounts.time(Interval.total(stretches));
            if (stretches.size() > 1) {
                return what + " " + QuantityFormat.times(stretches.size()) + ", " + length + " in all";
            }
            boolean told = kind == Bands.Kind.HEATER || kind == Bands.Kind.RELIEF;
            String since = told ? "" : " " + moments.at(stretches.get(0).from()).text(amounts);
            return what + since + " for " + length;
        }

        private List<Bands.Span> onScale(List<Interval> stretches) {
            return stretches.stream()
                    .map(stretch -> new Bands.Span(scale.of(stretch.from()), scale.of(stretch.to())))
                    .toList();
        }
    }
}

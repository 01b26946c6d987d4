package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Area;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Composes the picture of a map of peaks. */
final class MapPicture {

    private final PeakMap map;
    private final QuantityFormat amounts;
    private final MapGrid grid;
    private final PressureBands bands;

    MapPicture(PeakMap map, UnitSystem units) {
        this.map = map;
        this.amounts = QuantityFormat.unicode(units);
        this.grid = new MapGrid(map, units);
        OptionalDouble relief = map.setting().reliefSetGauge();
        this.bands = new PressureBands(
                grid.peaks,
                relief.isPresent() ? OptionalDouble.of(grid.pressure(relief.getAsDouble())) : relief,
                amounts.symbol(amounts.units().pressure()));
    }

    Picture compose(Size size) {
        Caption caption = Caption.of(Narrative.of(map), amounts);
        Panel panel = new Panel(grid.volumes(), areas(), lines(), List.of(), marks(), List.of());
        Picture.Key key = new Picture.Key("peak pressure (gauge)", Optional.empty());
        return new Picture(size, caption, grid.precharges(), panel, key);
    }

    private List<Area> areas() {
        List<Area> areas = new ArrayList<>();
        List<Double> levels = bands.levels();
        Points whole = new Points(
                new double[] {grid.left(), grid.right(), grid.right(), grid.left()},
                new double[] {grid.foot(), grid.foot(), grid.top(), grid.top()});
        String lowest = levels.isEmpty() ? amounts.pressure(map.peakGauge(0, 0)) : bands.name(0);
        areas.add(new Area(Area.Role.BAND, 0, lowest, "", List.of(whole)));
        for (int i = 0; i < levels.size(); i++) {
            double shade = (i + 1.0) / levels.size();
            areas.add(new Area(
                    Area.Role.BAND,
                    shade,
                    bands.name(i + 1),
                    "",
                    grid.level(levels.get(i)).below()));
        }
        if (map.setting().reliefSetGauge().isPresent()) {
            List<Points> drips = grid.drip().below();
            if (!drips.isEmpty()) {
                areas.add(new Area(
                        Area.Role.DRIPS, 0, "rising hatch: the relief valve drips", "valve drips here", drips));
            }
        }
        List<Points> ended = grid.ended().below();
        if (!ended.isEmpty()) {
            String test = amounts.pressure(grid.testPressure());
            areas.add(new Area(
                    Area.Role.ENDED_EARLY,
                    0,
                    "falling hatch: the run ends at the tank’s test pressure; the peak is at least " + test,
                    "at least " + test,
                    ended));
        }
        return areas;
    }

    private List<Curve> lines() {
        List<Curve> lines = new ArrayList<>();
        for (int i = 0; i < bands.levels().size(); i++) {
            for (Points trail : grid.level(bands.levels().get(i)).lines()) {
                lines.add(new Curve(Curve.Role.CONTOUR, "", bands.label(i), trail));
            }
        }
        OptionalDouble target = map.setting().targetGauge();
        if (target.isPresent()) {
            String name = "target: the peak is " + amounts.pressure(target.getAsDouble());
            add(lines, Curve.Role.TARGET, name, grid.target().lines());
        }
        double fill = grid.pressure(map.setting().staticAtVesselGauge());
        if (fill >= grid.left() && fill <= grid.right()) {
            Points upright = Points.straight(fill, grid.foot(), fill, grid.top());
            String amount = amounts.pressure(map.setting().staticAtVesselGauge());
            lines.add(new Curve(Curve.Role.STATIC, "", "precharge = static pressure (" + amount + ")", upright));
        }
        OptionalDouble relief = map.setting().reliefSetGauge();
        if (relief.isPresent()) {
            String name = "the peak reaches the relief valve’s set pressure, " + amounts.pressure(relief.getAsDouble());
            add(lines, Curve.Role.DRIP, name, grid.drip().lines());
        }
        return lines;
    }

    private static void add(List<Curve> lines, Curve.Role role, String name, List<Points> trails) {
        for (int i = 0; i < trails.size(); i++) {
            lines.add(new Curve(role, i == 0 ? name : "", "", trails.get(i)));
        }
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        map.present().ifPresent(point -> {
            double x = grid.pressure(point.prechargeGauge());
            double y = grid.height(point.volume());
            if (grid.holds(x, y)) {
                String label =
                        "as it is: peak " + (point.atLeast() ? "at least " : "") + amounts.pressure(point.peakGauge());
                marks.add(new Mark(Mark.Kind.CHIEF, x, y, label));
            }
        });
        return marks;
    }

    /** Round pressures that part a map into bands: finer up to a little above the relief valve, coarser beyond. */
    static final class PressureBands {

        private static final double FINE = 7;
        private static final double COARSE = 3;
        private static final double BEYOND_RELIEF = 1.2;

        private static final double WITHOUT_RELIEF = 1.7;

        /** Peaks this near (in the unit shown) are one. */
        private static final double FLAT = 0.02;

        private final List<Double> levels = new ArrayList<>();
        private final String unit;

        /**
         * Bands for a map.
         *
         * @param peaks the peaks, in the unit shown
         * @param relief the set pressure of the relief valve, in the unit shown, or empty
         * @param unit the unit shown
         */
        PressureBands(double[][] peaks, OptionalDouble relief, String unit) {
            this.unit = unit;
            double low =
                    Arrays.stream(peaks).flatMapToDouble(Arrays::stream).min().orElseThrow();
            double high =
                    Arrays.stream(peaks).flatMapToDouble(Arrays::stream).max().orElseThrow();
            if (high - low < FLAT) {
                return;
            }
            double middle = relief.orElse(WITHOUT_RELIEF * low) * BEYOND_RELIEF;
            double knee = middle > low && middle < high ? middle : high;
            double last = add(low, knee, ValueScale.roundStep((knee - low) / FINE));
            if (knee < high) {
                add(Math.max(last, knee), high, ValueScale.roundStep((high - knee) / COARSE));
            }
        }

        /** Adds the multiples of a step within a range, and returns the last. */
        private double add(double above, double below, double step) {
            double last = above;
            for (long i = (long) Math.floor(above / step + 1e-9) + 1; i * step < below * (1 - 1e-9); i++) {
                last = i * step;
                levels.add(last);
            }
            return last;
        }

        List<Double> levels() {
            return levels;
        }

        /** What a band is called that lies below the level of that number; the last lies above all. */
        String name(int band) {
            if (band == 0) {
                return "below " + label(0);
            }
            return band == levels.size()
                    ? label(band - 1) + " and more"
                    : number(levels.get(band - 1)) + " to " + label(band);
        }

        String label(int level) {
            return number(levels.get(level)) + " " + unit;
        }

        private static String number(double value) {
            return Decimals.atMost(value, 3);
        }
    }
}

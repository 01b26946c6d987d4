package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Caption;
import io.github.heatswell.charts.picture.Plane;
import io.github.heatswell.charts.picture.PlaneLine;
import io.github.heatswell.charts.picture.PlanePicture;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.charts.picture.Spot;
import io.github.heatswell.charts.picture.Tint;
import io.github.heatswell.charts.picture.Trail;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
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

    PlanePicture compose(Size size) {
        MapHeadline headline = new MapHeadline(map, amounts);
        Caption caption = new Caption(headline.hazard(), headline.sentence(), headline.facts());
        Plane plane = new Plane(grid.precharges(), grid.volumes(), "peak pressure (gauge)", tints(), lines(), spots());
        return new PlanePicture(size, caption, plane, Optional.empty());
    }

    private List<Tint> tints() {
        Contours contours = new Contours(grid.across, grid.up, grid.peaks);
        List<Tint> tints = new ArrayList<>();
        List<Double> levels = bands.levels();
        Trail whole = new Trail(
                new double[] {grid.left(), grid.right(), grid.right(), grid.left()},
                new double[] {grid.foot(), grid.foot(), grid.top(), grid.top()});
        String lowest = levels.isEmpty() ? amounts.pressure(map.peakGauge(0, 0)) : bands.name(0);
        tints.add(new Tint(Tint.Role.BAND, 0, lowest, "", List.of(whole)));
        for (int i = 0; i < levels.size(); i++) {
            double shade = (i + 1.0) / levels.size();
            tints.add(new Tint(Tint.Role.BAND, shade, bands.name(i + 1), "", contours.patches(levels.get(i))));
        }
        if (map.setting().reliefSetGauge().isPresent()) {
            List<Trail> drips = grid.drip().below();
            if (!drips.isEmpty()) {
                tints.add(new Tint(
                        Tint.Role.DRIPS, 0, "rising hatch: the relief valve drips", "valve drips here", drips));
            }
        }
        List<Trail> ended = new Contours(grid.across, grid.up, grid.ended).patches(0.5);
        if (!ended.isEmpty()) {
            String test = amounts.pressure(testPressure());
            tints.add(new Tint(
                    Tint.Role.ENDED_EARLY,
                    0,
                    "falling hatch: the run ends at the tank’s test pressure; the peak is at least " + test,
                    "at least " + test,
                    ended));
        }
        return tints;
    }

    private double testPressure() {
        double atmosphere = map.setting().system().site().atmosphere();
        return map.setting().system().tank().testPressureAbsolute(atmosphere) - atmosphere;
    }

    private List<PlaneLine> lines() {
        Contours contours = new Contours(grid.across, grid.up, grid.peaks);
        List<PlaneLine> lines = new ArrayList<>();
        for (int i = 0; i < bands.levels().size(); i++) {
            for (Trail trail : contours.lines(bands.levels().get(i))) {
                lines.add(new PlaneLine(PlaneLine.Role.CONTOUR, "", bands.label(i), trail));
            }
        }
        OptionalDouble target = map.setting().targetGauge();
        if (target.isPresent()) {
            String name = "target: the peak is " + amounts.pressure(target.getAsDouble());
            add(lines, PlaneLine.Role.TARGET, name, grid.target().lines());
        }
        double fill = grid.pressure(map.setting().staticAtVesselGauge());
        if (fill >= grid.left() && fill <= grid.right()) {
            Trail upright = Trail.straight(fill, grid.foot(), fill, grid.top());
            String amount = amounts.pressure(map.setting().staticAtVesselGauge());
            lines.add(
                    new PlaneLine(PlaneLine.Role.STATIC, "", "precharge = static pressure (" + amount + ")", upright));
        }
        OptionalDouble relief = map.setting().reliefSetGauge();
        if (relief.isPresent()) {
            String name = "the peak reaches the relief valve’s set pressure, " + amounts.pressure(relief.getAsDouble());
            add(lines, PlaneLine.Role.DRIP, name, grid.drip().lines());
        }
        return lines;
    }

    private static void add(List<PlaneLine> lines, PlaneLine.Role role, String name, List<Trail> trails) {
        for (int i = 0; i < trails.size(); i++) {
            lines.add(new PlaneLine(role, i == 0 ? name : "", "", trails.get(i)));
        }
    }

    private List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        map.present().ifPresent(point -> {
            double x = grid.pressure(point.prechargeGauge());
            double y = grid.height(point.volume());
            if (grid.holds(x, y)) {
                String label = "as it is: peak " + MapHeadline.peak(point, amounts);
                spots.add(new Spot(Spot.Role.CHIEF, x, y, label));
            }
        });
        return spots;
    }
}

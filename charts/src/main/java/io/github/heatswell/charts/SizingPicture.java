package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Composes the picture of a sizing: the peak over the size of the vessel, and the target. */
final class SizingPicture {

    /** How far above the target peaks are shown, as a multiple of the room between supply and target. */
    private static final double ABOVE_TARGET = 1.5;

    /** So many of the sizes with the lowest peaks are always within the picture. */
    private static final int SEEN = 5;

    private final SizingResult result;
    private final SizeAdvice advice;
    private final QuantityFormat amounts;
    private final List<SizingResult.Vessel> vessels;
    private final double atmosphere;

    SizingPicture(SizeAdvice advice, UnitSystem units) {
        this.result = advice.sizing();
        this.advice = advice;
        this.amounts = QuantityFormat.unicode(units);
        this.atmosphere = result.target().absolute() - result.target().gauge();
        this.vessels = Stream.concat(result.nominal().stream(), result.smallest().stream())
                .sorted(Comparator.comparingDouble(SizingResult.Vessel::volume))
                .toList();
    }

    Picture compose(Size size) {
        double fill = shown(result.supplyStatic().gauge(atmosphere));
        double target = shown(result.target().gauge());
        double[] peaks = vessels.stream().mapToDouble(this::peak).sorted().toArray();
        double most = peaks[peaks.length - 1];
        double least = Math.min(fill, peaks[0]);
        // where supply and target lie close together, too, the best of the sizes are to be seen
        double best = peaks[Math.min(SEEN, peaks.length) - 1];
        double top = Math.max(target, Math.min(most, Math.max(best, target + ABOVE_TARGET * (target - fill))));
        Axis up = ValueScale.around(
                "peak pressure (gauge, " + amounts.symbol(amounts.units().pressure()) + ")",
                new ValueScale.Range(least, top),
                0.06,
                0.04);
        Axis across = volumes();
        Panel panel = new Panel(up, lines(across, up), List.of(), marks(up));
        String above = vessels.stream().anyMatch(vessel -> peak(vessel) > up.to())
                ? amounts.units().spelled(" Smaller vessels peak above the top of the picture.")
                : "";
        Caption told = Caption.of(Narrative.of(advice), amounts);
        Caption caption = new Caption(told.hazard(), told.title(), told.subtitle() + above);
        return new Picture(size, caption, across, panel, new Picture.Key("", Optional.empty()));
    }

    private Axis volumes() {
        double from = place(vessels.get(0)) - 0.04;
        double to = place(vessels.get(vessels.size() - 1)) + 0.04;
        return MapGrid.volumes(amounts.units(), from, to);
    }

    private List<Curve> lines(Axis across, Axis up) {
        List<Curve> lines = new ArrayList<>();
        double target = shown(result.target().gauge());
        double fill = shown(result.supplyStatic().gauge(atmosphere));
        advice.recommended()
                .ifPresent(vessel -> lines.add(new Curve(
                        Curve.Role.GUIDE,
                        "",
                        "",
                        Points.straight(place(vessel), peak(vessel), place(vessel), target))));
        lines.add(new Curve(
                Curve.Role.TARGET,
                "target, " + amounts.pressure(result.target().gauge()),
                "",
                Points.straight(across.from(), target, across.to(), target)));
        if (up.holds(fill)) {
            String name = "static pressure of the supply, "
                    + amounts.pressure(result.supplyStatic().gauge(atmosphere));
            lines.add(new Curve(Curve.Role.STATIC, name, "", Points.straight(across.from(), fill, across.to(), fill)));
        }
        curve(up)
                .ifPresent(trail -> lines.add(new Curve(
                        Curve.Role.CURVE,
                        "peak of the worst heat-up; straight lines between the sizes simulated",
                        "",
                        trail)));
        return lines;
    }

    /** The peaks from the first that is not above the picture, led in from its top. */
    private Optional<Points> curve(Axis up) {
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i < vessels.size(); i++) {
            double x = place(vessels.get(i));
            double y = peak(vessels.get(i));
            if (y <= up.to()) {
                if (corners.isEmpty() && i > 0) {
                    double before = place(vessels.get(i - 1));
                    double higher = peak(vessels.get(i - 1));
                    corners.add(new double[] {x + (before - x) * (up.to() - y) / (higher - y), up.to()});
                }
                corners.add(new double[] {x, y});
            }
        }
        if (corners.size() < 2) {
            return Optional.empty();
        }
        return Optional.of(new Points(
                corners.stream().mapToDouble(corner -> corner[0]).toArray(),
                corners.stream().mapToDouble(corner -> corner[1]).toArray()));
    }

    private List<Mark> marks(Axis up) {
        List<Mark> marks = new ArrayList<>();
        Optional<SizingResult.Vessel> chosen = advice.recommended();
        chosen.ifPresent(vessel -> marks.add(new Mark(Mark.Kind.CHIEF, place(vessel), peak(vessel), label(vessel))));
        result.smallest()
                .ifPresent(vessel -> marks.add(new Mark(
                        Mark.Kind.READING,
                        place(vessel),
                        peak(vessel),
                        "smallest: " + amounts.volume(vessel.volume()))));
        for (SizingResult.Vessel vessel : result.nominal()) {
            if (up.holds(peak(vessel)) && !chosen.equals(Optional.of(vessel))) {
                Mark.Kind role = vessel.suffices() ? Mark.Kind.READING : Mark.Kind.FAILING;
                marks.add(new Mark(role, place(vessel), peak(vessel), ""));
            }
        }
        return marks;
    }

    private double place(SizingResult.Vessel vessel) {
        return Math.log10(amounts.units().volume().fromSi(vessel.volume()));
    }

    private double peak(SizingResult.Vessel vessel) {
        return shown(vessel.peakAbsolute() - atmosphere);
    }

    private double shown(double pascal) {
        return amounts.units().pressure().fromSi(pascal);
    }

    private String label(SizingResult.Vessel vessel) {
        return amounts.volume(vessel.volume()) + ": peak " + amounts.pressure(vessel.peakAbsolute() - atmosphere) + ", "
                + amounts.pressureDifference(vessel.margin()) + " below the target";
    }
}

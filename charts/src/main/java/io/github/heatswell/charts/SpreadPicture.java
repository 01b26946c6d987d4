package io.github.heatswell.charts;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.picture.Axis;
import io.github.heatswell.charts.picture.Curve;
import io.github.heatswell.charts.picture.Panel;
import io.github.heatswell.charts.picture.Panel.Mark;
import io.github.heatswell.charts.picture.Picture;
import io.github.heatswell.charts.picture.Picture.Bars;
import io.github.heatswell.charts.picture.Picture.Caption;
import io.github.heatswell.charts.picture.Points;
import io.github.heatswell.charts.picture.Size;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SpreadStory;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Composes the picture of many samples: the share of peaks up to each pressure, and which inputs matter. */
final class SpreadPicture {

    private static final double PERCENT = 100;
    private static final int MAX_STEPS = 800;
    private static final int MAX_BARS = 12;
    private static final double[] READINGS = {0.05, 0.5, 0.95};

    /** The share of the width the peaks keep when a line beside them is to be shown. */
    private static final double SHARE_BESIDE_LINES = 0.25;

    /** The narrowest range (Pa) the peaks are shown in. */
    private static final double NARROWEST = 1e4;

    private final SampledPeaks sampled;
    private final QuantityFormat amounts;
    private final Axis pressure;

    SpreadPicture(SampledPeaks sampled, UnitSystem units) {
        this.sampled = sampled;
        this.amounts = QuantityFormat.unicode(units);
        this.pressure = axis();
    }

    Picture compose(Size size) {
        Axis share = new Axis("share of the houses sampled (%)", 0, PERCENT, 10);
        Panel panel = new Panel(share, lines(), List.of(), marks());
        Caption caption = Caption.of(Narrative.of(sampled), amounts);
        return new Picture(size, caption, pressure, panel, new Picture.Key("", bars()));
    }

    private Axis axis() {
        double low = sampled.peakGauge(0);
        double high = sampled.peakGauge(sampled.count() - 1);
        ValueScale.Range range = new ValueScale.Range(shown(low), shown(high)).atLeast(shown(NARROWEST));
        double span = range.span();
        for (OptionalDouble line :
                List.of(sampled.limitGauge(), sampled.reliefSetGauge(), sampled.workingPressureGauge())) {
            if (line.isPresent()) {
                ValueScale.Range with = range.with(shown(line.getAsDouble()));
                range = span >= SHARE_BESIDE_LINES * with.span() ? with : range;
            }
        }
        return ValueScale.around(
                "peak pressure (gauge, " + amounts.symbol(amounts.units().pressure()) + ")", range, 0.04, 0.04);
    }

    private double shown(double pascal) {
        return amounts.units().pressure().fromSi(pascal);
    }

    private List<Curve> lines() {
        List<Curve> lines = new ArrayList<>();
        addUpright(lines, Curve.Role.WORKING_PRESSURE, sampled.workingPressureGauge());
        addUpright(lines, Curve.Role.RELIEF_SET, sampled.reliefSetGauge());
        addUpright(lines, Curve.Role.TARGET, sampled.limitGauge());
        for (double reading : READINGS) {
            double at = shown(sampled.quantileGauge(reading));
            double up = PERCENT * reading;
            lines.add(new Curve(Curve.Role.GUIDE, "", "", Points.straight(pressure.from(), up, at, up)));
            lines.add(new Curve(Curve.Role.GUIDE, "", "", Points.straight(at, 0, at, up)));
        }
        lines.add(new Curve(
                Curve.Role.CURVE, "share of the houses sampled whose peak is not above this pressure", "", curve()));
        return lines;
    }

    private void addUpright(List<Curve> lines, Curve.Role role, OptionalDouble gauge) {
        if (gauge.isEmpty()) {
            return;
        }
        double limit = gauge.getAsDouble();
        Statement said = switch (role) {
            case RELIEF_SET -> SpreadStory.reached(sampled, limit);
            case TARGET -> SpreadStory.beyondLimit(sampled, limit);
            default -> SpreadStory.exceeded(sampled, limit);
        };
        String label = said.text(amounts);
        double at = shown(gauge.getAsDouble());
        boolean off = !pressure.holds(at);
        double x = Math.max(pressure.from(), Math.min(at, pressure.to()));
        lines.add(new Curve(
                role, "", off ? label + " (off the scale)" : label, Points.straight(x, 0, x, off ? 0 : PERCENT)));
    }

    /** Steps at every peak; of very many samples only so many as can be seen. */
    private Points curve() {
        int steps = Math.min(MAX_STEPS, sampled.count());
        double[] across = new double[2 * steps + 2];
        double[] up = new double[2 * steps + 2];
        across[0] = pressure.from();
        double before = 0;
        for (int i = 0; i < steps; i++) {
            double share = (i + 1.0) / steps;
            double at = shown(sampled.quantileGauge(share));
            across[2 * i + 1] = at;
            up[2 * i + 1] = before;
            across[2 * i + 2] = at;
            up[2 * i + 2] = PERCENT * share;
            before = PERCENT * share;
        }
        across[2 * steps + 1] = pressure.to();
        up[2 * steps + 1] = PERCENT;
        return new Points(across, up);
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (double reading : READINGS) {
            double peak = sampled.quantileGauge(reading);
            String label = Math.round(PERCENT * reading) + " % peak at or below " + amounts.pressure(peak);
            marks.add(new Mark(Mark.Kind.READING, shown(peak), PERCENT * reading, label));
        }
        return marks;
    }

    private Optional<Bars> bars() {
        List<SampledPeaks.Influence> all = sampled.influences();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<Bars.Bar> bars = all.stream()
                .limit(MAX_BARS)
                .map(influence -> new Bars.Bar(amounts.units().spelled(influence.name()), influence.rankCorrelation()))
                .toList();
        String rest = all.size() > MAX_BARS ? " " + (all.size() - MAX_BARS) + " weaker ones are left out." : "";
        String note =
                "Rank correlation with the peak. Solid bar, +: more of it goes with a higher peak. Hatched bar, \u2212: with"
                        + " a lower one." + rest;
        return Optional.of(new Bars("What moves the peak most", note, bars));
    }
}

package io.github.heatswell.sizing;

import io.github.heatswell.units.PressureUnit;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The peaks at one precharge: those of the map's volumes, and of volumes between them where the peak rises steeply because the
 * vessel is full of water. For one thread.
 */
final class PeakColumn {

    /** Accuracy of a volume, in its logarithm. */
    private static final double ACCURACY = 1e-5;
    /** Accuracy of a pressure (bar). */
    private static final double PRESSURE_ACCURACY = 1e-6;

    private static final int ORDER = 4;
    private static final int MAX_RUNS = 100;
    /** How far (Pa) a run that reached the test pressure counts as above any limit, at least. */
    private static final double AT_LEAST = 1e4;

    /** Accuracy of where runs end early, in the logarithm of a volume. */
    private static final double ENDED_ACCURACY = 2e-3;

    private static final int MAX_ENDED_RUNS = 10;
    /** A fall of the peak from one volume to the next (share of the highest) that is looked at more closely. */
    private static final double STEEP = 0.1;

    private static final int MAX_STEEP_RUNS = 4;

    private final PeakEvaluator lab;
    private final double precharge;
    private final double atmosphere;
    private final TreeMap<Double, HeatUpCase.Peak> peaks = new TreeMap<>();

    /** Peaks at a precharge (Pa, gauge), by volume (m3). */
    PeakColumn(PeakEvaluator lab, double precharge, double[] volumes, HeatUpCase.Peak... peaks) {
        this.lab = lab;
        this.precharge = precharge;
        this.atmosphere = lab.atmosphere();
        for (int i = 0; i < volumes.length; i++) {
            this.peaks.put(volumes[i], peaks[i]);
        }
    }

    private HeatUpCase.Peak run(double volume) {
        return peaks.computeIfAbsent(volume, one -> lab.peak(one, precharge));
    }

    /** Searches for the lines at this precharge. */
    PeakMap.Column lines(OptionalDouble reliefGauge, OptionalDouble targetGauge) {
        TreeMap<Double, HeatUpCase.Peak> map = new TreeMap<>(peaks);
        double drip = smallestBelow(map, reliefGauge);
        double target = smallestBelow(map, targetGauge);
        double ended = ended();
        lookCloser(ended);
        double[] volumes = peaks.keySet().stream().mapToDouble(volume -> volume).toArray();
        double[] gauge = peaks.values().stream()
                .mapToDouble(peak -> peak.atLeast() ? Double.POSITIVE_INFINITY : peak.absolute() - atmosphere)
                .toArray();
        return new PeakMap.Column(drip, target, ended, volumes, gauge);
    }

    /** The smallest volume (m3) whose peak lies below a limit (Pa, gauge), NaN for none; the first of the map if even that does. */
    private double smallestBelow(TreeMap<Double, HeatUpCase.Peak> map, OptionalDouble limitGauge) {
        if (limitGauge.isEmpty()) {
            return Double.NaN;
        }
        double limit = limitGauge.getAsDouble() + atmosphere;
        double above = Double.NaN;
        for (Map.Entry<Double, HeatUpCase.Peak> entry : map.entrySet()) {
            if (excess(entry.getValue(), limit) < 0) {
                return Double.isNaN(above) ? entry.getKey() : between(above, entry.getKey(), limit);
            }
            above = entry.getKey();
        }
        return Double.NaN;
    }

    private double between(double above, double below, double limit) {
        BracketingNthOrderBrentSolver solver =
                new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, PRESSURE_ACCURACY, ORDER);
        double logarithm = solver.solve(
                MAX_RUNS,
                x -> PressureUnit.BAR.fromSi(excess(run(Math.exp(x)), limit)),
                Math.log(above),
                Math.log(below),
                AllowedSolution.BELOW_SIDE);
        return Math.exp(logarithm);
    }

    /** How far (Pa) a peak lies above a limit. One that would have risen further is never below. */
    private static double excess(HeatUpCase.Peak peak, double limit) {
        double excess = peak.absolute() - limit;
        return peak.atLeast() ? Math.max(excess, AT_LEAST) : excess;
    }

    /**
     * The smallest volume (m3) with which the run does not end early, NaN for none; the first of the map if even that does not.
     * Goes on along the straight line through the nearest peak and one that is not too near to it, and halves where that leads nowhere.
     */
    private double ended() {
        if (peaks.lastEntry().getValue().atLeast()) {
            return Double.NaN;
        }
        if (!peaks.firstEntry().getValue().atLeast()) {
            return peaks.firstKey();
        }
        for (int runs = 0; ; runs++) {
            double high = firstWhole();
            double low = peaks.lowerKey(high);
            double test = peaks.get(low).absolute();
            double line = reaching(test, high, peaks.ceilingKey(high * (1 + ENDED_ACCURACY)));
            boolean leads = line > low && line < high;
            if (leads && Math.log(high / line) < ENDED_ACCURACY) {
                return line;
            }
            if (Math.log(high / low) < ENDED_ACCURACY || runs == MAX_ENDED_RUNS) {
                return leads ? line : Math.sqrt(low * high);
            }
            // a little further, so that the run does not end early
            double next = line * (1 + ENDED_ACCURACY / 2);
            run(leads && next < high ? next : Math.sqrt(low * high));
        }
    }

    private double firstWhole() {
        double volume = peaks.firstKey();
        while (peaks.get(volume).atLeast()) {
            volume = peaks.higherKey(volume);
        }
        return volume;
    }

    /** Where the line through the peaks of two volumes (m3) reaches a pressure (Pa, absolute); NaN with one volume. */
    private double reaching(double absolute, double nearer, Double further) {
        if (further == null) {
            return Double.NaN;
        }
        double fall = peaks.get(nearer).absolute() - peaks.get(further).absolute();
        double width = Math.log(further / nearer);
        return nearer * Math.exp(-(absolute - peaks.get(nearer).absolute()) * width / fall);
    }

    /** Halves the widest and steepest step between two volumes, a few times. */
    private void lookCloser(double ended) {
        if (Double.isNaN(ended)) {
            return;
        }
        for (int runs = 0; runs < MAX_STEEP_RUNS; runs++) {
            double highest = peaks.firstEntry().getValue().absolute();
            double most = 0;
            double place = Double.NaN;
            Double before = firstWhole();
            for (Double after = peaks.higherKey(before); after != null; after = peaks.higherKey(before)) {
                double fall = peaks.get(before).absolute() - peaks.get(after).absolute();
                double size = fall * Math.log(after / before);
                if (fall > STEEP * highest && size > most) {
                    most = size;
                    place = Math.sqrt(before * after);
                }
                before = after;
            }
            if (Double.isNaN(place)) {
                return;
            }
            run(place);
        }
    }
}

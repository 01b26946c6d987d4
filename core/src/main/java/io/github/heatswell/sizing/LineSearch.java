package io.github.heatswell.sizing;

import io.github.heatswell.units.PressureUnit;
import java.util.OptionalDouble;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Where, at one precharge, a peak falls below a limit as the vessel grows.
 *
 * @param lab the heat-up
 * @param axes volumes and precharges
 * @param peaks the peaks of all cells, by volume and precharge
 * @param column the number of the precharge
 */
record LineSearch(PeakEvaluator lab, PeakMap.Axes axes, Peak[][] peaks, int column) {

    /** Accuracy of a volume, in its logarithm. */
    private static final double ACCURACY = 1e-5;
    /** Accuracy of a pressure (bar). */
    private static final double PRESSURE_ACCURACY = 1e-6;

    private static final int ORDER = 4;
    private static final int MAX_RUNS = 100;
    /** How far (Pa) a run that reached the test pressure counts as above any limit, at least. */
    private static final double AT_LEAST = 1e4;

    /** The smallest volume (m3) whose peak lies below a limit (Pa, gauge), NaN for none; the first if even that does. */
    double below(OptionalDouble limitGauge) {
        if (limitGauge.isEmpty()) {
            return Double.NaN;
        }
        double limit = limitGauge.getAsDouble() + lab.atmosphere();
        int row = 0;
        while (row < peaks.length && excess(peaks[row][column], limit) >= 0) {
            row++;
        }
        if (row == 0 || row == peaks.length) {
            return row == 0 ? axes.volumes()[0] : Double.NaN;
        }
        return between(row - 1, row, limit);
    }

    private double between(int low, int high, double limit) {
        BracketingNthOrderBrentSolver solver =
                new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, PRESSURE_ACCURACY, ORDER);
        double precharge = axes.precharges()[column];
        double logarithm = solver.solve(
                MAX_RUNS,
                x -> PressureUnit.BAR.fromSi(excess(lab.peak(Math.exp(x), precharge), limit)),
                Math.log(axes.volumes()[low]),
                Math.log(axes.volumes()[high]),
                AllowedSolution.BELOW_SIDE);
        return Math.exp(logarithm);
    }

    /** How far (Pa) a peak lies above a limit. One that would have risen further is never below. */
    private static double excess(Peak peak, double limit) {
        double excess = peak.absolute() - limit;
        return peak.atLeast() ? Math.max(excess, AT_LEAST) : excess;
    }
}

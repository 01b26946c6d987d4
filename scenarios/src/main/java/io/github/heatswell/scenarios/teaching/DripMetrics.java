package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunResult;

/** How fast, how long and from where a relief valve drips. */
final class DripMetrics {

    /** A drop from the end of a pipe (m3); our assumption. */
    static final double DROP = 0.25e-6;

    private static final double HOUR = 3600;
    /** This close to the reseat pressure a valve drips just above it (Pa). */
    private static final double CLOSE = 5e3;

    private DripMetrics() {}

    /** The flow shortly before the heater stops (m3/s). */
    static double lastFlow(RunResult run) {
        return RunMetrics.at(run, Channel.RELIEF_FLOW, beforeOff(run));
    }

    private static double beforeOff(RunResult run) {
        return RunMetrics.time(run, EventKind.HEATER_OFF) - 2 * step(run);
    }

    private static double afterOpening(RunResult run) {
        return RunMetrics.opening(run) + 2 * step(run);
    }

    private static double step(RunResult run) {
        return run.trace().grid().step();
    }

    /** What of the growth that the valve does not release the warm metal takes. */
    static double metalShare(RunResult run) {
        HeatUp heatUp = new HeatUp(run);
        return heatUp.metal() / (heatUp.growth() - RunMetrics.relieved(run));
    }

    /** What the hot water keeps of the heater's output (W). */
    static double heat(RunResult run) {
        double lost = run.system().tank().standingLoss()
                * (RunMetrics.setPoint(run) - run.system().site().roomTemperature());
        return run.system().heater().output() - lost;
    }

    /** How fast the water of the hot tank grows, as cold water (m3/s). */
    static double flow(RunResult run) {
        double asCold = 1 - WaterFacts.excess(RunMetrics.cold(run), RunMetrics.setPoint(run));
        return asCold * WaterFacts.growthFlow(heat(run), RunMetrics.setPoint(run));
    }

    /** How fast heated water outgrows its warming tank, as cold water (m3/s). */
    static double netFlow(RunResult run) {
        double metal = run.system().tank().shell().thermalGrowth();
        double beta = WaterFacts.expansivity(RunMetrics.setPoint(run));
        return flow(run) * (1 - metal / beta);
    }

    /** The most that comes out in any hour (m3). */
    static double fullestHour(RunResult run) {
        double most = 0;
        for (double from = 0; from + HOUR <= run.end(); from += step(run)) {
            double out = RunMetrics.at(run, Channel.RELIEVED_TOTAL, from + HOUR)
                    - RunMetrics.at(run, Channel.RELIEVED_TOTAL, from);
            most = Math.max(most, out);
        }
        return most;
    }

    /** The fastest drip over a whole sample (m3/s). */
    static double fastest(RunResult run) {
        double fastest = 0;
        for (int i = 3; i + 1 < run.trace().count(); i++) {
            if (run.trace().grid().time(i - 1) > RunMetrics.opening(run)) {
                double out = run.trace().value(Channel.RELIEVED_TOTAL, i)
                        - run.trace().value(Channel.RELIEVED_TOTAL, i - 1);
                fastest = Math.max(fastest, out / step(run));
            }
        }
        return fastest;
    }

    /** Whether nothing came out before the valve opened. */
    static boolean drySoFar(RunResult run) {
        int before = (int) (RunMetrics.opening(run) / step(run));
        return RunMetrics.opened(run) && run.trace().value(Channel.RELIEVED_TOTAL, before) == 0;
    }

    /** Whether the valve drips a little above its reseat pressure shortly before the heater stops. */
    static boolean dripsAboveReseat(RunResult run) {
        return drips(run, beforeOff(run));
    }

    /** Whether it does so shortly after it opened as well. */
    static boolean dripsJustAboveReseat(RunResult run) {
        return afterOpening(run) < beforeOff(run) && drips(run, afterOpening(run)) && drips(run, beforeOff(run));
    }

    private static boolean drips(RunResult run, double time) {
        double above = RunMetrics.at(run, Channel.GAUGE_READING, time) - RunMetrics.reseat(run);
        return above > 0 && above < CLOSE && RunMetrics.at(run, Channel.RELIEF_FLOW, time) > 0;
    }

    /** Whether the gauge is near the reseat pressure within two samples of the opening, after less than a twentieth of all. */
    static boolean fallsFast(RunResult run) {
        double after = afterOpening(run);
        return RunMetrics.at(run, Channel.GAUGE_READING, after) - RunMetrics.reseat(run) < CLOSE
                && RunMetrics.at(run, Channel.RELIEVED_TOTAL, after) < 0.05 * RunMetrics.relieved(run);
    }

    static boolean dripsUnheated(RunResult run) {
        for (int i = 0; i < run.trace().count(); i++) {
            if (run.trace().value(Channel.HEATER_POWER, i) == 0 && run.trace().value(Channel.RELIEF_FLOW, i) > 0) {
                return true;
            }
        }
        return false;
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;

/**
 * Where the growth of a heat-up from cold goes, by the properties of water and walls alone, and how its drips run. SI units;
 * volumes are counted as cold water, as what a relief valve or the mains receive is.
 *
 * @param run the run of the heat-up
 */
record DripFigures(RunResult run) {

    /** A drop from the end of a pipe (m3). */
    static final double DROP = 0.25e-6;

    private static final double HOUR = 3600;
    /** This close to the reseat pressure a valve drips just above it (Pa). */
    private static final double CLOSE = 5e3;

    private RunFigures figures() {
        return new RunFigures(run);
    }

    /** What the water of the tank has no room for once it is hot. */
    double growth() {
        return volume() * WaterFacts.excess(figures().cold(), figures().setPoint());
    }

    /** What the tank gains as its metal grows warm. */
    double metal() {
        double warming = figures().setPoint() - figures().cold();
        return hot() * run.system().tank().shell().thermalGrowth() * warming;
    }

    /** What is gained up to the reseat pressure as the tank stretches and its water is squeezed. */
    double stretch() {
        double softness = WaterFacts.compressibility(figures().setPoint())
                + run.system().tank().shell().compliance();
        return hot() * softness * (figures().reseat() - figures().supply());
    }

    /** What the relief valve must release by the time it reseats. */
    double leftOver() {
        return growth() - metal() - stretch();
    }

    /** What of the growth that the valve does not release the warm metal takes. */
    double metalShare() {
        return metal() / (growth() - figures().relieved());
    }

    /** The hot tank, counted as cold water. */
    private double hot() {
        return volume() - growth();
    }

    private double volume() {
        return run.system().tank().volume();
    }

    /** What the hot water keeps of the heater's output (W). */
    double heat() {
        double lost = run.system().tank().standingLoss()
                * (figures().setPoint() - run.system().site().roomTemperature());
        return run.system().heater().output() - lost;
    }

    /** How fast the water of the hot tank grows. */
    double flow() {
        double asCold = 1 - WaterFacts.excess(figures().cold(), figures().setPoint());
        return asCold * WaterFacts.growthFlow(heat(), figures().setPoint());
    }

    /** How fast heated water outgrows its warming tank. */
    double netFlow() {
        double metal = run.system().tank().shell().thermalGrowth();
        return flow() * (1 - metal / WaterFacts.expansivity(figures().setPoint()));
    }

    /** The flow shortly before the heater stops. */
    double lastFlow() {
        return figures().at(Channel.RELIEF_FLOW, beforeOff());
    }

    private double beforeOff() {
        return figures().time(Event.Kind.HEATER_OFF) - 2 * step();
    }

    private double afterOpening() {
        return figures().opening() + 2 * step();
    }

    private double step() {
        return run.trace().grid().step();
    }

    private double released(double time) {
        return figures().at(Channel.RELIEVED_TOTAL, time);
    }

    /** What comes out in a day, on average. */
    double daily() {
        return figures().relieved() / run.end() * 24 * HOUR;
    }

    /** The most that comes out in any hour. */
    double fullestHour() {
        double most = 0;
        for (double from = 0; from + HOUR <= run.end(); from += step()) {
            most = Math.max(most, released(from + HOUR) - released(from));
        }
        return most;
    }

    /** The fastest drip over a whole sample. */
    double fastest() {
        double fastest = 0;
        for (int i = 3; i + 1 < run.trace().count(); i++) {
            double before = run.trace().grid().time(i - 1);
            if (before > figures().opening()) {
                fastest = Math.max(fastest, (released(before + step()) - released(before)) / step());
            }
        }
        return fastest;
    }

    /** Whether nothing came out before the valve opened. */
    boolean drySoFar() {
        int before = (int) (figures().opening() / step());
        return figures().opened() && run.trace().value(Channel.RELIEVED_TOTAL, before) == 0;
    }

    /** Whether the valve drips a little above its reseat pressure shortly before the heater stops. */
    boolean dripsAboveReseat() {
        return drips(beforeOff());
    }

    /** Whether it does so shortly after it opened as well. */
    boolean dripsJustAboveReseat() {
        return afterOpening() < beforeOff() && drips(afterOpening()) && drips(beforeOff());
    }

    private boolean drips(double time) {
        double above = figures().at(Channel.GAUGE_READING, time) - figures().reseat();
        return above > 0 && above < CLOSE && figures().at(Channel.RELIEF_FLOW, time) > 0;
    }

    /** Whether the gauge is near the reseat pressure within two samples of the opening, after less than a twentieth of all. */
    boolean fallsFast() {
        return figures().at(Channel.GAUGE_READING, afterOpening()) - figures().reseat() < CLOSE
                && released(afterOpening()) < 0.05 * figures().relieved();
    }

    boolean dripsUnheated() {
        for (int i = 0; i < run.trace().count(); i++) {
            if (run.trace().value(Channel.HEATER_POWER, i) == 0 && run.trace().value(Channel.RELIEF_FLOW, i) > 0) {
                return true;
            }
        }
        return false;
    }
}

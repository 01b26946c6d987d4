package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.RunResult;

/**
 * Where the growth of a heat-up from cold goes, worked out from properties of water and walls alone. All volumes are counted as
 * cold water, as what a relief valve or the mains receive is.
 *
 * @param run the run of the heat-up
 */
record HeatUp(RunResult run) {

    /** What the water of the tank has no room for once it is hot (m3). */
    double growth() {
        return volume() * WaterFacts.excess(RunMetrics.cold(run), RunMetrics.setPoint(run));
    }

    /** What the tank gains as its metal grows warm (m3). */
    double metal() {
        double warming = RunMetrics.setPoint(run) - RunMetrics.cold(run);
        return hot() * run.system().tank().shell().thermalGrowth() * warming;
    }

    /** What is gained as the tank stretches and its water is squeezed, from the supply pressure to another (Pa gauge; m3). */
    double stretch(double gauge) {
        double softness = WaterFacts.compressibility(RunMetrics.setPoint(run))
                + run.system().tank().shell().compliance();
        return hot() * softness * (gauge - RunMetrics.supply(run));
    }

    /** What the relief valve must release by the time it reseats (m3). */
    double released() {
        return growth() - metal() - stretch(RunMetrics.reseat(run));
    }

    /** The hot tank, counted as cold water (m3). */
    private double hot() {
        return volume() - growth();
    }

    private double volume() {
        return run.system().tank().volume();
    }
}

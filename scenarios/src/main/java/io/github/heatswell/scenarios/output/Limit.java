package io.github.heatswell.scenarios.output;

import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.RunResult;
import java.util.Comparator;
import java.util.Optional;

/**
 * A pressure that a run should stay below, and how far it stayed away from it.
 *
 * @param name what sets the limit
 * @param gauge the limit (Pa, gauge)
 * @param margin the limit less the highest pressure of the run (Pa): what was left, or below 0 by how much it was passed
 */
record Limit(String name, double gauge, double margin) {

    /** Pressures closer than this (Pa) are one and the same: events are located to about this. */
    private static final double SAME = 1;

    /** The set pressure of the relief valve that opens first; empty if there is no relief valve. */
    static Optional<Limit> reliefSet(RunResult result) {
        double air = result.system().site().atmosphere();
        return result.system().reliefValves().stream()
                .min(Comparator.comparingDouble(valve -> valve.opens().gauge(air)))
                .map(valve -> of(valve, result));
    }

    private static Limit of(ReliefValve valve, RunResult result) {
        return of(valve.name(), valve.opens().gauge(result.system().site().atmosphere()), result);
    }

    /** The working pressure of the tank. */
    static Limit workingPressure(RunResult result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().workingPressure().gauge(air), result);
    }

    /** The test pressure of the tank, where the model ends. */
    static Limit testPressure(RunResult result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().testPressureAbsolute(air) - air, result);
    }

    private static Limit of(String name, double gauge, RunResult result) {
        double peak = result.gauge(result.extremes().highestPressure().value());
        return new Limit(name, gauge, gauge - peak);
    }

    /** Whether the run came up to the limit. */
    boolean reached() {
        return margin <= SAME;
    }

    /** Whether the run went beyond the limit. */
    boolean passed() {
        return margin < -SAME;
    }
}

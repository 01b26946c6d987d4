package io.github.heatswell.scenarios.output;

import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.RunSummary;
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

    /** What a metre of cold water weighs on the water below (Pa/m). */
    private static final double WATER_COLUMN = 999 * 9.80665;

    /** The set pressure of the relief valve that opens first, as it stands at the drain cock; empty if there is no relief valve. */
    static Optional<Limit> reliefSet(RunSummary result) {
        double air = result.system().site().atmosphere();
        return result.system().reliefValves().stream()
                .min(Comparator.comparingDouble(valve -> opens(valve, air)))
                .map(valve -> of(valve, result));
    }

    private static Limit of(ReliefValve valve, RunSummary result) {
        return of(valve.name(), opens(valve, result.system().site().atmosphere()), result);
    }

    /** The gauge pressure (Pa) at the drain cock at which a valve opens: a valve above it sees less. */
    private static double opens(ReliefValve valve, double air) {
        return valve.opens().gauge(air) + WATER_COLUMN * valve.height();
    }

    /** The working pressure of the tank. */
    static Limit workingPressure(RunSummary result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().workingPressure().gauge(air), result);
    }

    /** The test pressure of the tank, where the model ends. */
    static Limit testPressure(RunSummary result) {
        double air = result.system().site().atmosphere();
        return of("tank", result.system().tank().testPressureAbsolute(air) - air, result);
    }

    private static Limit of(String name, double gauge, RunSummary result) {
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

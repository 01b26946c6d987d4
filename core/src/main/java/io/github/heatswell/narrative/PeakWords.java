package io.github.heatswell.narrative;

import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.QuantityFormat;

/** How high the pressure rose in one run, in words. */
public final class PeakWords {

    /** A pressure that moves less than this (Pa) is steady. */
    private static final double STEADY = 5_000;

    private final RunSummary summary;
    private final QuantityFormat amounts;

    public PeakWords(RunSummary summary, QuantityFormat amounts) {
        this.summary = summary;
        this.amounts = amounts;
    }

    /** The peak against the lowest set pressure of the valves that can open. */
    public String sentence() {
        HotWaterSystem system = summary.system();
        double atmosphere = system.site().atmosphere();
        String start = isSteady(summary.extremes())
                ? "pressure stays at "
                        + amounts.pressures(
                                summary.gauge(
                                        summary.extremes().lowestPressure().value()),
                                highest())
                : "pressure peaks at " + amounts.pressure(highest());
        return system.reliefValves().stream()
                .filter(valve -> valve.condition() != ReliefFault.Condition.BLOCKED)
                .mapToDouble(valve ->
                        system.atDrainCock(valve.setPressure(), valve.height()).gauge(atmosphere))
                .min()
                .stream()
                .mapToObj(set -> start + ", " + against(set) + " the relief set pressure")
                .findFirst()
                .orElse(start + withoutValve());
    }

    /** Whether a pressure hardly moves: a gauge would not show it. */
    public static boolean isSteady(Extremes extremes) {
        return extremes.highestPressure().value() - extremes.lowestPressure().value() < STEADY;
    }

    /** The peak against what the tank's maker allows. */
    public String overWorkingPressure() {
        return "pressure peaks at " + amounts.pressure(highest()) + ", " + against(workingPressure())
                + (summary.system().tank().workingPressureGiven()
                        ? " the tank's working pressure"
                        : " the " + amounts.pressure(workingPressure()) + " assumed for the tank");
    }

    /** Whether the highest pressure lies above what the tank's maker allows. */
    public boolean exceedsWorkingPressure() {
        return highest() > workingPressure() * (1 + 1e-9);
    }

    private String withoutValve() {
        return summary.system().reliefValves().isEmpty()
                ? "; there is no relief valve"
                : "; the relief valve is blocked";
    }

    private double workingPressure() {
        return summary.system()
                .tank()
                .workingPressure()
                .gauge(summary.system().site().atmosphere());
    }

    private double highest() {
        return summary.peak().value();
    }

    private String against(double gauge) {
        double peak = highest();
        double difference = Math.abs(gauge - peak);
        String side = peak > gauge ? "above" : "below";
        return (amounts.shows(difference) ? amounts.pressureDifference(difference) + " " : "just ") + side;
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.Extremes;
import io.github.heatswell.result.RunSummary;

/** How high the pressure rose in one run, in words. */
final class PeakWords {

    private final RunSummary summary;
    private final Amounts amounts;

    PeakWords(RunSummary summary, Amounts amounts) {
        this.summary = summary;
        this.amounts = amounts;
    }

    /** The peak against the lowest set pressure of the valves that can open. */
    String sentence() {
        Extremes extremes = summary.extremes();
        HotWaterSystem system = summary.system();
        double atmosphere = system.site().atmosphere();
        boolean steady = amounts.decimalsToShow(extremes.highestPressure().value()
                        - extremes.lowestPressure().value())
                != 0;
        String start = steady ? "pressure stays at " : "pressure peaks at ";
        return system.reliefValves().stream()
                .filter(valve -> valve.condition() != ReliefValve.Condition.BLOCKED)
                .mapToDouble(valve ->
                        system.atDrainCock(valve.opens(), valve.height()).gauge(atmosphere))
                .min()
                .stream()
                .mapToObj(set -> start + against(set) + " the relief set pressure")
                .findFirst()
                .orElse(start + amounts.foundPressure(highest()) + withoutValve());
    }

    /** The peak against what the tank's maker allows. */
    String overWorkingPressure() {
        return "pressure peaks at " + against(workingPressure()) + " the tank's working pressure";
    }

    /** Whether the highest pressure lies above what the tank's maker allows. */
    boolean exceedsWorkingPressure() {
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
        return summary.gauge(summary.extremes().highestPressure().value());
    }

    private String against(double gauge) {
        double peak = highest();
        double difference = Math.abs(gauge - peak);
        String side = peak > gauge ? "above" : "below";
        int decimals = amounts.decimalsToShow(difference);
        return decimals < 0
                ? amounts.foundPressure(peak) + ", just " + side
                : amounts.foundPressure(peak, decimals) + ", " + amounts.foundPressure(difference, decimals) + " "
                        + side;
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.charts.EventSpans.Stretch;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.Pressure;
import java.util.List;
import java.util.stream.Stream;

/**
 * When a relief valve ran on water from the supply: not the growth of heated water kept it open, but a supply that stands
 * above the pressure at which it closes. What it gives off then has nothing to do with heating.
 */
final class FedRelief {

    /** A valve that is open for less than this (s) has not run. */
    private static final double SHORTEST = 60;

    /** Pressures this close (Pa) are one. */
    private static final double SAME = 100;

    private static final double DAY = 86_400;

    private final RunSummary summary;
    private final HotWaterSystem system;

    FedRelief(RunSummary summary) {
        this.summary = summary;
        this.system = summary.system();
    }

    /** The stretches, of all valves together. */
    List<Stretch> stretches() {
        List<Stretch> feeding = new EventSpans(summary).between(EventKind.SUPPLY_OPENED, EventKind.SUPPLY_CLOSED);
        return new EventSpans(summary)
                .between(EventKind.RELIEF_OPENED, EventKind.RELIEF_RESEATED, Event::openedByPressure).stream()
                        .filter(open -> open.length() >= SHORTEST && fed(open, feeding))
                        .toList();
    }

    /** Whether the supply opens a valve by itself, or only keeps open what heating has opened. */
    boolean supplyOpensAValve() {
        return stretches().stream().anyMatch(open -> highestSupply(open) >= lowestSet() - SAME);
    }

    private boolean fed(Stretch open, List<Stretch> feeding) {
        double supply = highestSupply(open);
        boolean joined =
                feeding.stream().anyMatch(feed -> feed.from() <= open.to() - SHORTEST && feed.to() >= open.from());
        return supply >= lowestSet() - SAME || supply > lowestReseat() && joined;
    }

    private double lowestSet() {
        return sound().mapToDouble(valve -> gauge(valve.opens(), valve)).min().orElse(Double.POSITIVE_INFINITY);
    }

    private double lowestReseat() {
        return sound().mapToDouble(valve -> gauge(valve.reseats(), valve)).min().orElse(Double.POSITIVE_INFINITY);
    }

    private double gauge(Pressure atValve, ReliefValve valve) {
        return system.atDrainCock(atValve, valve.height()).gauge(system.site().atmosphere());
    }

    private Stream<ReliefValve> sound() {
        return system.reliefValves().stream()
                .filter(valve -> valve.condition() != ReliefValve.Condition.BLOCKED
                        && valve.condition() != ReliefValve.Condition.STUCK_OPEN);
    }

    /**
     * The highest static pressure (Pa, gauge) of the supply in a stretch. The timetable runs straight between its entries,
     * so it is taken on at the ends or at an entry.
     */
    private double highestSupply(Stretch open) {
        double start = system.start().timeOfDay();
        double highest = Math.max(supply(start + open.from()), supply(start + open.to()));
        for (double entry : system.supply().street().entries().keySet()) {
            double next = entry + DAY * Math.ceil((start + open.from() - entry) / DAY);
            if (next <= start + open.to()) {
                highest = Math.max(highest, supply(next));
            }
        }
        return highest;
    }

    private double supply(double clock) {
        double atmosphere = system.site().atmosphere();
        return system.supply().staticAbsolute(clock, atmosphere) - atmosphere;
    }
}

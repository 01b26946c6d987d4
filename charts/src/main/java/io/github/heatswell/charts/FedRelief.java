package io.github.heatswell.charts;

import io.github.heatswell.charts.EventSpans.Stretch;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Supply.Arrangement;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.Pressure;
import java.util.List;

/**
 * When a relief valve ran on water from the supply: not the growth of heated water kept it open, but a supply that stands
 * above the pressure at which it closes. What it gives off then has nothing to do with heating.
 */
final class FedRelief {

    /** A valve that is open for less than this (s) has not run. */
    private static final double SHORTEST = 60;

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
                .between(EventKind.RELIEF_OPENED, EventKind.RELIEF_RESEATED, this::byPressure).stream()
                        .filter(open -> open.length() >= SHORTEST && fed(open, feeding))
                        .toList();
    }

    /** Whether the supply at its highest opens a valve, or only keeps open what heating has opened. */
    boolean supplyOpensAValve() {
        double highest = highestSupply();
        return system.reliefValves().stream()
                .anyMatch(valve -> canOpen(valve) && highest >= AtDrainCock.opens(system, valve) - 1);
    }

    private boolean byPressure(Event opening) {
        return OpeningCause.of(system, opening)
                .filter(cause -> cause == OpeningCause.PRESSURE)
                .isPresent();
    }

    private boolean fed(Stretch open, List<Stretch> feeding) {
        boolean kept = system.reliefValves().stream()
                .anyMatch(valve -> canOpen(valve) && highestSupply() > AtDrainCock.reseats(system, valve));
        return kept
                && (supplyOpensAValve()
                        || feeding.stream().anyMatch(feed -> feed.from() <= open.to() && feed.to() >= open.from()));
    }

    private static boolean canOpen(ReliefValve valve) {
        return valve.condition() != ReliefValve.Condition.BLOCKED;
    }

    /** The highest static pressure (Pa, gauge) the supply has in a day. */
    private double highestSupply() {
        double atmosphere = system.site().atmosphere();
        double street = system.supply().street().entries().values().stream()
                .mapToDouble((Pressure pressure) -> pressure.gauge(atmosphere))
                .max()
                .orElseThrow();
        return system.supply().arrangement() == Arrangement.REDUCING_VALVE
                ? system.supply()
                        .reducingValve()
                        .map(valve -> Math.min(street, valve.set().gauge(atmosphere) + valve.lockUpRise()))
                        .orElse(street)
                : street;
    }
}

package io.github.heatswell.narrative;

import io.github.heatswell.result.Interval;
import io.github.heatswell.result.Phase;
import io.github.heatswell.result.RunSummary;
import java.util.List;

/**
 * When a relief valve ran on water from the supply: not the growth of heated water kept it open, but a supply that stands
 * above the pressure at which it closes. What it discharges then has nothing to do with heating.
 */
public final class FedRelief {

    /** A valve that the supply feeds for less than this (s) has not run on it. */
    private static final double SHORTEST = 60;

    private final RunSummary summary;
    private final List<Interval> feeding;

    public FedRelief(RunSummary summary) {
        this.summary = summary;
        feeding = summary.intervals(Phase.SUPPLY_FEEDING);
    }

    /** The stretches, of all valves together. */
    public List<Interval> stretches() {
        return Interval.joined(fed());
    }

    /** Whether the supply opens a valve by itself, or only keeps open what heating has opened. */
    public boolean supplyOpensAValve() {
        return fed().stream().anyMatch(open -> feeding.stream().anyMatch(feed -> feed.contains(open.from())));
    }

    /** The openings of single valves. One that hot water holds open is fed too, but that is not why it runs. */
    private List<Interval> fed() {
        return summary.intervals(Phase.RELIEF_OPEN).stream()
                .filter(this::byPressure)
                .filter(open -> feeding.stream().anyMatch(feed -> open.overlap(feed) >= SHORTEST))
                .toList();
    }

    private boolean byPressure(Interval open) {
        return summary.openedByTemperature(open.device()).noneMatch(event -> open.contains(event.time()));
    }
}

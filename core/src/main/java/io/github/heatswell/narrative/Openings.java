package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;

/** How the relief valves of a run behaved. */
public final class Openings {

    private final RunSummary summary;

    public Openings(RunSummary summary) {
        this.summary = summary;
    }

    /** How often all valves opened together. */
    public int count() {
        return summary.totals().relief().stream()
                .mapToInt(ReliefTotal::openings)
                .sum();
    }

    /** The valves that opened, in the order of the description. */
    public List<ReliefTotal> valves() {
        return summary.totals().relief().stream()
                .filter(relief -> relief.openings() > 0)
                .toList();
    }

    /** The first opening of any valve. */
    public Optional<Event> first() {
        return summary.first(EventKind.RELIEF_OPENED);
    }

    /** When a valve first opened, in words. */
    public String firstAt(QuantityFormat amounts) {
        return When.of(summary.system(), summary.end(), amounts)
                .at(first().orElseThrow().time());
    }

    /** How often, in words: {@code once}, {@code twice} or {@code 71 times}. */
    public static String times(int count) {
        return switch (count) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> count + " times";
        };
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.ReliefTotal;
import io.github.heatswell.result.RunResult;
import java.util.List;
import java.util.Optional;

/** How the relief valves of a run behaved. */
final class Openings {

    private final RunResult result;

    Openings(RunResult result) {
        this.result = result;
    }

    /** How often all valves opened together. */
    int count() {
        return result.totals().relief().stream().mapToInt(ReliefTotal::openings).sum();
    }

    /** The valves that opened, in the order of the description. */
    List<ReliefTotal> valves() {
        return result.totals().relief().stream()
                .filter(relief -> relief.openings() > 0)
                .toList();
    }

    /** The first opening of any valve. */
    Optional<Event> first() {
        return result.first(EventKind.RELIEF_OPENED);
    }

    /** When a valve first opened, in words. */
    String firstAfter() {
        return Times.after(first().orElseThrow().time());
    }

    /** How often, in words: {@code once}, {@code twice} or {@code 71 times}. */
    static String times(int count) {
        return switch (count) {
            case 1 -> "once";
            case 2 -> "twice";
            default -> count + " times";
        };
    }
}

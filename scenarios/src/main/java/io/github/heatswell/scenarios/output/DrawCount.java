package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import java.util.List;
import java.util.stream.IntStream;

/** Counts draws in the events of a run. */
final class DrawCount {

    /** Events closer than this (s) are one moment. */
    private static final double SAME = 1e-3;

    private DrawCount() {}

    static long started(List<Event> events) {
        return events.stream()
                .filter(event -> event.kind() == EventKind.DRAW_STARTED)
                .count();
    }

    /** Taps that were closed only because the next draw began. A draw of known volume cannot run into the next one. */
    static long cutShort(List<Event> events) {
        List<Event> taps = events.stream()
                .filter(event -> event.kind() == EventKind.DRAW_STARTED || event.kind() == EventKind.DRAW_ENDED)
                .toList();
        return IntStream.range(1, taps.size())
                .filter(i -> taps.get(i).kind() == EventKind.DRAW_STARTED
                        && taps.get(i - 1).kind() == EventKind.DRAW_ENDED
                        && taps.get(i).time() - taps.get(i - 1).time() < SAME)
                .count();
    }
}

package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import java.util.List;

/** Counts draws in the events of a run. */
final class DrawCount {

    private DrawCount() {}

    static long started(List<Event> events) {
        return events.stream()
                .filter(event -> event.kind() == EventKind.DRAW_STARTED)
                .count();
    }
}

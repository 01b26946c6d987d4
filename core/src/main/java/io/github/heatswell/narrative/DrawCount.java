package io.github.heatswell.narrative;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import java.util.List;

/** Counts draws in the events of a run. */
public final class DrawCount {

    private DrawCount() {}

    public static long started(List<Event> events) {
        return events.stream()
                .filter(event -> event.kind() == EventKind.DRAW_STARTED)
                .count();
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunSummary;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Stretches of time between two kinds of event. */
final class EventSpans {

    private final RunSummary summary;

    EventSpans(RunSummary summary) {
        this.summary = summary;
    }

    /** From one kind to the other; where several devices overlap, from the first on to the last off. */
    List<Stretch> between(EventKind on, EventKind off) {
        return between(on, off, event -> true);
    }

    /** The same for some of the events that begin a stretch. */
    List<Stretch> between(EventKind on, EventKind off, Predicate<Event> begins) {
        List<Stretch> stretches = new ArrayList<>();
        Set<String> running = new HashSet<>();
        double since = 0;
        for (Event event : summary.events()) {
            if (event.kind() == on && begins.test(event)) {
                since = running.isEmpty() ? event.time() : since;
                running.add(event.device());
            } else if (event.kind() == off && running.remove(event.device()) && running.isEmpty()) {
                stretches.add(new Stretch(since, event.time()));
            }
        }
        if (!running.isEmpty()) {
            stretches.add(new Stretch(since, summary.end()));
        }
        return stretches;
    }

    /** How long stretches are together (s). */
    static double total(List<Stretch> stretches) {
        return stretches.stream().mapToDouble(Stretch::length).sum();
    }

    /**
     * A stretch of time.
     *
     * @param from its start (s since the start of the run)
     * @param to its end (s)
     */
    record Stretch(double from, double to) {

        double length() {
            return to - from;
        }

        boolean holds(double time) {
            return time >= from && time <= to;
        }
    }
}

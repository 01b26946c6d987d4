package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.system.HotWaterSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What was learned while reading a scenario.
 *
 * @param origin where it comes from
 * @param tree what its text says once all changes are made
 * @param house makes its house with certain values in place of the uncertain ones; for any number of threads
 * @param assumptions what was filled in
 * @param uncertain what is known only so well
 */
record Reading(
        Origin origin,
        Mapping tree,
        Function<double[], HotWaterSystem> house,
        List<Assumption> assumptions,
        List<UncertainField> uncertain) {

    Reading {
        assumptions = List.copyOf(assumptions);
        uncertain = List.copyOf(uncertain);
    }

    /** Nothing was read: a program made the scenario. */
    static Reading nothing() {
        Mapping empty = new Mapping(List.of(), Location.first());
        return new Reading(
                new Origin("", "", empty, List.of()),
                empty,
                values -> {
                    throw new IllegalStateException("a scenario made by a program has no uncertain values");
                },
                List.of(),
                List.of());
    }

    /** The same, without what was filled in for a field. */
    Reading without(String field) {
        List<Assumption> kept = assumptions.stream()
                .filter(assumption -> !assumption.field().equals(field))
                .toList();
        return new Reading(origin, tree, house, kept, uncertain);
    }

    /**
     * Where a scenario comes from.
     *
     * @param source the file or name its text came from, for messages
     * @param text its text, empty if a program made it
     * @param tree what the text says; has no entries if a program made the scenario
     * @param changes what was changed, in order
     */
    record Origin(String source, String text, Mapping tree, List<Change> changes) {

        Origin {
            changes = List.copyOf(changes);
        }

        /** The same with more changes. */
        Origin changed(List<Change> more) {
            List<Change> all = new ArrayList<>(changes);
            all.addAll(more);
            return new Origin(source, text, tree, all);
        }
    }
}

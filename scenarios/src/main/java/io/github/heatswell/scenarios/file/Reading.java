package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.fault.Location;
import java.util.List;

/**
 * What was found out while a scenario was read.
 *
 * @param origin where it comes from
 * @param tree what its text says once all changes are made
 * @param house how its house is put together
 * @param assumptions what was filled in
 * @param uncertain what is known only so well
 */
record Reading(
        Origin origin, Mapping tree, BoundHouse house, List<Assumption> assumptions, List<UncertainField> uncertain) {

    Reading {
        assumptions = List.copyOf(assumptions);
        uncertain = List.copyOf(uncertain);
    }

    /** Nothing was read: a program made the scenario. */
    static Reading nothing() {
        Mapping empty = new Mapping(List.of(), Location.first());
        return new Reading(new Origin("", "", empty, List.of()), empty, new BoundHouse(), List.of(), List.of());
    }

    /** The same, without what was filled in for a field. */
    Reading without(String field) {
        List<Assumption> kept = assumptions.stream()
                .filter(assumption -> !assumption.field().equals(field))
                .toList();
        return new Reading(origin, tree, house, kept, uncertain);
    }
}

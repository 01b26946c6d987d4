package io.github.heatswell.scenarios.file;

import io.github.heatswell.place.Customs;
import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

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
                new Origin("", "", empty, List.of(), Optional.empty()),
                empty,
                values -> {
                    throw new IllegalStateException("a scenario made by a program has no uncertain values");
                },
                List.of(),
                List.of());
    }

    /** The unit system that was asked for, or else that of the place, or else that of most quantities in the text. */
    UnitSystem units(Place place) {
        return origin.asked()
                .or(() -> place.customs().map(Customs::units))
                .orElseGet(() -> UnitSystem.ofMost(units(tree).toList()));
    }

    private static Stream<Unit> units(Node node) {
        if (node instanceof Mapping mapping) {
            return mapping.entries().stream().flatMap(entry -> units(entry.value()));
        }
        return node instanceof Items list
                ? list.items().stream().flatMap(Reading::units)
                : QuantityReader.units(((Scalar) node).text()).stream();
    }

    /** Every value of the text, once all changes are made, by its field, such as {@code relief[0].opens}. */
    Map<String, String> given() {
        Map<String, String> given = new LinkedHashMap<>();
        give("", tree, given);
        return given;
    }

    private static void give(String path, Node node, Map<String, String> given) {
        if (node instanceof Mapping mapping) {
            mapping.entries()
                    .forEach(entry -> give(
                            (path.isEmpty() ? "" : path + ".") + entry.key().text(), entry.value(), given));
        } else if (node instanceof Items list) {
            for (int i = 0; i < list.items().size(); i++) {
                give(path + "[" + i + "]", list.items().get(i), given);
            }
        } else {
            given.put(path, ((Scalar) node).text());
        }
    }

    /** The same for a reader who wants other units. */
    Reading in(UnitSystem units) {
        Origin wanted = new Origin(origin.source(), origin.text(), origin.tree(), origin.changes(), Optional.of(units));
        return new Reading(wanted, tree, house, assumptions, uncertain);
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
     * @param asked the unit system asked for, if any
     */
    record Origin(String source, String text, Mapping tree, List<Change> changes, Optional<UnitSystem> asked) {

        Origin {
            changes = List.copyOf(changes);
        }

        /** The same with more changes. */
        Origin changed(List<Change> more) {
            List<Change> all = new ArrayList<>(changes);
            all.addAll(more);
            return new Origin(source, text, tree, all, asked);
        }
    }
}

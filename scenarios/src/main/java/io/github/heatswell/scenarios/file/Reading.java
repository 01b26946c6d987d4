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
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    private static final String SAMPLE = "run.sample";

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

    /** The unit system of the place, or else that of most quantities in the text; kilopascals where the text has them. */
    UnitSystem units(Place place) {
        List<Unit> used = units(tree).toList();
        return place.customs()
                .map(Customs::units)
                .orElse(UnitSystem.ofMost(used))
                .withPressuresOf(used);
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

    /** The same for a reader who wants other units, also once more is changed. */
    Reading in(UnitSystem units) {
        Change wanted = new Change("units", units.name().toLowerCase(Locale.ROOT));
        Origin from = new Origin(origin.source(), origin.text(), saying(origin.tree(), wanted), origin.changes());
        return new Reading(from, saying(tree, wanted), house, assumptions, uncertain);
    }

    /** The same with a run that is sampled differently. */
    Reading sampledEvery(Duration sample) {
        Change wanted = new Change(
                SAMPLE,
                BigDecimal.valueOf(sample.toNanos(), 9).stripTrailingZeros().toPlainString() + " s");
        List<Assumption> kept = assumptions.stream()
                .filter(assumption -> !assumption.field().equals(SAMPLE))
                .toList();
        return new Reading(origin, saying(tree, wanted), house, kept, uncertain);
    }

    /** A text that says one thing differently; what a program made has none. */
    private static Mapping saying(Mapping tree, Change wanted) {
        return tree.entries().isEmpty() ? tree : ChangedTree.of(tree, wanted, Location.first());
    }

    /**
     * Where a scenario comes from.
     *
     * @param source the file or name its text came from, for messages
     * @param text its text, empty if a program made it
     * @param tree what the text says, in the units asked for; has no entries if a program made the scenario
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

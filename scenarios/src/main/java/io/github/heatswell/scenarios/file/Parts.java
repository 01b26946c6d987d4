package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Binds parts of a file that have keys of their own. */
final class Parts {

    private Parts() {}

    /** What one part describes. */
    static <T> BoundSection<?, T> one(Section<?, T> section, Place place, Node node, Findings findings) {
        return binder(section, place, node, findings).bind();
    }

    /** What the items of a list describe; nothing if there are more of them than there may be. */
    static <T> List<BoundSection<?, T>> list(
            Section<?, T> section, int most, Place place, Items items, Findings findings) {
        int number = items.items().size();
        if (number > most) {
            findings.wrong(place.path(), place.at(), "has " + number + " items; up to " + most + " are allowed");
            return List.of();
        }
        List<BoundSection<?, T>> things = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            Node item = items.items().get(i);
            Place part = new Place(place.path() + "[" + i + "]", item.at());
            findings.stands(part.path(), item.at());
            things.add(one(section, part, item, findings));
        }
        return things;
    }

    /** A binder of one part, ready to bind. */
    static <B, T> SectionBinder<B, T> binder(Section<B, T> section, Place place, Node node, Findings findings) {
        return new SectionBinder<>(section, place, keys(section, place, node, findings), findings);
    }

    private static Map<String, Node> keys(Section<?, ?> section, Place place, Node node, Findings findings) {
        if (node instanceof Mapping mapping) {
            return Keys.known(mapping, section.keys(), place, findings);
        }
        findings.wrong(
                place.path(),
                place.at(),
                "needs keys and values, not " + node.kind() + "; its keys are " + String.join(", ", section.keys()));
        return Map.of();
    }
}

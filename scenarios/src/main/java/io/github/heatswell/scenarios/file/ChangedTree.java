package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.fault.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Applies changes to the tree of a file. Everything a change adds has a location outside the text. */
final class ChangedTree {

    /** No field of a scenario lies so deep. */
    private static final int MAX_LEVELS = 8;

    private static final Pattern PART = Pattern.compile("([A-Za-z][A-Za-z0-9-]*)(?:\\[(\\d{1,4})])?");

    private final Location at;
    private final Optional<Node> value;

    /** One step on the way. */
    sealed interface Step {}

    /** To the value of a key. */
    record Key(String name) implements Step {}

    /** To an item of a list, 0 being the first. */
    record Item(int index) implements Step {}

    private ChangedTree(Location at, Optional<Node> value) {
        this.at = at;
        this.value = value;
    }

    /**
     * The tree with one change.
     *
     * @param tree the tree
     * @param change the change
     * @param at where what it brings stands
     * @throws IllegalArgumentException if the change cannot be made; the message does not name the field
     */
    static Mapping of(Mapping tree, Change change, Location at) {
        List<Step> steps = path(change.field());
        return (Mapping) new ChangedTree(at, value(change, at))
                .put(Optional.of(tree), steps)
                .orElseThrow();
    }

    private static Optional<Node> value(Change change, Location at) {
        String text = change.value();
        boolean stated = Schema.field(change.field())
                .flatMap(Field::form)
                .filter(Form::saysNone)
                .isPresent();
        if (text.equals(Change.NONE) && !stated) {
            return Optional.empty();
        }
        if (!text.startsWith("[") && !text.startsWith("{")) {
            return Optional.of(new Scalar(text, at));
        }
        Faults faults = new Faults();
        Optional<Mapping> read = YamlTree.of("value: " + text, faults);
        if (!faults.none()) {
            throw new IllegalArgumentException(faults.inOrder().get(0).message());
        }
        return read.map(mapping -> moved(mapping.entries().get(0).value(), at));
    }

    private static Node moved(Node node, Location at) {
        if (node instanceof Items items) {
            return new Items(items.items().stream().map(item -> moved(item, at)).toList(), at);
        }
        if (node instanceof Mapping mapping) {
            return new Mapping(
                    mapping.entries().stream()
                            .map(entry -> new Entry(new Scalar(entry.key().text(), at), moved(entry.value(), at)))
                            .toList(),
                    at);
        }
        return new Scalar(((Scalar) node).text(), at);
    }

    /** A part of the tree with the value at the end of a path; empty if the part itself goes. */
    private Optional<Node> put(Optional<Node> part, List<Step> path) {
        if (path.isEmpty()) {
            return value;
        }
        List<Step> rest = path.subList(1, path.size());
        return Optional.of(
                path.get(0) instanceof Key key
                        ? inMapping(part, key.name(), rest)
                        : inItems(part, (Item) path.get(0), rest));
    }

    private Node inMapping(Optional<Node> part, String key, List<Step> rest) {
        List<Entry> entries = new ArrayList<>();
        boolean found = false;
        Location place = at;
        if (part.isPresent() && part.get() instanceof Mapping mapping) {
            place = mapping.at();
            for (Entry entry : mapping.entries()) {
                boolean here = entry.key().text().equals(key);
                found |= here;
                Optional<Node> changed = here ? put(Optional.of(entry.value()), rest) : Optional.of(entry.value());
                changed.ifPresent(node -> entries.add(new Entry(here ? new Scalar(key, at) : entry.key(), node)));
            }
        }
        if (!found) {
            put(Optional.empty(), rest).ifPresent(node -> entries.add(new Entry(new Scalar(key, at), node)));
        }
        return new Mapping(entries, place);
    }

    private Node inItems(Optional<Node> part, Item item, List<Step> rest) {
        List<Node> items = part.isPresent() && part.get() instanceof Items list
                ? new ArrayList<>(list.items())
                : new ArrayList<>();
        if (item.index() > items.size()) {
            throw new IllegalArgumentException("the list has " + items.size() + (items.size() == 1 ? " item" : " items")
                    + "; numbering starts at 0, so the next is number " + items.size());
        }
        Optional<Node> before = item.index() < items.size() ? Optional.of(items.get(item.index())) : Optional.empty();
        Optional<Node> after = put(before, rest);
        if (before.isPresent()) {
            items.remove(item.index());
        }
        after.ifPresent(node -> items.add(item.index(), node));
        return new Items(items, part.map(Node::at).orElse(at));
    }

    /**
     * Reads the way from the top of a file to a field.
     *
     * @throws IllegalArgumentException if it is none
     */
    private static List<Step> path(String text) {
        if (text.chars().filter(c -> c == '.').count() >= MAX_LEVELS) {
            throw new IllegalArgumentException(
                    "has more levels than any field; write a field like tank.volume or relief[0].opens");
        }
        List<Step> steps = new ArrayList<>();
        for (String part : text.split("\\.", -1)) {
            Matcher matcher = PART.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("is not a field; write a field like tank.volume or relief[0].opens");
            }
            steps.add(new Key(matcher.group(1)));
            if (matcher.group(2) != null) {
                steps.add(new Item(Integer.parseInt(matcher.group(2))));
            }
        }
        return steps;
    }
}

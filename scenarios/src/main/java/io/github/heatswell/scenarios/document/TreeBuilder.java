package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.parser.Parser;

/**
 * Builds the tree from the parser's events. It works on events, rather than the library's finished tree, to refuse
 * unsupported constructs before spending memory on them.
 */
final class TreeBuilder {

    private static final Pattern WHOLE = Pattern.compile("[-+]?\\d{1,9}");
    private static final Pattern FRACTION = Pattern.compile("\\d.{0,40}");

    /** A scenario needs five levels. */
    private static final int MAX_DEPTH = 8;

    private final Parser events;
    private final Faults faults;
    private int depth;

    TreeBuilder(Parser events, Faults faults) {
        this.events = events;
        this.faults = faults;
    }

    /** Something a scenario file may not contain; reading stops there. */
    static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final transient Location at;

        private Refused(Event event, String message) {
            super(message, null, false, false);
            at = start(event);
        }

        Location at() {
            return at;
        }
    }

    /** Steps over opening events; false if the text ends before them. */
    boolean enter(Event.ID... opening) {
        for (Event.ID id : opening) {
            if (events.next().getEventId() != id) {
                return false;
            }
        }
        return true;
    }

    /** Steps over the end of the document and makes sure that nothing follows. */
    void leave() {
        events.next();
        Event end = events.next();
        if (end.getEventId() != Event.ID.StreamEnd) {
            throw new Refused(end, "a second document begins here; a file may hold only one");
        }
    }

    /** The next part of the text. */
    Node next() {
        Event event = events.next();
        if (event instanceof AliasEvent) {
            throw new Refused(event, "references (*) are not supported; write the value out");
        }
        refuseDecoration(event);
        if (event instanceof ScalarEvent scalar) {
            return new Scalar(scalar.getValue().strip(), start(event));
        }
        if (++depth > MAX_DEPTH) {
            throw new Refused(event, "this is nested too deeply; the most is " + MAX_DEPTH + " levels");
        }
        Node node = event.getEventId() == Event.ID.MappingStart ? mapping(event) : items(event);
        depth--;
        return node;
    }

    private static void refuseDecoration(Event event) {
        if (((NodeEvent) event).getAnchor().isPresent()) {
            throw new Refused(event, "anchors (&) are not supported; remove this one");
        }
        Optional<String> tag =
                event instanceof ScalarEvent scalar ? scalar.getTag() : ((CollectionStartEvent) event).getTag();
        if (tag.isPresent()) {
            throw new Refused(event, "tags (!) are not supported; remove this one");
        }
    }

    private Items items(Event start) {
        List<Node> items = new ArrayList<>();
        while (!events.checkEvent(Event.ID.SequenceEnd)) {
            items.add(next());
        }
        events.next();
        return new Items(items, start(start));
    }

    private Mapping mapping(Event start) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        Entry last = null;
        while (!events.checkEvent(Event.ID.MappingEnd)) {
            Entry entry = entry();
            Optional<Entry> whole = rejoined(last, entry);
            if (whole.isPresent()) {
                entries.put(whole.get().key().text(), whole.get());
            } else {
                add(entries, entry);
            }
            last = entry;
        }
        events.next();
        return new Mapping(List.copyOf(entries.values()), start(start));
    }

    /**
     * Rejoins what a decimal comma inside braces has split: YAML takes <code>{ pressure: 4,2 bar }</code> for the keys
     * {@code pressure} and {@code 2 bar}. The rejoined value gets the proper error message.
     *
     * @param last the entry before, or null
     * @param entry the entry that may be its fraction
     * @return the entry before with the number as it was meant, or empty if these are two entries indeed
     */
    private static Optional<Entry> rejoined(Entry last, Entry entry) {
        if (last == null
                || !(last.value() instanceof Scalar whole)
                || !(entry.value() instanceof Scalar nothing)
                || !nothing.text().isEmpty()) {
            return Optional.empty();
        }
        Scalar fraction = entry.key();
        boolean touching = whole.at().line() == fraction.at().line()
                && whole.at().column() + whole.text().length() + 1
                        == fraction.at().column();
        boolean number = WHOLE.matcher(whole.text()).matches()
                && FRACTION.matcher(fraction.text()).matches();
        return touching && number
                ? Optional.of(new Entry(last.key(), new Scalar(whole.text() + "," + fraction.text(), whole.at())))
                : Optional.empty();
    }

    private Entry entry() {
        Event event = events.peekEvent();
        Node key = next();
        if (key instanceof Scalar scalar) {
            return new Entry(scalar, next());
        }
        throw new Refused(event, "a key must be a word, not " + key.kind());
    }

    private void add(Map<String, Entry> entries, Entry entry) {
        Entry first = entries.putIfAbsent(entry.key().text(), entry);
        if (first != null) {
            faults.add(
                    entry.key().at(),
                    Printable.line(entry.key().text()) + ": appears twice, first on line "
                            + first.key().at().line());
        }
    }

    static Location location(Mark mark) {
        return new Location(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static Location start(Event event) {
        return event.getStartMark().map(TreeBuilder::location).orElseGet(Location::first);
    }
}

package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Reads a text in YAML into a tree, and writes a tree as such a text.
 */
public final class YamlTree {

    private static final int WIDTH = 120;

    private YamlTree() {}

    /**
     * Reads a text that describes a system.
     *
     * @param text the text, of at most {@link SourceText#LARGEST} characters
     * @param faults notes what is wrong with it
     * @return the keys and values, or empty if the text cannot be read that far
     */
    public static Optional<Mapping> of(String text, Faults faults) {
        return of(text, "it should describe a system", "title: My house", faults);
    }

    /**
     * Reads a text that holds one document of keys and values.
     *
     * @param text the text, of at most {@link SourceText#LARGEST} characters
     * @param purpose what to say of it if it is empty, such as {@code it should describe a system}
     * @param example a key and its value, as the text might have them
     * @param faults notes what is wrong with it
     * @return the keys and values, or empty if the text cannot be read that far
     */
    public static Optional<Mapping> of(String text, String purpose, String example, Faults faults) {
        if (text.length() > SourceText.LARGEST) {
            faults.add(Location.first(), "this is longer than " + SourceText.LARGEST + " characters");
            return Optional.empty();
        }
        Optional<Fault> hidden = SourceText.HiddenCharacters.in(text);
        if (hidden.isPresent()) {
            faults.add(hidden.get().at(), hidden.get().message());
            return Optional.empty();
        }
        try {
            return root(new TreeBuilder(events(text), faults), purpose, example, faults);
        } catch (TreeBuilder.Refused e) {
            faults.add(e.at(), e.getMessage());
        } catch (MarkedYamlEngineException e) {
            Fault fault = SyntaxWords.of(e, text);
            faults.add(fault.at(), fault.message());
        } catch (YamlEngineException e) {
            faults.add(Location.first(), "this is not plain text; save it as UTF-8, without invisible characters");
        }
        return Optional.empty();
    }

    private static ParserImpl events(String text) {
        LoadSettings settings = LoadSettings.builder().build();
        return new ParserImpl(settings, new StreamReader(settings, text));
    }

    private static Optional<Mapping> root(TreeBuilder tree, String purpose, String example, Faults faults) {
        if (!tree.enter(Event.ID.StreamStart, Event.ID.DocumentStart)) {
            faults.add(Location.first(), "the file is empty or contains only comments; " + purpose);
            return Optional.empty();
        }
        Node root = tree.next();
        tree.leave();
        if (root instanceof Mapping mapping) {
            return Optional.of(mapping);
        }
        faults.add(
                root.at(),
                "the file must consist of keys and values, such as '" + example + "', not of " + root.kind());
        return Optional.empty();
    }

    /**
     * A text that reads back as the tree.
     *
     * @param tree keys and values
     * @return the text, one key in a line
     */
    public static String text(Mapping tree) {
        DumpSettings settings = DumpSettings.builder()
                .setDefaultFlowStyle(FlowStyle.BLOCK)
                .setWidth(WIDTH)
                .setSplitLines(false)
                .build();
        return new Dump(settings).dumpToString(plain(tree));
    }

    private static Object plain(Node node) {
        if (node instanceof Scalar scalar) {
            return scalar.text();
        }
        if (node instanceof Items items) {
            return items.items().stream().map(YamlTree::plain).toList();
        }
        Map<String, Object> entries = new LinkedHashMap<>();
        for (Entry entry : ((Mapping) node).entries()) {
            entries.put(entry.key().text(), plain(entry.value()));
        }
        return entries;
    }
}

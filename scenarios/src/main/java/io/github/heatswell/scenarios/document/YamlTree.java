package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Items;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
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
     * @param text the text, of at most {@link SourceText#MAX_SIZE} characters
     * @param faults notes what is wrong with it
     * @return the keys and values, or empty if the text cannot be read that far
     */
    public static Optional<Mapping> of(String text, Faults faults) {
        return of(text, "it should describe a system", "title: My house", faults);
    }

    /**
     * Reads a text that holds one document of keys and values.
     *
     * @param text the text, of at most {@link SourceText#MAX_SIZE} characters
     * @param purpose what to say of it if it is empty, such as {@code it should describe a system}
     * @param example a key and its value, as the text might have them
     * @param faults notes what is wrong with it
     * @return the keys and values, or empty if the text cannot be read that far
     */
    public static Optional<Mapping> of(String text, String purpose, String example, Faults faults) {
        if (text.length() > SourceText.MAX_SIZE) {
            faults.add(Location.first(), "this is longer than " + SourceText.MAX_SIZE + " characters");
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

    /**
     * Explains YAML syntax errors to readers who do not know YAML.
     */
    private static final class SyntaxWords {

        private static final String TAB = "this line is indented with a tab; use spaces";
        private static final String OPEN_QUOTE = "a quotation mark opens here and never closes";
        private static final String ANYTHING =
                "this is not valid YAML; check indentation, brackets and quotation marks nearby";

        /** What the parser says, in what it found wrong or in what it was doing, and what it means. */
        private static final List<Meaning> MEANINGS = List.of(
                new Meaning("TAB", TAB),
                new Meaning(
                        "mapping values are not allowed here",
                        "a colon followed by a space starts a value, which is not possible here; put the text in quotes,"
                                + " or put the key on its own line"),
                new Meaning(
                        "sequence entries are not allowed here",
                        "a dash followed by a space starts a list item, which is not possible here; put the text in"
                                + " quotes, or put the item on its own line"),
                new Meaning(
                        "mapping keys are not allowed here",
                        "a question mark followed by a space has a special meaning in YAML; put the text in quotes"),
                new Meaning("expected ',' or '}'", "a comma or a closing bracket is missing before this"),
                new Meaning("expected ',' or ']'", "a comma or a closing bracket is missing before this"),
                new Meaning(
                        "could not find expected ':'",
                        "the key before this has no value; is there a space after every colon?"),
                new Meaning(
                        "found unexpected document separator",
                        "a quotation mark opens here and is not closed before the line that begins with --- or ..."),
                new Meaning("scanning a tag", "tags (!) are not supported; remove the mark, or put the text in quotes"),
                new Meaning("tag handle", "tags (!) are not supported; remove the mark, or put the text in quotes"),
                new Meaning(
                        "escape",
                        "this is not a valid escape in double quotes; write \\\\ for a backslash, or use single quotes"),
                new Meaning("scanning a quoted scalar", OPEN_QUOTE),
                new Meaning("scanning a double-quoted scalar", OPEN_QUOTE),
                new Meaning("unexpected end of stream", OPEN_QUOTE),
                new Meaning(
                        "block scalar", "the text after | or > is not a valid block; write it in quotes, on one line"),
                new Meaning("chomping", "the text after | or > is not a valid block; write it in quotes, on one line"),
                new Meaning("directive", "a line that begins with % is a YAML directive; remove it"),
                new Meaning("<document start>", "a line that begins with % is a YAML directive; remove it"),
                new Meaning("scanning an alias", "references (*) are not supported; put the text in quotes"),
                new Meaning("scanning an anchor", "anchors (&) are not supported; put the text in quotes"),
                new Meaning(
                        "expected the node content",
                        "a value is missing before this; if the text begins with this character, put it in quotes"));

        private SyntaxWords() {}

        /** Words of the parser and ours. */
        private record Meaning(String theirs, String ours) {}

        static Fault of(MarkedYamlEngineException fault, String text) {
            Optional<Mark> problem = fault.getProblemMark();
            String message = message(fault, text, problem);
            boolean quote = message.startsWith("a quotation mark opens");
            Optional<Mark> at = quote ? fault.getContextMark().or(() -> problem) : problem;
            return new Fault(at.map(TreeBuilder::location).orElse(Location.first()), message);
        }

        private static String message(MarkedYamlEngineException fault, String text, Optional<Mark> at) {
            int character = at.map(mark -> characterAt(mark, text)).orElse(-1);
            if (character == '\t') {
                return TAB;
            }
            String theirs = fault.getProblem() + " | " + fault.getContext();
            if (theirs.contains("cannot start any token") || theirs.contains("directive") && character == '%') {
                return character < 0
                        ? ANYTHING
                        : "a value cannot begin with " + new String(Character.toChars(character))
                                + "; put it in quotes";
            }
            if (theirs.contains("<block end>")) {
                return at.map(mark -> beginsItsLine(mark, text)).orElse(true)
                        ? "this line is not indented like those it belongs with; indent them all the same"
                        : "there is extra text after a complete value; put the whole value in quotes, or remove the rest";
            }
            return MEANINGS.stream()
                    .filter(meaning -> theirs.contains(meaning.theirs()))
                    .map(Meaning::ours)
                    .findFirst()
                    .orElse(ANYTHING);
        }

        private static boolean beginsItsLine(Mark mark, String text) {
            int end = text.offsetByCodePoints(0, Math.min(mark.getIndex(), text.codePointCount(0, text.length())));
            int begin = Math.max(text.lastIndexOf('\n', end - 1), text.lastIndexOf('\r', end - 1)) + 1;
            return text.substring(begin, end).isBlank();
        }

        private static int characterAt(Mark mark, String text) {
            int index = mark.getIndex();
            return index >= 0 && index < text.codePointCount(0, text.length())
                    ? text.codePointAt(text.offsetByCodePoints(0, index))
                    : -1;
        }
    }
}

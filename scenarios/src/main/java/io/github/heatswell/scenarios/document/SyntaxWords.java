package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * Explains YAML syntax errors to readers who do not know YAML.
 */
final class SyntaxWords {

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
            new Meaning("block scalar", "the text after | or > is not a valid block; write it in quotes, on one line"),
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
                    : "a value cannot begin with " + Character.toString(character) + "; put it in quotes";
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

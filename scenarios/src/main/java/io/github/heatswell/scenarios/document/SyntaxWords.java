package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.fault.Location;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * Says what is wrong with a text that is not YAML, in words for somebody who does not know YAML's own.
 */
final class SyntaxWords {

    private static final String TAB = "a tab stands here; indent with blanks";
    private static final String OPEN_QUOTE = "a quote is opened here and never closed";
    private static final String ANYTHING =
            "this cannot be understood; check the indentation, brackets and quotes around here";

    /** What the parser says, in what it found wrong or in what it was doing, and what it means. */
    private static final List<Meaning> MEANINGS = List.of(
            new Meaning("TAB", TAB),
            new Meaning(
                    "mapping values are not allowed here",
                    "a colon with a blank behind it begins a value, and none can begin here; put the text in quotes, or"
                            + " give the key a line of its own"),
            new Meaning(
                    "sequence entries are not allowed here",
                    "a dash with a blank behind it begins an item of a list, and none can begin here; put the text in"
                            + " quotes, or give the item a line of its own"),
            new Meaning(
                    "mapping keys are not allowed here",
                    "a question mark with a blank behind it means something else in such files; put the text in quotes"),
            new Meaning("expected ',' or '}'", "a comma or the closing bracket is missing before this"),
            new Meaning("expected ',' or ']'", "a comma or the closing bracket is missing before this"),
            new Meaning(
                    "could not find expected ':'",
                    "a key without a value stands before this; is there a blank behind every colon?"),
            new Meaning(
                    "found unexpected document separator",
                    "a quote is opened here and not closed before the line that begins with --- or ..."),
            new Meaning("scanning a tag", "tags (!) are not used here; remove the mark, or put the text in quotes"),
            new Meaning("tag handle", "tags (!) are not used here; remove the mark, or put the text in quotes"),
            new Meaning(
                    "escape",
                    "a backslash between double quotes begins a character that has another name, and this is"
                            + " none; write two backslashes for one, or use single quotes"),
            new Meaning("scanning a quoted scalar", OPEN_QUOTE),
            new Meaning("scanning a double-quoted scalar", OPEN_QUOTE),
            new Meaning("unexpected end of stream", OPEN_QUOTE),
            new Meaning(
                    "block scalar",
                    "the text behind | or > is not laid out as a block; write it in quotes, in one line"),
            new Meaning(
                    "chomping", "the text behind | or > is not laid out as a block; write it in quotes, in one line"),
            new Meaning("directive", "a line that begins with % is for programs; remove it"),
            new Meaning("<document start>", "a line that begins with % is for programs; remove it"),
            new Meaning("scanning an alias", "references (*) are not used here; put the text in quotes"),
            new Meaning("scanning an anchor", "anchors (&) are not used here; put the text in quotes"),
            new Meaning(
                    "expected the node content",
                    "a value is missing before this; put it in quotes if it is a text that begins so"));

    private SyntaxWords() {}

    /** Words of the parser and ours. */
    private record Meaning(String theirs, String ours) {}

    static Fault of(MarkedYamlEngineException fault, String text) {
        Optional<Mark> problem = fault.getProblemMark();
        String message = message(fault, text, problem);
        boolean quote = message.startsWith("a quote is opened");
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
                    ? "this line begins in another column than those it belongs to; indent all of them alike"
                    : "something stands behind a complete value; put the whole value in quotes, or remove it";
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

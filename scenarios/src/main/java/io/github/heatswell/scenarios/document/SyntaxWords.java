package io.github.heatswell.scenarios.document;

import io.github.heatswell.scenarios.wording.Printable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * Says what is wrong with a text that is not YAML, in words for somebody who does not know YAML's own.
 */
final class SyntaxWords {

    private SyntaxWords() {}

    static String of(MarkedYamlEngineException fault, String text) {
        int character =
                fault.getProblemMark().map(mark -> characterAt(mark, text)).orElse(-1);
        if (character == '\t') {
            return "a tab stands here; indent with blanks";
        }
        String problem = fault.getProblem() == null ? "" : fault.getProblem();
        if (problem.contains("mapping values are not allowed here")) {
            return "a colon with a blank behind it begins a value, and none can begin here; put the text in quotes, or"
                    + " give the key a line of its own";
        }
        if (problem.contains("expected ',' or '}'") || problem.contains("expected ',' or ']'")) {
            return "a comma or the closing bracket is missing before this";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a key without a value stands before this; is there a blank behind every colon?";
        }
        if (character == '@' || character == '`' || character == '%') {
            return "a value cannot begin with " + Character.toString(character) + "; put it in quotes";
        }
        if (problem.contains("unexpected end of stream") || problem.contains("found unexpected end")) {
            return "a quote is opened and never closed";
        }
        return "this cannot be read as YAML (" + Printable.line(problem)
                + "); check the indentation, brackets and quotes around here";
    }

    private static int characterAt(Mark mark, String text) {
        int index = mark.getIndex();
        return index >= 0 && index < text.codePointCount(0, text.length())
                ? text.codePointAt(text.offsetByCodePoints(0, index))
                : -1;
    }
}

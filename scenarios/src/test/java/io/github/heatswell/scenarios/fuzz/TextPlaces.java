package io.github.heatswell.scenarios.fuzz;

import io.github.heatswell.scenarios.generated.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Where in a text something can be put, by its grammar: a number, a word, a line, a cell. Each is found in one pass. */
final class TextPlaces {

    static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");
    static final Pattern UNIT = Pattern.compile("(?<=\\d )[^\\s,}\\]]+");
    static final Pattern WORD = Pattern.compile("[a-zA-Z][a-zA-Z-]*+");
    static final Pattern KEY = Pattern.compile("(?<![a-z-])[a-z][a-z-]*+(?=:)");
    static final Pattern VALUE = Pattern.compile("(?<=: )[^\\n,{\\[}]++");
    static final Pattern CELL = Pattern.compile("[^,;\\t\\n]++");
    static final Pattern LINE = Pattern.compile("(?<![^\\n])[^\\n]*+\\n");

    /** A text this long (characters) is not made longer. */
    private static final int LONG = 400_000;

    private TextPlaces() {}

    /** The text with one of these, drawn by chance, replaced. */
    static String replaced(String text, Pattern what, Chance chance, String replacement) {
        List<MatchResult> found = found(text, what);
        if (found.isEmpty() || text.length() > LONG) {
            return text;
        }
        MatchResult spot = found.get(chance.below(found.size()));
        return text.substring(0, spot.start()) + replacement + text.substring(spot.end());
    }

    /** One of these, drawn by chance; the empty text if there is none. */
    static String drawn(String text, Pattern what, Chance chance) {
        List<MatchResult> found = found(text, what);
        return found.isEmpty() ? "" : found.get(chance.below(found.size())).group();
    }

    /** The text with something put in anywhere. */
    static String with(String text, Chance chance, String what) {
        if (text.length() > LONG) {
            return text;
        }
        int at = chance.below(text.length() + 1);
        return text.substring(0, at) + what + text.substring(at);
    }

    /** The first of them: a long text has more than anybody needs. */
    private static List<MatchResult> found(String text, Pattern what) {
        List<MatchResult> found = new ArrayList<>();
        what.matcher(text).results().limit(2_000).forEach(found::add);
        return found;
    }
}

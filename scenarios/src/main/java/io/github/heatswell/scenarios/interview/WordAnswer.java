package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.UnitSystem;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** One of a few words. Case, blanks and hyphens do not matter. */
final class WordAnswer implements AnswerKind {

    /** What is shown, and the word of the file it stands for. */
    private final Map<String, String> shown;
    /** Other ways to say it. */
    private final Map<String, String> others;

    private WordAnswer(Map<String, String> shown, Map<String, String> others) {
        this.shown = shown;
        this.others = others;
    }

    /** Words that are the same in the file. */
    static WordAnswer of(String... words) {
        return of(Arrays.asList(words));
    }

    /** Words that are the same in the file. */
    static WordAnswer of(List<String> words) {
        Map<String, String> shown = new LinkedHashMap<>();
        words.forEach(word -> shown.put(word, word));
        return new WordAnswer(Collections.unmodifiableMap(shown), Map.of());
    }

    /** The same, where other words are understood as well. */
    WordAnswer also(String word, String... spellings) {
        Map<String, String> more = new LinkedHashMap<>(others);
        for (String spelling : spellings) {
            more.put(folded(spelling), word);
        }
        return new WordAnswer(shown, Collections.unmodifiableMap(more));
    }

    @Override
    public String understand(String line) {
        String word = folded(line);
        if (shown.containsKey(word)) {
            return shown.get(word);
        }
        if (others.containsKey(word)) {
            return others.get(word);
        }
        throw new IllegalArgumentException(Printable.quote(line) + " is not one of " + String.join(", ", shown.keySet())
                + Nearest.hint(line, shown.keySet()));
    }

    @Override
    public String offer(UnitSystem units) {
        return "one of: " + String.join(", ", shown.keySet());
    }

    private static String folded(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    }
}

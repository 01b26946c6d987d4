package io.github.heatswell.scenarios.wording;

import java.util.List;
import java.util.stream.Collectors;

/** Commands as people paste them into a terminal. */
public final class Typed {

    private Typed() {}

    /**
     * A command of Heatswell.
     *
     * @param words the command, and what it is given
     * @return one line, each word as a shell takes it for one: as it is, or in quotation marks
     */
    public static String command(List<String> words) {
        return "heatswell " + words.stream().map(Typed::quoted).collect(Collectors.joining(" "));
    }

    private static String quoted(String word) {
        if (word.matches("[A-Za-z0-9_./:=,+%-]+") && !word.isEmpty()) {
            return word;
        }
        return word.matches("[^\"$`\\\\!]*") ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
    }
}

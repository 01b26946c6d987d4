package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * A hazard that a run met, or a limit that it passed.
 *
 * @param word how bad it is, in a word such as {@code HAZARD}
 * @param text what happened, when, and what it means, in both unit systems
 */
public record AlarmNote(String word, String text) {

    /**
     * Checks that everything is there.
     *
     * @param word how bad it is, in a word such as {@code HAZARD}
     * @param text what happened, when, and what it means, in both unit systems
     */
    public AlarmNote {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(text, "text");
    }
}

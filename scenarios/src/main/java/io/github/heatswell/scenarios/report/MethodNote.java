package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * A line on how the numbers were made.
 *
 * @param topic what it is about
 * @param text what there is to say
 */
public record MethodNote(String topic, String text) {

    /**
     * Checks that everything is there.
     *
     * @param topic what it is about
     * @param text what there is to say
     */
    public MethodNote {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(text, "text");
    }
}

package io.github.heatswell.scenarios.report;

import java.util.List;
import java.util.Objects;

/**
 * The answer to the question.
 *
 * @param sentence the answer in one sentence, in both unit systems
 * @param remarks sentences that belong to it, possibly none
 */
public record Answer(String sentence, List<String> remarks) {

    /**
     * Checks that everything is there and copies the lists.
     *
     * @param sentence the answer in one sentence, in both unit systems
     * @param remarks sentences that belong to it, possibly none
     */
    public Answer {
        Objects.requireNonNull(sentence, "sentence");
        remarks = List.copyOf(remarks);
    }
}

package io.github.heatswell.scenarios.report;

import java.util.Objects;

/**
 * Something found about an installation, held against a rule. Texts that may be missing are empty.
 *
 * @param severity how much it matters, in a word
 * @param sentence what was found, in a sentence
 * @param found the number found, in both unit systems
 * @param limit the number it is held against, in both unit systems
 * @param advice what to do
 * @param source where the rule comes from
 * @param standing how far that source was checked, in words
 * @param question what to ask the authority or the maker
 */
public record FindingNote(
        String severity,
        String sentence,
        String found,
        String limit,
        String advice,
        String source,
        String standing,
        String question) {

    /**
     * Checks that everything is there.
     *
     * @param severity how much it matters, in a word
     * @param sentence what was found, in a sentence
     * @param found the number found, in both unit systems
     * @param limit the number it is held against, in both unit systems
     * @param advice what to do
     * @param source where the rule comes from
     * @param standing how far that source was checked, in words
     * @param question what to ask the authority or the maker
     */
    public FindingNote {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(advice, "advice");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(question, "question");
    }
}

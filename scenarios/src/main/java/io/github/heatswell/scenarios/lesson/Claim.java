package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.assessment.Statement;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One or more sentences of a lesson, with the check that they follow from its runs. Whatever compares or counts must have a
 * check or be computed; a site whose runs do not bear out a sentence is not written.
 *
 * @param words the sentences, with their numbers taken from the runs
 * @param check whether the runs bear them out; empty if they compare nothing
 */
public record Claim(Function<LessonRun, Statement> words, Optional<Predicate<LessonRun>> check) {

    /**
     * Checks that both are there.
     *
     * @param words the sentences, with their numbers taken from the runs
     * @param check whether the runs bear them out; empty if they compare nothing
     */
    public Claim {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(check, "check");
    }

    /**
     * Sentences that compare and count nothing.
     *
     * @param text the sentences
     * @return the claim
     * @throws IllegalArgumentException if they are blank
     */
    public static Claim of(String text) {
        return new Claim(fixed(text), Optional.empty());
    }

    /**
     * Sentences that compare, and what must be so for them to be true.
     *
     * @param text the sentences
     * @param check whether a run bears them out
     * @return the claim
     * @throws IllegalArgumentException if the sentences are blank
     */
    public static Claim of(String text, Predicate<LessonRun> check) {
        return new Claim(fixed(text), Optional.of(check));
    }

    /**
     * Sentences whose numbers are computed.
     *
     * @param words the sentences, worked out from the runs
     * @return the claim
     */
    public static Claim computed(Function<LessonRun, Statement> words) {
        return new Claim(words, Optional.empty());
    }

    /**
     * Sentences whose numbers are computed, and that compare.
     *
     * @param words the sentences, worked out from the runs
     * @param check whether a run bears out what they compare
     * @return the claim
     */
    public static Claim computed(Function<LessonRun, Statement> words, Predicate<LessonRun> check) {
        return new Claim(words, Optional.of(check));
    }

    /**
     * The sentences in the numbers of a run.
     *
     * @param run the lesson with its results
     * @return the sentences
     */
    public Statement in(LessonRun run) {
        return words.apply(run);
    }

    /**
     * Whether a run bears the sentences out.
     *
     * @param run the lesson with its results
     * @return whether it does, or nothing is compared
     */
    public boolean holds(LessonRun run) {
        return check.isEmpty() || check.get().test(run);
    }

    private static Function<LessonRun, Statement> fixed(String text) {
        Statement statement = Statement.of(Texts.require("a sentence", text));
        return run -> statement;
    }
}

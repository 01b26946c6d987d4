package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Statement;
import java.util.Objects;
import java.util.Optional;

/**
 * What must be said before everything else: a hazard, a limit passed, or that a run is not to be relied on.
 *
 * @param level how bad it is
 * @param what what happened or what is wrong, and what that means
 * @param advice what to do; empty if another alarm says so already
 */
public record Alarm(Level level, Statement what, Optional<Statement> advice) {

    /** How bad it is. */
    public enum Level {
        /** People may be hurt. */
        HAZARD("HAZARD"),
        /** A limit was passed. */
        WARNING("WARNING"),
        /** The balance of the run does not close. */
        NOT_RELIABLE("NOT RELIABLE");

        private final String word;

        Level(String word) {
            this.word = word;
        }

        /**
         * The level in a word or two.
         *
         * @return such as {@code HAZARD}
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks that everything is there.
     *
     * @param level how bad it is
     * @param what what happened or what is wrong, and what that means
     * @param advice what to do; empty if another alarm says so already
     */
    public Alarm {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(advice, "advice");
    }

    static Alarm of(Level level, Statement what) {
        return new Alarm(level, what, Optional.empty());
    }

    /**
     * What happened and what to do.
     *
     * @return whole sentences
     */
    public Statement text() {
        return advice.map(todo -> what.then(" ").then(todo)).orElse(what);
    }
}

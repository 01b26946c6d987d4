package io.github.heatswell.assessment;

import java.util.Objects;
import java.util.Optional;

/**
 * One thing found.
 *
 * @param id what was found, in words that never change: {@code static-pressure-high}; a house with several valves may have
 *     the same finding for each
 * @param severity how much it matters
 * @param sentence what was found, in one sentence with its quantities
 * @param found the value found, or empty where there is none
 * @param limit the limit it is held against, or empty where there is none
 * @param advice what to do; where work is needed, how to make it safe first
 * @param authority on what this stands
 * @param askAuthority what to ask the local authority or a professional; may be empty
 */
public record Finding(
        String id,
        Severity severity,
        Statement sentence,
        Optional<Measure> found,
        Optional<Measure> limit,
        Statement advice,
        Authority authority,
        Optional<Statement> askAuthority) {

    /**
     * Checks that everything is there.
     *
     * @param id what was found, in words that never change
     * @param severity how much it matters
     * @param sentence what was found, in one sentence with its quantities
     * @param found the value found, or empty where there is none
     * @param limit the limit it is held against, or empty where there is none
     * @param advice what to do; where work is needed, how to make it safe first
     * @param authority on what this stands
     * @param askAuthority what to ask the local authority or a professional; may be empty
     */
    public Finding {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(found, "found");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(advice, "advice");
        Objects.requireNonNull(authority, "authority");
        Objects.requireNonNull(askAuthority, "askAuthority");
    }

    /** Starts a finding. */
    static Draft draft(String id, Severity severity) {
        return new Draft(id, severity);
    }

    /** A finding being written. */
    static final class Draft {
        private final String id;
        private final Severity severity;
        private Statement sentence;
        private Measure found;
        private Measure limit;
        private Statement advice;
        private Authority authority;
        private Statement ask;

        private Draft(String id, Severity severity) {
            this.id = id;
            this.severity = severity;
        }

        Draft says(String pattern, Measure... measures) {
            sentence = Statement.of(pattern, measures);
            return this;
        }

        Draft found(Measure value) {
            found = value;
            return this;
        }

        Draft limit(Measure value) {
            limit = value;
            return this;
        }

        /** What to do where nothing has to be taken apart. */
        Draft advises(String pattern, Measure... measures) {
            advice = Statement.of(pattern, measures);
            return this;
        }

        /** What to do where work is needed, with what makes it safe before it. */
        Draft advisesWork(String pattern, Measure... measures) {
            return advises(
                    "Before any work turn the heater off, let it cool and relieve the pressure. " + pattern, measures);
        }

        Draft asks(String pattern, Measure... measures) {
            ask = Statement.of(pattern, measures);
            return this;
        }

        Finding by(Authority value) {
            authority = value;
            return new Finding(
                    id,
                    severity,
                    sentence,
                    Optional.ofNullable(found),
                    Optional.ofNullable(limit),
                    advice,
                    authority,
                    Optional.ofNullable(ask));
        }
    }
}

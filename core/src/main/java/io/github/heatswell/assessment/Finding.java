package io.github.heatswell.assessment;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefValve;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Something wrong or worth knowing, with what to do and the source.
 *
 * @param id what was found, in words that never change: {@code static-pressure-high}; a house with several valves may have
 *     the same finding for each
 * @param severity how much it matters
 * @param sentence what was found, in one sentence with its quantities
 * @param found the value found, or empty where there is none
 * @param limit the limit it is compared with, or empty where there is none
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

    /** How much a finding matters, the gravest first. */
    public enum Severity {
        /** People may be hurt: act before the heater is used again. */
        HAZARD,
        /** Something is broken, missing or wrong, and has to be put right. */
        FAULT,
        /** It works, but without the margin it should have, or it hides something. */
        CAUTION,
        /** Worth knowing; nothing has to be done. */
        NOTE
    }

    /**
     * Source of a finding, and what kind of source it is.
     *
     * @param basis what kind of authority it is
     * @param source the publication with its section, or what was computed, and how far it was checked
     */
    public record Authority(Basis basis, Citation source) {

        /** What kind of authority it is. */
        public enum Basis {
            /** A standard, a model code or an official guide. */
            CODE,
            /** What the trade does or advises. */
            PRACTICE,
            /** Computed from the description or taken from the run. */
            COMPUTATION
        }

        /**
         * Checks that both parts are there, and that nothing rests on memory.
         *
         * @param basis what kind of authority it is
         * @param source the publication with its section, or what was computed, and how far it was checked
         * @throws IllegalArgumentException if nobody read the source
         */
        public Authority {
            Objects.requireNonNull(basis, "basis");
            if (Objects.requireNonNull(source, "source").standing() == Citation.Standing.FROM_MEMORY) {
                throw new IllegalArgumentException("source: nobody read " + source.text());
            }
        }

        /** A rule of the place where the house stands, which somebody read. */
        static Authority of(PlaceRule rule) {
            return new Authority(
                    rule.isCode() ? Basis.CODE : Basis.PRACTICE,
                    new Citation(
                            rule.cited() + ": " + rule.words(),
                            rule.source().orElseThrow().standing()));
        }

        static Authority code(String text, Citation.Standing standing) {
            return new Authority(Basis.CODE, new Citation(text, standing));
        }

        static Authority practice(String text, Citation.Standing standing) {
            return new Authority(Basis.PRACTICE, new Citation(text, standing));
        }

        static Authority computed(String text) {
            return new Authority(Basis.COMPUTATION, new Citation(text, Citation.Standing.GIVEN));
        }
    }

    /**
     * Checks that everything is there.
     *
     * @param id what was found, in words that never change
     * @param severity how much it matters
     * @param sentence what was found, in one sentence with its quantities
     * @param found the value found, or empty where there is none
     * @param limit the limit it is compared with, or empty where there is none
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
        private Statement ask;
        private final Set<NamedValue> inputs = EnumSet.noneOf(NamedValue.class);
        private boolean compared;
        private Optional<ReliefValve> valve = Optional.empty();
        private final Set<String> unless = new TreeSet<>();
        private final Set<String> neverBeside = new TreeSet<>();

        private Draft(String id, Severity severity) {
            this.id = id;
            this.severity = severity;
        }

        /**
         * The values of a finding that holds whatever they are, or that a run shows: while one is not known, it says so. A fault
         * becomes a caution only if that one is a choice that makes another house. A quantity without a {@link NamedValue} is left
         * out; where it depends on others that have one, name those.
         */
        Draft rests(Collection<NamedValue> some, NamedValue... more) {
            inputs.addAll(some);
            return rests(more);
        }

        Draft rests(NamedValue... some) {
            inputs.addAll(List.of(some));
            return this;
        }

        /**
         * The values a finding holds against each other: while one is not known, it is a caution at most, unless it holds at both
         * ends of every range.
         */
        Draft compares(Collection<NamedValue> some, NamedValue... more) {
            compared = true;
            return rests(some, more);
        }

        Draft compares(NamedValue... some) {
            compared = true;
            return rests(some);
        }

        /** The one relief valve it is about: the values of others do not decide it. */
        Draft about(ReliefValve one) {
            valve = Optional.of(one);
            return this;
        }

        /** The findings beside which this one only repeats what they say of the same cause. */
        Draft unless(String... ids) {
            unless.addAll(List.of(ids));
            return this;
        }

        /** The findings beside which the advice of this one would be the opposite of theirs. */
        Draft neverBeside(Set<String> ids) {
            neverBeside.addAll(ids);
            return this;
        }

        Draft says(String pattern, Measure... measures) {
            sentence = Statement.of(pattern, measures);
            return this;
        }

        Draft says(Statement whole) {
            sentence = whole;
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

        CandidateFinding by(Authority authority) {
            Finding finding = new Finding(
                    id,
                    severity,
                    sentence,
                    Optional.ofNullable(found),
                    Optional.ofNullable(limit),
                    advice,
                    authority,
                    Optional.ofNullable(ask));
            return new CandidateFinding(finding, inputs, valve.map(ReliefValve::name), compared, unless, neverBeside);
        }
    }
}

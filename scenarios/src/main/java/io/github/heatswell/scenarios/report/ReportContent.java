package io.github.heatswell.scenarios.report;

import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything a report says, in plain values. A part that is not given is left out of the report. Immutable.
 */
public final class ReportContent {

    private final Heading heading;
    private final UnitSystem units;
    private final List<AlarmNote> alarms;
    private final Optional<Answer> answer;
    private final List<Illustration> pictures;
    private final List<Grid> figures;
    private final Optional<Check> check;
    private final boolean commissioning;
    private final List<FindingNote> findings;
    private final Options options;
    private final Optional<Basis> basis;
    private final List<MethodNote> methods;

    private ReportContent(Builder from) {
        this.heading = from.heading;
        this.units = from.units;
        this.alarms = from.alarms;
        this.answer = from.answer;
        this.pictures = from.pictures;
        this.figures = from.figures;
        this.check = from.check;
        this.commissioning = from.commissioning;
        this.findings = from.findings;
        this.options = from.options;
        this.basis = from.basis;
        this.methods = from.methods;
    }

    /**
     * Begins a report.
     *
     * @param heading what stands above it
     * @param units the owner's unit system, which comes first
     * @return a builder
     */
    public static Builder builder(Heading heading, UnitSystem units) {
        return new Builder(heading, units);
    }

    /**
     * What stands above the report.
     *
     * @return the heading
     */
    public Heading heading() {
        return heading;
    }

    /**
     * The owner's unit system.
     *
     * @return the one that comes first
     */
    public UnitSystem units() {
        return units;
    }

    /**
     * Hazards met and limits passed.
     *
     * @return hazards met and limits passed, the worst first; possibly none
     */
    public List<AlarmNote> alarms() {
        return alarms;
    }

    /**
     * The answer.
     *
     * @return the answer, if there is one
     */
    public Optional<Answer> answer() {
        return answer;
    }

    /**
     * The pictures.
     *
     * @return the pictures, in their order; possibly none
     */
    public List<Illustration> pictures() {
        return pictures;
    }

    /**
     * Tables of the numbers found.
     *
     * @return tables of the numbers found, in their order; possibly none
     */
    public List<Grid> figures() {
        return figures;
    }

    /**
     * How the house is checked with a gauge.
     *
     * @return the check, if there is one
     */
    public Optional<Check> check() {
        return check;
    }

    /**
     * Whether the report tells how a vessel is fitted.
     *
     * @return true if a vessel is part of the matter
     */
    public boolean commissioning() {
        return commissioning;
    }

    /**
     * What was found about the installation.
     *
     * @return what was found about the installation, the worst first; possibly none
     */
    public List<FindingNote> findings() {
        return findings;
    }

    /**
     * Sizes, formulas and cost.
     *
     * @return sizes, formulas and cost
     */
    public Options options() {
        return options;
    }

    /**
     * What the result rests on beside what the scenario says.
     *
     * @return what the result rests on, if that is known
     */
    public Optional<Basis> basis() {
        return basis;
    }

    /**
     * How the numbers were made.
     *
     * @return how the numbers were made; possibly none
     */
    public List<MethodNote> methods() {
        return methods;
    }

    /** Collects the parts of a report, in any order. */
    public static final class Builder {

        private final Heading heading;
        private final UnitSystem units;
        private List<AlarmNote> alarms = List.of();
        private Optional<Answer> answer = Optional.empty();
        private List<Illustration> pictures = List.of();
        private List<Grid> figures = List.of();
        private Optional<Check> check = Optional.empty();
        private boolean commissioning;
        private List<FindingNote> findings = List.of();
        private Options options = Options.none();
        private Optional<Basis> basis = Optional.empty();
        private List<MethodNote> methods = List.of();

        private Builder(Heading heading, UnitSystem units) {
            this.heading = Objects.requireNonNull(heading, "heading");
            this.units = Objects.requireNonNull(units, "units");
        }

        /**
         * Sets hazards met and limits passed.
         *
         * @param value hazards met and limits passed, the worst first
         * @return this builder
         */
        public Builder alarms(List<AlarmNote> value) {
            this.alarms = List.copyOf(value);
            return this;
        }

        /**
         * Sets the answer.
         *
         * @param value the answer
         * @return this builder
         */
        public Builder answer(Answer value) {
            this.answer = Optional.of(value);
            return this;
        }

        /**
         * Sets the pictures.
         *
         * @param value the pictures, in their order
         * @return this builder
         */
        public Builder pictures(List<Illustration> value) {
            this.pictures = List.copyOf(value);
            return this;
        }

        /**
         * Sets tables of the numbers found.
         *
         * @param value tables of the numbers found, in their order
         * @return this builder
         */
        public Builder figures(List<Grid> value) {
            this.figures = List.copyOf(value);
            return this;
        }

        /**
         * Sets how the house is checked with a gauge.
         *
         * @param value the check
         * @return this builder
         */
        public Builder check(Check value) {
            this.check = Optional.of(value);
            return this;
        }

        /**
         * Sets whether the report tells how a vessel is fitted.
         *
         * @param value whether the report tells how a vessel is fitted
         * @return this builder
         */
        public Builder commissioning(boolean value) {
            this.commissioning = value;
            return this;
        }

        /**
         * Sets what was found about the installation.
         *
         * @param value what was found about the installation, the worst first
         * @return this builder
         */
        public Builder findings(List<FindingNote> value) {
            this.findings = List.copyOf(value);
            return this;
        }

        /**
         * Sets sizes, formulas and cost.
         *
         * @param value sizes, formulas and cost
         * @return this builder
         */
        public Builder options(Options value) {
            this.options = Objects.requireNonNull(value, "options");
            return this;
        }

        /**
         * Sets what the result rests on beside what the scenario says.
         *
         * @param value what the result rests on beside what the scenario says
         * @return this builder
         */
        public Builder basis(Basis value) {
            this.basis = Optional.of(value);
            return this;
        }

        /**
         * Sets how the numbers were made.
         *
         * @param value how the numbers were made
         * @return this builder
         */
        public Builder methods(List<MethodNote> value) {
            this.methods = List.copyOf(value);
            return this;
        }

        /**
         * Ends the report.
         *
         * @return the content
         */
        public ReportContent build() {
            return new ReportContent(this);
        }
    }
}

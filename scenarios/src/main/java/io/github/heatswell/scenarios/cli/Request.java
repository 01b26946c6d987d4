package io.github.heatswell.scenarios.cli;

import io.github.heatswell.place.Place;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import picocli.CommandLine.ParseResult;

/**
 * A parsed command line with its console.
 *
 * @param arguments the command line
 * @param console takes reports and complaints
 * @param interrupted whether the user has asked for an end
 * @param name what the scenario that is asked about is called in complaints
 */
record Request(ParseResult arguments, Console console, BooleanSupplier interrupted, String name) {

    /** A request that goes on until the program is ended. */
    Request(ParseResult arguments, Console console) {
        this(arguments, console, () -> false, "heatswell");
    }

    /** The same request, which ends early. */
    Request until(BooleanSupplier end) {
        return new Request(arguments, console, end, name);
    }

    /** The same request about one scenario. */
    Request about(String scenario) {
        return new Request(arguments, console, interrupted, scenario);
    }

    /** The command has no answer, for a reason that is not what the command line says of itself. */
    NoAnswerException refused(String why) {
        return refused(why, "");
    }

    /** The same with what may hurt somebody, which is said first: paragraphs of a terminal, possibly none. */
    NoAnswerException refused(String why, String hazards) {
        return new NoAnswerException(name + ": " + why, hazards);
    }

    /** The value of an option, or its default. */
    <T> T option(String name, T fallback) {
        return arguments.matchedOptionValue(name, fallback);
    }

    /** The positional arguments. */
    List<String> words() {
        return arguments.matchedPositionalValue(0, List.of());
    }

    /** The folder or file asked for. */
    Optional<Path> out() {
        return Optional.ofNullable(option(Specs.OUT, (Path) null));
    }

    /** The units asked for, if any. */
    Optional<UnitSystem> asked() {
        return Optional.ofNullable(option(Specs.UNITS, (UnitSystem) null));
    }

    /** The units asked for where there is no scenario to take them from. */
    UnitSystem units() {
        return asked().orElse(UnitSystem.SI);
    }

    /** The place as the command line names it, if it is a known one. */
    Optional<String> placeSaid() {
        return Optional.ofNullable(option(Specs.PLACE, (Place) null))
                .filter(Place::isKnown)
                .map(place -> arguments.matchedOption(Specs.PLACE).originalStringValues())
                .map(said -> said.get(said.size() - 1));
    }

    /** What is changed about every scenario, the place first. */
    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        Optional.ofNullable(option(Specs.PLACE, (Place) null))
                .ifPresent(place -> changes.add(Change.of("site.place=" + place.key())));
        changes.addAll(option(Specs.SET, List.of()));
        return List.copyOf(changes);
    }

    /** How many threads are to share the work. */
    int threads() {
        return option(
                Specs.THREADS, Math.min(Specs.MAX_THREADS, Runtime.getRuntime().availableProcessors()));
    }

    /** A command that has no answer. */
    static final class NoAnswerException extends Exception {

        private static final long serialVersionUID = 1L;

        private final String hazards;

        /**
         * Creates the exception.
         *
         * @param complaints the reasons, one per line, each prefixed with its subject
         * @param hazards hazards, reported first: paragraphs for a terminal, possibly none
         */
        NoAnswerException(String complaints, String hazards) {
            super(complaints);
            this.hazards = hazards;
        }

        /** What may hurt somebody, as paragraphs of a terminal; may be empty. */
        String hazards() {
            return hazards;
        }
    }
}

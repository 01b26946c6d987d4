package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import picocli.CommandLine.ParseResult;

/**
 * The scenarios of one command line. All of them are read before the first is run, so that a slip in the last does not
 * waste the others.
 */
final class Batch {

    private final List<Scenario> scenarios = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private final UnitSystem units;
    private boolean sound = true;

    private Batch(UnitSystem units) {
        this.units = units;
    }

    /**
     * Reads the scenarios on a command line.
     *
     * @param arguments the command line
     * @param console takes complaints
     * @return the scenarios, or empty if any of them is wrong
     */
    static Optional<Batch> read(ParseResult arguments, Console console) {
        List<Change> changes = arguments.matchedOptionValue(Specs.SET, List.of());
        return read(arguments, changes, arguments.matchedOptionValue(Specs.SAMPLE, null), console);
    }

    /**
     * Reads the scenarios on a command line as they are, without what it changes about them.
     *
     * @param arguments the command line
     * @param console takes complaints
     * @return the scenarios, or empty if any of them is wrong
     */
    static Optional<Batch> unchanged(ParseResult arguments, Console console) {
        return read(arguments, List.of(), null, console);
    }

    private static Optional<Batch> read(ParseResult arguments, List<Change> changes, Duration sample, Console console) {
        Batch batch = new Batch(arguments.matchedOptionValue(Specs.UNITS, UnitSystem.SI));
        List<String> words = arguments.matchedPositionalValue(0, List.of());
        for (String word : words) {
            batch.add(ScenarioSource.read(word, changes, console), word, sample, console);
        }
        return batch.sound ? Optional.of(batch) : Optional.empty();
    }

    /**
     * Reads one file.
     *
     * @param file the file, whose name must look like that of one
     * @param units the units of the results
     * @param console takes complaints
     * @return the scenario, or empty if it is wrong
     */
    static Optional<Batch> read(Path file, UnitSystem units, Console console) {
        Batch batch = new Batch(units);
        String word = file.toString();
        batch.add(ScenarioSource.read(word, List.of(), console), word, null, console);
        return batch.sound ? Optional.of(batch) : Optional.empty();
    }

    private void add(Optional<Scenario> scenario, String word, Duration sample, Console console) {
        if (scenario.isEmpty()) {
            sound = false;
            return;
        }
        try {
            scenarios.add(sample == null ? scenario.get() : scenario.get().sampledEvery(sample));
            names.add(distinct(scenario.get().name()));
        } catch (IllegalArgumentException e) {
            console.complain(word + ": --" + e.getMessage());
            sound = false;
        }
    }

    /** The name, with a number if it was used before in any case of letters: some file systems see no difference. */
    private String distinct(String name) {
        Set<String> used = new HashSet<>();
        names.forEach(other -> used.add(folded(other)));
        String candidate = name;
        for (int i = 2; used.contains(folded(candidate)); i++) {
            candidate = name + "-" + i;
        }
        return candidate;
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    int size() {
        return scenarios.size();
    }

    Scenario scenario(int index) {
        return scenarios.get(index);
    }

    /** The name of a scenario, different from all others here. */
    String name(int index) {
        return names.get(index);
    }

    UnitSystem units() {
        return units;
    }

    /**
     * Does something for every scenario, one by one. Where that fails it says so, and goes on to the next.
     *
     * @param console takes complaints
     * @param work what is done for the scenario of an index
     * @return the most serious status
     */
    ExitStatus each(Console console, IntFunction<ExitStatus> work) {
        ExitStatus status = ExitStatus.RAN;
        for (int i = 0; i < size(); i++) {
            int index = i;
            status = status.and(attempt(name(i), console, () -> work.apply(index)));
        }
        return status;
    }

    /** Does something that writes everything or nothing, and says so if it fails. */
    static ExitStatus attempt(String who, Console console, Supplier<ExitStatus> work) {
        try {
            return work.get();
        } catch (RuntimeException | Error e) {
            console.complain(who + ": " + ErrorMessages.failed(e));
            return ExitStatus.FAILED;
        }
    }
}

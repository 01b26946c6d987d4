package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The scenarios of one command line. All of them are read before the first is run, so that a mistake in the last does
 * not waste the others.
 */
final class Batch {

    private final List<Scenario> scenarios = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private boolean sound = true;

    private Batch() {}

    /**
     * Reads the scenarios on a command line.
     *
     * @param request the command line
     * @return the scenarios, or empty if any of them is wrong
     */
    static Optional<Batch> read(Request request) {
        return read(request.words(), request.changes(), request.option(Specs.SAMPLE, null), request);
    }

    /** Reads the scenarios on a command line as they are, without what it changes about them. */
    static Optional<Batch> unchanged(Request request) {
        return read(request.words(), List.of(), null, request);
    }

    /** Reads one scenario file. */
    static Optional<Batch> read(Path file, Request request) {
        return read(List.of(file.toString()), List.of(), null, request);
    }

    private static Optional<Batch> read(List<String> words, List<Change> changes, Duration sample, Request request) {
        Batch batch = new Batch();
        for (String word : words) {
            batch.add(
                    ScenarioSource.read(word, changes, request.console())
                            .map(scenario -> scenario.in(request.option(Specs.UNITS, scenario.units()))),
                    word,
                    sample,
                    request.console());
        }
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

    /** The name, numbered if already used in any letter case, since some file systems ignore case. */
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
}

package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioName;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.Interview;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
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
    private final List<String> words = new ArrayList<>();
    private boolean sound = true;

    private Batch() {}

    /**
     * Reads the scenarios on a command line.
     *
     * @param request the command line
     * @return the scenarios, or empty if any of them is wrong
     */
    static Optional<Batch> read(Request request) {
        request.placeSaid()
                .flatMap(said -> Interview.assumedOf(said)
                        .map(ask -> Specs.PLACE + ": " + said + " is taken as "
                                + Interview.place(said).key() + ". " + ask))
                .ifPresent(request.console()::complain);
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
                    scenario(word, changes, request.console())
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
            words.add(word);
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

    /** A scenario as the command line names it. */
    String word(int index) {
        return words.get(index);
    }

    /** The name of a scenario, different from all others here. */
    String name(int index) {
        return names.get(index);
    }

    /**
     * Reads a scenario. A word that looks like a file name is one; otherwise bundled names come first.
     *
     * @param word a file or a bundled name
     * @param changes what is changed about it
     * @param console takes complaints
     * @return the scenario, or empty if there is none or it is wrong
     */
    static Optional<Scenario> scenario(String word, List<Change> changes, Console console) {
        try {
            return Optional.of(found(word).with(changes));
        } catch (InvalidScenarioException e) {
            console.complain(ErrorMessages.faults(e));
        } catch (InvalidPathException e) {
            console.complain(Printable.quote(word) + " is not a valid file name on this system");
        } catch (IOException e) {
            console.complain(word + ": " + reason(word, e));
        }
        return Optional.empty();
    }

    private static Scenario found(String word) throws IOException {
        return isBundled(word) ? Catalogue.read(word) : ScenarioReader.read(Path.of(word));
    }

    /** Whether a word on a command line is the name of a bundled scenario and no file. */
    static boolean isBundled(String word) {
        return !looksLikeFile(word) && Catalogue.names().contains(word);
    }

    private static boolean looksLikeFile(String word) {
        String folded = word.toLowerCase(Locale.ROOT);
        return folded.endsWith(".yaml") || folded.endsWith(".yml") || word.contains("/") || word.contains("\\");
    }

    private static String reason(String word, IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return missing(word);
        }
        if (failure instanceof AccessDeniedException) {
            return "you do not have permission to read it";
        }
        String why = failure instanceof FileSystemException named ? named.getReason() : failure.getMessage();
        return why == null ? "cannot be read" : why;
    }

    private static String missing(String word) {
        if (!looksLikeFile(word) && Files.exists(Path.of(word + ".yaml"))) {
            return "there is no such file; did you mean " + word + ".yaml?";
        }
        String bundled = Nearest.to(ScenarioName.of(Path.of(word)), Catalogue.names())
                .map(near -> "; did you mean the bundled scenario " + near + "?")
                .orElse("; for the bundled scenarios, run: heatswell list");
        return (looksLikeFile(word) ? "there is no such file" : "there is no such file or bundled scenario") + bundled;
    }
}

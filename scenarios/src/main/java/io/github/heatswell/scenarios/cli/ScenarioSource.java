package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioName;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds and reads the scenario that a word on the command line stands for. */
final class ScenarioSource {

    private ScenarioSource() {}

    /**
     * Reads a scenario. A word that looks like a file name is one; otherwise bundled names come first.
     *
     * @param word a file or a bundled name
     * @param changes what is changed about it
     * @param console takes complaints
     * @return the scenario, or empty if there is none or it is wrong
     */
    static Optional<Scenario> read(String word, List<Change> changes, Console console) {
        try {
            return Optional.of(read(word).with(changes));
        } catch (InvalidScenarioException e) {
            console.complain(ErrorMessages.faults(e));
        } catch (InvalidPathException e) {
            console.complain(Printable.quote(word) + " is not a valid file name on this system");
        } catch (IOException e) {
            console.complain(word + ": " + reason(word, e));
        }
        return Optional.empty();
    }

    private static Scenario read(String word) throws IOException {
        return !looksLikeFile(word) && Catalogue.names().contains(word)
                ? Catalogue.read(word)
                : ScenarioReader.read(Path.of(word));
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

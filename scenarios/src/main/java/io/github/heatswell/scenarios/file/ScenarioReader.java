package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Reads scenario files.
 */
public final class ScenarioReader {

    private ScenarioReader() {}

    /**
     * Reads a file.
     *
     * @param file a file in YAML, encoded in UTF-8, of at most {@link SourceText#LARGEST} bytes
     * @return the scenario, named after the file
     * @throws InvalidScenarioException if the file is not a sound scenario; it lists everything that is wrong, with lines
     *     and columns
     * @throws IOException if the file cannot be read, is a folder or is too large
     */
    public static Scenario read(Path file) throws IOException {
        Faults faults = new Faults();
        Optional<String> text = SourceText.of(file, faults);
        String source = Printable.line(file.toString());
        if (text.isEmpty()) {
            throw new InvalidScenarioException(source, faults.inOrder());
        }
        return read(source, ScenarioName.of(file), text.get());
    }

    /**
     * Reads a text.
     *
     * @param name the short name of the scenario, also put in front of messages
     * @param text the text in YAML
     * @return the scenario
     * @throws InvalidScenarioException if the text is not a sound scenario; it lists everything that is wrong, with lines
     *     and columns
     */
    public static Scenario read(String name, String text) {
        return read(Printable.line(name), name, text);
    }

    private static Scenario read(String source, String name, String text) {
        Faults faults = new Faults();
        Findings findings = new Findings(faults);
        Optional<Mapping> tree = YamlTree.of(text, faults);
        Optional<ScenarioBinder.Bound> bound = tree.map(file -> new ScenarioBinder(file, findings).bind());
        if (!faults.none()) {
            throw new InvalidScenarioException(source, faults.inOrder());
        }
        return Scenario.read(name, bound.orElseThrow(), findings.assumptions(), text);
    }
}

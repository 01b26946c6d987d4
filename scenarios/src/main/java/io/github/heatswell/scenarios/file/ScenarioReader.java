package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node.Mapping;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.fault.Location;
import io.github.heatswell.scenarios.file.Section.Place;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Reads scenario files.
 */
public final class ScenarioReader {

    private ScenarioReader() {}

    /**
     * Reads a file.
     *
     * @param file a file in YAML, encoded in UTF-8, of at most 256 KiB
     * @return the scenario, named after the file
     * @throws InvalidScenarioException if the file is not a sound scenario; it lists everything that is wrong, with lines
     *     and columns
     * @throws IOException if the file cannot be read, is a folder or is too large; the message names the path and says why
     */
    public static Scenario read(Path file) throws IOException {
        Objects.requireNonNull(file, "file");
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
        Objects.requireNonNull(text, "text");
        return read(Printable.line(Objects.requireNonNull(name, "name")), name, text);
    }

    private static Scenario read(String source, String name, String text) {
        Faults faults = new Faults();
        Optional<Mapping> tree = YamlTree.of(text, faults);
        if (tree.isEmpty()) {
            throw new InvalidScenarioException(source, faults.inOrder());
        }
        return read(name, new Reading.Origin(source, text, tree.get(), List.of()), faults);
    }

    /** Reads what a text says once changes are made to it. */
    static Scenario read(String name, Reading.Origin origin) {
        return read(name, origin, new Faults());
    }

    private static Scenario read(String name, Reading.Origin origin, Faults faults) {
        Mapping tree = origin.tree();
        for (int i = 0; i < origin.changes().size(); i++) {
            Change change = origin.changes().get(i);
            Location at = Location.outside(i + 1);
            try {
                tree = ChangedTree.of(tree, change, at);
            } catch (IllegalArgumentException e) {
                faults.add(at, Printable.shortened(change.field()) + ": " + e.getMessage());
            }
        }
        BindingState findings = new BindingState(faults, tree);
        findings.stands("", tree.at());
        BoundSection<Scenario.Builder, Scenario.Builder> bound = SectionBinder.of(
                        Schema.SCENARIO, new Place("", tree.at()), tree, findings)
                .bind();
        if (!faults.none()) {
            throw new InvalidScenarioException(origin.source(), faults.inOrder(), origin.changes());
        }
        return new Scenario(
                name,
                bound.value(),
                new Reading(
                        origin,
                        tree,
                        values -> bound.with(values).system(),
                        findings.assumptions(),
                        findings.uncertain()));
    }
}

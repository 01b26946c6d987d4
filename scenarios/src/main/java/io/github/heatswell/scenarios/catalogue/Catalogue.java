package io.github.heatswell.scenarios.catalogue;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The bundled scenarios.
 */
public final class Catalogue {

    private static final List<String> NAMES = List.of(
            "orchard-lodge",
            "orchard-lodge-vessel",
            "orchard-lodge-lost-charge",
            "ferry-cottage",
            "quarry-row",
            "ridge-house");

    private Catalogue() {}

    /**
     * A scenario by its heading.
     *
     * @param name its name
     * @param title its title
     * @param question the question it answers
     */
    public record Listing(String name, String title, String question) {}

    /**
     * The names of all bundled scenarios.
     *
     * @return the names, in the order in which they are best looked at
     */
    public static List<String> names() {
        return NAMES;
    }

    /**
     * Reads a bundled scenario.
     *
     * @param name its name
     * @return the scenario
     * @throws IllegalArgumentException if there is no such scenario
     */
    public static Scenario read(String name) {
        return ScenarioReader.read(name, text(name));
    }

    /**
     * The text of a bundled scenario, to start one's own from.
     *
     * @param name its name
     * @return the text in YAML
     * @throws IllegalArgumentException if there is no such scenario
     */
    public static String text(String name) {
        if (!NAMES.contains(name)) {
            throw new IllegalArgumentException("no scenario of the name " + name + " is bundled");
        }
        try (InputStream in = Catalogue.class.getResourceAsStream(name + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What the bundled scenarios are about. Nothing but their headings is read, so this is quick.
     *
     * @return one entry for every scenario
     */
    public static List<Listing> listings() {
        return NAMES.stream().map(Catalogue::listing).toList();
    }

    private static Listing listing(String name) {
        List<Entry> entries =
                YamlTree.of(text(name), new Faults()).orElseThrow().entries();
        return new Listing(name, value(entries, "title"), value(entries, "question"));
    }

    private static String value(List<Entry> entries, String key) {
        return entries.stream()
                .filter(entry -> entry.key().text().equals(key) && entry.value() instanceof Scalar)
                .map(entry -> ((Scalar) entry.value()).text())
                .findFirst()
                .orElse("");
    }
}

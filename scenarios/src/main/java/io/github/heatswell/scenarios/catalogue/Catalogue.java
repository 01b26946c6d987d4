package io.github.heatswell.scenarios.catalogue;

import io.github.heatswell.scenarios.document.Faults;
import io.github.heatswell.scenarios.document.Node.Entry;
import io.github.heatswell.scenarios.document.Node.Scalar;
import io.github.heatswell.scenarios.document.YamlTree;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.wording.Nearest;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The bundled scenarios.
 */
public final class Catalogue {

    private static final List<Topic> TOPICS = List.of(
            new Topic(
                    "Why does it drip?",
                    List.of(
                            "orchard-lodge",
                            "ridge-house",
                            "mill-cottage",
                            "vineyard-cottage",
                            "shearers-hut",
                            "mill-cottage-small-vessel",
                            "mill-cottage-overcharged-vessel",
                            "mill-cottage-isolated-vessel",
                            "mill-cottage-dripping-tap",
                            "mill-cottage-worn-seat",
                            "mill-cottage-stuck-open",
                            "mill-cottage-night-mains",
                            "mill-cottage-high-mains",
                            "mill-cottage-creeping-reducer",
                            "mill-cottage-thermostat")),
            new Topic(
                    "What does the supply do?",
                    List.of(
                            "ferry-cottage",
                            "ford-house-leaking-check",
                            "ford-house-shut-off",
                            "tannery-yard",
                            "tannery-yard-bypass",
                            "tannery-yard-bypass-high-mains",
                            "heron-hill-year")),
            new Topic(
                    "What does a vessel do?",
                    List.of(
                            "orchard-lodge-vessel",
                            "orchard-lodge-lost-charge",
                            "orchard-lodge-waterlogged",
                            "orchard-lodge-warm-vessel",
                            "orchard-lodge-cold-vessel",
                            "orchard-lodge-air",
                            "orchard-lodge-two-vessels",
                            "orchard-lodge-leak-test",
                            "orchard-lodge-circulation",
                            "orchard-lodge-pex",
                            "beacon-tower")),
            new Topic(
                    "What if something fails?",
                    List.of("quarry-row", "kiln-house-runaway", "kiln-house-cut-out", "kiln-house-blocked")),
            new Topic(
                    "What does a day look like?",
                    List.of(
                            "weir-house-day",
                            "weir-house-timetable",
                            "weir-house-layers",
                            "weir-house-mixed",
                            "weir-house-two-elements",
                            "birch-street-day")));
    private static final Pattern SECTION = Pattern.compile("(?m)^(site|supply):");
    private static final List<String> NAMES =
            TOPICS.stream().flatMap(topic -> topic.names().stream()).toList();

    private Catalogue() {}

    /**
     * Scenarios that belong to one question.
     *
     * @param question what they are about
     * @param names their names, in the recommended order
     */
    public record Topic(String question, List<String> names) {
        /**
         * Copies the names.
         *
         * @param question what they are about
         * @param names their names, in the recommended order
         */
        public Topic {
            names = List.copyOf(names);
        }
    }

    /**
     * A scenario by its heading.
     *
     * @param name its name
     * @param title its title
     * @param question the question it answers
     */
    public record Listing(String name, String title, String question) {}

    /**
     * The questions that the bundled scenarios belong to.
     *
     * @return every scenario under one of them
     */
    public static List<Topic> topics() {
        return TOPICS;
    }

    /**
     * The names of all bundled scenarios.
     *
     * @return the names, in the recommended order
     */
    public static List<String> names() {
        return List.copyOf(NAMES);
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
     * The text of a bundled scenario, as a start for a new one.
     *
     * @param name its name
     * @return the text in YAML
     * @throws IllegalArgumentException if there is no such scenario
     */
    public static String text(String name) {
        if (!NAMES.contains(Objects.requireNonNull(name, "name"))) {
            throw new IllegalArgumentException("no scenario named " + name + " is bundled" + Nearest.hint(name, NAMES));
        }
        try (InputStream in = Catalogue.class.getResourceAsStream(name + ".yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What a bundled scenario is about. Nothing but its heading is parsed, so this is quick.
     *
     * @param name its name
     * @return its heading
     * @throws IllegalArgumentException if there is no such scenario
     */
    public static Listing listing(String name) {
        List<Entry> entries =
                YamlTree.of(heading(text(name)), new Faults()).orElseThrow().entries();
        return new Listing(name, value(entries, "title"), value(entries, "question"));
    }

    /** What stands before the first section: its title, its question and what is expected. */
    private static String heading(String text) {
        Matcher section = SECTION.matcher(text);
        return section.find() ? text.substring(0, section.start()) : text;
    }

    private static String value(List<Entry> entries, String key) {
        return entries.stream()
                .filter(entry -> entry.key().text().equals(key) && entry.value() instanceof Scalar)
                .map(entry -> ((Scalar) entry.value()).text())
                .findFirst()
                .orElse("");
    }
}

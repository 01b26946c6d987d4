package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * DEVELOPERS.md lists the packages and types that exist, and its diagram shows their dependencies. With {@code -Dreadme.rewrite}
 * the diagram is redrawn instead of compared.
 */
class DiagramTest {

    private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");
    private static final String ROOT = "io.github.heatswell.";
    private static final String BEGIN = "<!-- boxes: drawn by DiagramTest -->\n";
    private static final String END = "<!-- end of boxes -->";

    @Test
    void theDiagramShowsWhatTheClassesUse() throws IOException {
        String text = Files.readString(DEVELOPERS);
        String diagram = "```mermaid\nflowchart TD\n" + arrows(uses(boxes(text))) + "```\n";
        int from = text.indexOf(BEGIN) + BEGIN.length();
        int to = text.indexOf(END);
        assertTrue(from >= BEGIN.length() && to >= from, "DEVELOPERS.md has no place for the diagram");
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(DEVELOPERS, text.substring(0, from) + diagram + text.substring(to));
        } else {
            assertEquals(diagram, text.substring(from, to), "run this test once with -Dreadme.rewrite");
        }
    }

    @Test
    void everyPackageIsListedAndNoOther() throws IOException {
        Set<String> packages =
                OwnClasses.all().stream().map(DiagramTest::packageOf).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(packages, new TreeSet<>(boxes(Files.readString(DEVELOPERS)).keySet()));
    }

    /** Tests and what only tests use are named too, so the sources are searched. */
    @Test
    void everyTypeItNamesExists() throws IOException {
        Set<String> named = Pattern.compile("`([A-Z][a-z]+[A-Za-z]*)(?:\\.[a-z]\\w*(?:\\(\\))?)?`")
                .matcher(Files.readString(DEVELOPERS))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(named.size() > 30, "types are found: " + named);
        for (String module : Set.of("core", "charts", "scenarios")) {
            try (Stream<Path> sources = Files.walk(Path.of("..", module, "src"))) {
                sources.forEach(
                        source -> named.remove(source.getFileName().toString().replaceFirst("\\.java$", "")));
            }
        }
        assertEquals(Set.of(), named);
    }

    @Test
    void anArrowThatOthersImplyIsLeftOut() {
        Map<String, Set<String>> uses = new TreeMap<>(Map.of(
                "a",
                new TreeSet<>(Set.of("b", "c", "d")),
                "b",
                new TreeSet<>(Set.of("c")),
                "c",
                new TreeSet<>(Set.of("d"))));

        assertEquals("    a --> b\n    b --> c\n    c --> d\n", arrows(uses));
    }

    /** The box of each package, from the first table; an empty cell means the box of the row above. */
    private static Map<String, String> boxes(String text) {
        Map<String, String> boxes = new TreeMap<>();
        String box = "";
        for (String row : text.substring(0, text.indexOf(BEGIN)).split("\n")) {
            String[] cells = row.split("\\|");
            if (cells.length > 3) {
                box = cells[1].isBlank() ? box : cells[1].strip();
                Matcher names = Pattern.compile("`([\\w.]+)`").matcher(cells[2]);
                while (names.find()) {
                    boxes.put(names.group(1), box);
                }
            }
        }
        return boxes;
    }

    private static Map<String, Set<String>> uses(Map<String, String> boxes) {
        Map<String, Set<String>> uses = new TreeMap<>();
        OwnClasses.all().forEach(type -> {
            Set<String> used = uses.computeIfAbsent(boxOf(type, boxes), box -> new TreeSet<>());
            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (target.getPackageName().startsWith(ROOT)) {
                    used.add(boxOf(target, boxes));
                }
            }
        });
        uses.forEach((box, used) -> used.remove(box));
        return uses;
    }

    /** A package that is not listed stands for itself. */
    private static String boxOf(JavaClass type, Map<String, String> boxes) {
        return boxes.getOrDefault(packageOf(type), packageOf(type));
    }

    /** The name in the table: without the root, and in {@code scenarios} without the module. */
    private static String packageOf(JavaClass type) {
        String name = type.getPackageName().substring(ROOT.length());
        return name.equals("scenarios") ? "Heatswell" : name.replaceFirst("^scenarios\\.", "");
    }

    private static String arrows(Map<String, Set<String>> uses) {
        StringBuilder arrows = new StringBuilder();
        uses.forEach((user, used) -> used.stream()
                .filter(target -> used.stream().noneMatch(other -> reaches(other, target, uses)))
                .forEach(target -> arrows.append("    ")
                        .append(user)
                        .append(" --> ")
                        .append(target)
                        .append('\n')));
        return arrows.toString();
    }

    private static boolean reaches(String from, String target, Map<String, Set<String>> uses) {
        Set<String> next = uses.getOrDefault(from, Set.of());
        return next.contains(target) || next.stream().anyMatch(each -> reaches(each, target, uses));
    }
}

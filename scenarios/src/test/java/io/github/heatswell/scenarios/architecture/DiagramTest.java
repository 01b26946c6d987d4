package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The drawings of the packages in DEVELOPERS.md show the dependencies that are there. With {@code -Dreadme.rewrite} they are
 * drawn anew instead of compared.
 */
class DiagramTest {

    private static final Path DEVELOPERS = Path.of("..", "DEVELOPERS.md");
    private static final String ROOT = "io.github.heatswell.";

    @ParameterizedTest
    @ValueSource(strings = {"core", "charts and scenarios"})
    void theDrawingShowsWhatTheClassesUse(String name) throws IOException {
        String drawing =
                "```mermaid\nflowchart TD\n" + arrows(name.equals("core") ? insideCore() : aboveCore()) + "```\n";
        String text = Files.readString(DEVELOPERS);
        String begin = "<!-- packages of " + name + ": drawn by DiagramTest -->\n";
        int from = text.indexOf(begin) + begin.length();
        int to = text.indexOf("<!-- end of packages of " + name + " -->");
        assertTrue(from >= begin.length() && to >= from, "DEVELOPERS.md has no place for the packages of " + name);
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(DEVELOPERS, text.substring(0, from) + drawing + text.substring(to));
        } else {
            assertEquals(drawing, text.substring(from, to), "run this test once with -Dreadme.rewrite");
        }
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

    private static Map<String, Set<String>> insideCore() {
        return uses(name -> belongsToCore(name) ? name : "");
    }

    private static Map<String, Set<String>> aboveCore() {
        return uses(name -> name.equals("scenarios")
                ? "Heatswell"
                : belongsToCore(name) ? "core" : name.replaceFirst("^scenarios\\.", ""));
    }

    private static boolean belongsToCore(String name) {
        return !name.startsWith("charts") && !name.startsWith("scenarios");
    }

    private static Map<String, Set<String>> uses(UnaryOperator<String> box) {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new DoNotIncludeTests())
                .importPackages("io.github.heatswell")) {
            String user = boxOf(type, box);
            uses.computeIfAbsent(user, name -> new TreeSet<>());
            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (target.getPackageName().startsWith(ROOT)
                        && !boxOf(target, box).equals(user)) {
                    uses.get(user).add(boxOf(target, box));
                }
            }
        }
        uses.remove("");
        return uses;
    }

    private static String boxOf(JavaClass type, UnaryOperator<String> box) {
        return box.apply(type.getPackageName().substring(ROOT.length()));
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

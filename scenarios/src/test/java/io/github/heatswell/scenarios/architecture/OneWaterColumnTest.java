package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The weight of a column of water is worked out in one place, {@code HotWaterSystem.head}. A second one would take another
 * density sooner or later, and then a valve would be said to open at another pressure than it does.
 */
class OneWaterColumnTest {

    /** Gravity, as a number, or times a density of water. */
    private static final Pattern GRAVITY = Pattern.compile("\\b9\\.80?\\d*\\b|\\b9_?8[01]\\d(\\.\\d+)?\\b");

    /** Gravity from where it stands. */
    private static final Pattern USED = Pattern.compile("\\bUnit\\.STANDARD_GRAVITY\\b");

    private static List<Path> sources() throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String module : List.of("core", "charts", "scenarios")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
            }
        }
        assertTrue(sources.size() > 400, "the sources are elsewhere");
        return sources;
    }

    private static List<String> saying(Pattern what) throws IOException {
        List<String> names = new ArrayList<>();
        for (Path source : sources()) {
            String code =
                    Files.readString(source).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("//.*", "");
            if (what.matcher(code).find()) {
                names.add(source.getFileName().toString());
            }
        }
        names.sort(null);
        return names;
    }

    @Test
    void gravityIsANumberInOnePlace() throws IOException {
        assertEquals(List.of("Unit.java"), saying(GRAVITY));
    }

    @Test
    void waterColumnsAreWeighedInOnePlace() throws IOException {
        Set<String> units = Set.of("MomentUnit.java", "PressureUnit.java");
        List<String> weighing = saying(USED).stream()
                .filter(name -> !units.contains(name))
                .filter(name -> !name.equals("VesselWeightRule.java")) // a vessel full of water, not a column
                .toList();
        assertEquals(List.of("HotWaterSystem.java"), weighing);
    }

    @Test
    void thePatternKnowsGravityInItsShapes() {
        for (String code : List.of("999.7 * 9.80665", "9.81 * h", "9_800", "9806.65", "9.8")) {
            assertTrue(GRAVITY.matcher(code).find(), code);
        }
        assertTrue(!GRAVITY.matcher("19.80 + 9.7 + 98").find());
    }
}

package io.github.heatswell.scenarios.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.release.Release.Module;
import java.io.IOException;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The poms that others get: complete without a parent, and free of what only this build needs. */
class PomsIT {

    private static final List<Module> MODULES = Release.MODULES;

    /** All that such a pom is made of; properties, profiles, plugins, repositories and managed versions are not. */
    private static final Set<String> PARTS = Set.of(
            "modelVersion",
            "groupId",
            "artifactId",
            "version",
            "name",
            "description",
            "inceptionYear",
            "url",
            "scm",
            "licenses",
            "developers",
            "dependencies");

    /** What each module asks for itself, as README.md tells. The rest comes along with these. */
    private static final Map<String, Set<String>> ASKED_FOR = Map.of(
            "core", Set.of("hipparchus-core", "hipparchus-optim"),
            "charts", Set.of("heatswell-core", "jfreechart", "batik-svggen", "commons-csv"),
            "scenarios", Set.of("heatswell-core", "heatswell-charts", "jackson-core", "snakeyaml-engine", "picocli"));

    @ParameterizedTest
    @FieldSource("MODULES")
    void nothingIsLeftToWorkOut(Module module) throws IOException {
        String text = Files.readString(module.pom());
        assertFalse(text.contains("${"), text);
        for (Xml part : Xml.read(text).children()) {
            assertTrue(PARTS.contains(part.name()), module.artifact() + " has a part " + part.name());
        }
        assertEquals(
                text,
                Jar.read(module.jar("")).text("META-INF/maven/io.github.heatswell/" + module.artifact() + "/pom.xml"),
                "the pom inside the jar is the one beside it");
    }

    @ParameterizedTest
    @FieldSource("MODULES")
    void itSaysWhatItIs(Module module) throws IOException {
        Xml pom = Xml.read(Files.readString(module.pom()));
        assertEquals("io.github.heatswell", pom.text("groupId"));
        assertEquals(module.artifact(), pom.text("artifactId"));
        assertEquals(Release.version(), pom.text("version"));
        assertEquals("Heatswell " + module.name(), pom.text("name"));
        assertTrue(pom.text("description").endsWith("."), "a sentence: " + pom.text("description"));
        assertEquals(1, pom.all("licenses", "license").size());
        assertEquals("Apache-2.0", pom.text("licenses", "license", "name"));
        assertEquals("https://www.apache.org/licenses/LICENSE-2.0.txt", pom.text("licenses", "license", "url"));
        assertEquals("The Heatswell maintainers", pom.text("developers", "developer", "name"));
    }

    /** Tests' libraries are left out, and every version is the one that this build was tested with. */
    @ParameterizedTest
    @FieldSource("MODULES")
    void itAsksForWhatItWasTestedWith(Module module) throws IOException {
        Xml pom = Xml.read(Files.readString(module.pom()));
        Set<String> resolved =
                module.libraries().stream().map(Library::coordinates).collect(Collectors.toSet());
        Set<String> asked = new HashSet<>();
        for (Xml one : pom.all("dependencies", "dependency")) {
            String coordinates = one.text("groupId") + ":" + one.text("artifactId") + ":" + one.text("version");
            assertTrue(resolved.contains(coordinates), coordinates + " is none of " + resolved);
            assertEquals("compile", one.text("scope"), coordinates);
            asked.add(one.text("artifactId"));
        }
        assertEquals(ASKED_FOR.get(module.name()), asked);
    }
}

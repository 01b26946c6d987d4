package io.github.heatswell.scenarios.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.release.Release.Module;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The list of components of each module, which only the profile {@code release} makes. */
@EnabledIfSystemProperty(named = "heatswell.release", matches = "true", disabledReason = "made by mvn -Prelease verify")
class ComponentsIT {

    private static final List<Module> MODULES = Release.MODULES;
    /** Everything else would bind those who use Heatswell to more than README.md tells them. */
    private static final Set<String> LICENCES = Set.of("Apache-2.0");

    private static final Map<String, String> OTHER_LICENCES =
            Map.of("org.jfree:jfreechart", "GNU Lesser General Public Licence");

    @ParameterizedTest
    @FieldSource("MODULES")
    void itListsWhatComesAlongAndNothingElse(Module module) throws IOException {
        Map<String, Xml> listed = new HashMap<>();
        for (Xml component : components(module).all("components", "component")) {
            listed.put(coordinates(component), component);
        }
        assertEquals(
                module.libraries().stream().map(Library::coordinates).collect(Collectors.toCollection(TreeSet::new)),
                new TreeSet<>(listed.keySet()));
        for (Library library : module.libraries()) {
            Xml component = listed.get(library.coordinates());
            assertEquals("required", component.text("scope"), library.coordinates());
            assertEquals(sha256(library.jar()), hash(component), library.coordinates());
            String name = library.group() + ':' + library.artifact();
            if (OTHER_LICENCES.containsKey(name)) {
                assertEquals(OTHER_LICENCES.get(name), component.text("licenses", "license", "name"), name);
            } else {
                assertTrue(LICENCES.contains(component.text("licenses", "license", "id")), name);
            }
        }
    }

    @ParameterizedTest
    @FieldSource("MODULES")
    void itSaysWhatItIsAboutAndNoTime(Module module) throws IOException {
        Xml metadata = components(module).all("metadata").get(0);
        Xml self = metadata.all("component").get(0);
        assertEquals("io.github.heatswell:" + module.artifact() + ':' + Release.version(), coordinates(self));
        assertEquals("Apache-2.0", self.text("licenses", "license", "id"));
        assertEquals("", metadata.text("timestamp"), "a time would make every build another one");
        String json = Files.readString(module.folder().resolve("target/bom.json"));
        assertTrue(json.contains("\"bomFormat\" : \"CycloneDX\""), "the same as JSON");
        assertFalse(json.contains("\"timestamp\""), "a time would make every build another one");
        for (Library library : module.libraries()) {
            assertTrue(json.contains(sha256(library.jar())), library.coordinates());
        }
    }

    private static Xml components(Module module) throws IOException {
        return Xml.read(Files.readString(module.folder().resolve("target/bom.xml")));
    }

    private static String coordinates(Xml component) {
        return component.text("group") + ':' + component.text("name") + ':' + component.text("version");
    }

    private static String hash(Xml component) {
        return component.all("hashes", "hash").stream()
                .filter(hash -> hash.element().getAttribute("alg").equals("SHA-256"))
                .map(hash -> hash.element().getTextContent())
                .findFirst()
                .orElse("none");
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}

package io.github.heatswell.scenarios.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.release.Release.Module;
import java.io.IOException;
import java.lang.module.Configuration;
import java.lang.module.ModuleFinder;
import java.lang.reflect.Modifier;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is inside the jars of the modules: names to rely on, the licence, sources and documentation of all of it. */
class JarsIT {

    private static final List<Module> MODULES = Release.MODULES;
    /** The first two bytes of a class file's version say nothing; 61 is that of Java 17. */
    private static final int JAVA_17 = 61;

    private static final Map<String, Boolean> PERMISSIONS = Map.of("enablePosixFileAttributes", true);

    /** Programs name the modules in their {@code module-info}, so these names stay as they are for good. */
    @ParameterizedTest
    @ValueSource(strings = {"core", "charts", "scenarios"})
    void modulesKeepTheirNames(String name) throws IOException {
        String promised = "io.github.heatswell." + name;
        Module module = Release.module(name);
        Attributes manifest = Jar.read(module.jar("")).manifest();
        assertEquals(promised, manifest.getValue("Automatic-Module-Name"));
        assertEquals("Heatswell " + name, manifest.getValue("Implementation-Title"));
        assertEquals(Release.version(), manifest.getValue("Implementation-Version"));
        assertTrue(ModuleFinder.of(module.jar("")).find(promised).isPresent(), "Java takes the jar by that name");
        assertTrue(
                Files.readString(Path.of("..", "README.md")).contains('`' + promised + '`'), "README.md promises it");
    }

    /** Java refuses a module path on which two modules hold the same package. */
    @ParameterizedTest
    @FieldSource("MODULES")
    void modulesStandOnAModulePath(Module module) throws IOException {
        Set<Path> path = new HashSet<>(Set.of(module.jar("")));
        module.libraries().forEach(library -> path.add(library.jar()));
        ModuleFinder found = ModuleFinder.of(path.toArray(Path[]::new));
        Set<String> names = new HashSet<>();
        found.findAll().forEach(one -> names.add(one.descriptor().name()));
        Configuration resolved = ModuleLayer.boot().configuration().resolve(found, ModuleFinder.of(), names);
        assertEquals(path.size(), resolved.modules().size(), "every jar is a module of its own");
    }

    @ParameterizedTest
    @FieldSource("MODULES")
    void everyJarCarriesTheLicence(Module module) throws IOException {
        for (String addition : List.of("", "-sources", "-javadoc")) {
            Jar jar = Jar.read(module.jar(addition));
            assertEquals(
                    Release.licence(), jar.text("META-INF/LICENSE"), jar.path().toString());
        }
    }

    /** Nothing of the tests or of other projects slips in, and Java 17 can load all of it. */
    @ParameterizedTest
    @FieldSource("MODULES")
    void classesAreItsOwn(Module module) throws IOException {
        Jar jar = Jar.read(module.jar(""));
        Set<String> compiled = new TreeSet<>();
        Path classes = module.folder().resolve("target/classes");
        try (Stream<Path> files = Files.walk(classes)) {
            files.filter(Files::isRegularFile)
                    .forEach(file ->
                            compiled.add(classes.relativize(file).toString().replace('\\', '/')));
        }
        Set<String> packed = new TreeSet<>(jar.files().keySet());
        packed.removeIf(name -> name.startsWith("META-INF/maven/") || name.equals("META-INF/MANIFEST.MF"));
        assertEquals(compiled, packed);
        for (String name : jar.ending(".class")) {
            assertTrue(name.startsWith("io/github/heatswell/"), name);
            assertEquals(JAVA_17, jar.files().get(name)[7], name);
        }
    }

    @ParameterizedTest
    @FieldSource("MODULES")
    void everyClassHasItsSource(Module module) throws IOException {
        Jar sources = Jar.read(module.jar("-sources"));
        Path main = module.folder().resolve("src/main/java");
        for (String name : Jar.read(module.jar("")).ending(".class")) {
            String source = topLevel(name) + ".java";
            assertEquals(Files.readString(main.resolve(source)), sources.text(source), name);
        }
    }

    @ParameterizedTest
    @FieldSource("MODULES")
    void everyPublicClassHasItsPage(Module module) throws ClassNotFoundException {
        Jar pages = Jar.read(module.jar("-javadoc"));
        assertTrue(pages.has("index.html") && pages.has("element-list"), "an index for readers and one for links");
        int expected = 0;
        for (String name : Jar.read(module.jar("")).ending(".class")) {
            if (!name.equals(topLevel(name) + ".class") || name.endsWith("package-info.class")) {
                continue;
            }
            boolean open = isPublic(topLevel(name).replace('/', '.'));
            assertEquals(
                    open, pages.has("io.github.heatswell." + module.name() + "/" + topLevel(name) + ".html"), name);
            expected += open ? 1 : 0;
        }
        assertTrue(expected > 10, "only " + expected + " public classes were found");
    }

    /** Times of day in pages would make every build another one. */
    @Test
    void pagesTellNoTime() {
        for (Module module : Release.MODULES) {
            Jar pages = Jar.read(module.jar("-javadoc"));
            for (String page : pages.ending(".html")) {
                assertFalse(pages.text(page).contains("dc.created"), page);
            }
        }
    }

    /** Jars keep who may read a file, and that comes from the mask of whoever builds, unless it is 022. */
    @ParameterizedTest
    @FieldSource("MODULES")
    @EnabledIfSystemProperty(named = "heatswell.release", matches = "true", disabledReason = "for releases only")
    void everybodyMayReadWhatIsInside(Module module) throws IOException {
        for (String addition : List.of("", "-sources", "-javadoc")) {
            try (FileSystem jar = FileSystems.newFileSystem(module.jar(addition), PERMISSIONS);
                    Stream<Path> files = Files.walk(jar.getPath("/"))) {
                for (Path file : files.filter(one -> one.getNameCount() > 0).toList()) {
                    assertEquals(
                            Files.isDirectory(file) ? "rwxr-xr-x" : "rw-r--r--",
                            PosixFilePermissions.toString(Files.getPosixFilePermissions(file)),
                            file + " in " + module.jar(addition) + "; set umask 022 before the sources are fetched");
                }
            }
        }
    }

    private static boolean isPublic(String name) throws ClassNotFoundException {
        return Modifier.isPublic(
                Class.forName(name, false, JarsIT.class.getClassLoader()).getModifiers());
    }

    private static String topLevel(String classFile) {
        int dollar = classFile.indexOf('$');
        return classFile.substring(0, dollar < 0 ? classFile.length() - ".class".length() : dollar);
    }
}

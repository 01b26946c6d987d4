package io.github.heatswell.scenarios.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.release.Release.Module;
import java.io.IOException;
import java.lang.module.Configuration;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReference;
import java.lang.reflect.Modifier;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
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

    private static final String MODULE_INFO = "module-info.class";

    /**
     * Programs name the modules in their {@code module-info}, so these names stay as they are for good. Core's stands in its
     * manifest, those of the others in their descriptors.
     */
    @ParameterizedTest
    @ValueSource(strings = {"core", "charts", "scenarios"})
    void modulesKeepTheirNames(String name) throws IOException {
        String promised = "io.github.heatswell." + name;
        Module module = Release.module(name);
        Attributes manifest = Jar.read(module.jar("")).manifest();
        assertEquals(name.equals("core") ? promised : null, manifest.getValue("Automatic-Module-Name"));
        assertEquals("Heatswell " + name, manifest.getValue("Implementation-Title"));
        assertEquals(Release.version(), manifest.getValue("Implementation-Version"));
        ModuleReference found = ModuleFinder.of(module.jar(""))
                .find(promised)
                .orElseThrow(() -> new AssertionError("Java gives it no such name"));
        assertEquals(name.equals("core"), found.descriptor().isAutomatic());
        assertTrue(
                Files.readString(Path.of("..", "README.md")).contains('`' + promised + '`'), "README.md promises it");
    }

    /**
     * From the module alone, what it requires and what that requires, Java finds its way to every jar that comes with it. It also
     * refuses a module path on which two modules hold the same package.
     */
    @ParameterizedTest
    @FieldSource("MODULES")
    void aModuleRequiresEveryJarThatComesWithIt(Module module) throws IOException {
        Set<Path> path = new HashSet<>(Set.of(module.jar("")));
        module.libraries().forEach(library -> path.add(library.jar()));
        ModuleFinder found = ModuleFinder.of(path.toArray(Path[]::new));
        Configuration resolved = ModuleLayer.boot()
                .configuration()
                .resolve(found, ModuleFinder.of(), Set.of("io.github.heatswell." + module.name()));
        Set<Path> reached = new HashSet<>();
        resolved.modules()
                .forEach(one -> reached.add(Path.of(one.reference().location().orElseThrow())));
        assertEquals(absolute(path), absolute(reached));
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
            assertTrue(name.startsWith("io/github/heatswell/") || name.equals(MODULE_INFO), name);
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
    void everyPublicClassThatIsExportedHasItsPage(Module module) throws ClassNotFoundException {
        Set<String> exported = exported(module);
        Jar pages = Jar.read(module.jar("-javadoc"));
        assertTrue(pages.has("index.html") && pages.has("element-list"), "an index for readers and one for links");
        int expected = 0;
        for (String name : Jar.read(module.jar("")).ending(".class")) {
            if (!name.equals(topLevel(name) + ".class") || name.endsWith("-info.class")) {
                continue;
            }
            String type = topLevel(name).replace('/', '.');
            boolean open = exported.contains(type.substring(0, type.lastIndexOf('.'))) && isPublic(type);
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

    /**
     * Jars keep who may read a file, and that comes from the mask of whoever builds, unless it is 022. Where the JDK's own tool
     * completes a descriptor, it leaves out who may, and then everybody may.
     */
    @ParameterizedTest
    @FieldSource("MODULES")
    @EnabledIfSystemProperty(named = "heatswell.release", matches = "true", disabledReason = "for releases only")
    void everybodyMayReadWhatIsInside(Module module) throws IOException {
        for (String addition : List.of("", "-sources", "-javadoc")) {
            boolean completed =
                    addition.isEmpty() && Jar.read(module.jar(addition)).has(MODULE_INFO);
            try (FileSystem jar = FileSystems.newFileSystem(module.jar(addition));
                    Stream<Path> files = Files.walk(jar.getPath("/"))) {
                for (Path file : files.filter(one -> one.getNameCount() > 0).toList()) {
                    String expected = Files.isDirectory(file) ? "rwxr-xr-x" : "rw-r--r--";
                    assertEquals(
                            completed ? Optional.empty() : Optional.of(expected),
                            permissions(file),
                            file + " in " + module.jar(addition) + "; set umask 022 before the sources are fetched");
                }
            }
        }
    }

    private static Optional<String> permissions(Path file) throws IOException {
        if (!(Files.getAttribute(file, "zip:permissions") instanceof Set<?> kept)) {
            return Optional.empty();
        }
        Set<PosixFilePermission> permissions = EnumSet.noneOf(PosixFilePermission.class);
        kept.forEach(one -> permissions.add((PosixFilePermission) one));
        return Optional.of(PosixFilePermissions.toString(permissions));
    }

    private static Set<Path> absolute(Set<Path> paths) {
        Set<Path> absolute = new TreeSet<>();
        paths.forEach(path -> absolute.add(path.toAbsolutePath().normalize()));
        return absolute;
    }

    /** The packages that other modules can use; all of them, where it has no descriptor. */
    private static Set<String> exported(Module module) {
        ModuleDescriptor descriptor =
                ModuleFinder.of(module.jar("")).findAll().iterator().next().descriptor();
        if (descriptor.isAutomatic()) {
            return descriptor.packages();
        }
        Set<String> exported = new TreeSet<>();
        descriptor.exports().stream().filter(one -> !one.isQualified()).forEach(one -> exported.add(one.source()));
        return exported;
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

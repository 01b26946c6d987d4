package io.github.heatswell.scenarios.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What the modules export is what programs need, and no more: every type that an exported type shows can be used too, and every
 * exported package is one that documents and examples lead to. Core has no descriptor, so all its packages are open.
 */
class ModulesTest {

    private static final String ROOT = "io.github.heatswell.";
    private static final String CORE = "io.github.heatswell.core";
    private static final String CHARTS = "io.github.heatswell.charts";
    private static final String SCENARIOS = "io.github.heatswell.scenarios";

    /** A type by its full name, as in imports and links. */
    private static final Pattern FULL_NAME = Pattern.compile("\\b(io\\.github\\.heatswell(?:\\.[a-z]+)+)\\.[A-Z]");
    /** A type by its own name in running text, such as {@code `Lessons.all()`}. */
    private static final Pattern IN_TEXT = Pattern.compile("`([A-Z]\\w+)[.(`]");

    private static final JavaClasses ALL = OwnClasses.all();

    private static Map<String, ModuleDeclaration> declared;
    private static Map<String, String> modulesOfPackages;

    @BeforeAll
    static void read() throws IOException {
        declared = Map.of(
                CHARTS, ModuleDeclaration.read(Path.of("..", "charts", "src", "main", "java", "module-info.java")),
                SCENARIOS, ModuleDeclaration.read(Path.of("src", "main", "java", "module-info.java")));
        modulesOfPackages = new TreeMap<>();
        ModuleLayer.boot()
                .modules()
                .forEach(module -> module.getPackages().forEach(name -> modulesOfPackages.put(name, module.getName())));
        ALL.forEach(type -> modulesOfPackages.put(type.getPackageName(), own(type.getPackageName())));
    }

    @Test
    void whatExportedTypesShowCanBeUsed() {
        assertTrue(shown(exportedTypes()).size() > 500, "types are found");
        assertEquals(
                Set.of(), hidden(exportedTypes()), "export the package, require its module transitively, or show less");
    }

    /** Programs that read this test's folder of examples, the front pages or the projects on the packaged jars. */
    @Test
    void whatDocumentsAndExamplesUseIsExported() throws IOException {
        Set<String> closed = new TreeSet<>(ledTo());
        closed.removeIf(ModulesTest::isExported);

        assertTrue(ledTo().size() > 15, "they use many packages: " + ledTo());
        assertEquals(Set.of(), closed, "a program on the module path cannot do the same");
    }

    @Test
    void nothingElseIsExported() throws IOException {
        Set<String> needed = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(ledTo());
        while (!open.isEmpty()) {
            String name = open.pop();
            if (needed.add(name)) {
                shown(openTypes().filter(type -> type.getPackageName().equals(name)))
                        .forEach(use -> open.push(use.to()));
            }
        }
        Set<String> exported = new TreeSet<>();
        declared.values().forEach(module -> exported.addAll(module.exported()));
        exported.removeAll(needed);

        assertEquals(Set.of(), exported, "show it in a document or an example, or keep it inside the module");
    }

    @Test
    void aHiddenTypeIsFoundWhereverItIsShown() {
        JavaClasses samples = new ClassFileImporter().importClasses(Leaky.class);

        Set<String> found = new TreeSet<>();
        shown(samples.stream()).stream()
                .filter(use -> !Set.of("java.lang", "java.util").contains(use.to()))
                .forEach(use -> found.add(use.by()));

        assertEquals(
                Set.of("Leaky", "Leaky.field", "Leaky.bound", "Leaky.parameter", "Leaky.result", "Leaky.thrown"),
                found);
    }

    /** A package that an open part of a type names. */
    private record Use(String by, String from, String to) {}

    private static Set<String> hidden(Stream<JavaClass> types) {
        Set<String> hidden = new TreeSet<>();
        for (Use use : shown(types)) {
            String user = modulesOfPackages.get(use.from());
            String used = modulesOfPackages.getOrDefault(use.to(), "a library");
            boolean readable = used.equals(user)
                    || used.equals("java.base")
                    || implied(user).contains(used);
            if (!readable || used.startsWith(ROOT) && !isExported(use.to())) {
                hidden.add(use.by() + " shows a type of " + use.to() + " in " + used);
            }
        }
        return hidden;
    }

    private static Set<Use> shown(Stream<JavaClass> types) {
        Set<Use> uses = new HashSet<>();
        types.forEach(type -> {
            String name = type.getSimpleName();
            type.getTypeParameters().forEach(one -> add(uses, type, name, one));
            type.getSuperclass().ifPresent(one -> add(uses, type, name, one));
            type.getInterfaces().forEach(one -> add(uses, type, name, one));
            for (JavaField field : type.getFields()) {
                if (isOpen(field)) {
                    add(uses, type, name + '.' + field.getName(), field.getType());
                }
            }
            for (JavaCodeUnit unit : type.getCodeUnits()) {
                if (isOpen(unit)) {
                    String by = name + '.' + unit.getName();
                    unit.getTypeParameters().forEach(one -> add(uses, type, by, one));
                    unit.getParameterTypes().forEach(one -> add(uses, type, by, one));
                    add(uses, type, by, unit.getReturnType());
                    unit.getExceptionTypes().forEach(one -> add(uses, type, by, one));
                }
            }
        });
        return uses;
    }

    private static void add(Set<Use> uses, JavaClass type, String by, JavaType shown) {
        for (JavaClass raw : shown.getAllInvolvedRawTypes()) {
            JavaClass named = raw.getBaseComponentType();
            if (!named.isPrimitive()) {
                uses.add(new Use(by, type.getPackageName(), named.getPackageName()));
            }
        }
    }

    private static boolean isOpen(JavaMember member) {
        Set<JavaModifier> modifiers = member.getModifiers();
        return !modifiers.contains(JavaModifier.SYNTHETIC)
                && (modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED));
    }

    private static boolean isOpen(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getEnclosingClass().map(ModulesTest::isOpen).orElse(true);
    }

    private static Stream<JavaClass> openTypes() {
        return ALL.stream().filter(ModulesTest::isOpen);
    }

    private static Stream<JavaClass> exportedTypes() {
        return openTypes().filter(type -> isExported(type.getPackageName()));
    }

    private static boolean isExported(String name) {
        ModuleDeclaration module = declared.get(own(name));
        return module == null || module.exported().contains(name);
    }

    /** The module of a package of this project. */
    private static String own(String name) {
        return name.startsWith(SCENARIOS) ? SCENARIOS : name.startsWith(CHARTS) ? CHARTS : CORE;
    }

    private static Set<String> implied(String module) {
        Set<String> implied = new TreeSet<>();
        ModuleDeclaration declaration = declared.get(module);
        if (declaration != null) {
            declaration.implied().forEach(other -> {
                implied.add(other);
                implied.addAll(implied(other));
            });
        }
        return implied;
    }

    /** The packages of types that are named to programmers. */
    private static Set<String> ledTo() throws IOException {
        Map<String, String> packages = new TreeMap<>();
        openTypes().forEach(type -> packages.put(type.getSimpleName(), type.getPackageName()));
        Set<String> named = new TreeSet<>();
        for (Path document : List.of(Path.of("..", "README.md"), Path.of("README.md"))) {
            Matcher name = IN_TEXT.matcher(Files.readString(document));
            while (name.find()) {
                if (packages.containsKey(name.group(1))) {
                    named.add(packages.get(name.group(1)));
                }
            }
        }
        for (Path place : List.of(
                Path.of("src", "test", "java", "io", "github", "heatswell", "scenarios", "example"),
                Path.of("src", "it"),
                Path.of("..", ".build", "overview.html"))) {
            try (Stream<Path> files = Files.walk(place)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Matcher name = FULL_NAME.matcher(Files.readString(file));
                    while (name.find()) {
                        named.add(name.group(1));
                    }
                }
            }
        }
        named.remove("io.github.heatswell.scenarios.example");
        return named;
    }

    /** Shows a type of a library in each way there is. */
    public abstract static class Leaky implements Comparable<JavaClass> {
        /** One. */
        public JavaClass field;

        /** One. */
        public abstract <T extends JavaClass> void bound();

        /** One. */
        protected abstract void parameter(JavaClass[] one);

        /** One. */
        public abstract List<? extends JavaClass> result();

        /** One. */
        public abstract void thrown() throws TimeoutException;

        abstract JavaClass inside();
    }
}

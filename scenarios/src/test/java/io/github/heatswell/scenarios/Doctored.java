package io.github.heatswell.scenarios;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/** The program with one class of it changed, for faults that the sound program does not have. */
final class Doctored implements AutoCloseable {

    private static final String ROOT = "io.github.heatswell.";

    /** What all changed programs have in common, loaded and compiled once. */
    private static final Program LIBRARIES = new Program(
            entries().filter(Doctored::isLibrary).toArray(URL[]::new), ClassLoader.getPlatformClassLoader());

    private final Path classes;
    private final Program loader;

    /** Loads a changed program. By its name the build leaves what it loads out of the coverage. */
    private static final class Program extends URLClassLoader {

        Program(URL[] urls, ClassLoader parent) {
            super(urls, parent);
        }
    }

    /**
     * Changes a class.
     *
     * @param scratch an empty folder for what is compiled
     * @param module the folder of its module
     * @param name its name behind {@code io.github.heatswell.}
     * @param pattern what is replaced in its source, once
     * @param replacement what stands there instead
     */
    Doctored(Path scratch, String module, String name, String pattern, String replacement) throws IOException {
        String file = (ROOT + name).replace('.', '/') + ".java";
        String source = Files.readString(Path.of("..", module, "src/main/java").resolve(file));
        String changed = source.replaceFirst(pattern, replacement);
        assertNotEquals(source, changed, "nothing to replace in " + file);
        Path copy = scratch.resolve(Path.of(file).getFileName());
        Files.writeString(copy, changed);
        classes = Files.createDirectory(scratch.resolve("classes"));
        StringWriter said = new StringWriter();
        boolean compiled = ToolProvider.getSystemJavaCompiler()
                .getTask(
                        said,
                        null,
                        null,
                        List.of("-proc:none", "-cp", System.getProperty("java.class.path"), "-d", classes.toString()),
                        null,
                        ToolProvider.getSystemJavaCompiler()
                                .getStandardFileManager(null, null, null)
                                .getJavaFileObjects(copy))
                .call();
        assertEquals(true, compiled, said.toString());
        URL changes = classes.toUri().toURL();
        loader = new Program(
                Stream.concat(Stream.of(changes), entries().filter(url -> !isLibrary(url)))
                        .toArray(URL[]::new),
                LIBRARIES);
    }

    /** Changes a class so that whoever needs it first gets an error. */
    static Doctored failing(Path scratch, String module, String name, String error) throws IOException {
        String simple = name.substring(name.lastIndexOf('.') + 1);
        return new Doctored(
                scratch,
                module,
                name,
                "((?:class|record) " + simple + "\\b[^{]*\\{)",
                "$1 static { if (true) throw new " + error + "(\"injected\"); }");
    }

    /**
     * Changes a class so that making one of it fails with the error that a system property names, and only while it names one: one
     * program serves for many errors.
     */
    static Doctored failingAsTold(Path scratch, String module, String name, String property, List<String> errors)
            throws IOException {
        String simple = name.substring(name.lastIndexOf('.') + 1);
        String cases = errors.stream()
                .map(error -> "case \"" + error + "\": throw new " + error + "(\"injected\"); ")
                .collect(Collectors.joining());
        return new Doctored(
                scratch,
                module,
                name,
                "(class " + simple + "\\b[^{]*\\{)",
                "$1 { switch (System.getProperty(\"" + property + "\", \"\")) { " + cases + "} }");
    }

    private static Stream<URL> entries() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> {
                    try {
                        return Path.of(entry).toUri().toURL();
                    } catch (MalformedURLException impossible) {
                        throw new IllegalStateException(impossible);
                    }
                });
    }

    private static boolean isLibrary(URL entry) {
        return entry.getPath().matches(".*/(?!heatswell-)[^/]*\\.jar");
    }

    /** The class path with the changed class first. */
    String classPath() {
        return classes + File.pathSeparator + System.getProperty("java.class.path");
    }

    /** A class of the changed program, by its name behind {@code io.github.heatswell.}. */
    Class<?> load(String name) throws ClassNotFoundException {
        return loader.loadClass(ROOT + name);
    }

    /** Executes a command line; what the interview asks is answered. */
    Outcome execute(List<String> line) throws ReflectiveOperationException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Object program = loader.loadClass(ROOT + "scenarios.cli.CommandFactory")
                .getMethod("heatswell", PrintWriter.class, PrintWriter.class, Reader.class)
                .invoke(null, new PrintWriter(out), new PrintWriter(err), new StringReader(EveryCommand.ANSWERS));
        Object status = loader.loadClass("picocli.CommandLine")
                .getMethod("execute", String[].class)
                .invoke(program, (Object) line.toArray(String[]::new));
        return new Outcome((int) status, out.toString(), err.toString());
    }

    @Override
    public void close() throws IOException {
        loader.close();
    }
}

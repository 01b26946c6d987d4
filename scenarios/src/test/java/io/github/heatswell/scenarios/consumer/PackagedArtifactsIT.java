package io.github.heatswell.scenarios.consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import io.github.heatswell.scenarios.teaching.Course;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Builds the projects of {@code src/it/consumer} with a Maven of its own, after packaging: they see the jars and the
 * flattened poms and nothing else of this build. The artifacts stand in a repository inside {@code target}; everything else
 * comes from the local repository of this build, read as if it were a remote one, so that neither is it written to nor is
 * the network asked.
 */
class PackagedArtifactsIT {

    private static final Path FRONT_PAGE = Path.of("..", "README.md");
    private static final Path FRONT_PAGE_IMPORTS =
            Path.of("src", "test", "java", "io", "github", "heatswell", "scenarios", "example", "ReadmeExample.java");

    private static Consumer consumer;
    private static Consumer.Outcome build;

    @BeforeAll
    static void buildOnce() throws IOException, InterruptedException {
        consumer = Consumer.copiedTo(Path.of("target", "consumer").toAbsolutePath());
        for (String module : new String[] {"core", "charts", "scenarios"}) {
            consumer.publish(module);
        }
        putInTheFrontPage();
        build = consumer.build();
    }

    /** Runs, results, a picture and a table from core and charts alone; the assertions are in the consumer's own tests. */
    @Test
    void aProgramOfSomebodyElseBuildsAndRunsOnTheJars() throws IOException {
        assertEquals(0, build.exit(), build.output());
        assertEquals(5, consumer.testsRun("library"), "all tests of src/it/consumer/library ran");
        assertTrue(Files.size(consumer.home().resolve("library/target/cottage.png")) > 10_000);
    }

    /** The front page's dependency and lines, with the imports that its own example has; values as its test expects. */
    @Test
    void theFrontPageBuildsAndRunsAsItStands() throws IOException {
        assertEquals(0, build.exit(), build.output());
        assertEquals(1, consumer.testsRun("readme"));
    }

    /** The JDK of this build, and another one if the build was told of it; {@code .ci/run} tells of the newest. */
    static Set<Path> jdks() {
        Set<Path> homes = new LinkedHashSet<>();
        homes.add(Path.of(System.getProperty("java.home")));
        String newest = System.getProperty("newest.java.home", "");
        if (!newest.isBlank()) {
            homes.add(Path.of(newest));
        }
        return homes;
    }

    /**
     * A program that says nothing but {@code requires io.github.heatswell.scenarios} compiled on a module path, and starts there:
     * every library that the three modules use is found through their own descriptors.
     */
    @ParameterizedTest
    @MethodSource("jdks")
    void aNamedModuleNeedsNothingButItsRequires(Path jdk) throws Exception {
        assertEquals(0, build.exit(), build.output());
        Path folder = Files.createTempDirectory(consumer.home(), "lodge");

        Consumer.Outcome run = consumer.startOnModulePath(jdk, folder);

        assertEquals(0, run.exit(), run.output());
        assertEquals(
                List.of(
                        "module consumer.modular",
                        "module io.github.heatswell.scenarios",
                        "module io.github.heatswell.charts",
                        "module io.github.heatswell.core",
                        "fault in line 1",
                        "lessons " + Course.bundled().titles().size(),
                        "findings true",
                        "peak 7 bar"),
                run.output().lines().toList());
        Path results = folder.resolve("results");
        assertTrue(Files.readAllLines(folder.resolve("own.csv")).size() > 100, "a line for each minute and a head");
        assertEquals(-1, Files.mismatch(folder.resolve("own.csv"), results.resolve("trace.csv")));
        for (Path picture : List.of(folder.resolve("own.png"), results.resolve("pressure.png"))) {
            assertNotNull(ImageIO.read(picture.toFile()), picture + " is a picture");
        }
        for (Path drawing : List.of(folder.resolve("own.svg"), results.resolve("pressure.svg"))) {
            assertEquals("svg", rootOf(drawing));
        }
        assertEquals("html", rootOf(results.resolve("report.html")));
        try (JsonParser summary =
                new JsonFactory().createParser(results.resolve("summary.json").toFile())) {
            assertEquals(JsonToken.START_OBJECT, summary.nextToken());
            summary.skipChildren();
            assertNull(summary.nextToken(), "one whole object");
        }
    }

    private static String rootOf(Path xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(xml.toFile())
                .getDocumentElement()
                .getTagName();
    }

    private static void putInTheFrontPage() throws IOException {
        String page = Files.readString(FRONT_PAGE);
        String version = System.getProperty("heatswell.version");
        String dependency = between(page, "```xml\n", "```");
        assertTrue(dependency.contains("<version>" + version + "</version>"), "README.md names version " + version);
        Path project = consumer.home().resolve("readme");
        Path pom = project.resolve("pom.xml");
        Files.writeString(pom, Files.readString(pom).replace("<!-- front page -->\n", dependency));

        StringBuilder source = new StringBuilder("package consumer;\n\n");
        Files.readAllLines(FRONT_PAGE_IMPORTS).stream()
                .filter(line -> line.startsWith("import "))
                .forEach(line -> source.append(line).append('\n'));
        source.append("\nclass FrontPageTest {\n@org.junit.jupiter.api.Test\nvoid runs() {\n")
                .append(between(page, "```java\n", "```"))
                .append("org.junit.jupiter.api.Assertions.assertEquals(4.98, peak, 0.01);\n")
                .append("org.junit.jupiter.api.Assertions.assertEquals(0, relieved);\n")
                .append("}\n}\n");
        Path tests = Files.createDirectories(project.resolve("src/test/java/consumer"));
        Files.writeString(tests.resolve("FrontPageTest.java"), source);
    }

    private static String between(String text, String begin, String end) {
        int at = text.indexOf(begin);
        assertTrue(at >= 0, "README.md has a block " + begin);
        int from = at + begin.length();
        return text.substring(from, text.indexOf(end, from));
    }
}

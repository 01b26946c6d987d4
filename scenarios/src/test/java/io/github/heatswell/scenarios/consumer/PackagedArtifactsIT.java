package io.github.heatswell.scenarios.consumer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

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
    private static Consumer.Build build;

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
        assertEquals(4, consumer.testsRun("library"), "all tests of src/it/consumer/library ran");
        assertTrue(Files.size(consumer.home().resolve("library/target/cottage.png")) > 10_000);
    }

    /** The front page's dependency and lines, with the imports that its own example has; values as its test expects. */
    @Test
    void theFrontPageBuildsAndRunsAsItStands() throws IOException {
        assertEquals(0, build.exit(), build.output());
        assertEquals(1, consumer.testsRun("readme"));
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
                .append("org.junit.jupiter.api.Assertions.assertEquals(6.02, peak, 0.01);\n")
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

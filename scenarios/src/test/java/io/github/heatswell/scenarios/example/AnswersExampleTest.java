package io.github.heatswell.scenarios.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The answers of the library, in as few lines as the page about scenarios says. */
class AnswersExampleTest {

    private static final Path PAGE = Path.of("README.md");
    private static final Path EXAMPLE =
            Path.of("src", "test", "java", "io", "github", "heatswell", "scenarios", "example", "AnswersExample.java");

    @Test
    void theExampleIsTheOneThatIsCompiled() throws IOException {
        String code = between(Files.readString(EXAMPLE), "// answers: begin\n", "        // answers: end");
        String shown = between(Files.readString(PAGE), "<!-- answers -->\n```java\n", "```");
        assertEquals(code.replaceAll("(?m)^ {8}", ""), shown);
    }

    @Test
    void theExampleRuns() {
        AnswersExample.Found found = AnswersExample.answers(
                Catalogue.read("orchard-lodge").system(),
                Catalogue.read("orchard-lodge-vessel").system().vessel().orElseThrow());
        assertTrue(found.warnings().stream().anyMatch(words -> words.contains("102 psi")), found.warnings()::toString);
        assertEquals(0.018, found.sizing().smallestOnSale().orElseThrow().volume(), 1e-12);
        assertEquals(40, found.map().volumeCount());
        assertEquals(1024, found.spread().completed());
        assertEquals(6, found.sheet().readings().size());
    }

    private static String between(String text, String begin, String end) {
        int from = text.indexOf(begin) + begin.length();
        return text.substring(from, text.indexOf(end, from));
    }
}

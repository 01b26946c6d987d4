package io.github.heatswell.scenarios.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The front page says what is true. */
class FrontPageTest {

    private static final Path FRONT_PAGE = Path.of("..", "README.md");
    private static final Path EXAMPLE =
            Path.of("src", "test", "java", "io", "github", "heatswell", "scenarios", "example", "ReadmeExample.java");

    @Test
    void theExampleIsTheOneThatIsCompiled() throws IOException {
        String page = Files.readString(FRONT_PAGE);
        String code = between(Files.readString(EXAMPLE), "// front page: begin\n", "        // front page: end");
        String shown = between(page, "```java\n", "```");
        assertEquals(code.replaceAll("(?m)^ {8}", ""), shown);
    }

    @Test
    void theJavadocBeginsWithTheSameExample() throws IOException {
        String shown = between(Files.readString(FRONT_PAGE), "```java\n", "```");
        String overview = Files.readString(Path.of("..", ".build", "overview.html"));
        assertEquals(shown, between(overview, "<pre>\n", "</pre>"));
    }

    @Test
    void theExampleRuns() {
        ReadmeExample.Found found = ReadmeExample.run();
        assertEquals(4.98, found.peak(), 0.01);
        assertEquals(0, found.relieved());
        assertEquals(6, found.files().size());
    }

    /** What the text beside the picture says of the orchard lodge. */
    @Test
    void thePictureIsDescribedTruly() {
        RunResult lodge = Catalogue.read("orchard-lodge").simulation().run();
        double opened = lodge.first(Event.Kind.RELIEF_OPENED).orElseThrow().time();
        assertEquals(10, opened / 60, 0.5);
        assertEquals(3.1, lodge.totals().relieved() * 1e3, 0.05);
    }

    @Test
    void everyFileTheProjectsPagesPointToExists() throws IOException {
        Pattern link = Pattern.compile("]\\((?!http|#)([^)#]+)");
        List<Path> pages = new ArrayList<>(List.of(FRONT_PAGE, Path.of("..", "DEVELOPERS.md"), Path.of("README.md")));
        for (Path folder : List.of(Path.of("..", ".github"), Path.of("..", "core", "docs"), Path.of("docs"))) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.toString().endsWith(".md")).forEach(pages::add);
            }
        }
        assertTrue(pages.size() > 7, "pages are found: " + pages);
        for (Path page : pages) {
            Matcher links = link.matcher(Files.readString(page));
            while (links.find()) {
                assertTrue(Files.exists(page.resolveSibling(links.group(1))), page + " points to " + links.group(1));
            }
        }
    }

    private static String between(String text, String begin, String end) {
        int from = text.indexOf(begin) + begin.length();
        return text.substring(from, text.indexOf(end, from));
    }
}

package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The README describes the format as it is. With {@code -Dreadme.rewrite} its tables are written anew instead of
 * compared.
 */
class ReadmeTest {

    private static final Path README = Path.of("README.md");

    @ParameterizedTest
    @ValueSource(strings = {"keys", "typical values", "units"})
    void tablesMatchTheFormat(String name) throws IOException {
        String table = switch (name) {
            case "keys" -> FormatReference.keys();
            case "units" -> FormatReference.units();
            default -> FormatReference.typicalValues();
        };
        String readme = Files.readString(README);
        String begin = "<!-- " + name + ": made by ReadmeTest -->\n";
        String end = "<!-- end of " + name + " -->";
        int from = readme.indexOf(begin) + begin.length();
        int to = readme.indexOf(end);
        assertTrue(from >= begin.length() && to >= from, "the README has no place for " + name);
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(README, readme.substring(0, from) + table + readme.substring(to));
        } else {
            assertEquals(table, readme.substring(from, to), "run this test once with -Dreadme.rewrite");
        }
    }

    @Test
    void noWordIsSaidTwice() throws IOException {
        assertEquals(
                List.of(),
                Pattern.compile("\\b([a-z]+) \\1\\b")
                        .matcher(Files.readString(README))
                        .results()
                        .map(MatchResult::group)
                        .toList());
    }

    @Test
    void everyScenarioInTheReadmeIsSound() throws IOException {
        List<String> fences = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(README))
                .results()
                .map(result -> result.group(1))
                .toList();
        assertFalse(fences.isEmpty());
        fences.forEach(text -> ScenarioReader.read("readme", text));
    }

    @Test
    void theJavaExampleIsTheOneThatRuns() throws IOException {
        String example = Files.readString(Path.of("src/test/java/io/github/heatswell/scenarios/example/RunAFile.java"));
        String fence = Pattern.compile("```java\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(README))
                .results()
                .map((MatchResult result) -> result.group(1))
                .findFirst()
                .orElseThrow();
        assertTrue(example.replaceAll("(?m)^ +", "").contains(fence.replaceAll("(?m)^ +", "")), fence);
    }
}

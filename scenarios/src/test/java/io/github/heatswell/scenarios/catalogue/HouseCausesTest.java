package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The table that tells causes apart is what the runs give. With {@code -Dreadme.rewrite} it is written anew instead of
 * compared.
 */
class HouseCausesTest {

    private static final Path PAGE = Path.of("docs/causes.md");
    private static final String BEGIN = "<!-- causes: made by HouseCausesTest -->\n";
    private static final String END = "<!-- end of causes -->";

    private static final List<CauseCase> CAUSES = CauseCase.all();

    @Test
    void theTableIsWhatTheRunsGive() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        assertTrue(from >= BEGIN.length() && to >= from, "the page has no place for the table");
        if (System.getProperty("readme.rewrite") != null) {
            Files.writeString(PAGE, page.substring(0, from) + table() + page.substring(to));
        } else {
            assertEquals(table(), page.substring(from, to), "run this test once with -Dreadme.rewrite");
        }
    }

    @Test
    void noTwoCausesLookTheSame() {
        List<String> signatures = CAUSES.stream().map(CauseCase::signature).toList();
        assertEquals(CAUSES.size(), signatures.stream().distinct().count(), signatures::toString);
    }

    private static String table() {
        return CAUSES.stream().map(CauseCase::row).collect(Collectors.joining("", """
                | Cause | Scenario | While heating | At night, heater off | At rest | Of the time | Openings a day | L a day | Bar at rest | Hottest, degC | Half-way | What gives it away |
                | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
                """, ""));
    }
}

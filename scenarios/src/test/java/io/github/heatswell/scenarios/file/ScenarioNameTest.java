package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScenarioNameTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "orchard-lodge, orchard-lodge",
                "../x, x",
                "..\\..\\x, x",
                "/etc/passwd, etc-passwd",
                "a/../../b, a-b",
                "C:\\x, C-x",
                "., scenario",
                ".., scenario",
                "\" \", scenario",
                ".hidden, hidden",
                "two words, two-words",
                "-o, o",
                "CON, scenario-CON",
                "nul.txt, scenario-nul.txt",
                "G\u00e4rtnerei, G\u00e4rtnerei",
                "a\u202eb, a-b",
                "v1.2, v1.2"
            })
    void namesAreSingleOrdinaryFolderNames(String name, String safe) {
        assertEquals(safe, ScenarioName.safe(name));
    }

    @Test
    void longNamesAreCut() {
        assertEquals(60, ScenarioName.safe("x".repeat(10_000)).length());
    }

    @Test
    void extensionsAreNoPartOfTheName() {
        assertEquals("mine", ScenarioName.of(Path.of("a", "mine.yaml")));
        assertEquals("mine", ScenarioName.of(Path.of("mine.YML")));
        assertEquals("mine.txt", ScenarioName.of(Path.of("mine.txt")));
        assertEquals("scenario", ScenarioName.of(Path.of("/")));
    }

    @Test
    void aSafeNameStaysInsideItsFolder() {
        Path parent = Path.of("out").toAbsolutePath();
        for (String name : new String[] {"..", "../..", "/", "a/b", "..\\x", "", "\u0000"}) {
            Path inside = parent.resolve(ScenarioName.safe(name)).normalize();
            assertTrue(inside.startsWith(parent) && !inside.equals(parent), name);
        }
    }
}

package io.github.heatswell.scenarios.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.file.Scenario;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CatalogueTest {

    static Stream<String> names() {
        return Catalogue.names().stream();
    }

    @Test
    void everyFileIsListedAndEveryListedFileIsThere() throws IOException, URISyntaxException {
        Path folder = Path.of(Catalogue.class.getResource("orchard-lodge.yaml").toURI())
                .getParent();
        try (Stream<Path> files = Files.list(folder)) {
            Set<String> found = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
            assertEquals(new TreeSet<>(Catalogue.names()), found);
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyScenarioSaysWhatItAsksAndThatItIsInvented(String name) {
        Scenario scenario = Catalogue.read(name);
        assertEquals(name, scenario.name());
        assertFalse(scenario.question().isBlank());
        assertTrue(scenario.question().endsWith("?"), scenario.question());
        assertFalse(scenario.expectation().isBlank());
        assertTrue(Catalogue.text(name).lines().findFirst().orElseThrow().contains("invented"));
    }

    /** A title names the arrangement of the supply as the file does. */
    @ParameterizedTest
    @MethodSource("names")
    void theTitleNamesTheArrangementOfTheFile(String name) {
        for (String arrangement : List.of("check valve", "backflow preventer")) {
            if (Catalogue.read(name).title().contains(arrangement)) {
                String text = Catalogue.text(name);
                assertTrue(text.contains("arrangement: " + arrangement.replace(' ', '-')), text);
            }
        }
    }

    /** So that {@code heatswell show} gives the same file on every terminal. */
    @ParameterizedTest
    @MethodSource("names")
    void textsArePlainAscii(String name) {
        assertTrue(Catalogue.text(name).chars().allMatch(c -> c == '\n' || c >= 32 && c < 127));
    }

    @Test
    void listingsMatchTheScenarios() {
        for (String name : Catalogue.names()) {
            Catalogue.Listing listing = Catalogue.listing(name);
            Scenario scenario = Catalogue.read(name);
            assertEquals(scenario.title(), listing.title());
            assertEquals(scenario.question(), listing.question());
        }
    }

    @Test
    void noOtherResourceCanBeReached() {
        for (String name : new String[] {"", "nowhere", "../file/x", "/version", "orchard-lodge.yaml"}) {
            assertThrows(IllegalArgumentException.class, () -> Catalogue.text(name));
        }
    }
}

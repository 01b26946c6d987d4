package io.github.heatswell.scenarios.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.scenarios.document.SourceText;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.Sources;
import io.github.heatswell.scenarios.readings.LogReader;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What files may not do to the reader: grow by references, nest, or be long enough to take for ever. */
class ParserLimitsTest {

    private static final double AIR = 101_325;
    /** A thousand times what it takes; without the limits it would be minutes to years. */
    private static final Duration SOON = Duration.ofSeconds(10);

    @TempDir
    Path folder;

    private static String refusal(String text) {
        return assertTimeoutPreemptively(
                        SOON,
                        () -> assertThrows(InvalidScenarioException.class, () -> ScenarioReader.read("house", text)))
                .getMessage();
    }

    /** Twelve lines that stand for a hundred thousand million values are refused at the first of them. */
    @ParameterizedTest
    @ValueSource(strings = {"house.yaml", "spots.yaml"})
    void referencesDoNotGrow(String name) throws IOException {
        String bomb = YamlMutations.bomb(12);
        Path file = Files.writeString(folder.resolve(name), bomb);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> {
            if (name.startsWith("house")) {
                ScenarioReader.read(file);
            } else {
                OwnersReadings.none().with(file, AIR);
            }
        });
        assertTrue(refused.getMessage().contains("1:5: anchors (&) are not used"), refused.getMessage());
    }

    /** The root is the first of eight levels. */
    @ParameterizedTest
    @ValueSource(ints = {7, 8, 200, 60_000})
    void nestingEndsAtEightLevels(int levels) {
        String message = refusal(Sources.FULL + "other: " + "[".repeat(levels) + "]".repeat(levels) + "\n");
        assertEquals(levels > 7, message.contains("13:15: this is nested too deeply"), message);
    }

    @Test
    void sizeEndsAtItsLimit() throws IOException {
        int left = SourceText.LARGEST - Sources.FULL.length();
        Path file = folder.resolve("house.yaml");
        Files.writeString(file, Sources.FULL + "#".repeat(left));
        assertEquals("House by the brook", ScenarioReader.read(file).title());
        Files.writeString(file, Sources.FULL + "#".repeat(left + 1));
        IOException refused = assertThrows(IOException.class, () -> ScenarioReader.read(file));
        assertTrue(refused.getMessage().contains("larger than 256 KiB"), refused.getMessage());
    }

    /** Regression: a pattern tried every share of the blanks with every other. */
    @ParameterizedTest
    @ValueSource(strings = {" ", " x", "+", "+-", " to"})
    void aLongValueIsRefusedAtOnce(String run) {
        String value = "4 bar" + run.repeat(200_000 / run.length()) + "x";
        String message = refusal(Sources.FULL.replace("pressure: 4.2 bar", "pressure: \"" + value + '"'));
        assertTrue(message.startsWith("house:3:47: supply.pressure: "), message);
    }

    /** Regression: the same with the heading of a column, by the third power of its length. */
    @Test
    void aLongHeadingIsPassedOverAtOnce() throws IOException {
        String blanks = " ".repeat(200_000);
        String heading = "\"temp" + blanks + "x" + blanks + "\ny\"";
        Path file = folder.resolve("log.csv");
        Files.writeString(file, "time_s,pressure_bar," + heading + "\n0,1,20\n60,2,20\n120,3,20\n");
        PressureLog log =
                assertTimeoutPreemptively(SOON, () -> LogReader.read(file, AIR)).log();
        assertTrue(log.count() == 3 && !log.hasTemperature(), "the other columns are read");
    }
}

package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.DurationUnit;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A file is checked before there is a system to simulate, so the limits of a run stand twice; they agree, but for runs too short to
 * have a second sample, which a file could not sample.
 */
class RunTest {

    private final HotWaterSystem system =
            ScenarioReader.read("house", Sources.FULL).system();

    @ParameterizedTest
    @CsvSource({"0, false", "1, true", "3155760000, true", "3155760000.1, false", "-1, false"})
    void durationsAreLimitedAsInTheSimulation(double seconds, boolean allowed) {
        same(allowed, () -> new Run.Builder().duration(seconds, DurationUnit.SECOND));
        same(allowed, () -> Simulation.of(system, nanos(seconds)));
    }

    @Test
    void aRunOfAFileHasASecondSample() {
        assertThrows(IllegalArgumentException.class, () -> new Run.Builder().duration(0.999, DurationUnit.SECOND));
        assertDoesNotThrow(() -> new Run.Builder().duration(1 / 3600.0, DurationUnit.HOUR));
        String file = Sources.FULL.replaceFirst("run: .*", "run: { duration: 1 s }");
        assertEquals(Duration.ofSeconds(1), ScenarioReader.read("house", file).duration());
    }

    @ParameterizedTest
    @CsvSource({
        "3600, 1, true",
        "3600, 0.999, false",
        "3600, 3600, true",
        "3600, 3600.001, false",
        "20000000, 1, true",
        "20000001, 1, false"
    })
    void samplesAreLimitedAsInTheSimulation(double seconds, double sample, boolean allowed) {
        assertEquals(allowed, Run.conflict(nanos(seconds), nanos(sample)).isEmpty());
        same(allowed, () -> Simulation.of(system, nanos(seconds)).sampledEvery(nanos(sample)));
    }

    @Test
    void nothingThatIsNoNumberIsTaken() {
        assertThrows(IllegalArgumentException.class, () -> new Run.Builder().duration(Double.NaN, DurationUnit.HOUR));
        assertThrows(IllegalArgumentException.class, () -> new Run.Builder().sample(Double.NaN, DurationUnit.HOUR));
    }

    private static void same(boolean allowed, org.junit.jupiter.api.function.Executable attempt) {
        if (allowed) {
            assertDoesNotThrow(attempt);
        } else {
            assertThrows(IllegalArgumentException.class, attempt);
        }
    }

    private static Duration nanos(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }
}

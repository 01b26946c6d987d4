package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.file.Sources;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a gauge showed at rest is known more closely than a guess. */
class RestSupplyTest {

    /** The usual lock-up rise is 4.4 psi. A reading far from the file's range, or no closer than it, changes nothing. */
    @ParameterizedTest
    @CsvSource({
        "60 psi +- 9 psi, 69, supply.reducing-valve.set=65 psi +- 4 psi",
        "40 psi to 70 psi, 58, supply.reducing-valve.set=54 psi +- 4 psi",
        "60 psi +- 9 psi, 85, ''",
        "60 psi +- 4 psi, 65, ''",
        "60 psi, 65, ''"
    })
    void aReadingAtRestTellsTheSetting(String set, double rest, String change) {
        assertEquals(
                change,
                RestSupply.of(
                                ScenarioReader.read("a", Sources.REDUCED.replace("set: 60 psi", "set: " + set)),
                                OptionalDouble.of(PressureUnit.PSI.toSi(rest)),
                                QuantityFormat.ascii(UnitSystem.US))
                        .stream()
                        .map(Change::toString)
                        .findFirst()
                        .orElse(""));
    }
}

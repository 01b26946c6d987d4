package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Regression: a check sheet does not take a reseat pressure that nobody gave for exact. */
class AssumedReseatTest {

    @Test
    void theBandIsWiderWhereTheReseatPressureIsAssumed() {
        Scenario given = Catalogue.read("orchard-lodge");
        Scenario assumed = ScenarioReader.read("lodge", given.source().replace(", reseats: 5.6 bar", ""));
        assertEquals(
                given.system().reliefValves().get(0).reseatPressure(),
                assumed.system().reliefValves().get(0).reseatPressure());
        Check exact = check(given);
        Check open = check(assumed);
        int half = 3;
        assertEquals(
                exact.readings().get(half).expectedGauge(),
                open.readings().get(half).expectedGauge());
        double before = width(exact.readings().get(half));
        double after = width(open.readings().get(half));
        assertTrue(after > before + 0.3e5, "half an hour after the draw: " + before + " Pa and " + after + " Pa");
        assertFalse(said(exact).contains("reseat pressure is assumed"), said(exact));
        assertTrue(
                said(open).contains("reseat pressure is assumed, and varied from 70 % to 95 % of the set"), said(open));
    }

    private static Check check(Scenario house) {
        return Advice.of(house, List.of(), QuantityFormat.ascii(UnitSystem.SI)).check();
    }

    private static double width(Check.Reading reading) {
        return reading.highestGauge() - reading.lowestGauge();
    }

    private static String said(Check check) {
        return String.join(" ", check.remarks());
    }
}

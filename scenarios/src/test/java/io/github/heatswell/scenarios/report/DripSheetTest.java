package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sheet by which an owner tells the causes of a drip apart. */
class DripSheetTest {

    private static Block.Grid grid(String name) {
        return (Block.Grid) DripSheet.of(Catalogue.read(name).system())
                .section(CommandResult.onScreen(UnitSystem.SI))
                .blocks()
                .get(1);
    }

    /** What a house does not have is not asked about. */
    @Test
    void onlyWhatTheHouseHasIsLookedAt() {
        assertEquals(5, grid("mill-cottage").columns().size());
        assertEquals(6, grid("mill-cottage-creeping-reducer").columns().size());
        assertFalse(grid("mill-cottage").toString().contains("air valve"));
        assertTrue(grid("orchard-lodge-vessel").toString().contains("air valve"));
        String which = "Which relief valve's outlet is wet";
        assertFalse(grid("mill-cottage").toString().contains(which));
        assertEquals(which, grid("shearers-hut").rows().get(0).get(0));
    }

    /**
     * Validation: water of 10 degC and of 60 degC has 999.70 and 983.20 kg/m3 (IAPWS-95), so a tank of 200 L would let out 3.3 L of
     * cold water, less what it grows itself: steel by 12e-6/K each way (common handbook value, from memory). The sheet allowed every tank what it
     * would gain up to 65 degC.
     */
    @Test
    void noMoreComesOutThanTheTankGains() {
        HotWaterSystem house = Catalogue.read("mill-cottage").system();
        HotWaterSystem hot = house.toBuilder()
                .tank(house.tank().toBuilder().volume(200, VolumeUnit.LITRE).build())
                .supply(house.supply().toBuilder()
                        .water(10, TemperatureUnit.CELSIUS)
                        .build())
                .heater(house.heater().toBuilder()
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        double grown = 0.2 * 3 * 12e-6 * 50 * 983.20 / 999.70;
        assertEquals(3.3e-3 - grown, DripSheet.of(hot).most(), 0.02e-3);
    }

    /**
     * Validation against the simulation: the paper of the sheet is wet when the relief valve of a house with that cause discharges.
     * The times of day are those of the row: heating at 18:00, at rest after midnight.
     */
    @ParameterizedTest
    @CsvSource({
        "mill-cottage, 1, true, false",
        "mill-cottage-night-mains, 2, false, true",
        "mill-cottage-worn-seat, 3, true, true"
    })
    void thePaperIsWetAsInTheRuns(String name, int column, boolean heating, boolean night) {
        assertEquals(heating ? "wet" : "dry", grid("mill-cottage").rows().get(0).get(column));
        assertEquals(night ? "wet" : "dry", grid("mill-cottage").rows().get(2).get(column));
        Trace trace = Catalogue.read(name).simulation().run().trace();
        Channel released = Channel.RELIEVED_TOTAL;
        // The runs begin at noon, with a sample a minute.
        assertEquals(night, trace.value(released, 16 * 60) - trace.value(released, 13 * 60) > 1e-6);
        if (heating) {
            assertTrue(trace.value(released, 10 * 60) > 1e-6);
        }
    }

    @Test
    void theSheetIsPrintedUnlessTheHeaterIsToStayOff() throws IOException {
        assertTrue(page("orchard-lodge").contains("Why does it drip? A sheet to fill in"));
        assertFalse(page("kiln-house-blocked").contains("Why does it drip?"));
    }

    private static String page(String name) throws IOException {
        Scenario scenario = Catalogue.read(name);
        ResultFile page = Results.of(scenario, scenario.simulation().run(), UnitSystem.SI).stream()
                .filter(file -> file.name().equals("report.html"))
                .findFirst()
                .orElseThrow();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        page.writeTo(bytes);
        return bytes.toString(StandardCharsets.UTF_8);
    }
}

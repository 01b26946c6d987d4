package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.PressureUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: houses on which long random looks have found the engine wrong, and what it was. */
class FoundHousesTest {

    private static HotWaterSystem house(long seed, int number) {
        RandomHouses houses = new RandomHouses(seed);
        HotWaterSystem house = houses.nextDisturbed();
        for (int i = 0; i < number; i++) {
            house = houses.nextDisturbed();
        }
        return house;
    }

    private static RunResult day(HotWaterSystem house) {
        return Simulation.of(house, Duration.ofDays(1))
                .sampledEvery(Duration.ofMinutes(10))
                .run();
    }

    /** Pressure was put onto that of the feed past the seat of the diaphragm, and nobody entered what the vessel took. */
    @ParameterizedTest
    @CsvSource("31, 962")
    void theVesselTakesItsPartOfAJump(long seed, int number) {
        RunResult result = day(house(seed, number));
        assertTrue(
                result.events().stream().anyMatch(event -> event.kind() == Event.Kind.VESSEL_LIFTED),
                "the diaphragm moves");
        assertTrue(result.audit().closes(), result.audit()::toString);
    }

    /** A leaking seat in a house without give: the approach at once went too far, and hours were integrated in hundredths of a second. */
    @ParameterizedTest
    @CsvSource({"31, 2640", "31, 4585"})
    void aLeakingSeatIsNoStifferThanAnOpenValve(long seed, int number) {
        RunResult result = day(house(seed, number));
        assertTrue(result.numerics().steps() < 1_000, result.numerics()::toString); // counted: 240 and 396
        assertTrue(result.audit().closes(), result.audit()::toString);
    }

    /** A valve that opens every second or two, because the feed stands above its reseat pressure, was followed until the steps ran out. */
    @ParameterizedTest
    @CsvSource({"31, 5654, valve 3", "48, 269, valve 1"})
    void hammeringByTheFeedIsChatter(long seed, int number, String valve) {
        List<Event> events = day(house(seed, number)).events();
        Event last = events.get(events.size() - 1);
        assertEquals(Event.Kind.RELIEF_CHATTERS, last.kind());
        assertEquals(valve, last.device());
    }

    /** While the bypass was open, what the leaking seat passes back was held to pass through the bypass, which so stayed open. */
    @ParameterizedTest
    @CsvSource({"48, 1726", "48, 2682"})
    void twiceTheHouseReturnsAsLong(long seed, int number) {
        HotWaterSystem house = house(seed, number);
        Trace one = day(house).trace();
        Trace two = day(Doubled.of(house)).trace();
        int last = Math.min(one.count(), two.count()) - 1;
        for (int i = 0; i < last; i++) {
            if (one.regime(i) == Trace.Regime.SEALED || one.regime(i) == Trace.Regime.RETURNED) {
                assertEquals(one.regime(i), two.regime(i), "sample " + i);
                double p = one.value(Channel.PRESSURE_ABSOLUTE, i);
                assertEquals(p, two.value(Channel.PRESSURE_ABSOLUTE, i), 1e-4 * p, "sample " + i);
            }
        }
    }

    /**
     * A tap opened on a house without give: what pressure let go of at once was drawn, but counted as no heat, so that every
     * draw of a given heat took too much. Of two houses alike, one settled at once and the other did not: by half a
     * day their pressures were 1.7e-4 apart.
     */
    @ParameterizedTest
    @CsvSource("148, 657")
    void whatIsDrawnAtOnceDeliversHeat(long seed, int number) {
        HotWaterSystem house = house(seed, number);
        RunResult result = day(house);
        assertTrue(result.audit().closes(), result.audit()::toString);
        Trace one = result.trace();
        Trace two = day(Doubled.of(house)).trace();
        int sample = (int) (67_800 / one.grid().step());
        double p = one.value(Channel.PRESSURE_ABSOLUTE, sample);
        assertEquals(p, two.value(Channel.PRESSURE_ABSOLUTE, sample), 1e-5 * p);
    }

    /** A seat that passes all of the expansion leaves the bypass nothing to do; one that passes a little leaves it open. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 200})
    void aBypassIsOpenOnlyForWhatTheSeatDoesNotPass(double millilitresPerMinute) {
        HotWaterSystem house = Systems.lodge()
                .supply(SupplyBoundaryTest.supply(Supply.Arrangement.REDUCING_VALVE, 3)
                        .seatLeakage(millilitresPerMinute, FlowUnit.MILLILITRE_PER_MINUTE)
                        .reducingValve(SupplyBoundaryTest.reducing()
                                .bypassOpens(1, PressureUnit.BAR)
                                .build())
                        .build())
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(2))
                .sampledEvery(Duration.ofMinutes(1))
                .run();
        boolean opens = result.events().stream().anyMatch(event -> event.kind() == Event.Kind.BYPASS_OPENED);
        // expansion is some tens of millilitres a minute
        assertEquals(millilitresPerMinute < 10, opens);
        assertTrue(result.audit().closes(), result.audit()::toString);
    }
}

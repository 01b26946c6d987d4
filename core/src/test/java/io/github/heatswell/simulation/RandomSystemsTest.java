package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Contracts every run of every valid system keeps. The seed in the test's name repeats a failure. More systems, and a house
 * for every five or so of them, by {@code -Dtest.jvm.options=-Dproperties.systems=10000}.
 */
class RandomSystemsTest {

    private static final int SYSTEMS_PER_SEED = Integer.getInteger("properties.systems", 360) / 6;
    private static final int HOUSES_PER_SEED = SYSTEMS_PER_SEED / 5;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void everyRunKeepsItsContracts(long seed) {
        RandomSystems systems = new RandomSystems(seed);
        for (int i = 0; i < SYSTEMS_PER_SEED; i++) {
            HotWaterSystem system = systems.next();
            String which = "seed " + seed + ", system " + i;
            RunResult result = Simulation.of(system, Duration.ofHours(12)).run();
            RunSummary.Audit audit = result.audit();
            assertTrue(
                    audit.closes(),
                    () -> which + ": " + audit + " " + audit.massFraction() + " " + audit.energyFraction());
            assertSamplesAreSound(result, which);
            assertEventsAlternate(result, which);
            assertTrue(result.extremes().highestPressure().value() >= max(result.trace()) - 1, which);
        }
    }

    /** The same for houses with any feed, draws, layers, leaks, air, heights and faults, over a day. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyHouseKeepsItsContracts(long seed) {
        RandomHouses houses = RandomHouses.withAirAndVessels(seed);
        for (int i = 0; i < HOUSES_PER_SEED; i++) {
            HotWaterSystem house = houses.next();
            String which = "seed " + seed + ", house " + i;
            RunResult result = Simulation.of(house, Duration.ofDays(1))
                    .sampledEvery(Duration.ofMinutes(2))
                    .run();
            assertTrue(result.audit().closes(), () -> which + ": " + result.audit());
            assertEventsAlternate(result, which);
            assertNothingComesBack(result, which);
            double test = house.tank().testPressureAbsolute(house.site().atmosphere());
            assertTrue(result.extremes().highestPressure().value() <= test + 1, which);
            assertTrue(
                    result.extremes().lowestPressure().value() >= house.site().atmosphere() - 1, which);
        }
    }

    /**
     * Regression: houses in which two rules once held the pressure in turn. In most an open relief valve stood at the pressure
     * of a reducing valve's outlet, which was taken to give way as if the valve passed the same wherever it falls; in house 234
     * the mains fell fast; in house 62 pressure counted as settled where it was not.
     */
    @ParameterizedTest
    @CsvSource({"1, 287", "6, 457", "7, 326", "7, 482", "8, 137", "14, 234", "46, 62"})
    void noTwoRulesHoldThePressureInTurn(long seed, int number) {
        RandomHouses houses = new RandomHouses(seed);
        for (int i = 0; i < number; i++) {
            houses.next();
        }
        RunResult result = Simulation.of(houses.next(), Duration.ofDays(1)).run();
        assertTrue(result.audit().closes(), () -> result.audit().toString());
    }

    private static void assertNothingComesBack(RunResult result, String which) {
        Trace trace = result.trace();
        for (Channel channel : List.of(Channel.RELIEVED_TOTAL, Channel.DRAWN_TOTAL, Channel.INFLOW_TOTAL)) {
            double before = 0;
            for (double value : trace.values(channel)) {
                // the last pascals of an approach are settled at once, which moves a drop either way
                assertTrue(value >= before - 1e-5, which + ": " + channel);
                before = value;
            }
        }
        for (Channel channel : Channel.values()) {
            for (double value : trace.values(channel)) {
                assertTrue(Double.isFinite(value), which + ": " + channel);
            }
        }
    }

    private static double max(Trace trace) {
        double most = 0;
        for (double p : trace.values(Channel.PRESSURE_ABSOLUTE)) {
            most = Math.max(most, p);
        }
        return most;
    }

    private static void assertSamplesAreSound(RunResult result, String which) {
        Trace trace = result.trace();
        HotWaterSystem system = result.system();
        double atmosphere = system.site().atmosphere();
        double supply = system.supplyAtStart().absolute(atmosphere);
        double test = system.tank().testPressureAbsolute(atmosphere);
        double relieved = 0;
        for (int i = 0; i < trace.count(); i++) {
            for (Channel channel : Channel.values()) {
                assertTrue(Double.isFinite(trace.value(channel, i)), which + ": " + channel + " at sample " + i);
            }
            double p = trace.value(Channel.PRESSURE_ABSOLUTE, i);
            assertTrue(p <= test + 1 && p >= supply - 1, which + ": pressure " + p + " at sample " + i);
            if (trace.regime(i) == Trace.Regime.FED || trace.regime(i) == Trace.Regime.UNSEALED) {
                assertEquals(supply, p, 1e-3, which + ": a supply holds its own pressure");
            }
            if (trace.regime(i) == Trace.Regime.SEALED
                    && system.reliefValves().stream().allMatch(v -> v.fault().leakage() == 0)) {
                assertEquals(0, trace.value(Channel.RELIEF_FLOW, i), which);
            }
            double total = trace.value(Channel.RELIEVED_TOTAL, i);
            // m3; a step may err by a microgram
            assertTrue(total >= relieved - 1e-11, which + ": what was given off does not come back");
            relieved = total;
            assertTrue(trace.value(Channel.VESSEL_WATER, i) >= -1e-9, which);
        }
        if (system.supply().arrangement() == Supply.Arrangement.CHECK_VALVE) {
            assertEquals(0, result.totals().returned(), 1e-9, which + ": a check valve takes nothing back");
        }
    }

    private static void assertEventsAlternate(RunResult result, String which) {
        Map<String, Event.Kind> last = new HashMap<>();
        double time = 0;
        for (Event event : result.events()) {
            assertTrue(event.time() >= time, which + ": events run forward");
            time = event.time();
            switch (event.kind()) {
                case RELIEF_OPENED, RELIEF_RESEATED ->
                    assertTrue(last.put(event.device(), event.kind()) != event.kind(), which + ": " + event);
                case HEATER_ON, HEATER_OFF ->
                    assertTrue(
                            last.put("heater " + event.device(), event.kind()) != event.kind(), which + ": " + event);
                case SUPPLY_OPENED, SUPPLY_CLOSED ->
                    assertTrue(last.put("supply", event.kind()) != event.kind(), which + ": " + event);
                // an outage closes the feed under its own name
                case SUPPLY_SHUT_OFF -> last.put("supply", Event.Kind.SUPPLY_CLOSED);
                default -> {
                    // no pair
                }
            }
        }
    }
}

package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Regression: draws mixed at the tap where the feed is warm. */
class MixedDrawTest {

    private static final Draw TAP = Draw.ofVolume(600, 20, VolumeUnit.LITRE, 10, FlowUnit.LITRE_PER_MINUTE);

    private static RunResult run(double feedCelsius, double tankCelsius, Draw draw) {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .supply(Parts.supply(
                        Supply.Arrangement.CHECK_VALVE, Pressure.gauge(4.2, PressureUnit.BAR), feedCelsius))
                .heater(Parts.heater(1, 100, 58, 25))
                .start(Start.builder()
                        .water(tankCelsius, TemperatureUnit.CELSIUS)
                        .build())
                .draws(DrawProfile.of("one tap", List.of(draw)))
                .build();
        return Simulation.of(house, Duration.ofHours(1)).run();
    }

    private static void assertNothingFalls(RunResult result) {
        Trace trace = result.trace();
        for (Channel channel : List.of(Channel.DRAWN_TOTAL, Channel.INFLOW_TOTAL, Channel.RELIEVED_TOTAL)) {
            for (int i = 1; i < trace.count(); i++) {
                double fallen = trace.value(channel, i - 1) - trace.value(channel, i);
                assertTrue(fallen <= 1e-9, channel + " falls by " + fallen + " m3 at sample " + i);
            }
        }
        for (int i = 0; i < trace.count(); i++) {
            assertTrue(trace.value(Channel.DRAW_FLOW, i) >= 0, "sample " + i);
        }
    }

    /** Whoever wants water cooler than the feed leaves the hot side shut, whether the tank is hotter than the feed or cooler. */
    @ParameterizedTest
    @CsvSource({"40, 58", "40, 48", "36, 40", "40, 30", "35, 58"})
    void noHotWaterIsDrawnForATapCoolerThanTheFeed(double feed, double tank) {
        RunResult result = run(feed, tank, TAP.mixedTo(35, TemperatureUnit.CELSIUS));
        assertNothingFalls(result);
        assertEquals(0, result.totals().drawn());
        assertEquals(0, result.totals().heatDelivered());
    }

    /** Closed form: of a tap's water the hot part is the share of the temperature above the feed. */
    @Test
    void aTapBetweenFeedAndTankTakesItsShare() {
        RunResult result = run(30, 58, TAP.mixedTo(37, TemperatureUnit.CELSIUS));
        assertNothingFalls(result);
        assertEquals(
                20e-3 * 7 / 28, result.totals().drawn(), 0.02 * 5e-3); // the tank cools by half a kelvin; densities
    }

    /** The formulation of water states its accuracy up to 25 bar absolute; a supply just below 25 bar gauge lies above. */
    @Test
    void aTapMixesAtTheHighestSupply() {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .tank(Parts.tank(230, Parts.steel(500, 4), 2, 12.5))
                .supply(Parts.supply(Supply.Arrangement.DIRECT, Pressure.gauge(24.5, PressureUnit.BAR), 12))
                .draws(DrawProfile.of("one tap", List.of(TAP.mixedTo(40, TemperatureUnit.CELSIUS))))
                .build();
        assertTrue(Simulation.of(house, Duration.ofMinutes(20)).run().totals().drawn() > 0);
    }

    /** A tank cooler than its feed gives all it has, and no heat. */
    @Test
    void aTankCoolerThanItsFeedDeliversNoHeat() {
        RunResult result = run(38, 20, TAP.mixedTo(45, TemperatureUnit.CELSIUS));
        assertNothingFalls(result);
        assertEquals(20e-3, result.totals().drawn(), 0.01 * 20e-3); // counted as water of the feed, which is less dense
        assertEquals(0, result.totals().heatDelivered());
    }
}

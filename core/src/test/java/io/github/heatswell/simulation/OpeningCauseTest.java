package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why a relief valve opened is what the simulation acted on, however close the other limit was. */
class OpeningCauseTest {

    private static final double HOT = 99 + 273.15;

    private static Supply direct(double bar) {
        return Parts.supply(Supply.Arrangement.DIRECT, Pressure.gauge(bar, BAR), 9);
    }

    private static RunResult run(HotWaterSystem system, int hours) {
        return Simulation.of(system, Duration.ofHours(hours)).run();
    }

    private static boolean foundByHeat(RunResult result) {
        return Findings.of(result.summary()).stream()
                .anyMatch(finding -> finding.id().equals("relief-valve-opened-by-heat"));
    }

    /** The supply holds the pressure this little (Pa) below the set pressure, and the water becomes hot. */
    @ParameterizedTest
    @ValueSource(doubles = {5e5, 1_500, 500, 1})
    void heatOpensAValveThoughThePressureIsCloseToItsSetPressure(double below) {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .supply(direct(10 - below / 1e5))
                        .heater(Systems.runaway().build())
                        .addReliefValve(Systems.temperatureAndPressure().build())
                        .build(),
                4);
        Event opened = result.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        assertEquals(Optional.of(Event.OpeningCause.TEMPERATURE), opened.cause());
        assertEquals(HOT, opened.waterTemperature(), 1e-6); // events are located to a nanosecond
        assertTrue(foundByHeat(result));
    }

    /** Thirty metres up, and with warm feed water, whose column weighs less than one of cold water would. */
    @ParameterizedTest
    @ValueSource(doubles = {-30, 0, 30})
    void pressureOpensAValveAtAnyHeight(double metres) {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(6, BAR), 30))
                        .addReliefValve(Systems.temperatureAndPressure()
                                .height(metres, LengthUnit.METRE)
                                .setPressure(Pressure.gauge(6.5, BAR))
                                .fullLiftPressure(Pressure.gauge(7, BAR))
                                .reseatPressure(Pressure.gauge(6, BAR))
                                .build())
                        .build(),
                4);
        Event opened = result.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        assertEquals(Optional.of(Event.OpeningCause.PRESSURE), opened.cause());
        assertTrue(opened.openedByPressure() && !opened.openedByTemperature());
        assertTrue(!foundByHeat(result), "pressure opened it");
    }

    /** Expansion lifts the valve; when the heater does not stop, the hot water opens it fully: the last guard at work. */
    @Test
    void aValveLiftedByPressureIsOpenedFullyByHeat() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .heater(Systems.runaway().build())
                        .addReliefValve(Systems.temperatureAndPressure().build())
                        .build(),
                24);
        List<Event> openings = result.events().stream()
                .filter(event -> event.cause().isPresent())
                .limit(2)
                .toList();
        assertEquals(Event.Kind.RELIEF_OPENED, openings.get(0).kind());
        assertEquals(Optional.of(Event.OpeningCause.PRESSURE), openings.get(0).cause());
        assertEquals(Event.Kind.RELIEF_OPENED_FULLY, openings.get(1).kind());
        assertEquals(
                Optional.of(Event.OpeningCause.TEMPERATURE), openings.get(1).cause());
        assertEquals(HOT, openings.get(1).waterTemperature(), 1e-6); // events are located to a nanosecond
        int after = (int) Math.ceil(openings.get(1).time() / 60) + 1;
        double flow = result.trace().value(Channel.RELIEF_FLOW, after);
        assertTrue(flow > 10e-3 / 60, "from then on it passes all it can: " + flow);
        assertTrue(foundByHeat(result));
        assertEquals(
                result.summary().openings("T&P valve").count(),
                result.totals().relief().get(0).openings(),
                "opening fully is no second opening");
    }

    /** A run that starts beyond both limits. */
    @Test
    void bothLimitsAtOnceAreToldAsBoth() {
        RunResult result = run(
                Parts.lodge(4.2, 58)
                        .start(Start.builder()
                                .pressure(Pressure.gauge(10.5, BAR))
                                .water(95, TemperatureUnit.CELSIUS)
                                .build())
                        .addReliefValve(Systems.temperatureAndPressure()
                                .opensAt(90, TemperatureUnit.CELSIUS)
                                .reseatsAt(80, TemperatureUnit.CELSIUS)
                                .build())
                        .build(),
                1);
        Event opened = result.events().get(0);
        assertEquals(Event.Kind.RELIEF_OPENED, opened.kind());
        assertEquals(0, opened.time());
        assertEquals(Optional.of(Event.OpeningCause.BOTH), opened.cause());
        assertTrue(opened.openedByPressure() && opened.openedByTemperature());
        assertTrue(foundByHeat(result));
        assertTrue(result.first(Event.Kind.RELIEF_OPENED_FULLY).isEmpty(), "it is said once");
    }
}

package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.SupplyBoundaryTest.VALVE;
import static io.github.heatswell.simulation.SupplyBoundaryTest.reducing;
import static io.github.heatswell.simulation.SupplyBoundaryTest.supply;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a house does while its supply is shut off, and when it is restored. */
class OutageTest {

    /** Restored to a house that has heated up meanwhile, the supply lets water out through the bypass and none in. */
    @Test
    void aBypassOpensWhenTheSupplyIsRestored() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 5.0)
                        .reducingValve(reducing().bypassOpens(0.2, BAR).build())
                        .addOutage(new Supply.Outage(60, 1200))
                        .build())
                .addPipe(Parts.copper(60));
        RunResult result = Simulation.of(house.build(), Duration.ofHours(2)).run();
        assertEquals(1200, result.first(Event.Kind.BYPASS_OPENED).orElseThrow().time(), 1e-6);
        assertTrue(result.first(Event.Kind.BYPASS_CLOSED).orElseThrow().time() > 1300);
        assertEquals(
                0,
                result.events().stream()
                        .filter(event -> event.kind() == Event.Kind.SUPPLY_OPENED)
                        .count());
    }

    /** Restored to a house that has lost water meanwhile, the supply fills it up, and no bypass has a part in it. */
    @Test
    void theSupplyOpensWhenItIsRestored() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.REDUCING_VALVE, 5.0)
                        .reducingValve(reducing().bypassOpens(0.2, BAR).build())
                        .addOutage(new Supply.Outage(600, 1200))
                        .build())
                .start(Start.builder().water(57, TemperatureUnit.CELSIUS).build())
                .addLeak(Leak.of(2, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4, BAR)))
                .vessel(Systems.vessel(12, Pressure.gauge(2, BAR), 100));
        RunResult result = Simulation.of(house.build(), Duration.ofMinutes(40)).run();
        Event opened = result.first(Event.Kind.SUPPLY_OPENED).orElseThrow();
        assertEquals(1200, opened.time(), 1e-6);
        assertTrue(result.gauge(opened.pressureAbsolute()) < 3.79e5, "it had fallen");
        assertEquals(0, result.audit().massResidual(), 2e-9, "the last pascals are in the books too");
        assertTrue(result.first(Event.Kind.BYPASS_OPENED).isEmpty());
        assertTrue(result.first(Event.Kind.BYPASS_CLOSED).isEmpty());
        assertEquals(
                0,
                result.events().stream()
                        .filter(event -> event.kind() == Event.Kind.SUPPLY_CLOSED && event.time() > 0)
                        .count());
    }

    /** Shut off, the house keeps its pressure; opened again, the supply takes over. */
    @Test
    void outageSealsTheHouse() {
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.DIRECT, 4.2)
                        .addOutage(new Supply.Outage(1800, 2400))
                        .build());
        RunResult result = Simulation.of(house.build(), Duration.ofHours(2)).run();
        Trace trace = result.trace();
        assertEquals(Trace.Regime.UNSEALED, trace.regime(29));
        assertEquals(Trace.Regime.SEALED, trace.regime(35));
        assertTrue(result.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, 39)) > 8e5);
        assertEquals(4.2e5, result.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, 42)), 100); // in the service line
        assertTrue(result.first(Event.Kind.SUPPLY_SHUT_OFF).isPresent());
        assertEquals(
                2400, result.first(Event.Kind.SUPPLY_RESTORED).orElseThrow().time());
        assertTrue(result.audit().closes(), result.audit().toString());
    }

    /** A tap opened while the supply is off empties the pressure: the model ends where it would. */
    @Test
    void drawingDuringAnOutageEndsAtAtmosphere() {
        Draw tap = Draw.ofVolume(3600, 20, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE);
        HotWaterSystem.Builder house = Parts.lodge(4.2, 58)
                .supply(supply(Supply.Arrangement.CHECK_VALVE, 4.2)
                        .addOutage(new Supply.Outage(1800, 7200))
                        .build())
                .addReliefValve(VALVE)
                .draws(DrawProfile.of("one tap", List.of(tap)));
        RunResult result = Simulation.of(house.build(), Duration.ofHours(3)).run();
        assertEquals(
                Event.Kind.ATMOSPHERE_REACHED, result.hazard().orElseThrow().kind());
        assertTrue(result.end() > 3600 && result.end() < 3610);
    }

    /**
     * Regression: water that mixes where the layers are set anew fills less room. In a stiff house without supply that took the pressure
     * below that of the air, and in one of ten thousand random houses below zero, which ended the run in no result.
     */
    @ParameterizedTest
    @CsvSource({"4, 0.01", "0.1, 0.6"})
    void layersStandWhereToSetThemAnewWouldLeaveAVoid(double bar, double phase) {
        Draw tap = Draw.ofVolume(0, 20, VolumeUnit.LITRE, 6, FlowUnit.LITRE_PER_MINUTE);
        Moment shut = new Moment(Parts.lodge(4.2, 58).tank(Moment.layered(6)), bar, 30, 58, 58, 58, 58, 58)
                .under(0, 0, false, tap);
        double[] y = shut.y;
        y[shut.vector.phase] = 0.6;
        shut.rates(y);
        new Restacking(shut.plant, shut.balance, new BalanceAudit(shut.plant, shut.inventory))
                .follow(shut.modes, y, true, true);
        assertEquals(phase, y[shut.vector.phase], 1e-12);
        assertTrue(y[StateVector.PRESSURE] > shut.plant.atmosphere, y[StateVector.PRESSURE] + " Pa");
    }
}

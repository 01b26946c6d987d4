package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.Pressure;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Validation: a surge of the mains of two minutes stays in a house behind a check valve, with as much water as Boyle's law and
 * the compressibility of water call for. The tank is rigid and insulated, and its heater never switches on.
 */
class TrappedSurgeTest {

    /** Of water at 10 degC (1/bar): Kell 1975, from memory. */
    private static final double COMPRESSIBILITY = 47.81e-6;

    private static final double LITRES = 200;
    private static final double VESSEL = 12;
    private static final double AIR = 1.01325;

    /** 4 bar, but 6 bar at 02:01. */
    private static HotWaterSystem.Builder house() {
        HotWaterSystem still = Parts.textbook(LITRES, 10, 4 + AIR, 10).build();
        return still.toBuilder()
                .changeSupply(supply -> supply.toBuilder()
                        .mains(MainsPressure.daily(Map.of(
                                0.0, Pressure.gauge(4, BAR),
                                7200.0, Pressure.gauge(4, BAR),
                                7260.0, Pressure.gauge(6, BAR),
                                7320.0, Pressure.gauge(4, BAR))))
                        .build());
    }

    private static RunResult run(HotWaterSystem house) {
        return Simulation.of(house, Duration.ofHours(12))
                .sampledEvery(Duration.ofMinutes(1))
                .run();
    }

    private static void assertTrapped(RunResult run) {
        Trace trace = run.trace();
        for (int i = 0; i < trace.count(); i++) {
            double gauge = trace.value(Channel.PRESSURE_ABSOLUTE, i) / 1e5 - AIR;
            double time = trace.grid().time(i);
            // that of the mains until the surge is over, and its top ever after; a hundred pascals for the lag of the
            // filling
            assertEquals(time <= 7200 ? 4 : 6, gauge, 1e-3, "at " + time + " s");
        }
        Event closed = run.first(Event.Kind.SUPPLY_CLOSED).orElseThrow();
        assertEquals(7260, closed.time(), 1);
        assertEquals(6, closed.pressureAbsolute() / 1e5 - AIR, 1e-3);
        assertTrue(run.audit().closes());
    }

    @Test
    void withoutAVesselTheWaterIsCompressed() {
        RunResult run = run(house().build());
        assertTrapped(run);
        // over 2 bar; within half a percent, for the lag and the digits from memory
        assertEquals(LITRES * COMPRESSIBILITY * 2, 1e3 * run.totals().letIn(), 1e-4);
    }

    @Test
    void aVesselTakesWhatBoylesLawSays() {
        RunResult run = run(house().vessel(Systems.vessel(VESSEL, Pressure.gauge(4, BAR), 60))
                .build());
        assertTrapped(run);
        double boyle = VESSEL * (1 - (4 + AIR) / (6 + AIR));
        Trace trace = run.trace();
        double held = 1e3 * trace.value(Channel.VESSEL_WATER, trace.count() - 1);
        // a millibar of lag moves 0.7 mL
        assertEquals(boyle, held, 2e-3);
        assertEquals(held + LITRES * COMPRESSIBILITY * 2, 1e3 * run.totals().letIn(), 1e-3);
    }
}

package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Regression: what counts as chatter, more than 500 openings that take a second or less each, or five where the feed drives them. */
class ChatterTest {

    /** Whether a valve that opens every so many seconds is ever said to chatter. */
    private static boolean chatters(double first, double cycle, int openings) {
        Chatter chatter = new Chatter();
        boolean seen = false;
        for (int i = 0; i < openings; i++) {
            seen |= chatter.seen(first + i * cycle, "valve", false);
        }
        return seen;
    }

    @Test
    void manyQuickOpeningsAreChatter() {
        assertTrue(chatters(0, 0.5, 501));
        assertTrue(chatters(40_000, 0.5, 501), "late in a run as at its start");
    }

    @Test
    void fewOrSlowOpeningsAreNone() {
        assertFalse(chatters(0, 0.5, 500), "as many as are allowed");
        assertFalse(chatters(0, 1.5, 5_000), "slow ones, however many");
    }

    @Test
    void eachValveCountsForItself() {
        Chatter chatter = new Chatter();
        for (int i = 0; i < 400; i++) {
            assertFalse(chatter.seen(0.1 * i, "one", false));
            assertFalse(chatter.seen(0.1 * i, "other", false));
        }
    }

    @Test
    void aPauseBeginsTheCountAnew() {
        Chatter chatter = new Chatter();
        for (int i = 0; i < 400; i++) {
            assertFalse(chatter.seen(0.1 * i, "valve", false));
        }
        for (int i = 0; i < 400; i++) {
            assertFalse(chatter.seen(1_000 + 0.1 * i, "valve", false), "opening " + i + " after the pause");
        }
    }

    @Test
    void theFeedDrivesSlowerChatter() {
        Chatter chatter = new Chatter();
        for (int i = 0; i < 500; i++) {
            assertFalse(chatter.seen(4 * i, "valve", true));
        }
        assertTrue(chatter.seen(2_000, "valve", true));
        for (int i = 0; i < 5_000; i++) {
            assertFalse(chatter.seen(6 * i, "slower", true));
        }
    }

    /** A run that chatters ends there: a reducing valve set above a snap valve's opening, and too weak to keep it open. */
    @Test
    void aRunThatChattersEnds() {
        HotWaterSystem house = Parts.lodge(4.2, 58)
                .supply(Parts.supply(Supply.Arrangement.CHECK_VALVE, Pressure.gauge(9, BAR), 9).toBuilder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .reducingValve(ReducingValve.builder()
                                .set(Pressure.gauge(8, BAR))
                                .lockUpRise(0, BAR)
                                .droop(4, BAR)
                                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                                .build())
                        .build())
                .addReliefValve(Systems.valve(ReliefValve.LiftCharacteristic.SNAP))
                .build();
        RunResult result = Simulation.of(house, Duration.ofDays(1)).run();
        Event last = result.events().get(result.events().size() - 1);
        assertEquals(Event.Kind.RELIEF_CHATTERS, last.kind());
        assertEquals("expansion valve", last.device());
        assertEquals(last.time(), result.trace().grid().end());
        assertEquals(501, result.totals().relief().get(0).openings());
    }
}

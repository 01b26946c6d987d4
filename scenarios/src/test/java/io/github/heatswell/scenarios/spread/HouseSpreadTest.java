package io.github.heatswell.scenarios.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** A spread is that of runs that anyone can repeat one by one. */
class HouseSpreadTest {

    private static final Scenario UNSURE = Catalogue.read("orchard-lodge")
            .with(List.of(
                    Change.of("supply.pressure=3.5 bar to 4.5 bar"),
                    Change.of("heater.set-point=58 degC +- 3 K"),
                    Change.of("vessel={ volume: 8 L, precharge: 4 bar }")));

    @Test
    void everySampleIsTheRunOfThatHouse() {
        SpreadAnswer answer = HouseSpread.of(UNSURE).samples(64).build().answer();
        assertFalse(answer.house().usual());
        for (int i = 0; i < 64; i += 9) {
            RunResult run = Simulation.of(UNSURE.drawn(answer.result().input(i)), UNSURE.duration())
                    .run();
            double peak = run.peak().value();
            // The same equations, sampled differently; samples do not influence the solution.
            assertEquals(peak, answer.result().output(i, 0), 1e-6 * peak);
            assertEquals(run.totals().relieved(), answer.result().output(i, 2), 1e-9);
        }
        long dripping = 0;
        for (int i = 0; i < 64; i++) {
            dripping += answer.result().output(i, 2) > 0 ? 1 : 0;
        }
        assertEquals(dripping, answer.dripping().count());
        assertTrue(dripping > 0 && dripping < 64, "the case should be undecided: " + dripping);
    }

    @Test
    void higherSupplyAndHotterWaterLetMoreOut() {
        SpreadAnswer answer = HouseSpread.of(UNSURE).samples(128).build().answer();
        assertEquals("supply.pressure", answer.house().inputs().get(0).name());
        assertTrue(answer.onRelieved(0) > 0.5);
        assertTrue(answer.onPeak(1) > 0);
    }

    @Test
    void threadsDoNotMatterAndSeedsDo() {
        SpreadAnswer one =
                HouseSpread.of(UNSURE).samples(64).threads(1).seed(7).build().answer();
        SpreadAnswer three =
                HouseSpread.of(UNSURE).samples(64).threads(3).seed(7).build().answer();
        SpreadAnswer other =
                HouseSpread.of(UNSURE).samples(64).threads(3).seed(8).build().answer();
        for (int i = 0; i < 64; i++) {
            assertEquals(one.result().output(i, 0), three.result().output(i, 0));
        }
        // the peak is where the valve opens, in every house; what it discharges differs
        assertFalse(one.relieved().quantile(0.5) == other.relieved().quantile(0.5));
    }

    @Test
    void usualUncertaintiesServeWhereNoneAreGiven() {
        SpreadAnswer answer = HouseSpread.of(Catalogue.read("orchard-lodge-vessel"))
                .samples(32)
                .build()
                .answer();
        assertTrue(answer.house().usual());
        assertTrue(
                answer.house().inputs().stream().anyMatch(input -> input.words().equals("+- 0.15 bar")));
        assertTrue(answer.peak().quantile(0.95) > answer.peak().quantile(0.05));
    }

    @Test
    void stoppedEarlyItGivesTheFirstSamples() {
        AtomicInteger asked = new AtomicInteger();
        SpreadAnswer whole =
                HouseSpread.of(UNSURE).samples(64).threads(1).build().answer();
        SpreadAnswer part = HouseSpread.of(UNSURE)
                .samples(64)
                .threads(1)
                .stopWhen(() -> asked.incrementAndGet() > 20)
                .build()
                .answer();
        int done = part.result().completed();
        assertTrue(done > 0 && done < 64, "done: " + done);
        for (int i = 0; i < done; i++) {
            assertEquals(whole.result().output(i, 0), part.result().output(i, 0));
        }
    }

    /**
     * Regression: a valve whose plate equals the tank's is no hazard because valves open a few percent off; a plate that
     * is above it, or not known, is.
     */
    @Test
    void reliefValvesAreJudgedByTheirPlates() {
        assertEquals(0, setTo("10 bar +- 0.35 bar").hazardFound().count());
        assertEquals(List.of(), setTo("10 bar +- 0.35 bar").firstHazards());
        assertEquals(16, setTo("10.5 bar +- 0.35 bar").hazardFound().count());
        SpreadAnswer unread = setTo("8 bar to 12 bar");
        assertEquals(8, unread.hazardFound().count(), 1, "half of the range lies above the tank's");
        assertEquals("relief-set-above-tank", unread.firstHazards().get(0).id());
    }

    /** Regression: half of the houses were a hazard where a valve with the tank's rating stands behind one that opens lower. */
    @Test
    void aValveBehindAnotherIsJudgedByItsPlateToo() {
        SpreadAnswer two = setTo("8.5 bar, name: first }, { opens-at: 99 degC, opens: 10 bar +- 0.35 bar");
        assertEquals(List.of(), two.firstHazards());
        assertEquals(0, two.hazardFound().count());
    }

    /** What nobody has read is varied between its usual ends, as many of them as there are; what is known is not. */
    @Test
    void whatNobodyHasReadIsVaried() {
        Scenario birch = Catalogue.read("birch-street-day");
        VariedHouse varied = VariedHouse.of(birch).withUnread(birch);
        int last = varied.inputs().size() - 1;
        assertEquals("vessel.acceptance", varied.inputs().get(last).name());
        assertEquals(0.4, varied.inputs().get(last).input().distribution().low());
        assertEquals(0.9, varied.inputs().get(last).input().distribution().high());
        double[] values = new double[last + 1];
        values[last] = 0.7;
        assertEquals(0.7, varied.house().apply(values).vessel().orElseThrow().acceptance());
        Scenario read = birch.with(List.of(Change.of("vessel.acceptance=60 %")));
        assertEquals(last, VariedHouse.of(read).withUnread(read).inputs().size());

        Scenario reduced = Catalogue.read("tannery-yard")
                .with(List.of(Change.of("supply.reducing-valve={ set: 3 bar, droop: 0.7 bar, rated-flow: 20 L/min }")));
        VariedHouse rising = VariedHouse.of(reduced).withUnread(reduced);
        int rise = rising.inputs().size() - 1;
        assertEquals(
                "supply.reducing-valve.lock-up-rise", rising.inputs().get(rise).name());
        double[] more = new double[rise + 1];
        more[rise] = 0.5e5;
        HotWaterSystem house = rising.house().apply(more);
        assertEquals(3.5e5, house.supplyAtStart().gauge(house.site().atmosphere()), 1, "rounding");
    }

    private static SpreadAnswer setTo(String opens) {
        Scenario house = UNSURE.with(
                List.of(Change.of("tank.working-pressure=10 bar"), Change.of("relief=[{ opens: " + opens + " }]")));
        return HouseSpread.of(house).samples(16).build().answer();
    }
}

package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Moment.behindReducingValve;
import static io.github.heatswell.simulation.Moment.layered;
import static io.github.heatswell.simulation.Moment.mixed;
import static io.github.heatswell.simulation.Moment.onBranch;
import static io.github.heatswell.simulation.Moment.tap;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A pressure that follows something, the growth of the water or the flow of the feed, does follow it. */
class EquilibriumTest {

    private static final double COLD = Systems.celsius(9);

    private static double root(DoubleUnaryOperator falling, double low, double high) {
        double from = low;
        double to = high;
        for (int i = 0; i < 80; i++) {
            double middle = 0.5 * (from + to);
            if (falling.applyAsDouble(middle) > 0) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return 0.5 * (from + to);
    }

    /** Where the open valves pass the net expansion, at a pressure that stands still (Pa, absolute). */
    private static double equilibrium(Moment now) {
        now.with(PressureRegime.FREE);
        return root(now::pressureRate, now.plant.atmosphere + 5.6e5, now.plant.atmosphere + 7.6e5);
    }

    static Stream<Moment> relieving() {
        return BalanceTest.moments()
                .filter(now -> now.modes.anyValveOpen() && now.modes.rule == PressureRegime.SETTLED);
    }

    /** A settled pressure moves as its equilibrium does: after a while it is still there. */
    @ParameterizedTest
    @MethodSource("relieving")
    void aSettledPressureStaysAtItsEquilibrium(Moment now) {
        double equilibrium = equilibrium(now);
        now.y[StateVector.PRESSURE] = equilibrium;
        now.with(PressureRegime.SETTLED);
        double[] rates = now.rates(now.y);
        double settled = rates[StateVector.PRESSURE];
        assertTrue(Math.abs(settled) > 1e-3, "the equilibrium moves: " + settled);

        double later = 5;
        System.arraycopy(now.along(rates, later), 0, now.y, 0, now.y.length);
        assertEquals(equilibrium(now) - equilibrium, settled * later, 0.02 * Math.abs(settled * later));
    }

    /** Beside its equilibrium it is drawn back within ten minutes, and what the valves pass is the net expansion. */
    @ParameterizedTest
    @MethodSource("relieving")
    void besideItsEquilibriumASettledPressureIsDrawnBack(Moment now) {
        double equilibrium = equilibrium(now);
        now.with(PressureRegime.SETTLED);
        double offset = 10;
        double there = now.pressureRate(equilibrium);
        double aside = now.pressureRate(equilibrium + offset);
        assertEquals(-offset / 600, aside - there, 0.05 * offset / 600);
        assertEquals(now.balance.reliefFlow(), now.vector.relieved(now.rates(now.at(equilibrium + offset))), 1e-12);
        now.rates(now.at(equilibrium));
        double passed = now.balance.reliefFlow();
        assertEquals(passed, now.vector.relieved(now.rates(now.at(equilibrium))), 1e-12);
        now.rates(now.at(equilibrium + offset));
        assertEquals(passed, now.balance.reliefFlow(), 2e-3 * passed, "whatever their curves say there");
    }

    /** The distances by which the modes are chosen, to first order. */
    @Test
    void distancesFromWhereAPressureWillSettle() {
        Moment now = new Moment(Parts.lodge(4.2, 58).addReliefValve(onBranch()), 7, 55)
                .heating()
                .open(0);
        double air = now.plant.atmosphere;
        double equilibrium = root(now::pressureRate, air + 5.6e5, air + 7.6e5);
        double above = 200;
        double slope = (now.pressureRate(equilibrium + 1) - now.pressureRate(equilibrium - 1)) / 2;
        now.rates(now.at(equilibrium + above));
        assertEquals(-1 / slope, now.balance.response().settlingTime(), 0.01 * -1 / slope);
        assertEquals(above, now.balance.response().distanceFromEquilibrium(), 0.02 * above);
        double closes = air + 5.6e5;
        assertEquals(equilibrium - closes, now.balance.response().equilibriumLift(), 0.05 * (equilibrium - closes));
        assertEquals(now.balance.reliefFlow(), now.balance.discharged(), 1e-15);

        Moment filling = new Moment(Parts.lodge(4.2, 58), 4.1, 30).with(PressureRegime.FILLING);
        double feed = root(filling::pressureRate, air + 4e5, air + 4.4e5);
        double[] below = filling.at(feed - 50);
        filling.rates(below);
        assertEquals(50, filling.balance.response().distanceFromFollowing(below), 2);
        assertTrue(filling.balance.response().settlingTime() < 5);
        assertTrue(filling.balance.response().followsFast(below, 55));
        assertFalse(filling.balance.response().followsFast(below, 45));
    }

    /** A pressure that follows the mains gains nothing on it; one that a reducing valve holds does not follow it. */
    @Test
    void whatAPressureGainsOnItsFeed() {
        Moment following = new Moment(Parts.lodge(4.2, 58), 4.2, 50)
                .with(PressureRegime.HELD)
                .under(7, 0, true, null);
        assertEquals(7, following.rates(following.y)[StateVector.PRESSURE], 1e-12);
        assertEquals(0, following.balance.response().rateAgainstFeed(following.y), 1e-12);
        Moment held = new Moment(behindReducingValve(), 3.8, 50)
                .with(PressureRegime.HELD)
                .under(7, 0, true, null);
        assertEquals(0, held.rates(held.y)[StateVector.PRESSURE], 1e-12);
        assertEquals(0, held.balance.response().rateAgainstFeed(held.y), 1e-12);
        Moment bypassed = new Moment(behindReducingValve(), 5.1, 50)
                .with(PressureRegime.RETURNING)
                .under(7, 0, true, null);
        bypassed.rates(bypassed.y);
        assertEquals(0, bypassed.balance.response().rateAgainstFeed(bypassed.y), 1e-12);
        Moment free = new Moment(Parts.lodge(4.2, 58), 4.2, 50).heating().under(7, 0, true, null);
        double rate = free.rates(free.y)[StateVector.PRESSURE];
        assertEquals(rate - 7, free.balance.response().rateAgainstFeed(free.y), 1e-9);
    }

    /**
     * The law of a reducing valve, all along a draw whose flow changes as the water at the tap turns cold while the vessel gives
     * and takes: the outlet is at lock-up less droop times what comes through. Of the thirty pascal it falls in a second it lags ten times less.
     */
    @Test
    void theOutletOfAReducingValveFollowsAFlowThatChanges() {
        Moment now = new Moment(
                        behindReducingValve().tank(layered(4)).vessel(Systems.vessel(12, Pressure.gauge(2, BAR), 100)),
                        3.3,
                        12,
                        25,
                        45,
                        60)
                .with(PressureRegime.HELD)
                .under(0, 0, true, mixed(9, 42));
        double droop = 1e5 / (20e-3 / 60);
        double lockUp = now.plant.atmosphere + 3.8e5;
        double[] y = now.y;
        double step = 0.5;
        double first = Double.NaN;
        for (int i = 0; i < 1_000; i++) {
            double[] one = now.rates(y);
            double[] half = moved(y, one, step / 2);
            double[] two = now.rates(half);
            double flow =
                    one[StateVector.LET_IN] / GibbsPolynomialWater.instance().density(COLD, y[StateVector.PRESSURE]);
            if (i == 300) {
                first = flow;
            }
            if (i >= 300) {
                assertEquals(lockUp - droop * flow, y[StateVector.PRESSURE], 4, "Pa, after " + i * step + " s");
            }
            y = moved(y, two, step);
        }
        double last = now.rates(y)[StateVector.LET_IN] / 1000;
        assertTrue(Math.abs(last - first) * droop > 200, "the outlet has moved by " + (last - first) * droop);
    }

    private static double[] moved(double[] y, double[] rates, double by) {
        double[] moved = y.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += by * rates[i];
        }
        return moved;
    }

    @Test
    void theDroopOfAFlow() {
        Moment now = new Moment(behindReducingValve(), 3.8, 50)
                .with(PressureRegime.HELD)
                .under(0, 0, true, tap(4));
        now.y[StateVector.PRESSURE] = now.plant.feed.standing(now.y[StateVector.MAINS]);
        double flow = now.rates(now.y)[StateVector.LET_IN]
                / GibbsPolynomialWater.instance().density(COLD, 4.8e5);
        assertFalse(now.balance.response().droops(now.y), "it stands where nothing flows");
        assertEquals(1e5 / (20e-3 / 60) * flow, now.balance.response().droopOfFlow(), 1);
        now.y[StateVector.PRESSURE] -= 2;
        assertFalse(now.balance.response().droops(now.y));
        now.y[StateVector.PRESSURE] -= 1;
        assertTrue(now.balance.response().droops(now.y));
        assertFalse(new Moment(Parts.lodge(4.2, 58), 3, 50)
                .balance
                .response()
                .droops(new Moment(Parts.lodge(4.2, 58), 3, 50).y));
    }

    /**
     * With a relief valve stuck open, which passes less at less pressure: the outlet stands where both meet, is drawn back to it
     * within ten seconds, and moves with it as the mains does.
     */
    @Test
    void theOutletOfAReducingValveWhereAReliefValveIsOpen() {
        HotWaterSystem.Builder house = behindReducingValve()
                .addReliefValve(onBranch().toBuilder()
                        .fault(ReliefFault.stuckOpen(60, RatioUnit.PERCENT))
                        .build());
        Moment now = new Moment(house, 3, 50).open(0).with(PressureRegime.HELD);
        double standing = now.plant.feed.standing(now.y[StateVector.MAINS]);
        double meets = root(now::pressureRate, now.plant.atmosphere + 1e5, standing - 100);
        assertTrue(standing - meets > 1e4, "the droop shows");
        double slope = (now.pressureRate(meets + 10) - now.pressureRate(meets - 10)) / 20;
        assertEquals(-0.1, slope, 0.002);
        now.rates(now.at(standing));
        assertEquals(standing - meets, now.balance.response().droopOfFlow(), 0.02 * (standing - meets));

        double falling = -50;
        now.y[StateVector.MAINS] = now.plant.atmosphere + 3.2e5;
        now.under(falling, 0, true, null);
        double before = meets(now);
        double there = now.pressureRate(before);
        now.y[StateVector.MAINS] += 10 * falling;
        assertEquals((meets(now) - before) / 10, there, 0.03 * Math.abs(there));
    }

    /** Where the pressure meets the feed with the mains standing still. */
    private static double meets(Moment now) {
        double rate = now.conditions.mainsRate();
        now.under(0, 0, true, null);
        double found = root(now::pressureRate, now.plant.atmosphere + 1e5, now.y[StateVector.MAINS] - 100);
        now.under(rate, 0, true, null);
        return found;
    }
}

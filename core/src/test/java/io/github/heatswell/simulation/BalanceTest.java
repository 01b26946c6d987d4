package io.github.heatswell.simulation;

import static io.github.heatswell.simulation.Moment.behindReducingValve;
import static io.github.heatswell.simulation.Moment.layered;
import static io.github.heatswell.simulation.Moment.leaky;
import static io.github.heatswell.simulation.Moment.mixed;
import static io.github.heatswell.simulation.Moment.onBranch;
import static io.github.heatswell.simulation.Moment.onTop;
import static io.github.heatswell.simulation.Moment.tap;
import static io.github.heatswell.simulation.Moment.twoElements;
import static io.github.heatswell.simulation.Moment.withVessel;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.simulation.GasCushion.Diaphragm;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Parts;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rates by themselves, at states put by hand: what they say flows is what the water in the system changes by. */
class BalanceTest {

    /** Layers of different warmth under a valve that discharges hot water, and one that discharges cold. */
    private static Moment twoValvesOpen(double gaugeBar) {
        HotWaterSystem.Builder house =
                Parts.lodge(4.2, 58).tank(layered(4)).addReliefValve(onTop()).addReliefValve(onBranch());
        return new Moment(house, gaugeBar, 15, 25, 50, 60).heating().open(0).open(1);
    }

    static Stream<Moment> moments() {
        return Stream.of(
                new Moment(Parts.lodge(4.2, 58), 5, 40).heating(),
                new Moment(Parts.lodge(4.2, 58), 5, 70),
                new Moment(withVessel(), 5, 40).heating(),
                new Moment(withVessel().tank(layered(5)), 5, 10, 10, 30, 50, 60),
                new Moment(withVessel().tank(layered(5)), 5, 10, 20, 30, 50, 60).heating(),
                new Moment(withVessel().tank(layered(5)), 4.2, 12, 20, 30, 50, 60)
                        .with(PressureRegime.HELD)
                        .under(0, 0, true, mixed(9, 40)),
                new Moment(Parts.lodge(4.2, 58), 4.2, 50)
                        .with(PressureRegime.HELD)
                        .under(0, 0, true, tap(9)),
                new Moment(Parts.lodge(4.2, 58), 4.2, 38)
                        .with(PressureRegime.HELD)
                        .under(0, 0, true, mixed(9, 40)),
                new Moment(Parts.lodge(4.2, 58), 4.2, 50)
                        .with(PressureRegime.HELD)
                        .under(7, 1e-5, true, tap(2)),
                new Moment(withVessel(), 3.1, 40)
                        .heating()
                        .with(PressureRegime.FILLING)
                        .under(3, 0, true, tap(5)),
                new Moment(Parts.lodge(4.2, 58).addReliefValve(onBranch()), 7.3, 55)
                        .heating()
                        .open(0),
                twoValvesOpen(7.2),
                twoValvesOpen(7.02).with(PressureRegime.SETTLED),
                new Moment(Parts.lodge(4.2, 58).addReliefValve(onBranch()), 7.05, 55)
                        .heating()
                        .open(0)
                        .with(PressureRegime.SETTLED),
                new Moment(behindReducingValve(), 5.1, 50)
                        .heating()
                        .with(PressureRegime.RETURNING)
                        .under(4, 0, true, null),
                new Moment(behindReducingValve(), 5.4, 50).heating().with(PressureRegime.FILLING),
                new Moment(behindReducingValve().tank(layered(3)), 3.4, 12, 40, 60)
                        .with(PressureRegime.HELD)
                        .under(0, 1e-5, true, mixed(8, 42)),
                new Moment(leaky(), 5, 50).under(0, 2e-5, true, null),
                new Moment(leaky(), 3.8, 50).with(PressureRegime.FILLING),
                new Moment(leaky(), 5, 50).under(0, 0, false, tap(3)),
                new Moment(twoElements(6, 6, 2), 5, 20, 20, 20, 40, 40, 50)
                        .joined(0, 1, 3)
                        .heating(),
                new Moment(flushed(), 4.2, 30, 40, 60)
                        .heating()
                        .with(PressureRegime.HELD)
                        .under(0, 0, true, tap(200)));
    }

    /** Layers of half a litre, which a tap may flush in a tenth of a second. */
    private static HotWaterSystem.Builder flushed() {
        return Parts.lodge(4.2, 58)
                .tank(Parts.tank(1.5, Parts.steel(80, 2), 0.1, 10).toBuilder()
                        .layers(3)
                        .height(0.3, LengthUnit.METRE)
                        .build());
    }

    /**
     * However quickly a tank is flushed, what leaves it is warmer by heat over flow in the end: closed form, with the heat
     * capacity of water of 10 degC from a handbook, 4.192 kJ/(kg K), and its density, 999.7 kg/m3.
     */
    @Test
    void aFlushedTankWarmsWhatPasses() {
        Moment now = new Moment(flushed(), 4.2, 9, 9, 9)
                .heating()
                .with(PressureRegime.HELD)
                .under(0, 0, true, tap(200));
        double flow = 0.2 / 60 * 999.7;
        double step = 0.02;
        for (int i = 0; i < 20 / step; i++) {
            System.arraycopy(now.along(now.rates(now.y), step), 0, now.y, 0, now.y.length);
        }
        double[] rates = now.rates(now.y);
        double warmer = now.plant.heat.get(0).output / (flow * 4192);
        assertEquals(warmer, now.y[now.vector.highest] - Systems.celsius(9), 0.001 * warmer);
        assertEquals(now.plant.heat.get(0).output, rates[StateVector.DELIVERED], 5); // and a little standing loss
    }

    private static double netMass(double[] rates, StateVector vector) {
        return rates[StateVector.LET_IN]
                - rates[StateVector.RETURNED]
                - rates[StateVector.DRAWN]
                - rates[StateVector.LEAKED]
                - vector.relieved(rates);
    }

    /** Conservation of mass: the water in pipes, vessel and tank changes by what flows in and out. */
    @ParameterizedTest
    @MethodSource("moments")
    void massIsConserved(Moment now) {
        double[] rates = now.rates(now.y);
        double h = 0.01;
        double change = (now.inventory.mass(now.along(rates, h), now.modes)
                        - now.inventory.mass(now.along(rates, -h), now.modes))
                / (2 * h);
        double flows = Arrays.stream(rates, StateVector.LET_IN, StateVector.LEAKED + 1)
                        .map(Math::abs)
                        .sum()
                + now.vector.relieved(rates);
        assertEquals(netMass(rates, now.vector), change, 1e-9 + 2e-6 * flows);
        assertTrue(flows > 1e-6 || Math.abs(change) < 1e-9);
    }

    /** Conservation of energy: that of the tank's water changes by heat, standing loss and what flows carry. */
    @ParameterizedTest
    @MethodSource("moments")
    void energyIsConserved(Moment now) {
        double[] rates = now.rates(now.y);
        double h = 0.01;
        double change = (now.inventory.tankEnergy(now.along(rates, h), now.modes)
                        - now.inventory.tankEnergy(now.along(rates, -h), now.modes))
                / (2 * h);
        double heat = 0;
        for (int i = 0; i < now.plant.heat.count(); i++) {
            heat += now.plant.heat.isOn(i, now.modes) ? now.plant.heat.get(i).output : 0;
        }
        double net = heat - rates[StateVector.HEAT_LOST] + rates[StateVector.CARRIED];
        assertEquals(net, change, 0.02 + 1e-4 * Math.abs(net));
        assertEquals(now.plant.heat.anyOn(now.modes), heat > 0);
    }

    /**
     * Where the pressure falls through that of the mains, a leaking seat lets in what it took back before. Up to the event
     * that ends the segment nothing is rectified, which would have a kink that no step follows.
     */
    @Test
    void aFlowThatTurnsHasNoKink() {
        Moment now = new Moment(leaky(), 4.2, 50);
        double mains = now.y[StateVector.MAINS];
        now.modes = now.modes.with(now.plant.feed, true);
        double above = now.rates(now.at(mains + 2))[StateVector.RETURNED];
        double[] below = now.rates(now.at(mains - 2));
        assertTrue(above > 0);
        assertEquals(-above, below[StateVector.RETURNED], 0.05 * above); // the seat's curve bends a little there
        assertEquals(0, below[StateVector.LET_IN]);
    }

    /** Asked again it gives the same, and never what belongs to another state, other modes or another moment. */
    @Test
    void whatIsKeptBelongsToOneStateOnly() {
        Moment now = new Moment(withVessel(), 5, 40).heating();
        double[] first = now.rates(now.y);
        double[] again = new double[first.length];
        now.balance.evaluate(now.y, now.modes, again);
        assertArrayEquals(first, again);
        double higher = now.y[StateVector.PRESSURE] + 1e5;
        now.balance.evaluate(now.at(higher), now.modes, again);
        assertArrayEquals(new Moment(withVessel(), 6, 40).heating().rates(now.at(higher)), again, 1e-18);
        now.balance.evaluate(now.at(higher), Modes.resting(now.plant), again);
        assertTrue(again[StateVector.PRESSURE] < 0, "without vessel and heat it falls");
        now.balance.evaluate(now.y, now.modes, again);
        assertArrayEquals(first, again);
        now.balance.under(new Conditions(1e9, 5, 0, true, null, false));
        now.balance.evaluate(now.y, now.modes, again);
        assertEquals(5, again[StateVector.MAINS]);
    }

    @Test
    void theWaterInAVessel() {
        Moment now = new Moment(withVessel(), 5, 40);
        double[] pressures = {6e5, 7e5};
        double[] gas = {290, 295};
        double[] into = new double[2];
        GasCushion vessel = now.plant.vessels[0];
        vessel.addWater(Diaphragm.FLOATING, pressures, gas, 2, into);
        assertEquals(vessel.water(Diaphragm.FLOATING, 7e5, 295), into[1], 1e-15);
        assertTrue(into[1] > into[0] && into[0] > 0);
        double[] more = into.clone();
        vessel.addWater(Diaphragm.SEATED, pressures, gas, 2, more);
        assertArrayEquals(into, more);
        vessel.addWater(Diaphragm.BOTTOMED_OUT, pressures, gas, 2, more);
        assertEquals(into[0] + vessel.largestWater, more[0]);
    }

    /** The part of a mixed draw that is hot, by the mixing of enthalpies taken as temperatures. */
    @Test
    void theHotPartOfADraw() {
        Moment now = new Moment(Parts.lodge(4.2, 58), 4.2, 60)
                .with(PressureRegime.HELD)
                .under(0, 0, true, mixed(9, 40));
        double hot = now.rates(now.y)[StateVector.DRAWN];
        assertEquals(9e-3 / 60 * 992.2 * (40 - 9) / (60 - 9), hot, 4e-4 * hot); // density at 40 degC: handbook, 992.2
        assertEquals(hot, now.balance.drawFlow(now.y), 1e-12);
        assertEquals(9e-3 / 60, now.balance.drawn(), 1e-15);
        Moment shut = new Moment(Parts.lodge(4.2, 58), 4.2, 60).with(PressureRegime.HELD);
        shut.rates(shut.y);
        assertEquals(0, shut.balance.drawFlow(shut.y));
        assertEquals(0, shut.balance.drawn());
    }

    /** Gas behind a diaphragm on its seat does not know of the water: it comes to the temperature of the room. */
    @Test
    void gasBehindASeatedDiaphragmRelaxes() {
        Moment now = new Moment(withVessel(), 2, 40).heating();
        now.modes = now.modes.with(now.plant.vessels[0], Diaphragm.SEATED);
        assertEquals(-6.0 / 120, now.rates(now.y)[now.plant.vessels[0].gas], 1e-12);
        Moment isothermal =
                new Moment(Parts.lodge(4.2, 58).vessel(Systems.vessel(12, Pressure.gauge(4, BAR), 80)), 5, 40);
        assertEquals(0, isothermal.heating().rates(isothermal.y)[isothermal.plant.vessels[0].gas]);
    }
}

package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.draw.Draw;
import io.github.heatswell.plant.Element;
import io.github.heatswell.plant.Heater;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.Leak;
import io.github.heatswell.plant.ReducingValve;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.plant.Supply;
import io.github.heatswell.plant.Tank;
import io.github.heatswell.plant.TrappedAir;
import io.github.heatswell.simulation.Modes.Diaphragm;
import io.github.heatswell.simulation.Modes.PressureRule;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The rates by themselves, at states put by hand: that what they say flows is what the water in the system changes by, and that
 * a pressure which follows something does follow it.
 */
class BalanceTest {

    private static final double COLD = Systems.celsius(9);

    /** A system at a moment. */
    private static final class Moment {
        final Plant plant;
        final StateVector vector;
        final Balance balance;
        final double[] y;
        Modes modes;
        Conditions conditions = new Conditions(1e9, 0, 0, true, null);

        /** From the bottom of the tank upwards, as many layers as the tank has. */
        Moment(HotWaterSystem.Builder house, double gaugeBar, double... celsius) {
            HotWaterSystem built = house.build();
            plant = new Plant(built);
            vector = new StateVector(plant);
            balance = new Balance(plant, vector, GibbsPolynomialWater.instance());
            y = new double[vector.length];
            y[StateVector.PRESSURE] = plant.atmosphere + BAR.toSi(gaugeBar);
            y[StateVector.GAS] = plant.roomTemperature + 6;
            y[StateVector.STREET] = built.supply().street().absolute(0, plant.atmosphere);
            y[StateVector.COLD] = plant.coldTemperature;
            for (int i = 0; i < celsius.length; i++) {
                y[vector.lowest + i] = Systems.celsius(celsius[i]);
            }
            assertEquals(plant.layers, celsius.length);
            modes = Modes.resting(plant);
            if (plant.vessel != null) {
                modes = modes.withDiaphragm(Diaphragm.FLOATING);
            }
        }

        Moment with(PressureRule rule) {
            modes = modes.withRule(rule);
            return this;
        }

        Moment heating() {
            modes = modes.withCall(0, true);
            return this;
        }

        Moment open(int valve) {
            modes = modes.withLift(valve, Valve.Lift.PRESSURE);
            return this;
        }

        Moment joined(int... layers) {
            for (int layer : layers) {
                modes = modes.withJoined(layer);
            }
            return this;
        }

        Moment under(double streetRate, double coldRate, boolean supplyOpen, Draw draw) {
            conditions = new Conditions(1e9, streetRate, coldRate, supplyOpen, draw);
            return this;
        }

        double[] rates(double[] state) {
            balance.under(conditions);
            double[] rates = new double[state.length];
            balance.evaluate(state, modes, rates);
            return rates;
        }

        double[] along(double[] rates, double time) {
            double[] moved = y.clone();
            for (int i = 0; i < moved.length; i++) {
                moved[i] += time * rates[i];
            }
            return moved;
        }

        double[] at(double pressure) {
            double[] moved = y.clone();
            moved[StateVector.PRESSURE] = pressure;
            return moved;
        }

        double pressureRate(double pressure) {
            return rates(at(pressure))[StateVector.PRESSURE];
        }
    }

    private static Tank layered(int layers) {
        return Systems.tank(230, Systems.steel(480, 2.2), 2.4, 10).toBuilder()
                .layers(layers)
                .height(1.3, LengthUnit.METRE)
                .build();
    }

    private static Draw tap(double litresPerMinute) {
        return Draw.ofVolume(0, 500, VolumeUnit.LITRE, litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
    }

    private static Draw mixed(double litresPerMinute, double celsius) {
        return tap(litresPerMinute).mixedTo(celsius, TemperatureUnit.CELSIUS);
    }

    private static ReliefValve onTop() {
        return Systems.valve("top valve", ReliefValve.Character.MODULATING, 6.8, 7.4, 5.6).toBuilder()
                .location(ReliefValve.Location.TANK_TOP)
                .build();
    }

    private static ReliefValve onBranch() {
        return Systems.valve(ReliefValve.Character.MODULATING);
    }

    private static HotWaterSystem.Builder withVessel() {
        return Systems.lodge().vessel(Systems.slowVessel(12, Pressure.gauge(4, BAR), 120));
    }

    private static HotWaterSystem.Builder behindReducingValve() {
        return Systems.lodge()
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .pressure(Pressure.gauge(5, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .reducingValve(ReducingValve.builder()
                                .set(Pressure.gauge(3.5, BAR))
                                .lockUpRise(0.3, BAR)
                                .droop(0.7, BAR)
                                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                                .bypassOpens(0.1, BAR)
                                .build())
                        .build());
    }

    /** Holes and seats everywhere, and air in the pipes. */
    private static HotWaterSystem.Builder leaky() {
        return withVessel()
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(4.2, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .seatLeakage(20, FlowUnit.MILLILITRE_PER_MINUTE)
                        .build())
                .trappedAir(TrappedAir.of(0.4, VolumeUnit.LITRE))
                .addLeak(Leak.of(30, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4, BAR)))
                .addReliefValve(onBranch().toBuilder()
                        .leakingSeat(Pressure.gauge(3, BAR), 40, FlowUnit.MILLILITRE_PER_MINUTE)
                        .build())
                .addReliefValve(onTop().toBuilder()
                        .leakingSeat(Pressure.gauge(3, BAR), 50, FlowUnit.MILLILITRE_PER_MINUTE)
                        .build());
    }

    private static HotWaterSystem.Builder twoElements() {
        return Systems.lodge()
                .tank(layered(6))
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(6, PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .upper(Element.builder()
                                .input(2, PowerUnit.KILOWATT)
                                .setPoint(65, TemperatureUnit.CELSIUS)
                                .differential(4, TemperatureDifferenceUnit.KELVIN)
                                .height(80, RatioUnit.PERCENT)
                                .build())
                        .simultaneous(true)
                        .build());
    }

    static Stream<Moment> moments() {
        return Stream.of(
                new Moment(Systems.lodge(), 5, 40).heating(),
                new Moment(Systems.lodge(), 5, 70),
                new Moment(withVessel(), 5, 40).heating(),
                new Moment(withVessel().tank(layered(5)), 5, 10, 10, 30, 50, 60),
                new Moment(withVessel().tank(layered(5)), 5, 10, 20, 30, 50, 60).heating(),
                new Moment(withVessel().tank(layered(5)), 4.2, 12, 20, 30, 50, 60)
                        .with(PressureRule.HELD)
                        .under(0, 0, true, mixed(9, 40)),
                new Moment(Systems.lodge(), 4.2, 50).with(PressureRule.HELD).under(0, 0, true, tap(9)),
                new Moment(Systems.lodge(), 4.2, 38).with(PressureRule.HELD).under(0, 0, true, mixed(9, 40)),
                new Moment(Systems.lodge(), 4.2, 50).with(PressureRule.HELD).under(7, 1e-5, true, tap(2)),
                new Moment(withVessel(), 3.1, 40)
                        .heating()
                        .with(PressureRule.FILLING)
                        .under(3, 0, true, tap(5)),
                new Moment(Systems.lodge().addReliefValve(onBranch()), 7.3, 55)
                        .heating()
                        .open(0),
                new Moment(
                                Systems.lodge()
                                        .tank(layered(4))
                                        .addReliefValve(onTop())
                                        .addReliefValve(onBranch()),
                                7.2,
                                15,
                                25,
                                50,
                                60)
                        .heating()
                        .open(0)
                        .open(1),
                new Moment(
                                Systems.lodge()
                                        .tank(layered(4))
                                        .addReliefValve(onTop())
                                        .addReliefValve(onBranch()),
                                7.02,
                                15,
                                25,
                                50,
                                60)
                        .heating()
                        .open(0)
                        .open(1)
                        .with(PressureRule.SETTLED),
                new Moment(Systems.lodge().addReliefValve(onBranch()), 7.05, 55)
                        .heating()
                        .open(0)
                        .with(PressureRule.SETTLED),
                new Moment(behindReducingValve(), 5.1, 50)
                        .heating()
                        .with(PressureRule.RETURNING)
                        .under(4, 0, true, null),
                new Moment(behindReducingValve(), 5.4, 50).heating().with(PressureRule.FILLING),
                new Moment(behindReducingValve().tank(layered(3)), 3.4, 12, 40, 60)
                        .with(PressureRule.HELD)
                        .under(0, 1e-5, true, mixed(8, 42)),
                new Moment(leaky(), 5, 50).under(0, 2e-5, true, null),
                new Moment(leaky(), 3.8, 50).with(PressureRule.FILLING),
                new Moment(leaky(), 5, 50).under(0, 0, false, tap(3)),
                new Moment(twoElements(), 5, 20, 20, 20, 40, 40, 50)
                        .joined(0, 1, 3)
                        .heating());
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
        double change = (now.balance.inventory(now.along(rates, h), now.modes)
                        - now.balance.inventory(now.along(rates, -h), now.modes))
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
        double change = (now.balance.tankEnergy(now.along(rates, h), now.modes)
                        - now.balance.tankEnergy(now.along(rates, -h), now.modes))
                / (2 * h);
        double heat = 0;
        for (int i = 0; i < now.plant.sources.length; i++) {
            heat += now.modes.isOn(i, now.plant) ? now.plant.sources[i].output : 0;
        }
        double net = heat - rates[StateVector.HEAT_LOST] + rates[StateVector.CARRIED];
        assertEquals(net, change, 0.02 + 1e-4 * Math.abs(net));
        assertEquals(now.balance.isHeating(now.modes), heat > 0);
    }

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

    static Stream<Moment> relieving() {
        return moments().filter(now -> now.modes.anyValveOpen() && now.modes.rule == PressureRule.SETTLED);
    }

    /** A settled pressure moves as its equilibrium does: after a while it is still there. */
    @ParameterizedTest
    @MethodSource("relieving")
    void aSettledPressureStaysAtItsEquilibrium(Moment now) {
        now.with(PressureRule.FREE);
        double air = now.plant.atmosphere;
        double equilibrium = root(now::pressureRate, air + 5.6e5, air + 7.6e5);
        now.y[StateVector.PRESSURE] = equilibrium;
        now.with(PressureRule.SETTLED);
        double[] rates = now.rates(now.y);
        double settled = rates[StateVector.PRESSURE];
        assertTrue(Math.abs(settled) > 1e-3, "the equilibrium moves: " + settled);

        double later = 5;
        System.arraycopy(now.along(rates, later), 0, now.y, 0, now.y.length);
        now.with(PressureRule.FREE);
        double there = root(now::pressureRate, air + 5.6e5, air + 7.6e5);
        assertEquals(there - equilibrium, settled * later, 0.02 * Math.abs(settled * later));
    }

    /** Beside its equilibrium it is drawn back within ten minutes, and what the valves pass is what the water grows by. */
    @ParameterizedTest
    @MethodSource("relieving")
    void besideItsEquilibriumASettledPressureIsDrawnBack(Moment now) {
        now.with(PressureRule.FREE);
        double air = now.plant.atmosphere;
        double equilibrium = root(now::pressureRate, air + 5.6e5, air + 7.6e5);
        now.with(PressureRule.SETTLED);
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
        Moment now = new Moment(Systems.lodge().addReliefValve(onBranch()), 7, 55)
                .heating()
                .open(0);
        double air = now.plant.atmosphere;
        double equilibrium = root(now::pressureRate, air + 5.6e5, air + 7.6e5);
        double above = 200;
        double slope = (now.pressureRate(equilibrium + 1) - now.pressureRate(equilibrium - 1)) / 2;
        now.rates(now.at(equilibrium + above));
        assertEquals(-1 / slope, now.balance.settlingTime(), 0.01 * -1 / slope);
        assertEquals(above, now.balance.distanceFromEquilibrium(), 0.02 * above);
        double closes = air + 5.6e5;
        assertEquals(equilibrium - closes, now.balance.equilibriumLift(), 0.05 * (equilibrium - closes));
        assertEquals(now.balance.reliefFlow(), now.balance.givenOff(), 1e-15);

        Moment filling = new Moment(Systems.lodge(), 4.1, 30).with(PressureRule.FILLING);
        double feed = root(filling::pressureRate, air + 4e5, air + 4.4e5);
        double[] below = filling.at(feed - 50);
        filling.rates(below);
        assertEquals(50, filling.balance.distanceFromFollowing(below), 2);
        assertTrue(filling.balance.settlingTime() < 5);
        assertTrue(filling.balance.followsFast(below, 55));
        assertFalse(filling.balance.followsFast(below, 45));
    }

    /** A pressure that follows the street gains nothing on it; one that a reducing valve holds does not follow it. */
    @Test
    void whatAPressureGainsOnItsFeed() {
        Moment following =
                new Moment(Systems.lodge(), 4.2, 50).with(PressureRule.HELD).under(7, 0, true, null);
        assertEquals(7, following.rates(following.y)[StateVector.PRESSURE], 1e-12);
        assertEquals(0, following.balance.rateAgainstFeed(following.y), 1e-12);
        Moment held = new Moment(behindReducingValve(), 3.8, 50)
                .with(PressureRule.HELD)
                .under(7, 0, true, null);
        assertEquals(0, held.rates(held.y)[StateVector.PRESSURE], 1e-12);
        assertEquals(0, held.balance.rateAgainstFeed(held.y), 1e-12);
        Moment bypassed = new Moment(behindReducingValve(), 5.1, 50)
                .with(PressureRule.RETURNING)
                .under(7, 0, true, null);
        bypassed.rates(bypassed.y);
        assertEquals(0, bypassed.balance.rateAgainstFeed(bypassed.y), 1e-12);
        Moment free = new Moment(Systems.lodge(), 4.2, 50).heating().under(7, 0, true, null);
        double rate = free.rates(free.y)[StateVector.PRESSURE];
        assertEquals(rate - 7, free.balance.rateAgainstFeed(free.y), 1e-9);
    }

    /**
     * The law of a reducing valve, all along a draw whose flow changes as the water at the tap turns cold while the vessel gives
     * and takes: the outlet stands at lock-up less droop times what comes through. Of the thirty pascal it falls in a second it lags ten times less.
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
                .with(PressureRule.HELD)
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
                .with(PressureRule.HELD)
                .under(0, 0, true, tap(4));
        now.y[StateVector.PRESSURE] = now.plant.feed.standing(now.y[StateVector.STREET]);
        double flow = now.rates(now.y)[StateVector.LET_IN]
                / GibbsPolynomialWater.instance().density(COLD, 4.8e5);
        assertFalse(now.balance.droops(now.y), "it stands where nothing flows");
        assertEquals(1e5 / (20e-3 / 60) * flow, now.balance.droopOfFlow(), 1);
        now.y[StateVector.PRESSURE] -= 2;
        assertFalse(now.balance.droops(now.y));
        now.y[StateVector.PRESSURE] -= 1;
        assertTrue(now.balance.droops(now.y));
        assertFalse(new Moment(Systems.lodge(), 3, 50).balance.droops(new Moment(Systems.lodge(), 3, 50).y));
    }

    /** Layers that mix would part at the rate that is told: looked at with the zone cut there. */
    @Test
    void howFastLayersOfAZoneWouldPart() {
        double[][] tanks = {
            {20, 20, 20, 20, 20, 20}, {12, 30, 30, 30, 30, 55}, {12, 12, 30, 30, 55, 55}, {30, 30, 30, 30, 55, 55}
        };
        int[][] zones = {{0, 1, 2, 3, 4}, {1, 2, 3}, {0, 2, 4}, {0, 1, 2, 4}};
        for (int i = 0; i < tanks.length; i++) {
            for (Draw draw : new Draw[] {tap(6), null}) {
                for (int cut : zones[i]) {
                    Moment now = new Moment(twoElements(), 4.2, tanks[i])
                            .with(PressureRule.HELD)
                            .under(0, 0, true, draw)
                            .heating();
                    now.modes = now.modes.withCall(1, true);
                    Moment mixed = now.joined(zones[i]);
                    mixed.rates(mixed.y);
                    double lead = mixed.balance.lead(cut);
                    boolean[] joined = new boolean[5];
                    Arrays.stream(zones[i]).filter(layer -> layer != cut).forEach(layer -> joined[layer] = true);
                    now.modes = now.modes.withJoined(joined);
                    double[] rates = now.rates(now.y);
                    double parted = rates[now.vector.lowest + cut] - rates[now.vector.lowest + cut + 1];
                    assertEquals(parted, lead, 1e-9 + 0.01 * Math.abs(parted), "tank " + i + " cut above " + cut);
                }
            }
        }
    }

    @Test
    void howFastTheWaterOfALayerIsReplaced() {
        Moment now = new Moment(twoElements(), 4.2, 12, 12, 30, 30, 55, 55)
                .joined(0, 2)
                .with(PressureRule.HELD)
                .under(0, 0, true, tap(6));
        double[] rates = now.rates(now.y);
        double perLayer = 0.23 / 6;
        for (int layer = 0; layer < 6; layer++) {
            assertEquals(rates[StateVector.DRAWN] / 990 / perLayer, now.balance.turnover(layer), 5e-5);
            assertEquals(4.15e6 * perLayer, now.balance.capacity(layer), 0.02 * 4.15e6 * perLayer);
        }
        Moment sealed = new Moment(twoElements(), 5, 12, 12, 30, 30, 55, 55).heating();
        sealed.rates(sealed.y);
        assertTrue(sealed.balance.turnover(0) > 0, "downwards too");
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
        now.balance.inventory(now.at(higher), now.modes);
        now.balance.evaluate(now.y, now.modes, again);
        assertArrayEquals(first, again);
        now.balance.tankEnergy(now.at(higher), now.modes);
        now.balance.relaxedTankMass(now.y, now.modes);
        now.balance.evaluate(now.y, now.modes, again);
        assertArrayEquals(first, again);
        now.balance.under(new Conditions(1e9, 5, 0, true, null));
        now.balance.evaluate(now.y, now.modes, again);
        assertEquals(5, again[StateVector.STREET]);
    }

    @Test
    void theWaterInAVessel() {
        Moment now = new Moment(withVessel(), 5, 40);
        double[] pressures = {6e5, 7e5};
        double[] gas = {290, 295};
        double[] into = new double[2];
        now.balance.vesselWater(pressures, gas, Diaphragm.FLOATING, 2, into);
        assertEquals(now.balance.vesselWater(7e5, 295, Diaphragm.FLOATING), into[1], 1e-15);
        assertTrue(into[1] > into[0] && into[0] > 0);
        now.balance.vesselWater(pressures, gas, Diaphragm.SEATED, 2, into);
        assertArrayEquals(new double[2], into);
        now.balance.vesselWater(pressures, gas, Diaphragm.BOTTOMED_OUT, 2, into);
        assertArrayEquals(new double[] {now.plant.vessel.largestWater, now.plant.vessel.largestWater}, into);
    }

    /** The part of a mixed draw that is hot, by the mixing of enthalpies taken as temperatures. */
    @Test
    void theHotPartOfADraw() {
        Moment now =
                new Moment(Systems.lodge(), 4.2, 60).with(PressureRule.HELD).under(0, 0, true, mixed(9, 40));
        double hot = now.rates(now.y)[StateVector.DRAWN];
        assertEquals(9e-3 / 60 * 992.2 * (40 - 9) / (60 - 9), hot, 4e-4 * hot); // density at 40 degC: handbook, 992.2
        assertEquals(hot, now.balance.drawFlow(now.y), 1e-12);
        assertEquals(9e-3 / 60, now.balance.drawn(), 1e-15);
        Moment shut = new Moment(Systems.lodge(), 4.2, 60).with(PressureRule.HELD);
        shut.rates(shut.y);
        assertEquals(0, shut.balance.drawFlow(shut.y));
        assertEquals(0, shut.balance.drawn());
    }

    /**
     * With a relief valve stuck open, which passes less at less pressure: the outlet stands where both meet, is drawn back to it
     * within ten seconds, and moves with it as the street does.
     */
    @Test
    void theOutletOfAReducingValveWhereAReliefValveIsOpen() {
        HotWaterSystem.Builder house = behindReducingValve()
                .addReliefValve(
                        onBranch().toBuilder().stuckOpen(60, RatioUnit.PERCENT).build());
        Moment now = new Moment(house, 3, 50).open(0).with(PressureRule.HELD);
        double standing = now.plant.feed.standing(now.y[StateVector.STREET]);
        double meets = root(now::pressureRate, now.plant.atmosphere + 1e5, standing - 100);
        assertTrue(standing - meets > 1e4, "the droop shows");
        double slope = (now.pressureRate(meets + 10) - now.pressureRate(meets - 10)) / 20;
        assertEquals(-0.1, slope, 0.002);
        now.rates(now.at(standing));
        assertEquals(standing - meets, now.balance.droopOfFlow(), 0.02 * (standing - meets));

        double falling = -50;
        now.y[StateVector.STREET] = now.plant.atmosphere + 3.2e5;
        now.under(falling, 0, true, null);
        double before = meets(now);
        double there = now.pressureRate(before);
        now.y[StateVector.STREET] += 10 * falling;
        assertEquals((meets(now) - before) / 10, there, 0.03 * Math.abs(there));
    }

    /** Where the pressure meets the feed with the street standing still. */
    private static double meets(Moment now) {
        double rate = now.conditions.streetRate();
        now.under(0, 0, true, null);
        double found = root(now::pressureRate, now.plant.atmosphere + 1e5, now.y[StateVector.STREET] - 100);
        now.under(rate, 0, true, null);
        return found;
    }

    /** Gas behind a diaphragm on its seat does not know of the water: it comes to the temperature of the room. */
    @Test
    void gasBehindASeatedDiaphragmRelaxes() {
        Moment now = new Moment(withVessel(), 2, 40).heating();
        now.modes = now.modes.withDiaphragm(Diaphragm.SEATED);
        assertEquals(-6.0 / 120, now.rates(now.y)[StateVector.GAS], 1e-12);
        Moment isothermal = new Moment(Systems.lodge().vessel(Systems.vessel(12, Pressure.gauge(4, BAR), 80)), 5, 40);
        assertEquals(0, isothermal.heating().rates(isothermal.y)[StateVector.GAS]);
    }

    /**
     * Four layers of one temperature, heated at the bottom and at the top: the lower three share their element, and the fourth
     * joins them if a third of it is more than its own.
     */
    @ParameterizedTest
    @CsvSource({"0.8, true", "1.2, false"})
    void layersMixWithThoseThatWouldOvertakeThem(double kilowatt, boolean joined) {
        HotWaterSystem.Builder house = Systems.lodge()
                .tank(layered(4))
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(3, PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .upper(Element.builder()
                                .input(kilowatt, PowerUnit.KILOWATT)
                                .setPoint(65, TemperatureUnit.CELSIUS)
                                .differential(4, TemperatureDifferenceUnit.KELVIN)
                                .height(80, RatioUnit.PERCENT)
                                .build())
                        .simultaneous(true)
                        .build());
        Moment now = new Moment(house, 5, 40, 40, 40, 40).heating();
        now.modes = now.modes.withCall(1, true);
        now.balance.under(now.conditions);
        Modes chosen = new ModeChooser(now.plant, now.vector, now.balance).choose(now.modes, now.conditions, now.y);
        assertTrue(chosen.joined(0) && chosen.joined(1));
        assertEquals(joined, chosen.joined(2));
    }

    /**
     * Validation: 1.2 W/(m K) over the cross-section and the distance of two layers, by hand; the water this moves is little.
     */
    @Test
    void whatTwoLayersConduct() {
        HotWaterSystem.Builder house = Systems.lodge()
                .tank(Systems.tank(230, Systems.steel(480, 2.2), 0, 10).toBuilder()
                        .layers(2)
                        .height(1.3, LengthUnit.METRE)
                        .build());
        Moment now = new Moment(house, 4.2, 20, 60).with(PressureRule.HELD);
        double conductance = 1.2 * (0.23 / 1.3) / (1.3 / 2);
        double[] rates = now.rates(now.y);
        double lower = rates[now.vector.lowest] * now.balance.capacity(0);
        double upper = rates[now.vector.highest] * now.balance.capacity(1);
        assertEquals(conductance * 40, lower, 0.03 * conductance * 40);
        assertEquals(-conductance * 40, upper, 0.03 * conductance * 40);
    }
}

package io.github.heatswell.simulation;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.simulation.BalanceAudit.Inventory;
import io.github.heatswell.simulation.GasCushion.Diaphragm;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.Draw;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.Parts;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import io.github.heatswell.water.GibbsPolynomialWater;

/** A system at a moment, with its modes and what the world outside imposes. */
final class Moment {
    final CompiledSystem plant;
    final StateVector vector;
    final Balance balance;
    final Inventory inventory;
    final double[] y;
    Modes modes;
    Conditions conditions = new Conditions(1e9, 0, 0, true, null, false);

    /** From the bottom of the tank upwards, as many layers as the tank has. */
    Moment(HotWaterSystem.Builder house, double gaugeBar, double... celsius) {
        HotWaterSystem built = house.build();
        plant = new CompiledSystem(built);
        vector = plant.vector;
        balance = new Balance(plant, GibbsPolynomialWater.instance());
        inventory = new Inventory(plant, GibbsPolynomialWater.instance());
        y = new double[vector.length];
        y[StateVector.PRESSURE] = plant.atmosphere + BAR.toSi(gaugeBar);
        vector.setTemperatures(y, plant.roomTemperature + 6);
        y[StateVector.MAINS] = built.supply().mains().absolute(0, plant.atmosphere);
        y[StateVector.COLD] = plant.coldTemperature;
        for (int i = 0; i < celsius.length; i++) {
            y[vector.lowest + i] = Systems.celsius(celsius[i]);
        }
        if (vector.phase >= 0) {
            y[vector.phase] = 1;
        }
        assertEquals(plant.layers, celsius.length);
        modes = Modes.resting(plant);
        for (GasCushion vessel : plant.vessels) {
            modes = modes.with(vessel, Diaphragm.FLOATING);
        }
    }

    Moment with(PressureRegime rule) {
        modes = modes.withRule(rule);
        return this;
    }

    Moment heating() {
        return calling(0);
    }

    Moment calling(int source) {
        modes = modes.changed(plant.heat.get(source), call -> call.switched(true));
        return this;
    }

    Moment open(int valve) {
        modes = modes.with(plant.valves[valve], Valve.Lift.PRESSURE);
        return this;
    }

    Moment joined(int... layers) {
        for (int layer : layers) {
            modes = modes.withJoined(layer);
        }
        return this;
    }

    Moment under(double mainsRate, double coldRate, boolean supplyOpen, Draw draw) {
        conditions = new Conditions(1e9, mainsRate, coldRate, supplyOpen, draw, false);
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

    static Tank layered(int layers) {
        return Parts.tank(230, Parts.steel(480, 2.2), 2.4, 10).toBuilder()
                .layers(layers)
                .height(1.3, LengthUnit.METRE)
                .build();
    }

    static Draw tap(double litresPerMinute) {
        return Draw.ofVolume(0, 500, VolumeUnit.LITRE, litresPerMinute, FlowUnit.LITRE_PER_MINUTE);
    }

    static Draw mixed(double litresPerMinute, double celsius) {
        return tap(litresPerMinute).mixedTo(celsius, TemperatureUnit.CELSIUS);
    }

    static ReliefValve onTop() {
        return Systems.valve("top valve", ReliefValve.LiftCharacteristic.MODULATING, 6.8, 7.4, 5.6).toBuilder()
                .location(ReliefValve.Location.TANK_TOP)
                .build();
    }

    static ReliefValve onBranch() {
        return Systems.valve(ReliefValve.LiftCharacteristic.MODULATING);
    }

    static HotWaterSystem.Builder withVessel() {
        return Parts.lodge(4.2, 58).vessel(Systems.slowVessel(12, Pressure.gauge(4, BAR), 120));
    }

    static HotWaterSystem.Builder behindReducingValve() {
        return Parts.lodge(4.2, 58)
                .supply(SupplyBoundaryTest.supply(Supply.Arrangement.REDUCING_VALVE, 5)
                        .reducingValve(SupplyBoundaryTest.reducing()
                                .bypassOpens(0.1, BAR)
                                .build())
                        .build());
    }

    /** Holes and seats everywhere, and air in the pipes. */
    static HotWaterSystem.Builder leaky() {
        return withVessel()
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .pressure(Pressure.gauge(4.2, BAR))
                        .water(9, TemperatureUnit.CELSIUS)
                        .seatLeakage(20, FlowUnit.MILLILITRE_PER_MINUTE)
                        .build())
                .trappedAir(0.4, VolumeUnit.LITRE)
                .addLeak(Leak.of(30, FlowUnit.MILLILITRE_PER_MINUTE, Pressure.gauge(4, BAR)))
                .addReliefValve(onBranch().toBuilder()
                        .fault(ReliefFault.leakingSeat(Pressure.gauge(3, BAR), 40, FlowUnit.MILLILITRE_PER_MINUTE))
                        .build())
                .addReliefValve(onTop().toBuilder()
                        .fault(ReliefFault.leakingSeat(Pressure.gauge(3, BAR), 50, FlowUnit.MILLILITRE_PER_MINUTE))
                        .build());
    }

    static HotWaterSystem.Builder twoElements(int layers, double lowerKilowatt, double upperKilowatt) {
        return Parts.lodge(4.2, 58)
                .tank(layered(layers))
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(lowerKilowatt, PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .upper(Element.builder()
                                .input(upperKilowatt, PowerUnit.KILOWATT)
                                .setPoint(65, TemperatureUnit.CELSIUS)
                                .differential(4, TemperatureDifferenceUnit.KELVIN)
                                .height(80, RatioUnit.PERCENT)
                                .build())
                        .simultaneous(true)
                        .build());
    }
}

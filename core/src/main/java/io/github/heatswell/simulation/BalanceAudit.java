package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.water.LiquidWater;
import java.util.ArrayList;
import java.util.List;

/** Balance audit of a run: initial inventory, flows across the boundary, and whether they add up. */
final class BalanceAudit {

    /** After so many rounds, water and heat agree to rounding, */
    private static final int SETTLINGS = 4;
    /** but for gas that keeps its temperature meanwhile, and so yields more than at the pace of a run: then it takes up to so many, */
    private static final int MAX_SETTLINGS = 40;
    /** until what is missing is this part (-) of the water. */
    private static final double SETTLED = 1e-12;

    private final CompiledSystem plant;
    private final StateVector vector;
    private final Inventory inventory;
    private double openingMass;
    private double openingEnergy;
    private double tankMass;
    private double displaced;
    private double heaterInput;
    private double heatToWater;

    BalanceAudit(CompiledSystem plant, Inventory inventory) {
        this.plant = plant;
        vector = plant.vector;
        this.inventory = inventory;
    }

    /** Records the initial inventory. */
    void open(double[] y, Modes modes) {
        openingMass = inventory.mass(y, modes);
        openingEnergy = inventory.tankEnergy(y, modes);
        tankMass = inventory.relaxedTankMass(y, modes);
    }

    /** Adds a segment of a length (s) that ended in a state. */
    void follow(double[] y, Modes modes, double length) {
        double now = inventory.relaxedTankMass(y, modes);
        displaced += Math.abs(now - tankMass);
        tankMass = now;
        heaterInput += plant.heat.steadyInput(modes) * length;
        heatToWater += plant.heat.steadyOutput(modes) * length;
    }

    /**
     * Adds the water that came in, or went back, when the pressure was set exactly to the feed's: the last pascals of
     * an asymptotic approach. If they move the diaphragm off its seat or limit, the vessel takes its share. Nothing
     * else that changes with the modes is added, so it would show in the audit. A diaphragm that the pressure before has left behind
     * counts as moved, as where layers have just settled.
     *
     * @param y the state, with its new pressure; the tank's temperatures follow
     * @param modes the modes from now on, with the diaphragm where it was
     * @param moved the modes with the diaphragm where the new pressure moves it
     * @param pressure the pressure (Pa, absolute) before it
     */
    void adjust(double[] y, Modes modes, Modes moved, double pressure) {
        double step = y[StateVector.PRESSURE] - pressure;
        y[StateVector.PRESSURE] = pressure;
        double before = inventory.mass(y, plant.moved(modes, y));
        inventory.press(y, modes, step, 0);
        double gained = inventory.mass(y, moved) - before;
        y[StateVector.LET_IN] += Math.max(gained, 0);
        y[StateVector.RETURNED] += Math.max(-gained, 0);
    }

    /** The water of the tank (kg) in a state. */
    double tankWater(double[] y, Modes modes) {
        return inventory.tankMass(y, modes);
    }

    /** The energy of the tank's water (J) in a state. */
    double tankEnergy(double[] y, Modes modes) {
        return inventory.tankEnergy(y, modes);
    }

    /** All water (kg) in a state. */
    double water(double[] y, Modes modes) {
        return inventory.mass(y, modes);
    }

    /**
     * Adds back the water and the heat that setting the boundaries of the layers anew has taken: water mixed of warm and cold fills less
     * room, and the pressure takes that up unless the feed holds it. At the seat or the limit of a diaphragm it stops, and goes on with
     * what the house takes up beyond; the event that moves the diaphragm falls due next.
     *
     * @param y the state after it
     * @param modes the modes
     * @param water all water (kg) before it
     * @param energy the energy of the tank (J) before it
     * @param balance tells what the system takes up per pascal
     * @return the pressure (Pa, absolute) with that water, which the state has too unless the feed or the mains hold theirs
     */
    double settle(double[] y, Modes modes, double water, double energy, Balance balance) {
        double held = y[StateVector.PRESSURE];
        double carried = y[StateVector.CARRIED];
        double missing = water;
        Modes now = modes;
        for (int n = 0; n < SETTLINGS || n < MAX_SETTLINGS && Math.abs(missing) > SETTLED * water; n++) {
            missing = water - inventory.mass(y, now);
            double step = plant.reach(now, y, missing / balance.stiffness());
            double taken = step * balance.stiffness();
            double heat = taken * inventory.topHeat();
            inventory.press(y, now, step, -taken);
            y[StateVector.CARRIED] -= heat;
            double left = energy + y[StateVector.CARRIED] - carried - inventory.tankEnergy(y, now);
            y[vector.highest] += left / inventory.topCapacity();
            Modes moved = plant.moved(now, y);
            if (!moved.sameDevices(now)) {
                now = moved;
                balance.evaluate(y, now, new double[vector.length]);
            }
        }
        double with = y[StateVector.PRESSURE];
        if (modes.rule == PressureRegime.HELD || modes.rule == PressureRegime.RETURNING) {
            y[StateVector.PRESSURE] = held;
        }
        return with;
    }

    /**
     * Adds back the water that mixing took from the highest layers: their air took on another temperature and so another
     * volume. The pressure takes up what that water needs, unless the feed holds it; at the seat or the limit of a diaphragm it goes on
     * as {@link #settle} does.
     *
     * @param y the state after the mixing
     * @param modes the modes from now on
     * @param before the water of the tank (kg) before it
     * @param pressure the pressure (Pa, absolute) before it
     * @param balance tells what the system takes up per pascal
     * @return the pressure (Pa, absolute) with that water, which the state has too if nothing else has set it
     */
    double giveBack(double[] y, Modes modes, double before, double pressure, Balance balance) {
        double target = y[StateVector.PRESSURE];
        y[StateVector.PRESSURE] = pressure;
        double missing = before - inventory.tankMass(y, modes);
        double carried = y[StateVector.CARRIED];
        Modes now = modes;
        for (int n = 0; n < MAX_SETTLINGS && missing != 0; n++) {
            double whole = missing / balance.stiffness();
            double step = plant.reach(now, y, whole);
            double taken = Double.compare(step, whole) == 0 ? missing : step * balance.stiffness();
            inventory.press(y, now, step, -taken);
            missing -= taken;
            Modes moved = plant.moved(now, y);
            if (!moved.sameDevices(now)) {
                now = moved;
                balance.evaluate(y, now, new double[vector.length]);
            }
        }
        y[StateVector.CARRIED] = carried;
        double with = y[StateVector.PRESSURE];
        if (target != pressure || modes.rule == PressureRegime.HELD || modes.rule == PressureRegime.RETURNING) {
            y[StateVector.PRESSURE] = target;
        }
        return with;
    }

    Totals totals(double[] y, List<Event> events, int drawsCutShort) {
        List<Totals.Relief> relief = new ArrayList<>();
        for (Valve valve : plant.valves) {
            double mass = y[valve.relieved];
            relief.add(new Totals.Relief(valve.name, mass, mass / plant.coldDensity, openings(events, valve.name)));
        }
        return new Totals(
                relief,
                counted(y[StateVector.LET_IN]),
                counted(y[StateVector.RETURNED]),
                y[StateVector.DRAWN] / plant.coldDensity,
                y[StateVector.LEAKED] / plant.coldDensity,
                y[StateVector.DELIVERED],
                heaterInput + plant.heat.meteredInput(y),
                heatToWater(y),
                y[StateVector.HEAT_LOST],
                drawsCutShort);
    }

    private double heatToWater(double[] y) {
        return heatToWater + plant.heat.meteredOutput(y);
    }

    /** A volume counted since the start. Where nothing has flowed, rounding may leave it some 1e-27 kg below zero. */
    private double counted(double mass) {
        return Math.max(mass, 0) / plant.coldDensity;
    }

    private static int openings(List<Event> events, String valve) {
        return (int) events.stream()
                .filter(event -> event.kind() == Event.Kind.RELIEF_OPENED
                        && event.device().equals(valve))
                .count();
    }

    RunSummary.Audit audit(double[] y, Modes modes) {
        double in = y[StateVector.LET_IN];
        double out = y[StateVector.RETURNED] + y[StateVector.DRAWN] + y[StateVector.LEAKED] + vector.relieved(y);
        double carried = y[StateVector.CARRIED];
        double lost = y[StateVector.HEAT_LOST];
        return new RunSummary.Audit(
                in - out - (inventory.mass(y, modes) - openingMass),
                in + out + displaced,
                heatToWater(y) - lost + carried - (inventory.tankEnergy(y, modes) - openingEnergy),
                heatToWater(y) + Math.abs(lost) + Math.abs(carried) + y[StateVector.DELIVERED]);
    }

    /**
     * Water and energy that a state holds, computed from its temperatures and pressure alone, and what a step of
     * pressure does to it at once.
     *
     * <p>Holds working memory: one instance for one run, not thread-safe.
     */
    static final class Inventory {

        /** By so large a part (-) of what it bears, air is compressed along a straight line, */
        private static final double PIECE = 0.01;
        /** and so large a part (-) of its water is replaced at once in a pipe, */
        private static final double RENEWED = 0.5;
        /** in no more pieces than this. */
        private static final int MAX_PIECES = 1_000;

        private final CompiledSystem plant;
        private final StateVector vector;
        private final LiquidWater water;
        private final AirPocket air;
        private final TankColumn column;
        private final LiquidWater.State cold = new LiquidWater.State();
        private final double referenceEnthalpy;
        private final double[] probe;

        Inventory(CompiledSystem plant, LiquidWater water) {
            this.plant = plant;
            vector = plant.vector;
            this.water = water;
            air = plant.air();
            column = new TankColumn(plant, water);
            probe = new double[vector.length];
            water.evaluate(plant.coldTemperature, plant.coldPressure, cold);
            referenceEnthalpy = cold.enthalpy();
        }

        /** All water in the system (kg). */
        double mass(double[] y, Modes modes) {
            prepare(y, modes);
            double branch = 0;
            for (Device<?> device : plant.devices) {
                branch += device.volume(y, modes);
            }
            return column.mass() + cold.density() * branch;
        }

        private void prepare(double[] y, Modes modes) {
            column.prepare(y, vector, modes);
            water.evaluate(y[StateVector.COLD], y[StateVector.PRESSURE], cold);
        }

        /** Energy of the tank water, relative to the cold water of the start (J). */
        double tankEnergy(double[] y, Modes modes) {
            column.prepare(y, vector, modes);
            return column.energy(referenceEnthalpy);
        }

        /** Enthalpy (J/kg) of the highest layer of the state last looked at, relative to the cold water of the start. */
        double topHeat() {
            return column.topEnthalpy() - referenceEnthalpy;
        }

        /** Heat capacity (J/K) of the highest layer of the state last looked at. */
        double topCapacity() {
            return column.capacity(plant.layers - 1);
        }

        /** Mass of the tank water (kg). */
        double tankMass(double[] y, Modes modes) {
            column.prepare(y, vector, modes);
            return column.mass();
        }

        /** Mass of the tank water at cold pressure (kg); it falls by the mass that warming displaces. */
        double relaxedTankMass(double[] y, Modes modes) {
            System.arraycopy(y, 0, probe, 0, y.length);
            probe[StateVector.PRESSURE] = plant.coldPressure;
            column.prepare(probe, vector, modes);
            return column.mass();
        }

        /**
         * Steps the pressure at once: water is pressed from the branch into the tank, or out of it, with its enthalpy.
         * A step may be some bars, over which work and enthalpy change: the midpoint rule follows them, and by pieces air under the
         * top, and water pushed through a pipe that it fills several times.
         *
         * @param y the state, with the pressure before; temperatures and carried energy are changed with the pressure
         * @param modes the modes
         * @param step pressure change (Pa)
         * @param overTop what leaves at the top of the tank meanwhile (kg)
         */
        void press(double[] y, Modes modes, double step, double overTop) {
            double part = air.part(y[StateVector.PRESSURE], step, y[vector.highest]) / PIECE;
            if (plant.hotPipes.length > 0) {
                findChange(y, modes, step, overTop);
                part = Math.max(part, column.pipes().renewed(step) / RENEWED);
            }
            int pieces = (int) Math.min(MAX_PIECES, 1 + part);
            double[] halfway = new double[y.length];
            for (int i = 0; i < pieces; i++) {
                System.arraycopy(y, 0, halfway, 0, y.length);
                findChange(y, modes, step / pieces, overTop / pieces);
                addChange(halfway, 0.5);
                findChange(halfway, modes, step / pieces, overTop / pieces);
                addChange(y, 1);
            }
        }

        /** Works out what a step (Pa) would change in a state, to first order. */
        private void findChange(double[] y, Modes modes, double step, double overTop) {
            double p = y[StateVector.PRESSURE];
            prepare(y, modes);
            double in = column.press(step, overTop, cold.enthalpy(), probe, vector.lowest);
            double port = (in > 0 ? cold.enthalpy() : column.bottomEnthalpy()) - referenceEnthalpy;
            probe[StateVector.PRESSURE] = step;
            probe[StateVector.CARRIED] =
                    in * port - column.heatOut(overTop, referenceEnthalpy) - p * column.roomRate(step);
        }

        /** Adds a part (-) of the change last found to a state. */
        private void addChange(double[] y, double part) {
            y[StateVector.PRESSURE] += part * probe[StateVector.PRESSURE];
            y[StateVector.CARRIED] += part * probe[StateVector.CARRIED];
            for (int i = vector.lowest; i <= vector.highest; i++) {
                y[i] += part * probe[i];
            }
            for (HotPipe pipe : plant.hotPipes) {
                y[pipe.temperature] += part * probe[pipe.temperature];
            }
        }
    }
}

package io.github.heatswell.reference;

import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.Supply;
import io.github.heatswell.water.LiquidWater;
import java.util.Collections;
import java.util.List;

/**
 * A hot-water system as conserved quantities that flow through finite conductances: no rule says which pressure holds,
 * pressures follow from the masses.
 *
 * <p>The state is the mass and internal energy of the tank's water, the mass of the cold water in the branch and the
 * adiabat of the vessel's gas; behind them stand integrals over time that nothing depends on. The branch hangs between
 * street and tank; relief valves sit on it.
 *
 * <pre>
 *   tank mass      M' = -F                         F = G_t (p_tank - p_branch)
 *   tank energy    U' = heat - UA (T - T_room) - F h - p V'
 *   branch mass    m' = F + S - sum q_i rho        S = G_s (p_supply - p_branch), forward only behind a check valve
 *   gas            s' = (T_room - T_g)/(tau T_g)
 * </pre>
 *
 * h is the enthalpy of the tank's water while F flows out, of supply water while it flows in: the branch keeps the
 * temperature of the supply. Not safe for concurrent use.
 */
final class UnreducedSystem {

    /** Indices into the state. */
    static final int TANK_MASS = 0;

    static final int TANK_ENERGY = 1;
    static final int BRANCH_MASS = 2;
    static final int ADIABAT = 3;
    /** Integrals: mass let in, mass gone back to the street, heat, standing loss, enthalpy carried out, shell work. */
    static final int LET_IN = 4;

    static final int RETURNED = 5;
    static final int HEAT = 6;
    static final int LOSS = 7;
    static final int CARRIED = 8;
    static final int WORK = 9;
    /** From here on one integral for each relief valve: the mass it gave off. */
    static final int RELIEVED = 10;

    private final HotWaterSystem system;
    private final Conductances conductances;
    private final double air;
    private final double supplyPressure;
    private final TankWater tank;
    private final BranchWater branch;
    private final List<ReliefPort> reliefs;
    private final double[] magnitudes;
    private final double vesselMagnitude;
    private final double[] start;
    private final Mode firstMode;

    /**
     * Builds the equations of a system.
     *
     * @param system the system
     * @param water the properties of the water
     * @param conductances how easily water moves
     */
    UnreducedSystem(HotWaterSystem system, LiquidWater water, Conductances conductances) {
        this.system = system;
        this.conductances = conductances;
        air = system.site().atmosphere();
        supplyPressure = system.supplyAtStart().absolute(air);
        tank = new TankWater(system.tank(), water, system.coldAtStart(), supplyPressure);
        branch = new BranchWater(system, water);
        reliefs = system.reliefValves().stream()
                .map(valve -> new ReliefPort(valve, air))
                .toList();
        double t = system.start().waterTemperature().orElse(system.coldAtStart());
        double p = system.start().pressure().map(q -> q.absolute(air)).orElse(supplyPressure);
        tank.expect(t, p);
        double s = branch.gas().map(gas -> gas.adiabatAtRest(p)).orElse(0.0);
        firstMode = modeAt(t, p, s);
        start = new double[RELIEVED + reliefs.size()];
        start[TANK_MASS] = tank.massAt(t, p);
        start[TANK_ENERGY] = start[TANK_MASS] * water.internalEnergy(t, p);
        start[BRANCH_MASS] = branch.massAt(p, s, firstMode.diaphragm());
        start[ADIABAT] = s;
        magnitudes = magnitudes(start);
        vesselMagnitude = 0.1
                * branch.density(p)
                * system.vessel().map(ExpansionVessel::volume).orElse(0.0);
    }

    private Mode modeAt(double t, double p, double s) {
        Mode.Diaphragm diaphragm = Mode.Diaphragm.SEATED;
        if (branch.gas().isPresent()) {
            VesselGas gas = branch.gas().get();
            diaphragm = p <= gas.seatPressure(s)
                    ? Mode.Diaphragm.SEATED
                    : p < gas.stopPressure(s) ? Mode.Diaphragm.FLOATING : Mode.Diaphragm.STOPPED;
        }
        boolean heating = t <= system.heater().setPoint() - system.heater().differential();
        boolean direct = system.supply().arrangement() == Supply.Arrangement.DIRECT;
        List<Mode.Lift> closed = Collections.nCopies(reliefs.size(), Mode.Lift.CLOSED);
        boolean overworked = p > system.tank().workingPressure().absolute(air);
        Mode.Street street = direct ? Mode.Street.IN : Mode.Street.SHUT;
        return new Mode(heating, street, true, closed, diaphragm, overworked);
    }

    /** A kelvin of the tank, a per mille of its water: small against what moves, large against what is asked for. */
    private static double[] magnitudes(double[] y) {
        double mass = y[TANK_MASS];
        double[] sizes = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            sizes[i] = switch (i) {
                case TANK_MASS, BRANCH_MASS -> y[i];
                case TANK_ENERGY, HEAT, LOSS, CARRIED, WORK -> mass * 4.2e3;
                case ADIABAT -> 1;
                default -> mass * 1e-3;
            };
        }
        return sizes;
    }

    HotWaterSystem description() {
        return system;
    }

    double air() {
        return air;
    }

    /** {@return the pressure of the street (Pa, absolute)} */
    double supplyPressure() {
        return supplyPressure;
    }

    List<ReliefPort> reliefs() {
        return reliefs;
    }

    BranchWater branch() {
        return branch;
    }

    /** {@return the state at the start, a new array} */
    double[] start() {
        return start.clone();
    }

    Mode firstMode() {
        return firstMode;
    }

    /** {@return the temperature of the tank's water (K) in a state} */
    double temperature(double[] y) {
        tank.settle(y[TANK_MASS], y[TANK_ENERGY]);
        return tank.temperature();
    }

    /** {@return the pressure of the branch (Pa, absolute) in a state} */
    double pressure(double[] y, Mode mode) {
        return branch.settle(y[BRANCH_MASS], y[ADIABAT], mode.diaphragm());
    }

    /** {@return by how much the pressure in the tank is above that of the branch (Pa) in a state} */
    double tankExcess(double[] y, Mode mode) {
        tank.settle(y[TANK_MASS], y[TANK_ENERGY]);
        return tank.pressure() - pressure(y, mode);
    }

    /** {@return the equations as they are in a mode} */
    StiffProblem equations(Mode mode) {
        return new InMode(mode);
    }

    private final class InMode implements StiffProblem {
        private final Mode mode;

        InMode(Mode mode) {
            this.mode = mode;
        }

        @Override
        public int dimension() {
            return start.length;
        }

        @Override
        public int coupled() {
            return branch.gas().filter(VesselGas::hasOwnTemperature).isPresent() ? ADIABAT + 1 : ADIABAT;
        }

        @Override
        public double magnitude(int component) {
            // Behind a floating diaphragm the same pressure takes far more water than in pipes.
            boolean soft = component == BRANCH_MASS && mode.diaphragm() == Mode.Diaphragm.FLOATING;
            return magnitudes[component] + (soft ? vesselMagnitude : 0);
        }

        @Override
        public void rates(double time, double[] y, double[] rates) {
            double out = conductances.tank() * tankExcess(y, mode);
            double p = pressure(y, mode);
            Mode.Street street = mode.street();
            double in = street == Mode.Street.SHUT ? 0 : conductances.supply() * (supplyPressure - p);
            double relieved = 0;
            for (int i = 0; i < reliefs.size(); i++) {
                double flow = reliefs.get(i).flow(p, mode.lifts().get(i)) * branch.density(p);
                rates[RELIEVED + i] = flow;
                relieved += flow;
            }
            rates[TANK_MASS] = -out;
            rates[BRANCH_MASS] = out + in - relieved;
            rates[LET_IN] = street == Mode.Street.IN ? in : 0;
            rates[RETURNED] = street == Mode.Street.BACK ? -in : 0;
            rates[ADIABAT] = branch.gas()
                    .map(gas -> gas.adiabatRate(p, y[ADIABAT], mode.diaphragm()))
                    .orElse(0.0);
            energy(y, out, p, rates);
        }

        private void energy(double[] y, double out, double p, double[] rates) {
            double t = tank.temperature();
            double heat = mode.heating() ? system.heater().output() : 0;
            double loss = system.tank().standingLoss() * (t - system.site().roomTemperature());
            double carried = out * (mode.warming() ? tank.enthalpy() : branch.enthalpy(p));
            double work = tank.work(y[TANK_MASS], -out, heat - loss - carried);
            rates[HEAT] = heat;
            rates[LOSS] = loss;
            rates[CARRIED] = carried;
            rates[WORK] = work;
            rates[TANK_ENERGY] = heat - loss - carried - work;
        }
    }
}

package io.github.heatswell.reference;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.water.LiquidWater;
import java.util.Collections;
import java.util.List;

/**
 * A hot-water system as conserved quantities that flow through finite conductances: no rule says which pressure holds,
 * pressures follow from the masses.
 *
 * <p>The state is the mass and internal energy of the tank's water, layer by layer, the mass of the cold water in the
 * branch and the adiabat of the vessel's gas; behind them stand integrals over time that nothing depends on. The branch
 * hangs between mains and bottom of the tank; leaks and relief valves sit on it, taps and perhaps a relief valve on top
 * of the tank.
 *
 * <pre>
 *   tank mass      M' = -F - D - R                 F = G_t (p_tank - p_branch), D drawn, R relieved on top
 *   tank energy    U' = heat - UA (T - T_room) - F h - (D + R) h_top - p V'
 *   branch mass    m' = F + S - sum q_i rho        S = G_s (p_supply - p_branch), forward only behind a check valve
 *   gas            s' = (T_around - T_g)/(tau T_g)
 *   vessel in the tank: its water T_w' = (T_around - T_w)/tau
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
    /** From here on mass and energy of the layers above the lowest one. */
    static final int UPPER_LAYERS = 4;

    private static final int MAX_DAYS = 3;

    private final HotWaterSystem system;
    private final Conductances conductances;
    private final double air;
    private final Column column;
    private final BranchWater branch;
    private final List<ReliefPort> reliefs;
    private final MainsPort mains;
    private final TapPort taps;
    private final Agenda agenda;
    private final int heatedLayer;
    private final int integrals;
    /** Where the temperature of the water in a vessel in the tank stands; -1 without one. */
    private final int inside;

    private final double[] magnitudes;
    private final double vesselMagnitude;
    private final double[] start;
    private final Mode firstMode;

    /**
     * What is added up over a run, in the order of the state. Behind them comes, for each relief valve, the mass it gave
     * off.
     */
    enum Integral {
        /** Mass let in from the mains (kg). */
        LET_IN,
        /** Mass gone back to the mains (kg). */
        RETURNED,
        /** Heat given to the water (J). */
        HEAT,
        /** Standing loss (J). */
        LOSS,
        /** Enthalpy carried out of the tank (J). */
        CARRIED,
        /** Work done on the shell (J). */
        WORK,
        /** Mass drawn from the tank (kg). */
        DRAWN,
        /** Mass lost by leaks of the branch (kg). */
        LEAKED,
        /** Heat above cold water that all draws delivered (J). */
        DELIVERED,
        /** The same of the draws that end by it (J). */
        DELIVERED_TO_END
    }

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
        double fill = system.supplyAtStart().absolute(air);
        column = new Column(system, water, conductances);
        branch = new BranchWater(system, water);
        reliefs = system.reliefValves().stream()
                .map(valve -> new ReliefPort(valve, air, branch.column(valve.height(), air)))
                .toList();
        mains = new MainsPort(system, branch.density(fill), conductances.supply());
        taps = new TapPort(water, system.coldAtStart(), fill);
        agenda = new Agenda(system, MAX_DAYS);
        if (system.heater().elements().get(0).powerCurve().isPresent()) {
            throw new IllegalArgumentException("no power curve was written here");
        }
        heatedLayer = (int) (system.heater().elements().get(0).height() * column.count());
        int layered = UPPER_LAYERS + 2 * (column.waters() - 1) + (column.moves() ? 1 : 0);
        inside = branch.inTank().isPresent() ? layered : -1;
        integrals = layered + (inside < 0 ? 0 : 1);
        double t = system.start().waterTemperature().orElse(system.coldAtStart());
        double p = system.start().pressure().map(q -> q.absolute(air)).orElse(fill);
        double s = branch.adiabatAtRest(p);
        firstMode = modeAt(t, p, s);
        start = new double[integrals + Integral.values().length + reliefs.size()];
        for (int i = 0; i < column.waters(); i++) {
            double first = column.startsAsTheTank(i) ? t : system.site().roomTemperature();
            column.layer(i).expect(first, p);
            double mass = column.layer(i).massAt(first, p);
            start[Column.massIndex(i)] = mass;
            start[Column.massIndex(i) + 1] = mass * water.internalEnergy(first, p);
        }
        if (column.moves()) {
            start[column.phaseIndex()] = 1;
        }
        if (inside >= 0) {
            start[inside] = t;
        }
        start[BRANCH_MASS] = branch(start).massAt(p, s, firstMode.diaphragms());
        start[ADIABAT] = s;
        magnitudes = magnitudes();
        vesselMagnitude = 0.1
                * branch.density(p)
                * system.vessels().stream().mapToDouble(ExpansionVessel::volume).sum();
    }

    private Mode modeAt(double t, double p, double s) {
        boolean heating = system.heater().thermostatStuck()
                || t <= system.heater().setPoint() - system.heater().differential();
        List<Mode.Lift> closed = Collections.nCopies(reliefs.size(), Mode.Lift.CLOSED);
        boolean overworked = p > system.tank().workingPressure().absolute(air);
        Mode.Mains way = mains.direct() ? Mode.Mains.IN : Mode.Mains.SHUT;
        boolean pumping = system.circulation()
                .filter(loop -> loop.runs(system.start().timeOfDay()))
                .isPresent();
        Mode.Day day = new Mode.Day(0, -1, false, false, pumping);
        return new Mode(heating, way, true, 0, closed, branch.diaphragmsAt(p, s), overworked, day, Mode.Stack.STILL);
    }

    /** A kelvin of the tank, a per mille of its water: small against what moves, large against what is asked for. */
    private double[] magnitudes() {
        double mass = start[TANK_MASS];
        double[] sizes = new double[start.length];
        for (int i = 0; i < sizes.length; i++) {
            boolean energy = i == TANK_ENERGY || i >= UPPER_LAYERS && i < integrals && i % 2 == 1;
            boolean state = i < integrals;
            sizes[i] = energy ? mass * 4.2e3 : state ? Math.max(start[i], 1e-9) : mass * 1e-3;
        }
        sizes[ADIABAT] = 1;
        if (inside >= 0) {
            sizes[inside] = 1;
        }
        return sizes;
    }

    HotWaterSystem description() {
        return system;
    }

    double air() {
        return air;
    }

    MainsPort mains() {
        return mains;
    }

    List<ReliefPort> reliefs() {
        return reliefs;
    }

    BranchWater branch() {
        return branch;
    }

    /** {@return the branch, with the water of a vessel in the tank as warm as in a state} */
    BranchWater branch(double[] y) {
        if (inside >= 0) {
            branch.warm(y[inside]);
        }
        return branch;
    }

    Agenda agenda() {
        return agenda;
    }

    /** {@return where something added up stands in the state} */
    int indexOf(Integral what) {
        return integrals + what.ordinal();
    }

    /** {@return where the mass a relief valve gave off stands in the state} */
    int indexOfRelief(int valve) {
        return integrals + Integral.values().length + valve;
    }

    /** {@return the state at the start, a new array} */
    double[] start() {
        return start.clone();
    }

    Mode firstMode() {
        return firstMode;
    }

    /** {@return the mean temperature of the tank's water (K) in a state} */
    double temperature(double[] y) {
        column.settle(y);
        return column.meanTemperature();
    }

    /** {@return the temperature (K) the thermostat feels in a state} */
    double thermostatTemperature(double[] y, Mode mode) {
        column.settle(y);
        return heatedLayer == 0
                ? column.lowestPart()
                : column.layer(column.layerAt(heatedLayer, mode)).temperature();
    }

    /** {@return the temperature (K) at the top of the tank in a state} */
    double topTemperature(double[] y) {
        column.settle(y);
        return column.top().temperature();
    }

    /** {@return what is left (-) in a state until steam forms, or takes over the air under the top} */
    double untilSteam(double[] y, Mode mode) {
        double cold = branch.enthalpy(pressure(y, mode));
        column.settle(y);
        return column.untilSteam(cold);
    }

    /** {@return the temperature (K) of hot water at the tap in a state} */
    double tapTemperature(double[] y) {
        column.settle(y);
        return column.tap().temperature();
    }

    /** {@return the pressure of the branch (Pa, absolute) in a state} */
    double pressure(double[] y, Mode mode) {
        return branch(y).settle(y[BRANCH_MASS], y[ADIABAT], mode.diaphragms());
    }

    /** {@return by how much the pressure in the tank is above that of the branch (Pa) in a state} */
    double tankExcess(double[] y, Mode mode) {
        column.settle(y);
        return column.bottom().pressure() - pressure(y, mode);
    }

    Column column() {
        return column;
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
            boolean plain = column.waters() == 1
                    && branch.vessels().stream().noneMatch(v -> v.gas().hasOwnTemperature());
            return plain ? ADIABAT : integrals;
        }

        @Override
        public double magnitude(int component) {
            // Behind a floating diaphragm the same pressure takes far more water than in pipes.
            boolean soft = component == BRANCH_MASS && mode.diaphragms().contains(Mode.Diaphragm.FLOATING);
            return magnitudes[component] + (soft ? vesselMagnitude : 0);
        }

        @Override
        public void rates(double time, double[] y, double[] rates) {
            double out = conductances.tank() * tankExcess(y, mode);
            double p = pressure(y, mode);
            double in = mains.flow(time, p, branch.density(p), mode);
            double leaked = ReliefPort.leaks(system.leaks(), p, air) * branch.density(p);
            double drawn = draw(branch.enthalpy(p), rates);
            double offTop = 0;
            double offBranch = leaked;
            for (int i = 0; i < reliefs.size(); i++) {
                ReliefPort port = reliefs.get(i);
                double flow = relief(port, p, mode.lifts().get(i));
                rates[indexOfRelief(i)] = flow;
                offTop += port.onTank() ? flow : 0;
                offBranch += port.onTank() ? 0 : flow;
            }
            rates[BRANCH_MASS] = out + in - offBranch;
            rates[ADIABAT] = branch.adiabatRate(p, y[ADIABAT], mode.diaphragms(), column);
            if (inside >= 0) {
                rates[inside] = branch.inTank().orElseThrow().warming(y[inside], column);
            }
            rates[indexOf(Integral.LET_IN)] = Math.max(in, 0);
            rates[indexOf(Integral.RETURNED)] = Math.max(-in, 0);
            rates[indexOf(Integral.LEAKED)] = leaked;
            tank(y, out, offTop, drawn, rates);
        }

        private double relief(ReliefPort port, double p, Mode.Lift lift) {
            return port.onTank()
                    ? port.flow(column.top().pressure(), lift) * column.top().density()
                    : port.flow(p, lift) * branch.density(p);
        }

        /** The mass flow out of the tap, with what it adds up to. */
        private double draw(double coldEnthalpy, double[] rates) {
            boolean open = mode.day().tap() >= 0;
            Agenda.Entry entry = open ? agenda.entry(mode.day().tap()) : null;
            double flow = open ? taps.flow(entry.draw(), mode.day().mixing(), column.tap()) : 0;
            // by the definition of a draw of heat, cooler water than the feed's delivers none
            double heat = flow * Math.max(0, column.tap().enthalpy() - coldEnthalpy);
            rates[indexOf(Integral.DRAWN)] = flow;
            rates[indexOf(Integral.DELIVERED)] = heat;
            boolean heatEnds = open && entry.draw().heat().isPresent();
            rates[indexOf(Integral.DELIVERED_TO_END)] = heatEnds ? heat : 0;
            return flow;
        }

        private void tank(double[] y, double outBelow, double outAbove, double drawn, double[] rates) {
            double heat = mode.heating() ? system.heater().output() : 0;
            double below =
                    outBelow * (mode.warming() ? column.bottom().enthalpy() : branch.enthalpy(pressure(y, mode)));
            double above = outAbove * column.top().enthalpy();
            double toTap = drawn * column.tap().enthalpy();
            double[] mass = new double[column.waters()];
            double[] energy = new double[column.waters()];
            for (int i = 0; i < column.count(); i++) {
                double part = mode.warming() ? i == 0 ? 1 : 0 : column.inletShare(i);
                mass[i] -= outBelow * part;
                energy[i] -= below * part;
            }
            mass[column.count() - 1] -= outAbove;
            mass[column.waters() - 1] -= drawn;
            energy[column.layerAt(heatedLayer, mode)] += heat;
            energy[column.count() - 1] -= above;
            energy[column.waters() - 1] -= toTap;
            column.rates(y, mode, drawn, mass, energy, rates);
            rates[indexOf(Integral.HEAT)] = heat;
            rates[indexOf(Integral.LOSS)] = column.lost();
            rates[indexOf(Integral.CARRIED)] = below + above + toTap;
            rates[indexOf(Integral.WORK)] = column.work();
        }
    }
}

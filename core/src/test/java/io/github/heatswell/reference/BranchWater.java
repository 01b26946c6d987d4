package io.github.heatswell.reference;

import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Site;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The cold water outside the tank, in pipes and vessels, at the temperature of the supply. Its pressure follows from its
 * mass: {@code rho(T_s, p) [sum V_i (1 + C_i (p - p_ref)) + sum V_w(p - rho g z) - V_air p_0/p] = m}. Trapped air is
 * isothermal; a vessel above the drain cock stands under a column of cold water less. A vessel full of water is so much more
 * of rigid pipe, and one that is cut off is none. Only one vessel may have gas with a temperature of its own. The water of one in the
 * tank has a temperature of its own, and so a density.
 *
 * <p>A rigid fitting of a millionth of the tank's volume stands in for the branch where there is neither pipe nor vessel;
 * it takes part in everything, at an effect of 1e-6.
 */
final class BranchWater {

    private static final double FITTING = 1e-6;
    private static final int MAX_ITERATIONS = 60;
    /** Standard acceleration of free fall (m/s2), ISO 80000-3. */
    private static final double GRAVITY = 9.80665;
    /** A correction (relative) after which a further one would be lost in rounding. */
    private static final double SMALL = 1e-11;

    /** Ten times the highest pressure the properties are made for (Pa). */
    private static final double MAX_PRESSURE = 25e6;

    private final LiquidWater water;
    private final double temperature;
    private final double referencePressure;
    private final double volume;
    private final double give;
    private final List<Vessel> vessels;
    private final double airVolume;
    private final double airPressure;
    private final LiquidWater.State state = new LiquidWater.State();
    private double pressure;
    /** What the pressure was found for, if it was. */
    private boolean settled;

    /** The temperature (K) of the water in a vessel in the tank. */
    private double inside;

    private final LiquidWater.State within = new LiquidWater.State();
    private double settledMass;
    private double settledAdiabat;
    private List<Mode.Diaphragm> settledPositions = List.of();

    /**
     * The branch of a system at its cold fill.
     *
     * @param system the system
     * @param water the properties of the water
     */
    BranchWater(HotWaterSystem system, LiquidWater water) {
        Site site = system.site();
        this.water = water;
        temperature = system.coldAtStart();
        referencePressure = system.supplyAtStart().absolute(site.atmosphere());
        double pipes = 0;
        double compliance = 0;
        for (PipeRun pipe : system.piping()) {
            if (pipe.carries() != PipeRun.Carries.COLD) {
                continue;
            }
            pipes += pipe.volume();
            compliance += pipe.volume() * pipe.compliance();
        }
        volume = pipes + FITTING * system.tank().volume() + volumeIf(system, ExpansionVessel.Condition.WATERLOGGED);
        give = compliance;
        vessels = IntStream.range(0, system.vessels().size())
                .filter(i -> system.vessels().get(i).condition() == ExpansionVessel.Condition.SOUND)
                .mapToObj(i -> vessel(system, i))
                .toList();
        if (vessels.stream().filter(v -> v.gas().hasOwnTemperature()).count() > 1) {
            throw new IllegalArgumentException("only one vessel may have gas with a temperature of its own");
        }
        airVolume = system.trappedAir().orElse(0);
        airPressure = system.start()
                .pressure()
                .map(q -> q.absolute(site.atmosphere()))
                .orElse(referencePressure);
        pressure = referencePressure;
    }

    private static double volumeIf(HotWaterSystem system, ExpansionVessel.Condition condition) {
        return system.vessels().stream()
                .filter(v -> v.condition() == condition)
                .mapToDouble(ExpansionVessel::volume)
                .sum();
    }

    private Vessel vessel(HotWaterSystem system, int index) {
        ExpansionVessel described = system.vessels().get(index);
        double air = system.site().atmosphere();
        double room = system.site().roomTemperature();
        boolean inTank = described.location() == ExpansionVessel.Location.IN_TANK;
        double tank = system.start().waterTemperature().orElse(system.coldAtStart());
        double atFirst = inTank ? tank : described.temperature().orElse(room);
        double share = described.height() / system.tank().height().orElse(Double.POSITIVE_INFINITY);
        return new Vessel(
                system.vesselNames().get(index),
                new VesselGas(described, air, room, atFirst),
                column(described.height(), air),
                column -> inTank ? column.atShare(share) : atFirst,
                inTank);
    }

    /**
     * A vessel that takes water.
     *
     * @param name what it is called
     * @param gas its gas
     * @param offset what the column of water up to it weighs (Pa)
     * @param around the temperature around it (K), with the tank's layers as they are
     * @param inTank whether it is built into the tank
     */
    record Vessel(String name, VesselGas gas, double offset, ToDoubleFunction<Column> around, boolean inTank) {

        /** {@return how fast (K/s) its water, at a temperature (K), warms in the tank} */
        double warming(double water, Column column) {
            return (around.applyAsDouble(column) - water) / gas.timeConstant();
        }

        Mode.Diaphragm position(double p, double s) {
            if (p - offset <= gas.seatPressure(s)) {
                return Mode.Diaphragm.SEATED;
            }
            return p - offset < gas.stopPressure(s) ? Mode.Diaphragm.FLOATING : Mode.Diaphragm.STOPPED;
        }
    }

    /** {@return what a column of cold water weighs (Pa), taken at the pressure of the air (Pa)} */
    double column(double height, double air) {
        return density(air) * GRAVITY * height;
    }

    /** {@return s of gas that has rested while the branch stood at an absolute pressure (Pa)} */
    double adiabatAtRest(double p) {
        return vessels.stream()
                .filter(v -> v.gas().hasOwnTemperature())
                .mapToDouble(v -> v.gas().adiabatAtRest(p - v.offset()))
                .sum();
    }

    /** {@return the rate of s (1/s) at a pressure of the branch (Pa, absolute), with the tank's layers as they are} */
    double adiabatRate(double p, double s, List<Mode.Diaphragm> positions, Column column) {
        double sum = 0;
        for (int i = 0; i < vessels.size(); i++) {
            Vessel v = vessels.get(i);
            sum += v.gas()
                    .adiabatRate(p - v.offset(), s, positions.get(i), v.around().applyAsDouble(column));
        }
        return sum;
    }

    /** {@return where the diaphragms lie at a pressure of the branch (Pa, absolute), in the order of the vessels} */
    List<Mode.Diaphragm> diaphragmsAt(double p, double s) {
        return vessels.stream().map(v -> v.position(p, s)).toList();
    }

    /** {@return the vessels that take water} */
    List<Vessel> vessels() {
        return vessels;
    }

    /** {@return the vessel in the tank, if any} */
    Optional<Vessel> inTank() {
        return vessels.stream().filter(Vessel::inTank).findFirst();
    }

    /** Sets the temperature (K) of the water in the vessel in the tank. */
    void warm(double waterInTank) {
        settled &= waterInTank == inside;
        inside = waterInTank;
    }

    /** {@return the volume (-) that the water in a vessel would have if it were that of the branch} */
    private double asCold(Vessel vessel, double p) {
        if (!vessel.inTank()) {
            return 1;
        }
        water.evaluate(inside, p, within);
        return within.density() / density(p);
    }

    private double cold(double p, double s, List<Mode.Diaphragm> positions) {
        double sum = 0;
        for (int i = 0; i < vessels.size(); i++) {
            Vessel v = vessels.get(i);
            sum += asCold(v, p) * v.gas().waterVolume(p - v.offset(), s, positions.get(i));
        }
        return sum;
    }

    /** {@return the water in all vessels (m3)} */
    double vesselWater(double p, double s, List<Mode.Diaphragm> positions) {
        double sum = 0;
        for (int i = 0; i < vessels.size(); i++) {
            Vessel v = vessels.get(i);
            sum += v.gas().waterVolume(p - v.offset(), s, positions.get(i));
        }
        return sum;
    }

    private double volumeAt(double p, double s, List<Mode.Diaphragm> positions) {
        return volume + give * (p - referencePressure) - airVolume * airPressure / p + cold(p, s, positions);
    }

    /** {@return the density (kg/m3) at an absolute pressure (Pa)} */
    double density(double p) {
        water.evaluate(temperature, p, state);
        return state.density();
    }

    /** {@return the enthalpy (J/kg) at an absolute pressure (Pa)} */
    double enthalpy(double p) {
        water.evaluate(temperature, p, state);
        return state.enthalpy();
    }

    /** {@return the mass (kg) in the branch} */
    double massAt(double p, double s, List<Mode.Diaphragm> positions) {
        return density(p) * volumeAt(p, s, positions);
    }

    /** {@return by how much more water (-) the branch holds than at the moment a diaphragm leaves its seat} */
    double fillAboveSeat(double mass, double s, List<Mode.Diaphragm> positions, int vessel) {
        Vessel v = vessels.get(vessel);
        double p = v.gas().seatPressure(s) + v.offset();
        return fillAbove(mass, massAt(p, s, Mode.moved(positions, vessel, Mode.Diaphragm.SEATED)));
    }

    /** {@return by how much more water (-) the branch holds than at the moment a diaphragm meets its stop, if any} */
    double fillAboveStop(double mass, double s, List<Mode.Diaphragm> positions, int vessel) {
        Vessel v = vessels.get(vessel);
        double p = v.gas().stopPressure(s) + v.offset();
        return p < MAX_PRESSURE
                ? fillAbove(mass, massAt(p, s, Mode.moved(positions, vessel, Mode.Diaphragm.STOPPED)))
                : -1;
    }

    /** Where trapped air at the pressure of the seat would fill more than the pipes, the mass there is below zero. */
    private static double fillAbove(double mass, double there) {
        return (mass - there) / Math.max(Math.abs(mass), Math.abs(there));
    }

    /**
     * Finds the pressure by Newton's method, begun at the last solution; at once where nothing else was asked in between.
     *
     * @param mass the mass (kg)
     * @param s the adiabat of the gas
     * @param positions where the diaphragms are
     * @return the pressure (Pa, absolute)
     */
    double settle(double mass, double s, List<Mode.Diaphragm> positions) {
        if (settled && mass == settledMass && s == settledAdiabat && positions.equals(settledPositions)) {
            return pressure;
        }
        settled = settleFrom(pressure, mass, s, positions) || settleFrom(referencePressure, mass, s, positions);
        if (!settled) {
            throw new ArithmeticException("no pressure holds " + mass + " kg in the branch");
        }
        settledMass = mass;
        settledAdiabat = s;
        settledPositions = positions;
        return pressure;
    }

    private double byPressure(double p, double s, List<Mode.Diaphragm> positions) {
        double sum = 0;
        for (int i = 0; i < vessels.size(); i++) {
            Vessel v = vessels.get(i);
            sum += asCold(v, p) * v.gas().waterVolumeByPressure(p - v.offset(), s, positions.get(i));
        }
        return sum;
    }

    private boolean settleFrom(double first, double mass, double s, List<Mode.Diaphragm> positions) {
        double p = first;
        boolean found = false;
        for (int i = 0; i < MAX_ITERATIONS && !found; i++) {
            double v = volumeAt(p, s, positions);
            double density = density(p);
            double growth = give + airVolume * airPressure / (p * p) + byPressure(p, s, positions);
            double correction = (mass / density - v) / (v * state.compressibility() + growth);
            // Far from the solution the gas curve may send Newton's method below vacuum.
            double reached = Math.max(p + correction, p / 4);
            found = Math.abs(reached - p) <= SMALL * p && reached < MAX_PRESSURE;
            p = reached;
        }
        pressure = found ? p : pressure;
        return found;
    }
}

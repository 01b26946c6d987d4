package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.simulation.GasCushion.Diaphragm;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;

/**
 * An expansion vessel: a fixed mass of ideal gas, {@code p V = m R T}, charged with the water side empty, behind a
 * diaphragm. Pressures are those (Pa, absolute) at the height of the drain cock.
 */
final class GasCushion extends Device<Diaphragm> {

    /** Where the diaphragm is. */
    enum Diaphragm {
        /** On its seat: the vessel holds no water. */
        SEATED,
        /** Between seat and limit: gas and water at one pressure. */
        FLOATING,
        /** At its limit: the vessel takes no more water. */
        BOTTOMED_OUT
    }

    /** Ratio of heat capacities cv/cp of a diatomic gas (-). */
    private static final double CV_OVER_CP = 2.5 / 3.5;
    /** The gap of the diaphragm (Pa) is at most this, */
    private static final double MAX_GAP = 1e-4;
    /** and this fraction (-) of its seat pressure, with which rounding scales. */
    private static final double PART_GAP = 2e-10;
    /** Nor may the two positions differ by more water (m3): with a large vessel a gap holds milligrams. */
    private static final double WATER_GAP = 1e-11;

    final double volume;
    final double largestWater;
    /** Mass times specific gas constant (J/K). */
    final double gasConstant;
    /** Time constant (s) of the return to ambient temperature; 0 for isothermal gas. */
    final double timeConstant;
    /** Temperature around the vessel (K). */
    final double temperature;

    /**
     * How far (Pa) beyond its seat or limit the pressure moves the diaphragm. Physics has one threshold there; two,
     * a hair apart, keep rounding from reversing a change just made.
     */
    final double gap;

    /** The slot of the gas's temperature (K); constant for isothermal gas. */
    final int gas;

    /** Its place among the vessels described. */
    final int index;

    private final String name;
    private final double offset;

    /**
     * A vessel of a system.
     *
     * @param slots gives its slots
     * @param system the system
     * @param index its place among the vessels described
     */
    GasCushion(StateVector.Slots slots, HotWaterSystem system, int index) {
        super(slots);
        ExpansionVessel described = system.vessels().get(index);
        double roomTemperature = system.site().roomTemperature();
        double atmosphere = system.site().atmosphere();
        this.index = index;
        name = system.vesselNames().get(index);
        gas = slots.temperature();
        offset = system.head(described.height());
        volume = described.volume();
        largestWater = volume * described.acceptance();
        double chargedAt = described.chargedAt().orElse(roomTemperature);
        gasConstant = described.precharge().absolute(atmosphere) * volume / chargedAt;
        timeConstant = described.gasTimeConstant().orElse(0);
        temperature = described.temperature().orElse(roomTemperature);
        double seat = pressureWith(0, temperature);
        gap = Math.min(MAX_GAP, Math.min(PART_GAP * Math.abs(seat), pressureOf(WATER_GAP)));
    }

    @Override
    Diaphragm resting() {
        return Diaphragm.SEATED;
    }

    @Override
    void start(double[] y) {
        y[gas] = temperature;
    }

    @Override
    Modes moved(Modes modes, double[] y) {
        return modes.with(this, moved(modes.of(this), y[StateVector.PRESSURE], y[gas]));
    }

    @Override
    void addPhases(Modes modes, BiConsumer<Interval.Phase, String> to) {
        Diaphragm mode = modes.of(this);
        if (mode != Diaphragm.SEATED) {
            to.accept(Interval.Phase.VESSEL_HOLDS_WATER, name);
        }
        if (mode == Diaphragm.BOTTOMED_OUT) {
            to.accept(Interval.Phase.VESSEL_FULL, name);
        }
    }

    @Override
    boolean contributes(Modes modes, Conditions now) {
        return modes.of(this) != Diaphragm.SEATED;
    }

    @Override
    void contribute(double[] y, Modes modes, Contributions to) {
        if (modes.of(this) == Diaphragm.BOTTOMED_OUT) {
            to.store(largestWater, 0, 0);
            return;
        }
        double p = y[StateVector.PRESSURE];
        double gasVolume = gasVolume(p, y[gas]);
        double perPressure = share() / gasPressure(p);
        to.store(volume - gasVolume, perPressure * gasVolume, -perPressure * gasConstant * relaxation(y));
    }

    /** How fast (K/s) the surroundings alone cool the gas or warm it. */
    private double relaxation(double[] y) {
        return timeConstant > 0 ? (temperature - y[gas]) / timeConstant : 0;
    }

    @Override
    double volume(double[] y, Modes modes) {
        return water(modes.of(this), y[StateVector.PRESSURE], y[gas]);
    }

    @Override
    double compliance(double pressure) {
        return volume / pressure;
    }

    @Override
    boolean hasTemperature() {
        return timeConstant > 0;
    }

    /** Compression warms the gas behind a floating diaphragm, and the surroundings always cool it. */
    @Override
    void fillRates(double[] y, Modes modes, double pressureRate, double[] rates) {
        if (modes.of(this) == Diaphragm.FLOATING) {
            double compression = (1 - share()) * y[gas] / gasPressure(y[StateVector.PRESSURE]);
            rates[gas] = compression * pressureRate + share() * relaxation(y);
        } else {
            rates[gas] = relaxation(y);
        }
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        UnaryOperator<Modes> floating = becoming(Diaphragm.FLOATING);
        switch (now.modes().of(this)) {
            case SEATED -> to.add(EventDetector.of(Event.Kind.VESSEL_LIFTED, name, floating, y -> gap - aboveSeat(y)));
            case FLOATING -> {
                // a pressure that is held at the seat would not go on to the far end of the gap
                boolean atSeat = now.modes().rule.holds() && Math.abs(aboveSeat(now.start())) < gap / 2;
                double seated = atSeat ? gap : -gap;
                to.add(EventDetector.of(
                        Event.Kind.VESSEL_SEATED, name, becoming(Diaphragm.SEATED), y -> aboveSeat(y) - seated));
                if (largestWater < volume) {
                    to.add(EventDetector.of(
                            Event.Kind.VESSEL_BOTTOMED_OUT,
                            name,
                            becoming(Diaphragm.BOTTOMED_OUT),
                            y -> gap - aboveLimit(y)));
                }
            }
            case BOTTOMED_OUT ->
                to.add(EventDetector.of(Event.Kind.VESSEL_FREED, name, floating, y -> aboveLimit(y) + gap));
        }
    }

    private UnaryOperator<Modes> becoming(Diaphragm mode) {
        return modes -> modes.with(this, mode);
    }

    private double aboveSeat(double[] y) {
        return y[StateVector.PRESSURE] - pressureWith(0, y[gas]);
    }

    private double aboveLimit(double[] y) {
        return y[StateVector.PRESSURE] - pressureWith(largestWater, y[gas]);
    }

    /** Water (m3) in the vessel at a pressure (Pa, absolute) and gas temperature (K). */
    double water(Diaphragm diaphragm, double pressure, double gasTemperature) {
        return switch (diaphragm) {
            case SEATED -> 0;
            case FLOATING -> freeWater(pressure, gasTemperature);
            case BOTTOMED_OUT -> largestWater;
        };
    }

    /** Adds the same for several pressures and gas temperatures. */
    void addWater(Diaphragm diaphragm, double[] pressures, double[] gasTemperatures, int count, double[] into) {
        if (diaphragm == Diaphragm.SEATED) {
            return;
        }
        if (diaphragm == Diaphragm.BOTTOMED_OUT) {
            for (int i = 0; i < count; i++) {
                into[i] += largestWater;
            }
            return;
        }
        double size = volume;
        double charge = gasConstant;
        double higher = offset;
        for (int i = 0; i < count; i++) {
            into[i] += size - charge * gasTemperatures[i] / (pressures[i] - higher);
        }
    }

    /** Pressure of the gas (Pa, absolute) beside some water (m3) in the vessel, for several of them and gas temperatures. */
    void putGasPressure(double[] water, double[] gasTemperatures, int count, double[] into) {
        for (int i = 0; i < count; i++) {
            into[i] = gasConstant * gasTemperatures[i] / (volume - water[i]);
        }
    }

    /**
     * Where the diaphragm is once the pressure has moved it.
     *
     * @param before where it was
     * @param pressure the pressure (Pa, absolute)
     * @param gasTemperature the temperature of the gas (K)
     */
    Diaphragm moved(Diaphragm before, double pressure, double gasTemperature) {
        double seat = pressureWith(0, gasTemperature)
                + (before == Diaphragm.FLOATING || before == Diaphragm.BOTTOMED_OUT ? -gap : gap);
        // high above the tank the gas pressure may exceed the water's, whatever volume its law then gives
        if (pressure <= seat) {
            return Diaphragm.SEATED;
        }
        if (largestWater >= volume) {
            return Diaphragm.FLOATING;
        }
        double limit = pressureWith(largestWater, gasTemperature) + (before == Diaphragm.BOTTOMED_OUT ? -gap : gap);
        return pressure >= limit ? Diaphragm.BOTTOMED_OUT : Diaphragm.FLOATING;
    }

    /**
     * Instantaneous share (-) of the gas's isothermal compliance: cv/cp with a time constant, 1 without. The rest
     * follows as the gas returns to ambient temperature.
     */
    double share() {
        return timeConstant > 0 ? CV_OVER_CP : 1;
    }

    /** Pressure of the gas (Pa, absolute) when it is that of the system. */
    double gasPressure(double pressure) {
        return pressure - offset;
    }

    /** Volume of the gas (m3) when it has the pressure of the system. */
    double gasVolume(double pressure, double gasTemperature) {
        return gasConstant * gasTemperature / gasPressure(pressure);
    }

    /** Water the vessel would hold if the diaphragm had neither seat nor limit (m3). */
    double freeWater(double pressure, double gasTemperature) {
        return volume - gasVolume(pressure, gasTemperature);
    }

    /** Pressure rise (Pa) above the seat for a small volume of water (m3). */
    double pressureOf(double littleWater) {
        return gasConstant * temperature / volume * littleWater / volume;
    }

    /** System pressure (Pa, absolute) at which the vessel holds a volume of water (m3). */
    double pressureWith(double water, double gasTemperature) {
        return gasConstant * gasTemperature / (volume - water) + offset;
    }
}

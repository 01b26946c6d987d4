package io.github.heatswell.simulation;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.simulation.GasCushion.Diaphragm;
import io.github.heatswell.simulation.Schedule.Conditions;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Tank;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;

/**
 * An expansion vessel: gas ({@link CushionGas}), charged with the water side empty, behind a diaphragm. Pressures are those
 * (Pa, absolute) at the height of the drain cock. Around it is a room, or the tank's layer at its height. In a room the water behind
 * its diaphragm counts as that of the cold branch. In a tank it takes the temperature of that layer as fast as the gas does, whatever
 * compression does to the gas, and grows as it warms; what it takes for that from the layer's heat is left out.
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

    /** The gap of the diaphragm (Pa) is at most this, */
    private static final double MAX_GAP = 1e-4;
    /** and this fraction (-) of its seat pressure, with which rounding scales. */
    private static final double PART_GAP = 2e-10;
    /** Nor may the two positions differ by more water (m3): with a large vessel a gap holds milligrams. */
    private static final double WATER_GAP = 1e-11;

    final double volume;
    final double largestWater;
    private final CushionGas law;
    /** Time constant (s) with which the gas follows the temperature around it; 0 for isothermal gas. */
    final double timeConstant;
    /** Temperature around the vessel (K), at the start if it is in the tank. */
    final double temperature;
    /** Which layer of the tank is around the vessel, counted from the highest; -1 for none. */
    private final int below;
    /** The slot of the temperature (K) of the water behind the diaphragm in a tank; -1 elsewhere. */
    private final int inside;

    private final LiquidWater water;
    private final LiquidWater.State within = new LiquidWater.State();
    private final double coldPressure;
    private final double coldDensity;

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
     * @param layers the layers of the tank
     * @param water the properties of water
     */
    GasCushion(StateVector.Slots slots, HotWaterSystem system, int index, int layers, LiquidWater water) {
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
        law = CushionGas.of(described, name, described.precharge().absolute(atmosphere), chargedAt);
        timeConstant = described.gasTimeConstant().orElse(0);
        below = described.isInTank() ? layers - 1 - layerAt(described.height(), system.tank(), layers) : -1;
        temperature = below < 0
                ? system.gasAtRest(described)
                : system.start().waterTemperature().orElse(system.coldAtStart());
        inside = below < 0 ? -1 : slots.temperature();
        this.water = water;
        coldPressure = system.supplyAtStart().absolute(atmosphere);
        water.evaluate(system.coldAtStart(), coldPressure, within);
        coldDensity = within.density();
        double seat = pressureWith(0, temperature);
        gap = Math.min(MAX_GAP, Math.min(PART_GAP * Math.abs(seat), law.stiffnessAtSeat(temperature) * WATER_GAP));
    }

    private static int layerAt(double height, Tank tank, int layers) {
        double share = tank.height().isPresent() ? height / tank.height().getAsDouble() : 0;
        return Math.min(layers - 1, (int) (share * layers));
    }

    @Override
    Diaphragm resting() {
        return Diaphragm.SEATED;
    }

    @Override
    void start(double[] y) {
        y[gas] = temperature;
        if (inside >= 0) {
            y[inside] = temperature;
        }
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
        double asCold = asCold(y);
        if (modes.of(this) == Diaphragm.BOTTOMED_OUT) {
            to.store(asCold * largestWater, 0, asCold * largestWater * shrinking(y));
            return;
        }
        double p = gasPressure(y[StateVector.PRESSURE]);
        double gasVolume = law.volume(p, y[gas]);
        double held = volume - gasVolume;
        double growth = timeConstant > 0 ? -law.growth(p, gasVolume, y[gas]) * relaxation(y, gas) : 0;
        to.store(asCold * held, asCold * law.give(p, gasVolume, y[gas]), asCold * (growth + held * shrinking(y)));
    }

    /** The volume (-) that the water behind the diaphragm would have if it were cold; whatever the pressure, as both yield alike. */
    private double asCold(double[] y) {
        if (inside < 0) {
            return 1;
        }
        water.evaluate(y[inside], coldPressure, within);
        return within.density() / coldDensity;
    }

    /** How fast (1/s) that changes, as last looked at. */
    private double shrinking(double[] y) {
        return inside < 0 ? 0 : -within.expansivity() * relaxation(y, inside);
    }

    /** How fast (K/s) the surroundings alone cool what has a temperature of its own, or warm it. */
    private double relaxation(double[] y, int slot) {
        double around = below < 0 ? temperature : y[y.length - 1 - below];
        return timeConstant > 0 ? (around - y[slot]) / timeConstant : 0;
    }

    @Override
    double volume(double[] y, Modes modes) {
        return asCold(y) * water(modes.of(this), y[StateVector.PRESSURE], y[gas]);
    }

    @Override
    double compliance(double pressure) {
        return law.softest(pressure);
    }

    @Override
    boolean hasTemperature() {
        return timeConstant > 0;
    }

    /** Compression warms the gas behind a floating diaphragm, and the surroundings always cool it. */
    @Override
    void fillRates(double[] y, Modes modes, double pressureRate, double[] rates) {
        if (modes.of(this) == Diaphragm.FLOATING) {
            double p = gasPressure(y[StateVector.PRESSURE]);
            double gasVolume = law.volume(p, y[gas]);
            rates[gas] = law.warming(p, gasVolume, y[gas]) * pressureRate
                    + law.share(gasVolume, y[gas]) * relaxation(y, gas);
        } else {
            rates[gas] = relaxation(y, gas);
        }
        if (inside >= 0) {
            rates[inside] = relaxation(y, inside);
        }
    }

    @Override
    void addDetectors(List<EventDetector> to, Segment now) {
        UnaryOperator<Modes> floating = becoming(Diaphragm.FLOATING);
        switch (now.modes().of(this)) {
            case SEATED -> {
                double lifted = lifts(now) ? -gap : gap;
                to.add(EventDetector.of(Event.Kind.VESSEL_LIFTED, name, floating, y -> lifted - aboveSeat(y)));
            }
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

    /**
     * Whether the pressure is at the seat and about to rise, whatever the diaphragm does: to follow it over the gap would take a
     * segment. Where mains rise or the gas cools, a lifted diaphragm may take so much that the supply holds the pressure at the seat.
     */
    private boolean lifts(Segment now) {
        Balance balance = now.balance();
        return now.modes().rule == PressureRegime.FREE
                && now.time() > 0
                && !hasTemperature()
                && Math.abs(aboveSeat(now.start())) < gap / 2
                && balance.pressureRate() > 0
                && balance.mainsRate() <= 0;
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
        for (int i = 0; i < count; i++) {
            into[i] += volume - law.volume(gasPressure(pressures[i]), gasTemperatures[i]);
        }
    }

    /** Pressure of the gas (Pa, absolute) beside some water (m3) in the vessel, for several of them and gas temperatures. */
    void putGasPressure(double[] water, double[] gasTemperatures, int count, double[] into) {
        for (int i = 0; i < count; i++) {
            into[i] = law.pressure(volume - water[i], gasTemperatures[i]);
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
     * How much of a step of pressure is taken before it moves the diaphragm: just so much that it does.
     *
     * @param before where the diaphragm is
     * @param y the state
     * @param step the step (Pa)
     */
    double reach(Diaphragm before, double[] y, double step) {
        Diaphragm stays = step > 0 ? Diaphragm.BOTTOMED_OUT : Diaphragm.SEATED;
        boolean seat = before == (step > 0 ? Diaphragm.SEATED : Diaphragm.FLOATING);
        if (before == stays || !seat && largestWater >= volume) {
            return step;
        }
        double beyond = Math.copySign(2 * gap, step) - (seat ? aboveSeat(y) : aboveLimit(y));
        return step > 0 ? Math.min(step, Math.max(0, beyond)) : Math.max(step, Math.min(0, beyond));
    }

    /** Pressure of the gas (Pa, absolute) when it is that of the system. */
    double gasPressure(double pressure) {
        return pressure - offset;
    }

    /** How fast the pressure of the gas rises with its temperature (Pa/K) in the volume it has in a state. */
    double perKelvin(double[] y) {
        return law.perKelvin(gasPressure(y[StateVector.PRESSURE]), y[gas]);
    }

    /** Water the vessel would hold if the diaphragm had neither seat nor limit (m3). */
    double freeWater(double pressure, double gasTemperature) {
        return volume - law.volume(gasPressure(pressure), gasTemperature);
    }

    /** System pressure (Pa, absolute) at which the vessel holds a volume of water (m3). */
    double pressureWith(double water, double gasTemperature) {
        return law.pressure(volume - water, gasTemperature) + offset;
    }
}

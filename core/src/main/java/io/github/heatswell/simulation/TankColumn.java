package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;

/**
 * The water of the tank as a column of zones, each fully mixed: one or more layers of equal shell volume. With zone mass
 * {@code m = rho V}, shell {@code V = V_n [1 + g (T - T_ref) + C (p - p_ref)]}, {@code a = g V_n/V} and {@code c = C V_n/V},
 * a zone with the flow j through its lower and k through its upper face (kg/s, upward) obeys
 *
 * <pre>
 *   m (a - beta) dT/dt + m (c + kappa) dp/dt = j - k
 *   m cp dT/dt = Q + V T beta dp/dt + max(j, 0) (h_below - h) + max(-k, 0) (h_above - h)
 * </pre>
 *
 * so that flows push the column as a plug and carry the enthalpy of the zone they come from. The outflow at the top is
 * given; zone by zone downwards every flow is then linear in dp/dt and in the flow of valves on top of the tank, and the
 * lowest flow comes from the cold branch.
 *
 * <p>Of a flow that would replace a zone's water within {@link #MIXING_TIME}, only the part that takes so long mixes
 * with it; the rest passes by with the heat it meets. What leaves in a steady state is the same.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class TankColumn {

    /**
     * Water does not mix with a zone in less than this (s). Without it, a litre flushed by litres a second would settle
     * within milliseconds, hour after hour. Own choice; common practice, no source.
     */
    static final double MIXING_TIME = 0.5;
    /** Water in a tank is denser (kg/m3) than this. */
    private static final double MIN_DENSITY = 900;
    /** Passes after which the flow directions are accepted. */
    private static final int MAX_PASSES = 60;

    private final CompiledSystem plant;
    private final LiquidWater water;

    private int zones;
    private final int[] from;
    private final int[] count;
    private final double[] share;
    private final double[] power;
    private final LiquidWater.State[] states;
    private final double[] temperature;
    private final double[] mass;
    private final double[] volume;
    private final double[] growth;
    private final double[] give;
    private final double[] heat;
    /** Heat (W) that passes the zone by, upwards. */
    private final double[] passing;
    /** Flow (kg/s) that even the smallest zone mixes with, whatever its water. */
    private final double mixesWith;

    private final boolean[] upward;
    private final Linear[] flow;
    private final Linear[] warming;
    private final double[] rates;
    private double lost;
    private double coldEnthalpy;
    private Modes modes;

    /** A quantity linear in the rate of pressure (Pa/s) and in the relief flow on top of the tank (kg/s). */
    static final class Linear {
        double constant;
        double byPressure;
        double byRelief;

        double at(double pressureRate, double topRelief) {
            return constant + byPressure * pressureRate + byRelief * topRelief;
        }

        void set(double constant, double byPressure, double byRelief) {
            this.constant = constant;
            this.byPressure = byPressure;
            this.byRelief = byRelief;
        }

        void add(double factor, Linear other) {
            set(
                    constant + factor * other.constant,
                    byPressure + factor * other.byPressure,
                    byRelief + factor * other.byRelief);
        }

        /** Becomes {@code scale (base + factor other + more dp/dt)}. */
        void setSum(Linear base, double factor, Linear other, double more, double scale) {
            set(
                    scale * (base.constant + factor * other.constant),
                    scale * (base.byPressure + factor * other.byPressure + more),
                    scale * (base.byRelief + factor * other.byRelief));
        }

        void scale(double factor) {
            set(constant * factor, byPressure * factor, byRelief * factor);
        }
    }

    TankColumn(CompiledSystem plant, LiquidWater water) {
        this.plant = plant;
        this.water = water;
        int layers = plant.layers;
        from = new int[layers];
        count = new int[layers];
        share = new double[layers];
        power = new double[layers];
        states = new LiquidWater.State[layers];
        temperature = new double[layers];
        mass = new double[layers];
        volume = new double[layers];
        growth = new double[layers];
        give = new double[layers];
        heat = new double[layers];
        passing = new double[layers];
        mixesWith = MIN_DENSITY * plant.tankVolume / layers / MIXING_TIME;
        upward = new boolean[layers];
        flow = new Linear[layers + 1];
        warming = new Linear[layers];
        rates = new double[layers];
        for (int i = 0; i < layers; i++) {
            states[i] = new LiquidWater.State();
            flow[i] = new Linear();
            warming[i] = new Linear();
        }
        flow[layers] = new Linear();
    }

    /**
     * Evaluates the zones for a state.
     *
     * @param y the state
     * @param vector where its parts stand
     * @param now the modes
     */
    void prepare(double[] y, StateVector vector, Modes now) {
        if (now != modes) {
            modes = now;
            formZones();
        }
        double p = y[StateVector.PRESSURE];
        lost = 0;
        for (int z = 0; z < zones; z++) {
            prepareZone(z, p, y[vector.lowest + from[z]]);
        }
        for (int z = 1; z < zones; z++) {
            double conducted = plant.conductance * (temperature[z] - temperature[z - 1]);
            heat[z] -= conducted;
            heat[z - 1] += conducted;
        }
    }

    private void formZones() {
        zones = 0;
        for (int layer = 0; layer < plant.layers; layer++) {
            if (layer > 0 && modes.joined(layer - 1)) {
                count[zones - 1]++;
            } else {
                from[zones] = layer;
                count[zones] = 1;
                zones++;
            }
        }
        for (int z = 0; z < zones; z++) {
            share[z] = (double) count[z] / plant.layers;
            power[z] = heating(from[z], from[z] + count[z]);
        }
    }

    private void prepareZone(int z, double p, double zoneTemperature) {
        LiquidWater.State state = states[z];
        water.evaluate(zoneTemperature, p, state);
        double size = shellSize(p, zoneTemperature);
        temperature[z] = zoneTemperature;
        volume[z] = plant.tankVolume * share[z] * size;
        mass[z] = state.density() * volume[z];
        double perSize = 1 / size;
        growth[z] = plant.shellGrowth * perSize - state.expansivity();
        give[z] = plant.shellCompliance * perSize + state.compressibility();
        double zoneLoss = plant.standingLoss * share[z] * (zoneTemperature - plant.roomTemperature);
        lost += zoneLoss;
        heat[z] = power[z] - zoneLoss;
    }

    /** Heat (W) from burners and elements into a range of layers, end exclusive. */
    private double heating(int first, int end) {
        double sum = 0;
        for (int i = 0; i < plant.sources.length; i++) {
            CompiledSystem.HeatSource source = plant.sources[i];
            if (source.layer >= first && source.layer < end && modes.isOn(i, plant)) {
                sum += source.output;
            }
        }
        return sum;
    }

    private double shellSize(double p, double zoneTemperature) {
        return 1
                + plant.shellGrowth * (zoneTemperature - plant.coldTemperature)
                + plant.shellCompliance * (p - plant.coldPressure);
    }

    /**
     * Finds the flow from the cold branch.
     *
     * @param drawn flow from the top to the taps (kg/s)
     * @param topRelief discharge of valves on top by their curves (kg/s), to estimate the directions
     * @param pressureRate rate of pressure (Pa/s), likewise
     * @param cold enthalpy of cold water (J/kg)
     * @return the flow into the lowest zone
     */
    Linear inflow(double drawn, double topRelief, double pressureRate, double cold) {
        coldEnthalpy = cold;
        letPass(drawn + topRelief);
        return solve(drawn, topRelief, pressureRate);
    }

    private Linear solve(double drawn, double topRelief, double pressureRate) {
        flow[zones].set(drawn, 0, 1);
        pass();
        for (int n = 0; n < MAX_PASSES && turnFlows(pressureRate, topRelief); n++) {
            pass();
        }
        return flow[0];
    }

    /** The flow into the lowest zone as last found. */
    Linear inflow() {
        return flow[0];
    }

    /** Works out what of a flow (kg/s) through the column passes each zone by. */
    private void letPass(double through) {
        if (through < mixesWith) {
            Arrays.fill(passing, 0, zones, 0);
            return;
        }
        double below = coldEnthalpy;
        double met = 0;
        for (int z = 0; z < zones; z++) {
            double mixing = mass[z] / MIXING_TIME;
            double h = states[z].enthalpy();
            met = through > mixing ? (1 - mixing / through) * (heat[z] + met + through * (below - h)) : 0;
            passing[z] = met;
            below = h;
        }
    }

    /** Sets the assumed directions to those of the flows; returns whether any changed. */
    private boolean turnFlows(double pressureRate, double topRelief) {
        boolean turned = false;
        for (int z = 0; z < zones; z++) {
            boolean up = flow[z].at(pressureRate, topRelief) > 0;
            turned |= up != upward[z];
            upward[z] = up;
        }
        return turned;
    }

    /** One pass down the column with the assumed directions. */
    private void pass() {
        for (int z = zones - 1; z >= 0; z--) {
            double cp = states[z].heatCapacity();
            double h = states[z].enthalpy();
            double capacity = mass[z] * cp;
            Linear above = flow[z + 1];
            Linear heating = warming[z];
            heating.set(
                    heat[z] + (z > 0 ? passing[z - 1] : 0) - passing[z],
                    volume[z] * temperature[z] * states[z].expansivity(),
                    0);
            if (z + 1 < zones && !upward[z + 1]) {
                heating.add(h - states[z + 1].enthalpy(), above);
            }
            double expansion = growth[z] / cp;
            double displaced = mass[z] * give[z];
            if (upward[z]) {
                double difference = enthalpyBelow(z) - h;
                flow[z].setSum(above, expansion, heating, displaced, 1 / (1 - expansion * difference));
                heating.add(difference, flow[z]);
            } else {
                flow[z].setSum(above, expansion, heating, displaced, 1);
            }
            heating.scale(1 / capacity);
        }
    }

    private double enthalpyBelow(int z) {
        return z == 0 ? coldEnthalpy : states[z - 1].enthalpy();
    }

    /**
     * Effect of an instantaneous pressure step.
     *
     * @param step by how much pressure changes (Pa)
     * @param overTop what leaves at the top meanwhile (kg)
     * @param cold enthalpy of cold water (J/kg)
     * @param into receives the temperature rise of each layer (K)
     * @param lowest where the lowest layer stands there
     * @return what flows into the lowest zone (kg)
     */
    double press(double step, double overTop, double cold, double[] into, int lowest) {
        Arrays.fill(heat, 0, zones, 0);
        Arrays.fill(passing, 0, zones, 0);
        Arrays.fill(upward, 0, zones, step > 0 || overTop > 0);
        coldEnthalpy = cold;
        double in = solve(overTop, 0, step).at(step, 0);
        fill(step, 0, into, lowest);
        return in;
    }

    /**
     * Whether the flows have the assumed directions; if not, they are reversed, and {@link #inflow} must be called
     * again.
     */
    boolean agrees(double pressureRate, double topRelief) {
        return !turnFlows(pressureRate, topRelief);
    }

    /** Writes the rates of the layers' temperatures (K/s). */
    void fill(double pressureRate, double topRelief, double[] into, int lowest) {
        for (int z = 0; z < zones; z++) {
            double rate = warming[z].at(pressureRate, topRelief);
            rates[z] = rate;
            for (int layer = from[z]; layer < from[z] + count[z]; layer++) {
                into[lowest + layer] = rate;
            }
        }
    }

    /** Growth rate (m3/s) of the shell volume, with the rates last filled. */
    double shellRate(double pressureRate) {
        double warmingOfAll = 0;
        for (int z = 0; z < zones; z++) {
            warmingOfAll += rates[z] * share[z];
        }
        return plant.tankVolume * (plant.shellGrowth * warmingOfAll + plant.shellCompliance * pressureRate);
    }

    /** Enthalpy (J/kg) of the hottest water. */
    double topEnthalpy() {
        return states[zones - 1].enthalpy();
    }

    /** Heat (W) that leaves the top beside the hottest water. */
    double passingTop() {
        return passing[zones - 1];
    }

    /** Density (kg/m3) of the hottest water. */
    double topDensity() {
        return states[zones - 1].density();
    }

    /** Temperature (K) of the hottest water. */
    double topTemperature() {
        return temperature[zones - 1];
    }

    /** Enthalpy (J/kg) of the coldest water. */
    double bottomEnthalpy() {
        return states[0].enthalpy();
    }

    /** Standing loss (W). */
    double lost() {
        return lost;
    }

    /** Mass of the water (kg). */
    double mass() {
        double sum = 0;
        for (int z = 0; z < zones; z++) {
            sum += mass[z];
        }
        return sum;
    }

    /** Energy of the water (J), with enthalpies counted from that given (J/kg). */
    double energy(double reference) {
        double sum = 0;
        for (int z = 0; z < zones; z++) {
            sum += mass[z] * (states[z].internalEnergy() - reference);
        }
        return sum;
    }

    /** Heat capacity (J/K) of one layer's water in the zone of that layer. */
    double capacity(int layer) {
        int z = zoneOf(layer);
        return mass[z] * states[z].heatCapacity() / count[z];
    }

    private int zoneOf(int layer) {
        int z = 0;
        while (from[z] + count[z] <= layer) {
            z++;
        }
        return z;
    }

    /** Fraction of a layer's water replaced per second by the flow through its lower face (1/s). */
    double turnover(int layer, double pressureRate, double topRelief) {
        int z = zoneOf(layer);
        return Math.abs(flow[z].at(pressureRate, topRelief)) * count[z] / mass[z];
    }

    /**
     * Rate (K/s) at which the lower part of a zone would overtake its upper part in temperature if unmixed. Standing
     * loss and compression work are the same for every layer of a zone.
     *
     * @param layer the highest layer of the lower part
     * @param pressureRate rate of pressure (Pa/s)
     * @param topRelief what valves on top discharge (kg/s)
     */
    double inversionTendency(int layer, double pressureRate, double topRelief) {
        int z = zoneOf(layer);
        int split = layer + 1;
        int end = from[z] + count[z];
        double lower = heating(from[z], split)
                + Math.max(flow[z].at(pressureRate, topRelief), 0) * (enthalpyBelow(z) - states[z].enthalpy());
        double upper = heating(split, end);
        if (z > 0) {
            lower += plant.conductance * (temperature[z - 1] - temperature[z]);
        }
        if (z + 1 < zones) {
            upper += plant.conductance * (temperature[z + 1] - temperature[z])
                    - Math.min(flow[z + 1].at(pressureRate, topRelief), 0)
                            * (states[z + 1].enthalpy() - states[z].enthalpy());
        }
        return (lower / (split - from[z]) - upper / (end - split)) / capacity(layer);
    }
}

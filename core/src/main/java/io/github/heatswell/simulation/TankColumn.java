package io.github.heatswell.simulation;

import io.github.heatswell.water.LiquidWater;
import java.util.Arrays;

/**
 * The water of the tank as a column of zones, each fully mixed: one or more layers. With zone
 * mass {@code m = rho V}, shell {@code V = V_n [1 + g (T - T_ref) + C (p - p_ref)]}, {@code a = g V_n/V} and
 * {@code c = C V_n/V}, a zone with the flow j through its lower and k through its upper face (kg/s, upward) obeys
 *
 * <pre>
 *   m (a - beta) dT/dt + m (c + kappa) dp/dt = j - k
 *   m cp dT/dt = Q + V T beta dp/dt + max(j, 0) (h_below - h) + max(-k, 0) (h_above - h)
 * </pre>
 *
 * so that flows push the column as a plug and carry the enthalpy of the zone they come from. The outflow at the top is
 * given; zone by zone downwards every flow is then linear in dp/dt and in the flow of valves on top of the tank, and
 * the lowest flow comes from the cold branch.
 *
 * <p>A layer that takes in water mixes with it, and a front of cold water would spread. So the faces move with the water that a tap
 * takes ({@link Restacking}), and j and k are what flows relative to them. The highest layer shrinks by what the tap takes, the
 * lowest one grows by as much and takes that in on top of its j. After a draw, water expands by what it would below a sharp
 * front, within half a per cent from five layers on ({@code FrontTest}). Expansion, what a pump circulates, and what valves on top release pass through
 * the faces and mix as they go. Under a pocket of air, and between fewer than five layers, the faces stand still, and all flows do.
 *
 * <p>Real inlets mix water, by the part of the tank that {@link io.github.heatswell.system.Tank#inletMixing} states: the jet
 * carries the inflow evenly into that height, whatever layers stand there. Layers that are alike so stay alike, as in a stirred vessel. What enters a
 * higher layer does not come through those below, so each flow is linear in the whole inflow too, which the lowest flow gives.
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

    private final AirPocket air;
    private final HotPipes pipes;
    private int zones;
    private final Zone[] zone;
    /** Flow (kg/s) that even the smallest zone mixes with, whatever its water. */
    private final double mixesWith;

    private final boolean[] upward;
    private final Linear[] flow;
    private final Linear[] warming;
    private final Linear onwards = new Linear();
    /** What flows into the tank from the cold branch (kg/s). */
    private final Linear inflow = new Linear();
    /** Whether the jet carries inflow beyond the lowest layer. */
    private final boolean jet;

    private final double[] rates;
    private double lost;
    private double coldEnthalpy;
    private double offTop;
    private final Layering layering;
    /** What the moving boundaries carry along at the top and at the bottom (kg/s). */
    private double movedOff;

    private double movedIn;
    private double phaseRate;
    private double through;
    private double pressureRate;
    private double topRelief;
    private Modes modes;
    /** The state prepared for, as far as heat sources ask it. */
    private final double[] at;

    /**
     * A quantity linear in the rate of pressure (Pa/s) and in the relief flow on top of the tank (kg/s), and, until that is known,
     * in the inflow (kg/s).
     */
    static final class Linear {
        double constant;
        double byPressure;
        double byRelief;
        private double byInflow;

        double at(double pressureRate, double topRelief) {
            return constant + byPressure * pressureRate + byRelief * topRelief;
        }

        void set(double constant, double byPressure, double byRelief) {
            this.constant = constant;
            this.byPressure = byPressure;
            this.byRelief = byRelief;
            byInflow = 0;
        }

        void add(double factor, Linear other) {
            double inflow = byInflow + factor * other.byInflow;
            set(
                    constant + factor * other.constant,
                    byPressure + factor * other.byPressure,
                    byRelief + factor * other.byRelief);
            byInflow = inflow;
        }

        /** Becomes {@code scale (base + factor other + more dp/dt)}. */
        void setSum(Linear base, double factor, Linear other, double more, double scale) {
            double inflow = scale * (base.byInflow + factor * other.byInflow);
            set(
                    scale * (base.constant + factor * other.constant),
                    scale * (base.byPressure + factor * other.byPressure + more),
                    scale * (base.byRelief + factor * other.byRelief));
            byInflow = inflow;
        }

        /** Becomes what it is with the inflow known. */
        void know(Linear inflow) {
            double by = byInflow;
            byInflow = 0;
            add(by, inflow);
        }

        void scale(double factor) {
            double inflow = byInflow * factor;
            set(constant * factor, byPressure * factor, byRelief * factor);
            byInflow = inflow;
        }
    }

    TankColumn(CompiledSystem plant, LiquidWater water) {
        this.plant = plant;
        this.water = water;
        int layers = plant.layers;
        at = new double[plant.vector.length];
        layering = new Layering(plant);
        air = plant.air();
        pipes = new HotPipes(plant);
        zone = new Zone[layers];
        mixesWith = MIN_DENSITY * plant.tankVolume / layers / MIXING_TIME;
        jet = plant.inletReach > 1;
        upward = new boolean[layers];
        flow = new Linear[layers + 1];
        warming = new Linear[layers];
        rates = new double[layers];
        for (int i = 0; i < layers; i++) {
            zone[i] = new Zone(plant, air);
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
        if (plant.heat.varies()) {
            System.arraycopy(y, 0, at, 0, y.length);
        }
        boolean divided = vector.phase >= 0;
        if (divided) {
            layering.set(y[vector.phase], now.raised);
        }
        boolean other = modes == null || !now.sameTank(modes);
        modes = now;
        if (other) {
            formZones();
        } else if (divided || plant.heat.varies()) {
            fillZones();
        }
        double p = y[StateVector.PRESSURE];
        lost = 0;
        for (int z = 0; z < zones; z++) {
            zone[z].prepare(water, p, y[vector.lowest + zone[z].first]);
            lost += zone[z].loss;
        }
        for (int z = 1; z < zones; z++) {
            zone[z - 1].conduct(zone[z]);
        }
        if (!pipes.isEmpty()) {
            pipes.prepare(water, p, y);
            lost += pipes.lost();
        }
    }

    private void formZones() {
        zones = 0;
        for (int layer = 0; layer < plant.layers; layer++) {
            if (layer > 0 && modes.joined(layer - 1)) {
                zone[zones - 1].count++;
            } else {
                zone[zones++].beginAt(layer);
            }
        }
        fillZones();
    }

    /** Sets how thick each zone is, and what the heat sources and the jet give it. */
    private void fillZones() {
        for (int z = 0; z < zones; z++) {
            Zone here = zone[z];
            here.thickness = layering.thickness(here.first, here.end());
            here.share = here.thickness / plant.layers;
            here.inletShare = layering.inletShare(here.first, here.end());
            here.power = plant.heat.output(modes, at, here.first, here.end(), layering);
        }
    }

    /**
     * Finds the flow from the cold branch.
     *
     * @param drawn flow from the top to the taps (kg/s)
     * @param topRelief discharge of valves on top by their curves (kg/s), to estimate the directions
     * @param pressureRate rate of pressure (Pa/s), likewise
     * @param cold enthalpy of cold water (J/kg)
     * @return the flow into the tank
     */
    Linear inflow(double drawn, double topRelief, double pressureRate, double cold) {
        coldEnthalpy = cold;
        move(modes.moving ? pipes.drawn() : 0);
        letPass(drawn + topRelief - movedOff);
        return solve(drawn, topRelief, pressureRate);
    }

    /** Lets the boundaries move with what a tap takes (kg/s). */
    private void move(double drawn) {
        movedOff = drawn;
        if (drawn == 0) {
            movedIn = 0;
            phaseRate = 0;
            return;
        }
        Zone top = zone[zones - 1];
        Zone bottom = zone[0];
        double perSize = top.state.density() * top.size;
        movedIn = drawn * (bottom.state.density() * bottom.size) / perSize;
        phaseRate = drawn / (perSize * plant.tankVolume / plant.layers);
    }

    private Linear solve(double drawn, double topRelief, double pressureRate) {
        offTop = drawn - movedOff;
        flow[zones].set(offTop, 0, 1);
        pass();
        for (int n = 0; n < MAX_PASSES && turnFlows(pressureRate, topRelief); n++) {
            pass();
        }
        return inflow;
    }

    /** The flow into the tank as last found. */
    Linear inflow() {
        return inflow;
    }

    /** Works out what of a flow (kg/s) through the column passes each zone by. */
    private void letPass(double over) {
        through = over;
        if (through < mixesWith) {
            nothingPasses();
            return;
        }
        double below = coldEnthalpy;
        double met = 0;
        double rising = 0;
        for (int z = 0; z < zones; z++) {
            double mixing = zone[z].mass / MIXING_TIME;
            double h = zone[z].enthalpy();
            double entering = through * zone[z].inletShare;
            double carried = rising * (below - h) + entering * (coldEnthalpy - h);
            rising += entering;
            met = rising > mixing ? (1 - mixing / rising) * (zone[z].heat + met + carried) : 0;
            zone[z].passing = met;
            below = h;
        }
    }

    private void nothingPasses() {
        for (int z = 0; z < zones; z++) {
            zone[z].passing = 0;
        }
    }

    /** Sets the assumed directions to those of the flows; returns whether any changed. */
    private boolean turnFlows(double pressureRate, double topRelief) {
        boolean turned = !pipes.isEmpty() && pipes.turnFlows(pressureRate);
        for (int z = 0; z < zones; z++) {
            boolean up = (z == 0 ? inflow : flow[z]).at(pressureRate, topRelief) > 0;
            turned |= up != upward[z];
            upward[z] = up;
        }
        return turned;
    }

    /** One pass down the column with the assumed directions. */
    private void pass() {
        if (!pipes.isEmpty()) {
            passPipes();
        }
        for (int z = zones - 1; z >= 0; z--) {
            Zone here = zone[z];
            double cp = here.state.heatCapacity();
            double h = here.enthalpy();
            double capacity = here.mass * cp;
            Linear above = flow[z + 1];
            Linear heating = warming[z];
            heating.set(
                    here.heat + (z > 0 ? zone[z - 1].passing : 0) - here.passing,
                    here.volume * here.temperature * here.state.expansivity(),
                    0);
            if (z + 1 < zones && !upward[z + 1]) {
                heating.add(h - zone[z + 1].enthalpy(), above);
            } else if (z + 1 == zones && pipes.returns()) {
                heating.add(h - pipes.nearEnthalpy(), pipes.flow());
                heating.constant += pipes.circulating() * (h - pipes.nearEnthalpy()) + pipes.passingBack();
            }
            double returned = returned(here.first, here.end());
            double carried = z > 0 && upward[0] ? here.inletShare : 0;
            if (returned > 0 || carried > 0) {
                heating.constant += returned > 0 ? returned * (pipes.nearEnthalpy() - h) : 0;
                heating.byInflow += carried * (coldEnthalpy - h);
                onwards.set(above.constant - returned, above.byPressure, above.byRelief);
                onwards.byInflow = above.byInflow - carried;
                above = onwards;
            }
            if (z == 0 && movedIn > 0) {
                onwards.setSum(above, 0, heating, 0, 1);
                onwards.constant += movedIn;
                above = onwards;
            }
            double expansion = here.growth / cp;
            double displaced = here.mass * here.give;
            if (upward[z]) {
                double difference = enthalpyBelow(z) - h;
                flow[z].setSum(above, expansion, heating, displaced, 1 / (1 - expansion * difference));
                heating.add(difference, flow[z]);
            } else {
                flow[z].setSum(above, expansion, heating, displaced, 1);
            }
            heating.scale(1 / capacity);
        }
        inflow.set(flow[0].constant, flow[0].byPressure, flow[0].byRelief);
        if (jet && upward[0]) {
            inflow.scale(1 / (zone[0].inletShare - flow[0].byInflow));
            for (int z = 0; z < zones; z++) {
                flow[z].know(inflow);
                warming[z].know(inflow);
            }
        }
    }

    /** What of the circulating water (kg/s) returns into a range of layers. */
    private double returned(int first, int end) {
        double circulating = pipes.circulating();
        return circulating > 0 && layering.holds(plant.returnLayer, first, end) ? circulating : 0;
    }

    /**
     * What is left (-) until cold water that enters the top zone would make as much room as it takes, because it condenses
     * vapour in the air there: the air then collapses at once.
     */
    double untilCollapse() {
        Zone top = zone[zones - 1];
        double entering = top.inletShare > 0 ? coldEnthalpy : enthalpyBelow(zones - 1);
        return 1 - top.growth / top.state.heatCapacity() * (entering - top.enthalpy());
    }

    /** What the hot pipes take leaves the top in place of what the tap takes from them. */
    private void passPipes() {
        double beside = passingTop() == 0 ? 0 : passingTop() * pipes.drawn() / through;
        Linear taken = pipes.pass(topEnthalpy(), beside);
        flow[zones].set(offTop - pipes.drawn() + taken.constant + pipes.circulating(), taken.byPressure, 1);
    }

    private double enthalpyBelow(int z) {
        return z == 0 ? coldEnthalpy : zone[z - 1].enthalpy();
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
        for (int z = 0; z < zones; z++) {
            zone[z].heat = 0;
        }
        move(0);
        pipes.still();
        nothingPasses();
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

    /** Writes the rates of the layers' temperatures (K/s), and takes them and the flows as those that hold. */
    void fill(double pressureRate, double topRelief, double[] into, int lowest) {
        this.pressureRate = pressureRate;
        this.topRelief = topRelief;
        for (int z = 0; z < zones; z++) {
            double rate = warming[z].at(pressureRate, topRelief);
            rates[z] = rate;
            for (int layer = zone[z].first; layer < zone[z].end(); layer++) {
                into[lowest + layer] = rate;
            }
        }
        if (plant.vector.phase >= 0) {
            into[plant.vector.phase] = phaseRate;
        }
        pipes.fill(pressureRate, into);
    }

    /** The water of the hot pipes. */
    HotPipes pipes() {
        return pipes;
    }

    /** Sets what the tap takes (kg/s), of what leaves the top. */
    void draw(double drawn) {
        pipes.draw(drawn);
    }

    /** Growth rate (m3/s) of the room for water, that of the shell less the air, with the rates last filled. */
    double roomRate(double pressureRate) {
        double warmingOfAll = 0;
        for (int z = 0; z < zones; z++) {
            warmingOfAll += rates[z] * zone[z].share;
        }
        double passedOn = phaseRate == 0 ? 0 : phaseRate * (zone[0].size - zone[zones - 1].size) / plant.layers;
        double shell =
                plant.tankVolume * (passedOn + plant.shellGrowth * warmingOfAll + plant.shellCompliance * pressureRate);
        double room =
                air.isEmpty() ? shell : shell - air.byTemperature * rates[zones - 1] - air.byPressure * pressureRate;
        return pipes.isEmpty() ? room : room + pipes.roomRate(pressureRate);
    }

    /** Enthalpy (J/kg) of the hottest water. */
    double topEnthalpy() {
        return zone[zones - 1].enthalpy();
    }

    /** Heat (W) that leaves the top beside the hottest water. */
    double passingTop() {
        return zone[zones - 1].passing;
    }

    /** Heat (W), with enthalpies counted from that given (J/kg), that leaves tank and hot pipes with a flow (kg/s), taps included. */
    double heatOut(double leaving, double reference) {
        if (pipes.isEmpty()) {
            return leaving * (topEnthalpy() - reference);
        }
        double off = leaving - pipes.drawn();
        return off * (topEnthalpy() - reference)
                + (passingTop() == 0 ? 0 : passingTop() * off / through)
                + pipes.tapHeat(reference);
    }

    /** Temperature (K) of the water at the tap. */
    double tapTemperature() {
        return pipes.isEmpty() ? topTemperature() : pipes.tapTemperature();
    }

    /** Density (kg/m3) of the water at the tap. */
    double tapDensity() {
        return pipes.isEmpty() ? topDensity() : pipes.tapDensity();
    }

    /** Density (kg/m3) of the hottest water. */
    double topDensity() {
        return zone[zones - 1].state.density();
    }

    /** Temperature (K) of the hottest water. */
    double topTemperature() {
        return zone[zones - 1].temperature;
    }

    /** Enthalpy (J/kg) of the coldest water. */
    double bottomEnthalpy() {
        return zone[0].enthalpy();
    }

    /** Heat loss (W) of the tank and of hot pipes. */
    double lost() {
        return lost;
    }

    /** Mass of the water (kg), that of hot pipes included. */
    double mass() {
        double sum = pipes.mass();
        for (int z = 0; z < zones; z++) {
            sum += zone[z].mass;
        }
        return sum;
    }

    /** Energy of the water (J), that of hot pipes included, with enthalpies counted from that given (J/kg). */
    double energy(double reference) {
        double sum = pipes.energy(reference);
        for (int z = 0; z < zones; z++) {
            sum += zone[z].energy(reference);
        }
        return sum;
    }

    /** Heat capacity (J/K) of a layer's water. */
    double capacity(int layer) {
        return zone[zoneOf(layer)].layerCapacity() * layering.thickness(layer, layer + 1);
    }

    private int zoneOf(int layer) {
        int z = 0;
        while (zone[z].end() <= layer) {
            z++;
        }
        return z;
    }

    /** Fraction of a layer's water replaced per second by the flow through its lower face and by the jet (1/s), as last filled. */
    double turnover(int layer) {
        int z = zoneOf(layer);
        double carried = z == 0 ? 0 : zone[z].inletShare * Math.max(inflow.at(pressureRate, topRelief), 0);
        double through = flow[z].at(pressureRate, topRelief) - (z == 0 ? movedIn : 0);
        return (Math.abs(through) + carried) * zone[z].count / zone[z].mass;
    }

    /**
     * Rate (K/s) at which the lower part of a zone would overtake its upper part in temperature if unmixed, with the
     * rates last filled. Compression work is the same for every layer of a zone, and standing loss but under air, where
     * the upper part holds less water than its share of the tank.
     *
     * @param layer the highest layer of the lower part
     */
    double inversionTendency(int layer) {
        int z = zoneOf(layer);
        Zone here = zone[z];
        int split = layer + 1;
        double cooled = Math.max(inflow.at(pressureRate, topRelief), 0) * (coldEnthalpy - here.enthalpy());
        double lower = plant.heat.output(modes, at, here.first, split, layering)
                + layering.inletShare(here.first, split) * cooled;
        double upper = plant.heat.output(modes, at, split, here.end(), layering)
                + layering.inletShare(split, here.end()) * cooled;
        if (z > 0) {
            lower += Math.max(flow[z].at(pressureRate, topRelief), 0) * (enthalpyBelow(z) - here.enthalpy());
            lower += plant.conductance * (zone[z - 1].temperature - here.temperature);
        }
        if (z + 1 < zones) {
            upper += plant.conductance * (zone[z + 1].temperature - here.temperature)
                    - Math.min(flow[z + 1].at(pressureRate, topRelief), 0) * (zone[z + 1].enthalpy() - here.enthalpy());
        } else if (pipes.returns()) {
            upper += (pipes.flow().at(pressureRate, topRelief) + pipes.circulating())
                            * (here.enthalpy() - pipes.nearEnthalpy())
                    + pipes.passingBack();
        }
        if (pipes.circulating() > 0) {
            double warmer = pipes.nearEnthalpy() - here.enthalpy();
            lower += returned(here.first, split) * warmer;
            upper += returned(split, here.end()) * warmer;
        }
        if (!here.hasAir()) {
            return (lower / layering.thickness(here.first, split) - upper / layering.thickness(split, here.end()))
                    / here.layerCapacity();
        }
        double below = (double) (split - here.first) / here.count;
        double full = (here.mass + here.state.density() * air.volume) * here.state.heatCapacity();
        double left = here.mass * here.state.heatCapacity() - below * full;
        return (lower - below * here.loss) / (below * full) - (upper - (1 - below) * here.loss) / left;
    }
}

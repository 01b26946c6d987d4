package io.github.heatswell.reference;

import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.water.LiquidWater;
import java.util.List;
import java.util.stream.Stream;

/**
 * The tank as a stack of layers of equal shell volume, each with its own mass, energy, temperature and pressure. Water
 * flows between neighbours through the same conductance as everywhere, with the enthalpy of where it comes from; heat is
 * conducted; and where warmer water lies below colder, a large finite conductance lets them exchange heat.
 *
 * <p>Above the top there may hang pipes full of hot water, one behind the other, each with one temperature: they exchange water with their
 * neighbours as layers do, but heat with the room alone.
 *
 * <p>A pump carries water from the first of them back into a layer, and as much to it from the highest layer, less what the water in it
 * expands by: in one pipe nothing flows against the pump.
 *
 * <p>The exchange is a smooth function, so that it needs no mode: it dies out within a tenth of a millikelvin.
 */
final class Column {

    /** What flows (W) between layers of one temperature, because the beginning of the exchange is smeared. */
    private static final double SMEARED = 200;
    /** Effective vertical conductivity of water, wall and fittings (W/(m K)). */
    private static final double CONDUCTIVITY = 1.2;

    /** Fewer layers stand still. */
    private static final int FEWEST_MOVING = 5;

    private final TankWater[] layers;
    private final int count;
    private final double[] lossOf;
    private final double pumped;
    private final int returnLayer;
    private final boolean pumpedAtStart;
    private final Conductances conductances;
    private final double conduction;
    private final double reached;
    private final double room;
    private final boolean moves;
    private double phase = 1;
    private double lost;
    private double work;

    /**
     * The tank of a system at its cold fill.
     *
     * @param system the system
     * @param water the properties of the water
     * @param conductances of the tank, which hold between neighbouring layers too
     */
    Column(HotWaterSystem system, LiquidWater water, Conductances conductances) {
        this.conductances = conductances;
        count = system.tank().layers();
        double fillPressure = system.supplyAtStart().absolute(system.site().atmosphere());
        List<List<PipeRun>> pipes = hotPipes(system);
        pumped = system.circulation().map(Circulation::flow).orElse(0.0);
        returnLayer = (int)
                (count * system.circulation().map(Circulation::returnHeight).orElse(0.0));
        pumpedAtStart = system.circulation()
                .filter(loop -> loop.runs(system.start().timeOfDay()))
                .isPresent();
        layers = new TankWater[count + pipes.size()];
        lossOf = new double[layers.length];
        for (int i = 0; i < count; i++) {
            layers[i] = new TankWater(system.tank(), water, system.coldAtStart(), fillPressure);
            lossOf[i] = system.tank().standingLoss() / count;
        }
        for (int i = 0; i < pipes.size(); i++) {
            List<PipeRun> runs = pipes.get(i);
            double volume = runs.stream().mapToDouble(PipeRun::volume).sum();
            double growth = runs.stream()
                            .mapToDouble(r -> 3 * r.material().linearExpansion() * r.volume())
                            .sum()
                    / volume;
            double give =
                    runs.stream().mapToDouble(r -> r.compliance() * r.volume()).sum() / volume;
            layers[count + i] = new TankWater(volume, growth, give, water, system.coldAtStart(), fillPressure);
            lossOf[count + i] = runs.stream().mapToDouble(PipeRun::heatLoss).sum();
        }
        system.tank().air().ifPresent(layers[count - 1]::holdAir);
        double height = system.tank().height().orElse(1);
        conduction = CONDUCTIVITY * (system.tank().volume() / height) / (height / count);
        reached = Math.max(1, system.tank().inletMixing() * count);
        moves = count >= FEWEST_MOVING && system.tank().air().isEmpty();
        room = system.site().roomTemperature();
    }

    /** The runs of pipe that carry hot water, on the way from the tank to the taps: those of a loop, and those of a branch. */
    private static List<List<PipeRun>> hotPipes(HotWaterSystem system) {
        return Stream.of(PipeRun.Carries.LOOP, PipeRun.Carries.HOT)
                .map(what -> system.piping().stream()
                        .filter(pipe -> pipe.carries() == what)
                        .toList())
                .filter(runs -> !runs.isEmpty())
                .toList();
    }

    /** {@return whether what is there begins as warm as the tank: its layers, and a loop whose pump runs} */
    boolean startsAsTheTank(int place) {
        return place < count || place == count && pumpedAtStart;
    }

    /** {@return what part (-) of cold inflow the jet carries into a layer: evenly into the height that it reaches} */
    double inletShare(int layer) {
        if (reached == 1) {
            return layer == 0 ? 1 : 0;
        }
        double lower = layer == 0 ? 0 : layer - 1 + phase;
        double upper = layer == count - 1 ? count : layer + phase;
        return Math.max(0, Math.min(upper, reached) - lower) / reached;
    }

    /** {@return how many layers the tank has} */
    int count() {
        return count;
    }

    /** {@return how many layers and hot pipes there are, one above the other} */
    int waters() {
        return layers.length;
    }

    /** {@return whether its boundaries may move, so that the thickness of the lowest layer is part of the state} */
    boolean moves() {
        return moves;
    }

    /** {@return where the thickness of the lowest layer, in even layers (-), stands in the state} */
    int phaseIndex() {
        return massIndex(layers.length);
    }

    /** {@return how thick a layer of the state settled last is, in even layers (-)} */
    private double thickness(int layer) {
        return layer == 0 && moves ? phase : layer == count - 1 ? 2 - phase : 1;
    }

    /** {@return the layer in which the middle of an even part of the tank stands; the lowest part reaches down to its bottom} */
    int layerAt(int part, Mode mode) {
        return mode.stack().raised() && part > 0 && part < count - 1 ? part + 1 : part;
    }

    /** {@return where the mass of a layer stands in the state; its energy follows} */
    static int massIndex(int layer) {
        return layer == 0 ? UnreducedSystem.TANK_MASS : UnreducedSystem.UPPER_LAYERS + 2 * (layer - 1);
    }

    TankWater layer(int number) {
        return layers[number];
    }

    /** {@return the temperature (K) of the layer that begins at a part of the tank's height, or holds it} */
    double atShare(double share) {
        return layers[Math.min(count - 1, (int) (share * count))].temperature();
    }

    TankWater bottom() {
        return layers[0];
    }

    /** {@return what is left (-) until steam forms or takes over the air, with water of an enthalpy (J/kg) under the tank} */
    double untilSteam(double cold) {
        return layers[count - 1].untilSteam(count == 1 ? cold : layers[count - 2].enthalpy());
    }

    TankWater top() {
        return layers[count - 1];
    }

    /** {@return the water that a tap takes} */
    TankWater tap() {
        return layers[layers.length - 1];
    }

    /** {@return the pressure difference (Pa) that would drive what flows up through a boundary, for the state settled last} */
    double excess(int boundary, Mode mode) {
        double pumping = boundary + 1 == count ? circulating(mode) / conductances.tank() : 0;
        return layers[boundary].pressure() - layers[boundary + 1].pressure() + pumping;
    }

    /** What the pump carries (kg/s). */
    private double circulating(Mode mode) {
        return mode.day().pumping() ? pumped * layers[count].density() : 0;
    }

    /** Sets how thick the layers are in a state. */
    void divide(double[] y) {
        phase = y[phaseIndex()];
        layers[0].thick(phase);
        layers[count - 1].thick(2 - phase);
    }

    /** Finds temperatures and pressures in a state. */
    void settle(double[] y) {
        if (moves) {
            divide(y);
        }
        for (int i = 0; i < layers.length; i++) {
            layers[i].settle(y[massIndex(i)], y[massIndex(i) + 1]);
        }
    }

    /** {@return the mean temperature (K) of the lowest even part of the tank} */
    double lowestPart() {
        double part = count == 1 ? 1 : Math.min(1, phase);
        return part * layers[0].temperature() + (1 - part) * layers[Math.min(1, count - 1)].temperature();
    }

    /** {@return the mean temperature (K)} */
    double meanTemperature() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += thickness(i) * layers[i].temperature();
        }
        return sum / count;
    }

    /**
     * Computes the rates of all masses and energies for the state settled last.
     *
     * @param y the state
     * @param mode which way water moves between the layers
     * @param drawn what the tap takes (kg/s)
     * @param massGains the mass flow (kg/s) into each layer from outside the tank, changed into the whole
     * @param energyGains the power (W) into each layer from outside, standing loss left out, changed into the whole
     * @param rates where the rates go
     */
    void rates(double[] y, Mode mode, double drawn, double[] massGains, double[] energyGains, double[] rates) {
        double moved = mode.stack().moving() ? top().thicknessOf(drawn) : 0;
        if (moves) {
            rates[phaseIndex()] = moved;
        }
        double circulating = circulating(mode);
        if (circulating > 0) {
            int returned = layerAt(returnLayer, mode);
            massGains[count] -= circulating;
            massGains[returned] += circulating;
            energyGains[count] -= circulating * layers[count].enthalpy();
            energyGains[returned] += circulating * layers[count].enthalpy();
        }
        for (int i = 0; i + 1 < layers.length; i++) {
            TankWater below = layers[i];
            TankWater above = layers[i + 1];
            double up = conductances.tank() * excess(i, mode);
            double carried = up * (mode.rises(i) ? below : above).enthalpy();
            double warmer = below.temperature() - above.temperature();
            double upward = i + 1 < count
                    ? carried + conduction * Math.min(1, thickness(i)) * warmer + exchange(warmer)
                    : carried;
            massGains[i] -= up;
            massGains[i + 1] += up;
            energyGains[i] -= upward;
            energyGains[i + 1] += upward;
        }
        lost = 0;
        work = 0;
        for (int i = 0; i < layers.length; i++) {
            int at = massIndex(i);
            double loss = lossOf[i] * (i < count ? thickness(i) : 1) * (layers[i].temperature() - room);
            double thickening = i == 0 ? moved : i == count - 1 ? -moved : 0;
            double pushed = layers[i].work(y[at], massGains[i], energyGains[i] - loss, thickening);
            rates[at] = massGains[i];
            rates[at + 1] = energyGains[i] - loss - pushed;
            lost += loss;
            work += pushed;
        }
    }

    /** What mixing carries up (W): the larger one of x and 0, softened, but exponentially close to it a few widths away. */
    private double exchange(double x) {
        double width = SMEARED / conductances.mixing();
        return conductances.mixing() * (Math.max(x, 0) + width * Math.log1p(Math.exp(-Math.abs(x / width))));
    }

    /** {@return the standing loss (W) found last} */
    double lost() {
        return lost;
    }

    /** {@return the power (W) spent on the shell found last} */
    double work() {
        return work;
    }
}

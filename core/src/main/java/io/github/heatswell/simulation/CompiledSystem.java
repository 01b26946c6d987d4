package io.github.heatswell.simulation;

import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Tank;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.If97Region1;
import io.github.heatswell.water.LiquidWater;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A description compiled into the numbers the equations need, with absolute pressures at drain-cock height, and into its
 * {@link Device devices}. All in SI units; made once per run.
 */
final class CompiledSystem {

    /**
     * Effective vertical conductivity of a full tank (W/(m K)): 0.6 for the water and about as much again for its steel
     * wall. Own estimate; common practice, no source.
     */
    private static final double CONDUCTIVITY = 1.2;

    /**
     * The thinnest layer (m3) that is resolved. Layers are a numerical device; mixing at a tank's inlet and outlet
     * involves more than a glass of water, and thinner layers would be flushed within a second. Own choice; common
     * practice, no source.
     */
    private static final double MIN_LAYER = 0.5e-3;
    /**
     * Nor is a layer thinner (m3) for each watt of the strongest burner or element, which would warm it by more than five kelvins
     * a second: water heated so fast turns over by its own buoyancy. Of 190 L heated by 10 kW, a fiftieth is seven times as
     * much. Own choice; common practice, no source.
     */
    private static final double MIN_LAYER_PER_WATT = 0.05e-3 / 1e3;

    /**
     * Fewer layers (-) stand still: to set their boundaries anew would mix an eighth of the tank and more. Own choice.
     */
    private static final int MIN_MOVING = 5;

    final double atmosphere;
    final double roomTemperature;

    final double tankVolume;
    final int layers;
    final double shellCompliance;
    final double shellGrowth;
    final double standingLoss;
    /** Conductance (W/K) from one layer to the next. */
    final double conductance;

    /** Whether the boundaries between layers may move with the water. */
    final boolean moves;
    /** How far up (even layers) the jet of water that flows in from the branch mixes; the lowest layer takes all if it is no more than one. */
    final double inletReach;

    final double workingPressure;
    final double testPressure;
    /** Whether the run goes on beyond the test pressure, */
    final boolean textbook;
    /** for which the water is that of a formulation that knows such pressures. */
    final LiquidWater water;
    /** Pressure (Pa, absolute) and temperature (K) of the cold fill, to which the volume of the tank refers. */
    final double coldPressure;

    final double coldTemperature;
    final double coldDensity;

    /** All devices: of simultaneous events, the first one's is taken. */
    final Device<?>[] devices;
    /** Those with a temperature of their own that changes. */
    final Device<?>[] warming;
    /** Where the parts of the state stand. */
    final StateVector vector;

    final HeatSources heat;
    final SupplyBoundary feed;
    final Tap tap;
    final Valve[] valves;
    final boolean anySeatLeaks;
    /** The vessels that take water. */
    final GasCushion[] vessels;
    /** How many vessels are described, in whatever condition. */
    final int describedVessels;
    /** The hot pipes, from the tank to the tap: the loop, if any, and the branch. */
    final HotPipe[] hotPipes;

    private final boolean looped;
    /** The layer into which a circulation loop returns. */
    final int returnLayer;

    /** Air under the top of the tank: its amount times the gas constant (J/K). */
    private final double airGas;

    final double gaugeOffset;
    final double startPressure;
    final double startTemperature;

    CompiledSystem(HotWaterSystem system) {
        this(system, SupplyBoundary.SERVICE_LINE);
    }

    /**
     * Compiles a house behind a service line of its own.
     *
     * @param system the house
     * @param serviceLine flow resistance of the line (Pa s/m3)
     */
    CompiledSystem(HotWaterSystem system, double serviceLine) {
        atmosphere = system.site().atmosphere();
        roomTemperature = system.site().roomTemperature();
        coldPressure = system.supply().staticAbsolute(system.start().timeOfDay(), atmosphere);
        coldTemperature = system.supply().water().on(system.start().dayOfYear());
        coldDensity = GibbsPolynomialWater.instance().density(coldTemperature, atmosphere);

        Tank tank = system.tank();
        tankVolume = tank.volume();
        layers = resolved(tank, system.heater());
        shellCompliance = tank.shell().compliance();
        shellGrowth = tank.shell().thermalGrowth();
        standingLoss = tank.standingLoss();
        double height = tank.height().orElse(1);
        conductance = CONDUCTIVITY * tankVolume / height / (height / layers);
        inletReach = tank.inletMixing() * layers;
        workingPressure = tank.workingPressure().absolute(atmosphere);
        textbook = tank.neverFails();
        water = textbook ? If97Region1.instance() : GibbsPolynomialWater.instance();
        testPressure = tank.testPressureAbsolute(atmosphere);

        startPressure =
                system.start().pressure().map(p -> p.absolute(atmosphere)).orElse(coldPressure);
        startTemperature = system.start().waterTemperature().orElse(coldTemperature);
        airGas = AirPocket.amount(tank.air().orElse(0), coldPressure, coldTemperature);
        moves = layers >= MIN_MOVING && airGas == 0;
        gaugeOffset = system.head(system.gaugeHeight());

        StateVector.Slots slots = new StateVector.Slots();
        heat = new HeatSources(slots, system.heater(), layers, system.start().timeOfDay());
        feed = new SupplyBoundary(slots, system.supply(), atmosphere, serviceLine);
        valves = system.reliefValves().stream()
                .map(valve -> new Valve(slots, valve, atmosphere, system.head(valve.height())))
                .toArray(Valve[]::new);
        describedVessels = system.vessels().size();
        vessels = IntStream.range(0, system.vessels().size())
                .filter(i -> system.vessels().get(i).condition() == ExpansionVessel.Condition.SOUND)
                .mapToObj(i -> new GasCushion(slots, system, i, layers, water))
                .toArray(GasCushion[]::new);
        hotPipes = hotPipes(slots, system);
        looped = system.circulation().isPresent();
        returnLayer = (int)
                (layers * system.circulation().map(Circulation::returnHeight).orElse(0.0));
        tap = new Tap(slots, water, coldPressure);
        anySeatLeaks = Arrays.stream(valves).anyMatch(Device::leaks);

        List<Device<?>> all = new ArrayList<>();
        heat.addTo(all);
        all.add(feed);
        all.addAll(List.of(valves));
        all.addAll(List.of(vessels));
        all.add(piping(slots, system));
        all.addAll(List.of(hotPipes));
        all.add(new Leaks(
                slots, system.leaks().stream().mapToDouble(this::leakage).sum(), atmosphere));
        all.add(tap);
        devices = all.toArray(Device<?>[]::new);
        warming = all.stream().filter(Device::hasTemperature).toArray(Device<?>[]::new);
        vector = new StateVector(slots, layers);
    }

    private static HotPipe[] hotPipes(StateVector.Slots slots, HotWaterSystem system) {
        List<HotPipe> pipes = new ArrayList<>();
        for (PipeRun.Carries what : List.of(PipeRun.Carries.LOOP, PipeRun.Carries.HOT)) {
            if (!system.piping(what).isEmpty()) {
                pipes.add(new HotPipe(slots, system, what));
            }
        }
        return pipes.toArray(HotPipe[]::new);
    }

    private Piping piping(StateVector.Slots slots, HotWaterSystem system) {
        double volume = waterlogged(system);
        double growth = 0;
        for (PipeRun pipe : system.piping(PipeRun.Carries.COLD)) {
            volume += pipe.volume();
            growth += pipe.volume() * pipe.compliance();
        }
        return new Piping(slots, volume, growth, system.trappedAir().orElse(0) * startPressure, coldPressure);
    }

    /** The slot of the temperature (K) of hot water at the tap. */
    int atTap() {
        return hotPipes.length == 0 ? vector.highest : hotPipes[hotPipes.length - 1].temperature;
    }

    /** The slot of the temperature (K) of the water in a loop, or at the top of the tank without one. */
    int inLoop() {
        return looped ? hotPipes[0].temperature : vector.highest;
    }

    /** The air under the top of the tank, with working memory of its own. */
    AirPocket air() {
        return new AirPocket(airGas, tankVolume / layers);
    }

    private static int resolved(Tank tank, Heater heater) {
        double strongest =
                heater.elements().stream().mapToDouble(Element::input).max().orElse(0) * heater.recoveryEfficiency();
        double thinnest = Math.max(MIN_LAYER, MIN_LAYER_PER_WATT * strongest);
        return (int) Math.max(1, Math.min(tank.layers(), tank.volume() / thinnest * (1 + 1e-9)));
    }

    private double leakage(Leak leak) {
        return leak.flow() / Math.sqrt(leak.at().gauge(atmosphere));
    }

    private static double waterlogged(HotWaterSystem system) {
        double volume = 0;
        for (ExpansionVessel described : system.vessels()) {
            volume += described.condition() == ExpansionVessel.Condition.WATERLOGGED ? described.volume() : 0;
        }
        return volume;
    }

    /** The modes a state starts with, before any pressure regime is chosen. */
    Modes atStart(double[] y) {
        Modes modes = Modes.resting(this);
        for (Device<?> device : devices) {
            modes = device.atStart(modes, y);
        }
        return modes;
    }

    /** The modes to which a state moves the devices, by events that fall due at once. */
    Modes moved(Modes before, double[] y) {
        Modes modes = before;
        for (Device<?> device : devices) {
            modes = device.moved(modes, y);
        }
        return modes;
    }

    /** How much of a step of pressure (Pa) a state takes before it moves a device. */
    double reach(Modes modes, double[] y, double step) {
        double taken = step;
        for (GasCushion vessel : vessels) {
            taken = vessel.reach(modes.of(vessel), y, taken);
        }
        return taken;
    }

    /** The modes that a state brings about without any event. */
    Modes adapted(Modes before, double[] y) {
        Modes modes = before;
        for (Device<?> device : devices) {
            modes = device.adapted(modes, y);
        }
        return modes;
    }

    /** Of the modes that an event asks for (at a time, s since the start of the run), those that the devices permit. */
    Modes permitted(Modes before, Modes wanted, double time) {
        Modes modes = wanted;
        for (Device<?> device : devices) {
            modes = device.permitted(before, modes, time);
        }
        return modes;
    }

    /** When (s since the start of the run) a device next needs a new segment. */
    double nextChange(Modes modes, double time) {
        double next = Double.POSITIVE_INFINITY;
        for (Device<?> device : devices) {
            next = Math.min(next, device.nextChange(modes, time));
        }
        return next;
    }

    /** Roughly how far (m3/Pa) the devices give to pressure, at their softest. */
    double compliance() {
        double compliance = 0;
        for (Device<?> device : devices) {
            compliance += device.compliance(startPressure);
        }
        return compliance;
    }
}

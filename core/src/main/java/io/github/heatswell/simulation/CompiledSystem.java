package io.github.heatswell.simulation;

import io.github.heatswell.simulation.ColdBranch.GasCushion;
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

/**
 * A description compiled into the numbers the equations need: absolute pressures at drain-cock height, sums over the
 * piping, the vessel's gas. All in SI units; computed once per run and immutable.
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

    final double atmosphere;
    final double roomTemperature;

    final double tankVolume;
    final int layers;
    final double shellCompliance;
    final double shellGrowth;
    final double standingLoss;
    /** Conductance (W/K) from one layer to the next. */
    final double conductance;

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

    final double pipeVolume;
    /** Growth of the piping's volume with pressure (m3/Pa). */
    final double pipeGrowth;
    /** Trapped air: pressure times volume (J). */
    final double airConstant;
    /** Leaks: volume flow at one pascal above the air (m3/s/Pa^0.5). */
    final double leakage;

    final SupplyBoundary feed;
    final HeatSource[] sources;
    final boolean simultaneous;
    /** Temperature (K) of the hottest water at which the cut-out trips; infinite without one. */
    final double cutOut;

    final Valve[] valves;
    final boolean anySeatLeaks;
    /** The vessel, or null if there is none that takes water. */
    final GasCushion vessel;

    final double gaugeOffset;
    final double startPressure;
    final double startTemperature;

    CompiledSystem(HotWaterSystem system) {
        atmosphere = system.site().atmosphere();
        roomTemperature = system.site().roomTemperature();
        feed = new SupplyBoundary(system.supply(), atmosphere);
        coldPressure = system.supply().staticAbsolute(system.start().timeOfDay(), atmosphere);
        coldTemperature = system.supply().water().on(system.start().dayOfYear());
        coldDensity = GibbsPolynomialWater.instance().density(coldTemperature, atmosphere);

        Tank tank = system.tank();
        tankVolume = tank.volume();
        layers = resolved(tank);
        shellCompliance = tank.shell().compliance();
        shellGrowth = tank.shell().thermalGrowth();
        standingLoss = tank.standingLoss();
        double height = tank.height().orElse(1);
        conductance = CONDUCTIVITY * tankVolume / height / (height / layers);
        workingPressure = tank.workingPressure().absolute(atmosphere);
        textbook = tank.neverFails();
        water = textbook ? If97Region1.instance() : GibbsPolynomialWater.instance();
        testPressure = tank.testPressureAbsolute(atmosphere);

        startPressure =
                system.start().pressure().map(p -> p.absolute(atmosphere)).orElse(coldPressure);
        startTemperature = system.start().waterTemperature().orElse(coldTemperature);
        gaugeOffset = system.head(system.gaugeHeight());

        pipeVolume = system.piping().stream().mapToDouble(PipeRun::volume).sum() + waterlogged(system);
        pipeGrowth = system.piping().stream()
                .mapToDouble(pipe -> pipe.volume() * pipe.compliance())
                .sum();
        airConstant = system.trappedAir().orElse(0) * startPressure;
        leakage = system.leaks().stream().mapToDouble(this::leakage).sum();

        Heater heater = system.heater();
        sources = heater.elements().stream()
                .map(element -> new HeatSource(heater, element, layers))
                .toArray(HeatSource[]::new);
        simultaneous = heater.simultaneous();
        cutOut = heater.cutOut().orElse(Double.POSITIVE_INFINITY);

        valves = system.reliefValves().stream()
                .map(valve -> new Valve(valve, atmosphere, system.head(valve.height())))
                .toArray(Valve[]::new);
        anySeatLeaks =
                system.reliefValves().stream().anyMatch(valve -> valve.fault().leakage() > 0);
        vessel = system.vessel()
                .filter(described -> described.condition() == ExpansionVessel.Condition.SOUND)
                .map(described ->
                        new GasCushion(described, atmosphere, roomTemperature, system.head(described.height())))
                .orElse(null);
    }

    private static int resolved(Tank tank) {
        return (int) Math.max(1, Math.min(tank.layers(), tank.volume() / MIN_LAYER * (1 + 1e-9)));
    }

    private double leakage(Leak leak) {
        return leak.flow() / Math.sqrt(leak.at().gauge(atmosphere));
    }

    private static double waterlogged(HotWaterSystem system) {
        return system.vessel()
                .filter(described -> described.condition() == ExpansionVessel.Condition.WATERLOGGED)
                .map(ExpansionVessel::volume)
                .orElse(0.0);
    }

    /** Whether water can leave a closed system through a seat or a hole. */
    boolean leaks() {
        return anySeatLeaks || leakage > 0 || feed.leaks();
    }

    /** Whether the temperature of the vessel's gas is part of the state. */
    boolean hasGasState() {
        return vessel != null && vessel.timeConstant > 0;
    }

    /** A burner or element. */
    static final class HeatSource {
        final double input;
        final double output;
        final int layer;
        final double setPoint;
        final double switchOn;
        final boolean stuck;
        final String name;

        HeatSource(Heater heater, Element element, int layers) {
            boolean lower = element == heater.elements().get(0);
            input = element.input();
            output = input * heater.recoveryEfficiency();
            layer = Math.min(layers - 1, (int) (element.height() * layers));
            setPoint = element.setPoint();
            switchOn = element.switchesOn();
            stuck = lower && heater.thermostatStuck();
            name = heater.elements().size() == 1 ? "" : lower ? "lower element" : "upper element";
        }
    }
}

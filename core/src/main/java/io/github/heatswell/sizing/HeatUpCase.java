package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.Circulation;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.PipeRun;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A house without relief valves, and how long to run it with a vessel added. It has no vessel of its own, unless there are several:
 * then one more is asked for, and they stay.
 */
record HeatUpCase(HotWaterSystem house, Duration duration) {

    private static final int LAST_DAY = 366;

    /**
     * The worst heat-up from a cold fill: the mains at its highest, the supply on the day when its water is densest, no
     * draws, leaks, outages or trapped air.
     */
    static HeatUpCase coldFill(HotWaterSystem given) {
        HotWaterSystem.Builder builder = bare(given).supply(worstSupply(given));
        given.circulation().map(Circulation::always).ifPresent(builder::circulation);
        given.piping().forEach(builder::addPipe);
        HotWaterSystem house = builder.build();
        return new HeatUpCase(house, heatUp(house));
    }

    /** The run as given, with draws, mains, seasons and leaks, but without air: it dissolves, and a vessel must do without. */
    static HeatUpCase asGiven(HotWaterSystem given, Duration duration) {
        HotWaterSystem.Builder builder =
                bare(given).start(given.start()).draws(given.draws()).supply(given.supply());
        given.circulation().ifPresent(builder::circulation);
        given.piping().forEach(builder::addPipe);
        given.leaks().forEach(builder::addLeak);
        return new HeatUpCase(builder.build(), duration);
    }

    /** The same house with something about it changed. */
    HeatUpCase changed(Consumer<HotWaterSystem.Builder> change) {
        HotWaterSystem.Builder builder = house.toBuilder();
        change.accept(builder);
        return new HeatUpCase(builder.build(), duration);
    }

    /** The same house without piping but for a loop, which is heated with the tank; of a cold fill only. */
    HeatUpCase withoutPiping() {
        HotWaterSystem.Builder builder = bare(house);
        house.circulation().ifPresent(builder::circulation);
        house.piping(PipeRun.Carries.LOOP).forEach(builder::addPipe);
        return new HeatUpCase(builder.build(), duration);
    }

    /** The same house behind a tight check valve that holds a static pressure (Pa, absolute); of a cold fill only. */
    HeatUpCase behindCheckValve(double staticAbsolute) {
        double gauge = staticAbsolute - house.site().atmosphere();
        return changed(builder -> builder.supply(Supply.builder()
                .arrangement(Supply.Arrangement.CHECK_VALVE)
                .pressure(Pressure.gauge(gauge, PressureUnit.PASCAL))
                .water(house.coldAtStart(), TemperatureUnit.KELVIN)
                .build()));
    }

    /** The temperature (K) the thermostats heat to. */
    double hotTemperature() {
        return hotTemperature(house);
    }

    private static double hotTemperature(HotWaterSystem house) {
        return house.heater().elements().stream()
                .mapToDouble(Element::setPoint)
                .max()
                .orElseThrow();
    }

    private static HotWaterSystem.Builder bare(HotWaterSystem given) {
        HotWaterSystem.Builder house = HotWaterSystem.builder()
                .site(given.site())
                .supply(given.supply())
                .tank(given.tank().toBuilder().withoutAir().build())
                .heater(given.heater());
        if (given.hasSeveralVessels()) {
            given.vessels().forEach(house::addVessel);
        }
        return house;
    }

    private static Supply worstSupply(HotWaterSystem given) {
        Supply supply = given.supply();
        double atmosphere = given.site().atmosphere();
        double mains = supply.mains().entries().values().stream()
                .mapToDouble(pressure -> pressure.gauge(atmosphere))
                .max()
                .orElseThrow();
        Supply.Builder builder = Supply.builder()
                .arrangement(supply.arrangement())
                .pressure(Pressure.gauge(mains, PressureUnit.PASCAL))
                .water(densest(given), TemperatureUnit.KELVIN);
        supply.reducingValve().ifPresent(builder::reducingValve);
        return builder.build();
    }

    /** The temperature (K) of the supply on the day when its water is densest, and so expands most. */
    private static double densest(HotWaterSystem given) {
        SupplyTemperature water = given.supply().water();
        double start = given.coldAtStart();
        if (water.isConstant()) {
            return start;
        }
        double[] year = DoubleStream.concat(
                        DoubleStream.of(start),
                        IntStream.rangeClosed(1, LAST_DAY).mapToDouble(water::on))
                .sorted()
                .toArray();
        double atmosphere = given.site().atmosphere();
        int densest = 0;
        // from its maximum on, the density falls as the water gets warmer
        while (densest + 1 < year.length
                && density(year[densest + 1], atmosphere) >= density(year[densest], atmosphere)) {
            densest++;
        }
        return year[densest];
    }

    private static double density(double temperature, double atmosphere) {
        return GibbsPolynomialWater.instance().density(temperature, atmosphere);
    }

    /**
     * A duration in which every thermostat switches off once, or the temperature settles if the heater cannot overcome
     * the standing loss: the tank's heat divided by the weakest element's net output at the end.
     */
    private static Duration heatUp(HotWaterSystem house) {
        Tank tank = house.tank();
        double hot = hotTemperature(house);
        LiquidWater.State cold = GibbsPolynomialWater.instance()
                .stateAt(house.coldAtStart(), house.site().atmosphere());
        double capacity = house.hotVolume() * cold.density() * cold.heatCapacity();
        double loss = tank.standingLoss()
                + house.piping(PipeRun.Carries.LOOP).stream()
                        .mapToDouble(PipeRun::heatLoss)
                        .sum();
        double output = house.heater().elements().stream()
                        .mapToDouble(Element::input)
                        .min()
                        .orElseThrow()
                * house.heater().recoveryEfficiency();
        double left = output - loss * Math.max(0, hot - house.site().roomTemperature());
        double rest = 8 * capacity / loss; // after eight time constants 0.03 % remains
        double straight = left > 0 ? 1.2 * capacity * Math.max(0, hot - house.coldAtStart()) / left : rest;
        return Duration.ofSeconds((long) Math.min(rest, straight) + 600);
    }

    /**
     * Runs the house with a vessel, or without one. A peak at the test pressure means only that the vessel is too small; no
     * vessel helps against any other hazard that ends a run.
     *
     * @param count counts the run
     * @throws IllegalArgumentException if the run ends in a hazard other than too much pressure
     */
    Peak peak(Optional<ExpansionVessel> vessel, Balances.Count count) {
        HotWaterSystem fitted =
                vessel.map(one -> house.toBuilder().addVessel(one).build()).orElse(house);
        RunSummary run = count.add(Simulation.of(fitted, duration).summary());
        run.hazard()
                .filter(hazard -> hazard.kind() != Event.Kind.TEST_PRESSURE_REACHED)
                .ifPresent(HeatUpCase::refuse);
        return new Peak(run.extremes().highestPressure().value(), run.hazard().isPresent());
    }

    private static void refuse(Event hazard) {
        throw new IllegalArgumentException("the run ends early: "
                + hazard.kind().description() + " after "
                + QuantityFormat.ascii(UnitSystem.SI).time(hazard.time())
                + "; a vessel cannot be sized for such a run");
    }

    /**
     * The highest pressure of a run.
     *
     * @param absolute the pressure (Pa, absolute)
     * @param atLeast whether the run ended there at the test pressure of the tank, so that it would have risen further
     */
    record Peak(double absolute, boolean atLeast) {}
}

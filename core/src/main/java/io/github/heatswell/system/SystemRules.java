package io.github.heatswell.system;

import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Consistency rules between the parts of a system, each of which has already been checked by itself. */
final class SystemRules {

    /** Two pressures this close (Pa) count as equal: sums taken in a different order differ by rounding. */
    private static final double SAME_PRESSURE = 1e-6;

    /** Relative rounding error (-) of a unit conversion. */
    private static final double ROUNDING = 1e-9;

    /**
     * Largest relative growth (-) of a tank or a pipe from empty to the tank's working pressure, or to that of the supply if it is
     * higher. Volume is linear in pressure; anything softer would be left with no volume when the pressure is lost. Own choice.
     */
    static final double MAX_STRETCH = 0.75;

    /**
     * Largest share (-) of the highest layer that air under the top of a tank takes up at the cold fill, were it expanded to the
     * pressure of the air around it. Warm and without pressure it then still leaves room for water. Own choice.
     */
    static final double MAX_AIR = 0.36;

    private final Requirements requirements;
    private final HotWaterSystem system;
    private final Tank tank;
    private final double atmosphere;

    SystemRules(Requirements requirements, HotWaterSystem system) {
        this.requirements = requirements;
        this.system = system;
        tank = system.tank();
        atmosphere = system.site().atmosphere();
    }

    /** Notes everything that is contradictory. */
    void check() {
        double test = tank.testPressureAbsolute(atmosphere);
        double mains = mainsLimit(test);
        system.supply().mains().entries().values().forEach(p -> checkSupply(p, mains));
        system.start().pressure().ifPresent(p -> {
            checkPressure("start.pressure", p, test);
            checkStart(p);
        });
        checkVessels();
        checkReliefValves();
        checkTrappedAir();
        checkTankAir();
        checkLoop();
        checkWalls();
        checkFlue();
    }

    /** A reducing valve keeps the mains pressure from the tank. */
    private double mainsLimit(double test) {
        return system.supply().arrangement() == Supply.Arrangement.REDUCING_VALVE ? Double.POSITIVE_INFINITY : test;
    }

    private void checkSupply(Pressure value, double limit) {
        String field = NamedValue.SUPPLY.field();
        double gauge = value.gauge(atmosphere);
        requirements.rule(
                !(gauge > 0 && gauge <= MainsPressure.MIN_GAUGE),
                field,
                () -> value + " is next to nothing: it must be more than "
                        + Limits.quantity(MainsPressure.MIN_GAUGE, PressureUnit.PASCAL) + " above ambient pressure");
        checkPressure(field, value, limit);
    }

    private void checkPressure(String field, Pressure value, double limit) {
        requirements.rule(
                value.gauge(atmosphere) > 0 && value.absolute(atmosphere) < limit,
                field,
                () -> value + " must be above ambient pressure and below the tank's test pressure, twice its working"
                        + " pressure of " + tank.workingPressure());
    }

    private void checkStart(Pressure begin) {
        Pressure feed = system.supplyAtStart();
        double excess = begin.absolute(atmosphere) - feed.absolute(atmosphere);
        requirements.rule(
                excess >= -SAME_PRESSURE,
                "start.pressure",
                () -> compared(begin, " is below the supply pressure of ", feed)
                        + ", which would fill the system at once");
        requirements.rule(
                excess <= SAME_PRESSURE || system.supply().arrangement() != Supply.Arrangement.DIRECT,
                "start.pressure",
                () -> compared(begin, " is above the supply pressure of ", feed)
                        + ", which an open connection to the mains cannot hold");
    }

    /** The first vessel stands under a key of its own, the others in a list; results tell them apart by their names. */
    private void checkVessels() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < system.vessels().size(); i++) {
            String path = i == 0 ? "vessel." : "vessels[" + (i - 1) + "].";
            ExpansionVessel vessel = system.vessels().get(i);
            checkPrecharge(path + "precharge", vessel.precharge());
            checkInTank(path + "height", vessel);
            double room = system.site().roomTemperature();
            double around = system.gasAtRest(vessel);
            vessel.gasLaw()
                    .flatMap(law -> new GasLawRules(
                                    vessel,
                                    law,
                                    atmosphere,
                                    around / vessel.chargedAt().orElse(room))
                            .broken())
                    .ifPresent(broken -> requirements.rule(false, path + "gas-law", broken));
            String name = system.vesselNames().get(i);
            requirements.rule(
                    names.add(name.toLowerCase(Locale.ROOT)),
                    path + "name",
                    "'" + name + "' is already the name of another vessel");
        }
    }

    /** A vessel in the tank has a height in the tank. */
    private void checkInTank(String field, ExpansionVessel vessel) {
        double top = tank.height().orElse(Double.POSITIVE_INFINITY);
        requirements.rule(
                !vessel.isInTank() || vessel.height() >= 0 && vessel.height() <= top * (1 + ROUNDING),
                field,
                () -> Limits.quantity(vessel.height(), LengthUnit.METRE)
                        + " is outside the tank, into which the vessel is built"
                        + (top < Double.POSITIVE_INFINITY
                                ? "; its height is " + Limits.quantity(top, LengthUnit.METRE)
                                : ""));
    }

    private void checkPrecharge(String field, Pressure precharge) {
        requirements.rule(
                precharge.gauge(atmosphere) > 0
                        && precharge.gauge(atmosphere) <= tank.workingPressure().gauge(atmosphere) * (1 + ROUNDING),
                field,
                () -> compared(
                        precharge,
                        " must be above ambient pressure and not above the tank's working pressure of ",
                        tank.workingPressure()));
    }

    /** Results tell valves apart by their names. */
    private void checkReliefValves() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < system.reliefValves().size(); i++) {
            ReliefValve valve = system.reliefValves().get(i);
            String path = "relief[" + i + "].";
            valve.rules().check(requirements, path, atmosphere);
            requirements.rule(
                    names.add(valve.name().toLowerCase(Locale.ROOT)),
                    path + "name",
                    "'" + valve.name() + "' is already the name of another relief valve");
            if (valve.kind() == ReliefValve.Kind.SAFETY_GROUP) {
                checkOwnCheckValve(path + "kind");
            }
        }
    }

    /** Nothing flows back through the check valve of a safety group. */
    private void checkOwnCheckValve(String field) {
        requirements.rule(
                system.supply().arrangement() != Supply.Arrangement.DIRECT,
                field,
                "a safety group holds a check valve, so the supply cannot be direct: it has a check valve, or this is an expansion"
                        + " valve");
        requirements.rule(
                system.supply()
                        .reducingValve()
                        .filter(valve -> valve.bypassOpens().isPresent())
                        .isEmpty(),
                field,
                "the check valve in a safety group closes the way to the bypass of the"
                        + " reducing valve; leave the bypass out");
    }

    /** Trapped air is in the cold piping and cannot exceed its volume. */
    private void checkTrappedAir() {
        double room = system.piping(PipeRun.Carries.COLD).stream()
                .mapToDouble(PipeRun::volume)
                .sum();
        system.trappedAir()
                .ifPresent(air -> requirements.rule(
                        air <= room,
                        "trapped-air",
                        () -> litres(air) + " is more than the cold piping holds, " + litresDown(room)));
    }

    /** A loop needs pipes and a pump. */
    private void checkLoop() {
        boolean pipes = !system.piping(PipeRun.Carries.LOOP).isEmpty();
        requirements.rule(
                !pipes || system.circulation().isPresent(),
                "circulation",
                "is missing, though piping carries a loop; give the flow of its pump, such as 3 L/min");
        requirements.rule(
                pipes || system.circulation().isEmpty(),
                "circulation",
                "needs pipes; describe flow and return as piping that carries a loop");
    }

    /** Without pressure the air must not fill the highest layer. */
    private void checkTankAir() {
        double most = MAX_AIR
                * tank.volume()
                / tank.layers()
                * atmosphere
                / system.supplyAtStart().absolute(atmosphere);
        tank.air()
                .ifPresent(air -> requirements.rule(
                        air <= most * (1 + ROUNDING),
                        "tank.air",
                        () -> litres(air) + " is more than the "
                                + (tank.layers() == 1 ? "tank" : "highest layer of the tank")
                                + " has room for once the pressure is lost; up to " + litresDown(most)
                                + " is allowed"));
    }

    private void checkFlue() {
        requirements.rule(
                !tank.hasFlue() || system.heater().energy() == Heater.Energy.GAS,
                "tank.flue",
                "an electric heater has no flue; leave it out");
    }

    /** A wall that stretches further would have torn long before. */
    private void checkWalls() {
        checkWall(
                tank.complianceGiven() ? "tank.compliance" : "tank.wall",
                "tank",
                tank.shell().compliance());
        for (int i = 0; i < system.piping().size(); i++) {
            checkWall("piping[" + i + "].wall", "pipe", system.piping().get(i).compliance());
        }
    }

    private void checkWall(String field, String part, double compliance) {
        double working = tank.workingPressure().gauge(atmosphere);
        double supply = system.supplyAtStart().gauge(atmosphere);
        double stretch = compliance * Math.max(working, supply);
        requirements.rule(
                stretch <= MAX_STRETCH,
                field,
                () -> "with this " + field.substring(field.lastIndexOf('.') + 1) + " the " + part + " would grow by "
                        + Limits.quantity(Math.round(10 * RatioUnit.PERCENT.fromSi(stretch)) / 10.0, RatioUnit.PERCENT)
                        + (supply > working
                                ? " at the supply pressure of " + system.supplyAtStart()
                                : " at the tank's working pressure of " + tank.workingPressure())
                        + "; at most 75 % is allowed");
    }

    private static String compared(Pressure one, String words, Pressure other) {
        Requirements.Compared both = Requirements.Compared.of(one, other);
        return both.one() + words + both.other();
    }

    /** To the millilitre and never up: what is named is allowed. */
    private static String litresDown(double volume) {
        return Limits.quantity(Math.floor(VolumeUnit.MILLILITRE.fromSi(volume)) / 1000, VolumeUnit.LITRE);
    }

    private static String litres(double volume) {
        return Limits.quantity(VolumeUnit.LITRE.fromSi(volume), VolumeUnit.LITRE);
    }
}

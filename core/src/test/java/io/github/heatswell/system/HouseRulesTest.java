package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Where what fits together ends: the last number a house takes, the next one it refuses, and what it says. */
class HouseRulesTest {

    /** A tank of 100 L at sea level (1.01325 bar), rated for 10 bar, under 4 bar: each limit is worked out beside it. */
    static Stream<Arguments> limits() {
        return Stream.of(
                limit(
                        "more than the 10 Pa that count as nothing",
                        bar -> RefusalTest.whole(bar, 10),
                        1.001e-4,
                        1e-4,
                        "supply.pressure: 0.0001 bar gauge is next to nothing: it must be more than 10 Pa above ambient"
                                + " pressure"),
                limit(
                        "twice 10 bar",
                        bar -> RefusalTest.whole(bar, 10),
                        19.9999,
                        20,
                        "supply.pressure: 20 bar gauge must be above ambient pressure and below the tank's test pressure, twice"
                                + " its working pressure of 10 bar gauge"),
                limit(
                        "the supply, which an open feed holds",
                        bar -> RefusalTest.whole(4, 10)
                                .supply(RefusalTest.supply(Supply.Arrangement.DIRECT, 4))
                                .start(RefusalTest.start(bar)),
                        4,
                        4.00001,
                        "start.pressure: 4.00001 bar gauge is above the supply pressure of 4 bar gauge, which an open connection"
                                + " to the mains cannot hold"),
                limit(
                        "the tank's working pressure, in the second vessel",
                        bar -> RefusalTest.whole(4, 6)
                                .vessel(RefusalTest.vessel(4))
                                .addVessel(RefusalTest.vessel(bar)),
                        6,
                        6.5,
                        "vessels[0].precharge: 6.5 bar gauge must be above ambient pressure and not above the tank's working"
                                + " pressure of 6 bar gauge"),
                limit(
                        "the bottom of the tank, of height unknown",
                        metres -> inTank(RefusalTest.whole(4, 10), metres),
                        0,
                        -0.1,
                        "vessel.height: -0.1 m is outside the tank, into which the vessel is built"),
                limit(
                        "the top of the tank",
                        metres -> inTank(
                                RefusalTest.whole(4, 10)
                                        .changeTank(tank -> tank.toBuilder()
                                                .height(1.2, LengthUnit.METRE)
                                                .build()),
                                metres),
                        1.2,
                        1.21,
                        "vessel.height: 1.21 m is outside the tank, into which the vessel is built; its height is 1.2 m"),
                limit(
                        "10 m of pipe with a bore of 20 mm: 3.1416 L",
                        litres -> RefusalTest.whole(4, 10)
                                .addPipe(Parts.pipe(Material.COPPER, 22, 1, 10))
                                .trappedAir(litres, VolumeUnit.LITRE),
                        3.14,
                        3.15,
                        "trappedAir: 3.15 L is more than the cold piping holds, 3.141 L"),
                limit(
                        "36 % of 100 L at 1.01325 bar, under 5.01325 bar: 7.2761 L",
                        litres -> air(1, litres),
                        7.276,
                        7.277,
                        "tank.air: 7.277 L is more than the tank has room for once the pressure is lost; up to 7.276 L is"
                                + " allowed"),
                limit(
                        "the same of one of four layers: 1.8190 L",
                        litres -> air(4, litres),
                        1.819,
                        1.82,
                        "tank.air: 1.82 L is more than the highest layer of the tank has room for once the pressure is lost; up to"
                                + " 1.819 L is allowed"),
                limit(
                        "(0.3 m/(170 MPa 2 mm)) (5/4 - 0.4) 10 bar: 75 %",
                        wall -> RefusalTest.whole(4, 10)
                                .changeTank(tank -> tank.toBuilder()
                                        .shell(Shell.cylinder(jelly(), 300, wall, LengthUnit.MILLIMETRE))
                                        .build()),
                        2.0001,
                        1.5,
                        "tank.wall: with this wall the tank would grow by 100 % at the tank's working pressure of 10 bar gauge; at"
                                + " most 75 % is allowed"),
                limit(
                        "the same under a supply above the tank's working pressure",
                        bar -> RefusalTest.whole(bar, 10)
                                .changeTank(tank -> tank.toBuilder()
                                        .shell(Shell.cylinder(jelly(), 300, 2.0001, LengthUnit.MILLIMETRE))
                                        .build()),
                        10,
                        12,
                        "tank.wall: with this wall the tank would grow by 90 % at the supply pressure of 12 bar gauge; at most"
                                + " 75 % is allowed"),
                limit(
                        "half the diameter, for a flue",
                        millimetres -> cylinder(0, millimetres),
                        200,
                        201,
                        "flue: 201 mm is more than half of the tank's diameter of 400 mm"),
                limit(
                        "the tank's 20 L, for heads: pi/3 0.4^2 m2 times the depth is 20 L at 119.37 mm",
                        percent -> cylinder(percent, 0),
                        59.6,
                        60,
                        "heads: heads as deep as 120 mm alone hold more than the tank of 20 L; check its diameter"),
                limit(
                        "more than one of four layers",
                        percent -> mixing(4, percent),
                        25.1,
                        25,
                        "inletMixing: 25 % of the tank is not more than one of its 4 layers, which is mixed anyway; give it 5"
                                + " layers, or leave this out"),
                limit(
                        "more than one of the 50 layers a tank can have",
                        percent -> mixing(50, percent),
                        2.1,
                        2,
                        "inletMixing: 2 % of the tank is not more than one of its 50 layers, which is mixed anyway; leave it out"),
                limit(
                        "a hundredth of the bore",
                        wall -> RefusalTest.whole(4, 10).addPipe(Parts.pipe(Material.COPPER, 10, wall, 1)),
                        4.89,
                        4.91,
                        "wall: 4.91 mm leaves no bore in a pipe of 10 mm outside diameter"),
                limit(
                        "frost",
                        kelvin -> RefusalTest.whole(4, 10)
                                .heater(RefusalTest.heater(60, 5).toBuilder()
                                        .upper(Element.builder()
                                                .input(2, PowerUnit.KILOWATT)
                                                .height(70, RatioUnit.PERCENT)
                                                .setPoint(20, TemperatureUnit.CELSIUS)
                                                .differential(kelvin, TemperatureDifferenceUnit.KELVIN)
                                                .build())
                                        .build()),
                        19,
                        20,
                        "differential: 20 K would let the water cool to freezing before the thermostat switches on"));
    }

    private static Arguments limit(
            String what, DoubleFunction<HotWaterSystem.Builder> house, double fits, double beyond, String refusal) {
        return Arguments.of(what, house, fits, beyond, refusal);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limits")
    void whatFitsEndsThere(
            String what, DoubleFunction<HotWaterSystem.Builder> house, double fits, double beyond, String refusal) {
        assertDoesNotThrow(() -> house.apply(fits).build());
        assertRefused(refusal, () -> house.apply(beyond).build());
    }

    static Stream<Arguments> contradictions() {
        return Stream.of(
                contradiction(
                        "tank.flue: an electric heater has no flue; leave it out",
                        () -> RefusalTest.whole(4, 10)
                                .tank(tank(40).flue(90, LengthUnit.MILLIMETRE).build())
                                .build()),
                contradiction(
                        "vessels[0].name: 'Garage' is already the name of another vessel",
                        () -> RefusalTest.whole(4, 10)
                                .vessel(named("garage"))
                                .addVessel(named("Garage"))
                                .build()),
                contradiction(
                        "reliefValves[0].kind: the check valve in a safety group closes the way to the bypass of the reducing"
                                + " valve; leave the bypass out",
                        () -> RefusalTest.whole(4, 10)
                                .supply(Parts.reduced(
                                        6, Parts.reducingValve(3, 0.2, 0.5, 20).bypassOpens(0.3, BAR)))
                                .addReliefValve(Parts.valve("group", 7, 5)
                                        .kind(ReliefValve.Kind.SAFETY_GROUP)
                                        .build())
                                .build()),
                contradiction(
                        "kind: a valve that opens at a temperature is neither an expansion valve nor a safety group, which respond to"
                                + " pressure only; leave the temperature or the kind out",
                        combined().kind(ReliefValve.Kind.SAFETY_GROUP)::build),
                contradiction(
                        "location: must be branch for an expansion valve or a safety group, which sit on the cold inlet",
                        Parts.valve("a", 7, 5)
                                .kind(ReliefValve.Kind.EXPANSION_VALVE)
                                .location(ReliefValve.Location.TANK_TOP)::build),
                contradiction(
                        "reliefValves[0].reseatPressure: 1 bar abs must be above ambient pressure",
                        () -> RefusalTest.whole(4, 10)
                                .addReliefValve(Parts.valve("a", 7, 5)
                                        .reseatPressure(Pressure.absolute(1, BAR))
                                        .build())
                                .build()),
                contradiction(
                        "fault.leaksFrom: 7.000001 bar gauge must be below the set pressure of 7 bar gauge",
                        () -> Parts.valve("a", 7, 5)
                                .fault(ReliefFault.leakingSeat(
                                        Pressure.gauge(7.000001, BAR), 1, FlowUnit.LITRE_PER_MINUTE))
                                .build()),
                contradiction(
                        "leaksFrom: is missing", ReliefFault.builder().leakage(1, FlowUnit.LITRE_PER_MINUTE)::build),
                contradiction(
                        "temperature: follows the tank's water, since location is in-tank; leave temperature out",
                        RefusalTest.vessel(4).toBuilder()
                                .location(ExpansionVessel.Location.IN_TANK)
                                .temperature(30, TemperatureUnit.CELSIUS)::build),
                contradiction(
                        "insulation: makes no difference for a pipe that carries cold water; remove it, or say 'carries: hot' or"
                                + " 'carries: loop'",
                        PipeRun.builder()
                                .material(Material.COPPER)
                                .outsideDiameter(22, LengthUnit.MILLIMETRE)
                                .wall(1, LengthUnit.MILLIMETRE)
                                .length(1, LengthUnit.METRE)
                                .insulation(13, LengthUnit.MILLIMETRE)::build),
                contradiction(
                        "inletMixing: needs layers; a tank without layers is mixed as a whole",
                        () -> mixing(1, 50).build()),
                contradiction(
                        "wall: is missing",
                        () -> Tank.builder()
                                .volume(20, VolumeUnit.LITRE)
                                .standingLoss(1, ConductanceUnit.WATT_PER_KELVIN)
                                .workingPressure(Pressure.gauge(10, BAR))
                                .material(Material.STEEL)
                                .diameter(400, LengthUnit.MILLIMETRE)
                                .build()),
                contradiction("flow: is missing", Circulation.builder()::build),
                contradiction(
                        "circulation: is missing, though piping carries a loop; give the flow of its pump, such as 3 L/min",
                        () -> RefusalTest.whole(4, 10)
                                .addPipe(PipeRun.builder()
                                        .carries(PipeRun.Carries.LOOP)
                                        .material(Material.COPPER)
                                        .outsideDiameter(22, LengthUnit.MILLIMETRE)
                                        .wall(1, LengthUnit.MILLIMETRE)
                                        .length(1, LengthUnit.METRE)
                                        .build())
                                .build()),
                contradiction(
                        "circulation: needs pipes; describe flow and return as piping that carries a loop",
                        () -> RefusalTest.whole(4, 10)
                                .circulation(Circulation.builder()
                                        .flow(3, FlowUnit.LITRE_PER_MINUTE)
                                        .build())
                                .build()),
                contradiction(
                        "to: is the same time as from; leave pump out for one that always runs",
                        Circulation.Hours.builder().from(3600).to(3600)::build),
                contradiction("from: is missing", Circulation.Hours.builder().to(3600)::build));
    }

    private static Arguments contradiction(String refusal, Executable building) {
        return Arguments.of(refusal, building);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("contradictions")
    void whatDoesNotBelongTogetherIsTold(String refusal, Executable building) {
        assertRefused(refusal, building);
    }

    /** Contract: two pressures are told with as many digits as tell them apart, two alike with four. */
    @Test
    void pressuresAreToldApart() {
        double third = 10.0 / 3;
        for (String[] digits : new String[][] {{"3.333", "0"}, {"3.3333", "1e-4"}, {"3.33333333", "1e-8"}}) {
            Requirements.Compared both = Requirements.Compared.of(
                    Pressure.gauge(third, BAR), Pressure.gauge(third + Double.parseDouble(digits[1]), BAR));
            assertEquals(digits[0] + " bar gauge", both.one());
        }
    }

    private static void assertRefused(String refusal, Executable building) {
        assertEquals(
                refusal,
                assertThrows(InvalidDescriptionException.class, building).getMessage());
    }

    private static HotWaterSystem.Builder inTank(HotWaterSystem.Builder house, double metres) {
        return house.vessel(RefusalTest.vessel(4).toBuilder()
                .location(ExpansionVessel.Location.IN_TANK)
                .height(metres, LengthUnit.METRE)
                .build());
    }

    private static ExpansionVessel named(String name) {
        return RefusalTest.vessel(4).toBuilder().name(name).build();
    }

    private static HotWaterSystem.Builder air(int layers, double litres) {
        return RefusalTest.whole(4, 10)
                .changeTank(tank -> tank.toBuilder()
                        .layers(layers)
                        .height(1, LengthUnit.METRE)
                        .air(litres, VolumeUnit.LITRE)
                        .build());
    }

    private static HotWaterSystem.Builder mixing(int layers, double percent) {
        return RefusalTest.whole(4, 10)
                .changeTank(tank -> tank.toBuilder()
                        .layers(layers)
                        .height(1, LengthUnit.METRE)
                        .inletMixing(percent, RatioUnit.PERCENT)
                        .build());
    }

    private static Material jelly() {
        return new Material("jelly", 170e6, 0.4, 1e-4);
    }

    private static Tank.Builder tank(double litres) {
        return Tank.builder()
                .volume(litres, VolumeUnit.LITRE)
                .standingLoss(1, ConductanceUnit.WATT_PER_KELVIN)
                .workingPressure(Pressure.gauge(10, BAR))
                .material(Material.STEEL)
                .diameter(400, LengthUnit.MILLIMETRE)
                .wall(2, LengthUnit.MILLIMETRE);
    }

    private static HotWaterSystem.Builder cylinder(double headsPercent, double flueMillimetre) {
        Tank.Builder tank = tank(20);
        if (headsPercent > 0) {
            tank.heads(headsPercent, RatioUnit.PERCENT);
        }
        if (flueMillimetre > 0) {
            tank.flue(flueMillimetre, LengthUnit.MILLIMETRE);
        }
        return RefusalTest.whole(4, 10).heater(Parts.heater(11, 80, 60, 5)).tank(tank.build());
    }

    private static ReliefValve.Builder combined() {
        return Parts.valve("a", 7, 5)
                .location(ReliefValve.Location.TANK_TOP)
                .opensAt(98, TemperatureUnit.CELSIUS)
                .reseatsAt(82, TemperatureUnit.CELSIUS);
    }
}

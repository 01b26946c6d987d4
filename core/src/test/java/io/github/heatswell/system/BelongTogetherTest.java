package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Values that are each in their range but do not belong together, and how close to that one may come. */
class BelongTogetherTest {

    static Stream<Arguments> refused() {
        return Stream.of(
                Arguments.of("reseats", "reseats", (Executable) () -> valve(7, 7.7, 7, 4)),
                Arguments.of("leaks from set", "fault.leaks-from", (Executable) () -> valve(7, 7.7, 5, 7)),
                Arguments.of("leaks above set", "fault.leaks-from", (Executable) () -> valve(7, 7.7, 5, 8)),
                Arguments.of(
                        "reseats at the air",
                        "relief[0].reseats",
                        whole(valve(7, 7.7, 5, 4).toBuilder()
                                .reseatPressure(Pressure.absolute(101_325, PressureUnit.PASCAL))
                                .build())),
                Arguments.of("supply at test pressure", "supply.pressure", (Executable)
                        () -> RefusalTest.whole(20, 10).build()),
                Arguments.of("opens at, without reseats at", "reseats-at", part(combined(98.0, null, true, false))),
                Arguments.of("reseats at, without opens at", "opens-at", part(combined(null, 80.0, true, false))),
                Arguments.of("reseats as it opens", "reseats-at", part(combined(98.0, 98.0, true, false))),
                Arguments.of("minds the temperature of a branch", "location", part(combined(98.0, 80.0, false, false))),
                Arguments.of("rated, without temperature", "rated-input", part(combined(null, null, true, true))),
                Arguments.of("check valve that reduces", "reducing-valve", (Executable)
                        () -> RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 4).toBuilder()
                                .reducingValve(reducing())
                                .build()),
                Arguments.of("reducing valve that is not there", "reducing-valve", (Executable)
                        () -> RefusalTest.supply(Supply.Arrangement.REDUCING_VALVE, 4)),
                Arguments.of("direct feed that leaks", "seat-leakage", (Executable)
                        () -> RefusalTest.supply(Supply.Arrangement.DIRECT, 4).toBuilder()
                                .seatLeakage(1, FlowUnit.LITRE_PER_MINUTE)
                                .build()),
                Arguments.of("outages that overlap", "shut-off", (Executable) () -> outages(199)),
                Arguments.of("gas burner with two", "upper", (Executable) () -> twoElements(Heater.Energy.GAS, 70, 90)),
                Arguments.of("upper level with lower", "upper", (Executable)
                        () -> twoElements(Heater.Energy.ELECTRIC, 10, 90)),
                Arguments.of("cut-out at the upper's set point", "cut-out", (Executable)
                        () -> twoElements(Heater.Energy.ELECTRIC, 70, 65)),
                Arguments.of("element down to freezing", "differential", (Executable) () -> element(20, 20)),
                Arguments.of("pipe that would widen by as much", "piping[0].wall", (Executable)
                        () -> RefusalTest.whole(4, 10).addPipe(thin(45)).build()),
                Arguments.of(
                        "tank that the supply would stretch so far", "tank.wall", (Executable) () -> soft(13).build()),
                Arguments.of("tank in layers of no height", "height", (Executable)
                        () -> RefusalTest.whole(4, 10).build().tank().toBuilder()
                                .layers(2)
                                .build()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("refused")
    void whatContradictsIsNamed(String what, String field, Executable build) {
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, build);
        assertEquals(
                List.of(field),
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
    }

    static Stream<Arguments> allowed() {
        return Stream.of(
                Arguments.of("full lift as it opens", whole(valve(7, 7, 5, 4))),
                Arguments.of("precharge as the tank's limit", (Executable) () ->
                        RefusalTest.whole(4, 6).vessel(RefusalTest.vessel(6)).build()),
                Arguments.of("start at the supply", (Executable) () ->
                        RefusalTest.whole(4, 10).start(RefusalTest.start(4)).build()),
                Arguments.of("pipe that widens by half", (Executable)
                        () -> RefusalTest.whole(4, 10).addPipe(thin(28)).build()),
                Arguments.of("tank that the supply stretches by half", (Executable) () -> soft(7).build()),
                Arguments.of("direct, start at the supply", (Executable) () -> RefusalTest.whole(4, 10)
                        .supply(RefusalTest.supply(Supply.Arrangement.DIRECT, 4))
                        .start(RefusalTest.start(4))
                        .build()),
                Arguments.of("high mains behind a reducing valve", (Executable) () -> RefusalTest.whole(4, 10)
                        .supply(RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 22).toBuilder()
                                .arrangement(Supply.Arrangement.REDUCING_VALVE)
                                .reducingValve(reducing())
                                .build())
                        .build()),
                Arguments.of("combined device", part(combined(98.0, 97.9, true, true))),
                Arguments.of("outages that touch", (Executable) () -> outages(200)),
                Arguments.of("two elements", (Executable) () -> twoElements(Heater.Energy.ELECTRIC, 10.1, 65.1)),
                Arguments.of("element above freezing", (Executable) () -> element(20, 19.9)),
                Arguments.of(
                        "longest name",
                        part(ReliefValve.builder()
                                .name("x".repeat(60))
                                .setPressure(Pressure.gauge(7, BAR))
                                .fullLiftPressure(Pressure.gauge(7.7, BAR))
                                .reseatPressure(Pressure.gauge(5, BAR))
                                .fullFlow(10, FlowUnit.LITRE_PER_MINUTE)
                                .liftCharacteristic(ReliefValve.LiftCharacteristic.SNAP))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("allowed")
    void whatJustFitsIsAllowed(String what, Executable build) {
        assertDoesNotThrow(build);
    }

    /** Polybutene, a tenth of a millimetre thick. */
    private static PipeRun thin(double diameter) {
        return PipeRun.builder()
                .material(Material.PB)
                .outsideDiameter(diameter, LengthUnit.MILLIMETRE)
                .wall(0.1, LengthUnit.MILLIMETRE)
                .length(2, LengthUnit.METRE)
                .build();
    }

    /** At 10 bar its tank would grow by 67 %. */
    private static HotWaterSystem.Builder soft(double supplyBar) {
        return RefusalTest.whole(supplyBar, 10)
                .changeTank(tank -> tank.toBuilder()
                        .shell(Shell.cylinder(Material.PB, 300, 0.8, LengthUnit.MILLIMETRE))
                        .build());
    }

    /** What the supply is said to stand at can be asked for as the start, whatever the rounding of its sum. */
    @ParameterizedTest
    @CsvSource({"0, 3.2, 0.2", "310, 3.1, 0.3", "1234, 2.7, 0.1", "2500, 4.4, 0.35", "77, 1.9, 0.7"})
    void runMayStartAtThePressureOfTheSupply(double metres, double setBar, double riseBar) {
        HotWaterSystem house = RefusalTest.whole(4, 10)
                .site(Site.builder()
                        .altitude(metres, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .build())
                .supply(RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 8).toBuilder()
                        .arrangement(Supply.Arrangement.REDUCING_VALVE)
                        .reducingValve(reducing().toBuilder()
                                .set(Pressure.gauge(setBar, BAR))
                                .lockUpRise(riseBar, BAR)
                                .build())
                        .build())
                .build();
        for (Pressure start : List.of(Pressure.gauge(setBar + riseBar, BAR), house.supplyAtStart())) {
            assertDoesNotThrow(() -> house.toBuilder()
                    .start(Start.builder().pressure(start).build())
                    .build());
        }
    }

    /** Nothing above the air pushes: at exactly its pressure neither a charge nor a supply is one. */
    @Test
    void chargeAndSupplyLieAboveTheAir() {
        Pressure air = Pressure.absolute(101_325, PressureUnit.PASCAL);
        assertEquals(
                "vessel.precharge",
                onlyProblem(RefusalTest.whole(4, 10)
                                .vessel(RefusalTest.vessel(4).toBuilder()
                                        .precharge(air)
                                        .build()))
                        .field());
        Supply supply = RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 4).toBuilder()
                .pressure(air)
                .build();
        assertEquals(
                "supply.pressure",
                onlyProblem(RefusalTest.whole(4, 10).supply(supply)).field());
    }

    /** A check valve and a way back to the mains exclude each other, wherever the check valve is. */
    @Test
    void aSafetyGroupHoldsACheckValve() {
        ReliefValve group = RefusalTest.valve("group", 7, 7.7, 5).toBuilder()
                .kind(ReliefValve.Kind.SAFETY_GROUP)
                .build();
        HotWaterSystem.Builder house =
                RefusalTest.whole(4, 10).withoutReliefValves().addReliefValve(group);
        assertDoesNotThrow(house::build);
        Supply reduced = Parts.reduced(6, reducing().toBuilder());
        assertDoesNotThrow(() -> house.build().toBuilder().supply(reduced).build());
        InvalidDescriptionException.Problem direct =
                onlyProblem(house.supply(RefusalTest.supply(Supply.Arrangement.DIRECT, 4)));
        assertEquals("relief[0].kind", direct.field());
        assertEquals(
                "a safety group holds a check valve, so the supply cannot be direct: it has a check valve, or this is an expansion"
                        + " valve",
                direct.message());
        ReliefValve open =
                group.toBuilder().kind(ReliefValve.Kind.EXPANSION_VALVE).build();
        assertDoesNotThrow(
                () -> house.withoutReliefValves().addReliefValve(open).build());
    }

    @Test
    void messagesSayWhatIsTheMatter() {
        assertEquals(
                "3.9 bar gauge is below the supply pressure of 4 bar gauge, which would fill the system at once",
                onlyProblem(RefusalTest.whole(4, 10).start(RefusalTest.start(3.9)))
                        .message());
        InvalidDescriptionException thick = assertThrows(
                InvalidDescriptionException.class,
                () -> Shell.cylinder(Material.STEEL, 480, 48.1, LengthUnit.MILLIMETRE));
        assertEquals(
                "wall: 48.1 mm is more than a tenth of the diameter of 480 mm; the thin-wall formula does not apply",
                thick.getMessage());
        assertDoesNotThrow(() -> Shell.cylinder(Material.STEEL, 480, 48, LengthUnit.MILLIMETRE));
        InvalidDescriptionException missing = assertThrows(
                InvalidDescriptionException.class, () -> RefusalTest.supply(Supply.Arrangement.REDUCING_VALVE, 4));
        assertEquals("reducingValve: is missing", missing.getMessage());
    }

    private static InvalidDescriptionException.Problem onlyProblem(HotWaterSystem.Builder house) {
        List<InvalidDescriptionException.Problem> problems =
                assertThrows(InvalidDescriptionException.class, house::build).problems();
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    @Test
    void rangesIncludeTheirEnds() {
        assertEquals(1, Start.builder().dayOfYear(1).build().dayOfYear());
        assertEquals(366, Start.builder().dayOfYear(366).build().dayOfYear());
        assertThrows(IllegalArgumentException.class, () -> Start.builder().dayOfYear(0));
        assertThrows(IllegalArgumentException.class, () -> Start.builder().dayOfYear(367));
        Tank.Builder tank = RefusalTest.whole(4, 10).build().tank().toBuilder().height(1, LengthUnit.METRE);
        assertEquals(50, tank.layers(50).build().layers());
        assertEquals(1, tank.layers(1).build().layers());
        assertThrows(IllegalArgumentException.class, () -> tank.layers(51));
        assertThrows(IllegalArgumentException.class, () -> tank.layers(0));
        assertDoesNotThrow(() -> new Material("cork", 1e7, 0, 0));
        assertDoesNotThrow(() -> new Material("rubber", 1e7, 0.5, 1e-4));
        assertThrows(IllegalArgumentException.class, () -> new Material("string", 0, 0.3, 1e-5));
        assertThrows(IllegalArgumentException.class, () -> new Material("rock", Double.POSITIVE_INFINITY, 0.3, 1e-5));
        assertThrows(IllegalArgumentException.class, () -> new Material("steam", 1e7, 0.3, 1e-2));
        assertDoesNotThrow(() -> new Material("putty", 1e7, 0.3, 1e-4, 0.3, 0.05));
        assertThrows(IllegalArgumentException.class, () -> new Material("dough", 1e7, 0.3, 1e-4, 0.301, 0.05));
        assertThrows(IllegalArgumentException.class, () -> new Material("wax", 1e7, 0.3, 1e-4, 0.3, 0.0501));
        assertDoesNotThrow(() -> new Circulation.Hours(0, 86_399));
        assertThrows(IllegalArgumentException.class, () -> new Circulation.Hours(86_400, 1));
        assertThrows(IllegalArgumentException.class, () -> new Circulation.Hours(1, 86_400));
        assertDoesNotThrow(() -> new Supply.Outage(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Supply.Outage(5, 5));
        assertThrows(IllegalArgumentException.class, () -> new Supply.Outage(0, Double.POSITIVE_INFINITY));
        Limits closed = Limits.between("x", 1, 2);
        assertEquals(true, closed.contains(1) && closed.contains(2));
        assertEquals(false, Limits.above("x", 1, 2).contains(1));
    }

    @Test
    void reducingValveListsWhatIsMissing() {
        InvalidDescriptionException refused = assertThrows(
                InvalidDescriptionException.class, () -> ReducingValve.builder().build());
        assertEquals(
                List.of("set", "lock-up-rise", "droop", "rated-flow"),
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
    }

    private static Executable whole(ReliefValve valve) {
        return () -> RefusalTest.whole(4, 10).addReliefValve(valve).build();
    }

    private static Executable part(ReliefValve.Builder valve) {
        return valve::build;
    }

    private static ReliefValve valve(
            double setPressure, double fullLiftPressure, double reseatPressure, double leaksFrom) {
        return RefusalTest.valve("a", setPressure, fullLiftPressure, reseatPressure).toBuilder()
                .fault(ReliefFault.leakingSeat(Pressure.gauge(leaksFrom, BAR), 1, FlowUnit.LITRE_PER_MINUTE))
                .build();
    }

    private static ReliefValve.Builder combined(Double opensAt, Double reseatsAt, boolean onTank, boolean rated) {
        ReliefValve.Builder valve = RefusalTest.valve("a", 7, 7.7, 5).toBuilder();
        valve.location(onTank ? ReliefValve.Location.TANK_TOP : ReliefValve.Location.BRANCH);
        if (opensAt != null) {
            valve.opensAt(opensAt, TemperatureUnit.CELSIUS);
        }
        if (reseatsAt != null) {
            valve.reseatsAt(reseatsAt, TemperatureUnit.CELSIUS);
        }
        return rated ? valve.ratedInput(30, PowerUnit.KILOWATT) : valve;
    }

    private static ReducingValve reducing() {
        return ReducingValve.builder()
                .set(Pressure.gauge(3, BAR))
                .lockUpRise(0.2, BAR)
                .droop(0.5, BAR)
                .ratedFlow(20, FlowUnit.LITRE_PER_MINUTE)
                .build();
    }

    private static Supply outages(double secondFrom) {
        return RefusalTest.supply(Supply.Arrangement.CHECK_VALVE, 4).toBuilder()
                .addOutage(new Supply.Outage(secondFrom, 300))
                .addOutage(new Supply.Outage(100, 200))
                .build();
    }

    private static Element element(double setCelsius, double differential) {
        return Element.builder()
                .input(2, PowerUnit.KILOWATT)
                .height(70, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(differential, TemperatureDifferenceUnit.KELVIN)
                .build();
    }

    /** The lower one at a tenth of the height and set to 60 degC, the upper one set to 65 degC. */
    private static Heater twoElements(Heater.Energy energy, double upperPercent, double cutOutCelsius) {
        return Heater.builder()
                .energy(energy)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .height(10, RatioUnit.PERCENT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .cutOut(cutOutCelsius, TemperatureUnit.CELSIUS)
                .upper(element(65, 4).toBuilder()
                        .height(upperPercent, RatioUnit.PERCENT)
                        .build())
                .build();
    }
}

package io.github.heatswell.system;

import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.place.Place;
import io.github.heatswell.units.ComplianceUnit;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.EnergyUnit;
import io.github.heatswell.units.ExpansionUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.List;
import java.util.function.DoubleConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a description refuses, and how it says so. */
class RefusalTest {

    /** Every number of every part, by its method, with what lies just inside and just outside its range, in its first unit. */
    static Stream<Arguments> numbers() {
        return Stream.of(
                number("altitude", v -> Site.builder().altitude(v, LengthUnit.METRE), -430, 5500, "m"),
                number("room", v -> Site.builder().room(v, TemperatureUnit.CELSIUS), -30, 60, "degC"),
                number("pressure", v -> Supply.builder().pressure(Pressure.gauge(v, BAR)), 1e-6, 25, "bar"),
                number("water", v -> Supply.builder().water(v, TemperatureUnit.CELSIUS), 0, 40, "degC"),
                number("volume", v -> Tank.builder().volume(v, VolumeUnit.LITRE), 1, 20_000, "L"),
                number(
                        "standingLoss",
                        v -> Tank.builder().standingLoss(v, ConductanceUnit.WATT_PER_KELVIN),
                        0,
                        100,
                        "W/K"),
                number(
                        "expansion",
                        v -> Tank.builder().expansion(v, ExpansionUnit.MILLIONTH_PER_KELVIN),
                        0,
                        300,
                        "ppm/K"),
                number("inletMixing", v -> Tank.builder().inletMixing(v, RatioUnit.PERCENT), 0, 100, "%"),
                number("stiffnessAt", v -> PipeRun.builder().stiffnessAt(v, TemperatureUnit.CELSIUS), 0, 95, "degC"),
                number("loadedFor", v -> PipeRun.builder().loadedFor(v, DurationUnit.HOUR), 0.1, 1000, "h"),
                number(
                        "compliance",
                        v -> Tank.builder().compliance(v, ComplianceUnit.MILLILITRE_PER_BAR),
                        0.001,
                        10_000,
                        "mL/bar"),
                number(
                        "workingPressure",
                        v -> Tank.builder().workingPressure(Pressure.gauge(v, BAR)),
                        0.5,
                        12.5,
                        "bar"),
                number("input", v -> Heater.builder().input(v, PowerUnit.KILOWATT), 1e-6, 500, "kW"),
                number(
                        "recoveryEfficiency",
                        v -> Heater.builder().recoveryEfficiency(v, RatioUnit.PERCENT),
                        10,
                        100,
                        "%"),
                number("setPoint", v -> Heater.builder().setPoint(v, TemperatureUnit.CELSIUS), 10, 99, "degC"),
                number(
                        "differential",
                        v -> Heater.builder().differential(v, TemperatureDifferenceUnit.KELVIN),
                        0.1,
                        40,
                        "K"),
                number(
                        "outsideDiameter",
                        v -> PipeRun.builder().outsideDiameter(v, LengthUnit.MILLIMETRE),
                        3,
                        200,
                        "mm"),
                number("wall", v -> PipeRun.builder().wall(v, LengthUnit.MILLIMETRE), 0.1, 20, "mm"),
                number("length", v -> PipeRun.builder().length(v, LengthUnit.METRE), 1e-6, 5000, "m"),
                number("setPressure", v -> ReliefValve.builder().setPressure(Pressure.gauge(v, BAR)), 0.2, 25, "bar"),
                number(
                        "fullLiftPressure",
                        v -> ReliefValve.builder().fullLiftPressure(Pressure.gauge(v, BAR)),
                        0.2,
                        27.5,
                        "bar"),
                number(
                        "reseatPressure",
                        v -> ReliefValve.builder().reseatPressure(Pressure.gauge(v, BAR)),
                        1e-6,
                        25,
                        "bar"),
                number(
                        "fullFlow",
                        v -> ReliefValve.builder().fullFlow(v, FlowUnit.LITRE_PER_MINUTE),
                        0.1,
                        1000,
                        "L/min"),
                number("volume", v -> ExpansionVessel.builder().volume(v, VolumeUnit.LITRE), 0.1, 5000, "L"),
                number("precharge", v -> ExpansionVessel.builder().precharge(Pressure.gauge(v, BAR)), 1e-6, 16, "bar"),
                number("acceptance", v -> ExpansionVessel.builder().acceptance(v, RatioUnit.PERCENT), 5, 100, "%"),
                number(
                        "gasTimeConstant",
                        v -> ExpansionVessel.builder().gasTimeConstant(v, DurationUnit.SECOND),
                        1,
                        3600,
                        "s"),
                number("ratedInput", v -> ReliefValve.builder().ratedInput(v, PowerUnit.KILOWATT), 1e-6, 2000, "kW"),
                number("mixedTo", v -> Heater.builder().mixedTo(v, TemperatureUnit.CELSIUS), 30, 80, "degC"),
                number("rating", v -> ExpansionVessel.builder().rating(Pressure.gauge(v, BAR)), 0.5, 25, "bar"),
                number("emptyMass", v -> ExpansionVessel.builder().emptyMass(v, MassUnit.KILOGRAM), 1e-6, 2000, "kg"),
                number("length", v -> ExpansionVessel.builder().length(v, LengthUnit.METRE), 0.05, 5, "m"),
                number("water", v -> Start.builder().water(v, TemperatureUnit.CELSIUS), 0, 99, "degC"),
                number("pressure", v -> Start.builder().pressure(Pressure.gauge(v, BAR)), 1e-6, 25, "bar"));
    }

    private static Arguments number(String field, DoubleConsumer setter, double low, double high, String unit) {
        return Arguments.of(field, setter, low, high, unit);
    }

    @ParameterizedTest(name = "{0} {4}")
    @MethodSource("numbers")
    void rangeIsKept(String field, DoubleConsumer setter, double low, double high, String unit) {
        double hair = 1e-9 * (Math.abs(low) + Math.abs(high));
        setter.accept(low + hair);
        setter.accept(high - hair);
        for (double bad : new double[] {low - Math.max(2e-6, 1e-3 * Math.abs(high)), high * 1.001, -1e9, 1e12}) {
            assertRefused(field, unit, () -> setter.accept(bad));
        }
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            String message = assertThrows(IllegalArgumentException.class, () -> setter.accept(bad))
                    .getMessage();
            boolean byPressure =
                    message.startsWith("a pressure must be a finite number"); // refused before it comes here
            assertTrue(byPressure || message.startsWith(field + ": " + bad + " " + unit), message);
        }
    }

    private static void assertRefused(String field, String unit, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.startsWith(field + ": "), message);
        assertTrue(message.contains(" " + unit) || message.contains(unit + " "), message);
        assertTrue(message.contains("allowed range"), message);
    }

    @Test
    void messageNamesValueUnitAndRange() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> Tank.builder().volume(-230, VolumeUnit.LITRE))
                .getMessage();
        assertEquals("volume: -230 L is outside the allowed range, 1 L to 20000 L", message);
    }

    static Stream<Arguments> incomplete() {
        return Stream.of(
                missing(() -> Site.builder().build(), "altitude", "room"),
                missing(() -> Supply.builder().build(), "arrangement", "pressure", "water"),
                missing(() -> Tank.builder().build(), "volume", "shell", "standing-loss", "working-pressure"),
                missing(
                        () -> Heater.builder().build(),
                        "energy",
                        "recovery-efficiency",
                        "input",
                        "set-point",
                        "differential"),
                missing(() -> PipeRun.builder().build(), "material", "outside-diameter", "wall", "length"),
                missing(
                        () -> ReliefValve.builder().build(),
                        "name",
                        "opens",
                        "full-lift",
                        "reseats",
                        "full-flow",
                        "character"),
                missing(() -> ExpansionVessel.builder().build(), "volume", "precharge", "acceptance"),
                missing(() -> HotWaterSystem.builder().build(), "site", "supply", "tank", "heater"));
    }

    private static Arguments missing(Executable build, String... fields) {
        return Arguments.of(build, List.of(fields));
    }

    @ParameterizedTest
    @MethodSource("incomplete")
    void everythingMissingIsListedAtOnce(Executable build, List<String> fields) {
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, build);
        assertEquals(
                fields,
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
        assertTrue(refused.getMessage().contains("is missing"));
    }

    /** Where a file's key has another name in Java, the builder's method stands beside it. */
    @Test
    void whatIsMissingIsToldByTheMethodThatSetsIt() {
        String message = assertThrows(
                        InvalidDescriptionException.class,
                        () -> ReliefValve.builder().build())
                .getMessage();
        assertTrue(message.contains("setPressure: is missing"), message);
        assertTrue(message.contains("liftCharacteristic: is missing"), message);
    }

    /** A change that gives nothing is refused where it is made, and says of which part. */
    @Test
    void aChangeThatGivesNullIsRefused() {
        HotWaterSystem.Builder house = whole(4, 10).vessel(vessel(4)).addReliefValve(valve("a", 7, 7.7, 5));
        assertNull("vessel", () -> house.changeVessel(v -> null));
        assertNull("relief", () -> house.changeReliefValves(v -> null));
        assertNull("tank", () -> house.changeTank(v -> null));
        assertNull("heater", () -> house.changeHeater(v -> null));
        assertNull("supply", () -> house.changeSupply(v -> null));
        assertEquals(1, house.build().vessels().size(), "what was there stays");
    }

    /** A change of a vessel that is not there would leave a sweep with the same house twice. */
    @Test
    void aChangeOfAVesselThatIsNotThereIsRefused() {
        HotWaterSystem.Builder bare = whole(4, 10);
        assertEquals(
                "vessel: is not set yet, so there is none to change",
                assertThrows(IllegalStateException.class, () -> bare.changeVessel(v -> v))
                        .getMessage());
        assertEquals(
                "vessel: there is none with index 3; the system has no vessel",
                assertThrows(IndexOutOfBoundsException.class, () -> bare.changeVessel(3, v -> v))
                        .getMessage());
        HotWaterSystem.Builder house = bare.vessel(vessel(4));
        for (int index : new int[] {-1, 1}) {
            assertEquals(
                    "vessel: there is none with index " + index + "; the system has 1, counted from 0",
                    assertThrows(IndexOutOfBoundsException.class, () -> house.changeVessel(index, v -> v))
                            .getMessage());
        }
    }

    private static void assertNull(String part, Executable change) {
        assertEquals(
                part + ": the change gives null instead of another",
                assertThrows(NullPointerException.class, change).getMessage());
    }

    @Test
    void aRefusalNeedsAProblem() {
        RuntimeException refused =
                assertThrows(IllegalArgumentException.class, () -> new InvalidDescriptionException(List.of()));
        assertEquals("problems: there must be at least one", refused.getMessage());
    }

    /** The parts of a house tell in a line what they are. */
    @Test
    void partsTellWhatTheyAre() {
        HotWaterSystem house =
                whole(4, 10).addReliefValve(valve("a", 7, 7.7, 5)).build();
        assertEquals(
                "0 m above sea level, room at 20 degC, place not known; water of the supply, supply pressure, day 1 at 00:00;"
                        + " 100 L tank, rated for 10 bar gauge; electric heater, 3 kW, set to 60 degC; check valve, mains 4 bar gauge;"
                        + " ['a', opens at 7 bar gauge, reseats at 5 bar gauge]; 'none', 0 draws a day",
                String.join(
                        "; ",
                        house.site().toString(),
                        house.start().toString(),
                        house.tank().toString(),
                        house.heater().toString(),
                        house.supply().toString(),
                        house.reliefValves().toString(),
                        house.draws().toString()));
        HotWaterSystem other = house.toBuilder()
                .site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .place(Place.of("us-ipc"))
                        .build())
                .start(Start.builder()
                        .water(50, TemperatureUnit.CELSIUS)
                        .timeOfDay(6.5, DurationUnit.HOUR)
                        .build())
                .vessel(vessel(4))
                .build();
        Draw tub = Draw.builder()
                .timeOfDay(7, DurationUnit.HOUR)
                .flow(8, FlowUnit.LITRE_PER_MINUTE)
                .volume(40, VolumeUnit.LITRE)
                .build();
        assertEquals(
                "0 m above sea level, room at 20 degC, US, International Plumbing or Residential Code (IPC, IRC); water at 50 degC, supply pressure, day 1 at 06:30;"
                        + " 100 L tank, set to 60 degC, check valve, relief valves: 1, no vessel;"
                        + " 100 L tank, set to 60 degC, check valve, relief valves: 1, 12 L vessel, precharge 4 bar gauge;"
                        + " 40 L at 8 L/min from 7 h; 1 kWh at 8 L/min from 7 h, mixed to 40 degC",
                String.join(
                        "; ",
                        other.site().toString(),
                        other.start().toString(),
                        house.toString(),
                        other.toString(),
                        tub.toString(),
                        Draw.builder()
                                .timeOfDay(7, DurationUnit.HOUR)
                                .flow(8, FlowUnit.LITRE_PER_MINUTE)
                                .heat(1, EnergyUnit.KILOWATT_HOUR)
                                .mixedTo(40, TemperatureUnit.CELSIUS)
                                .build()
                                .toString()));
    }

    static Stream<Arguments> contradictions() {
        return Stream.of(
                contradiction("supply.pressure", whole(21, 10)),
                contradiction("vessel.precharge", whole(4, 6).vessel(vessel(6.5))),
                contradiction("relief[0].reseats", whole(4, 10).addReliefValve(reseatsAtAbsolute("a", 8.1))),
                contradiction("relief[0].full-lift", whole(4, 10).addReliefValve(fullAtAbsolute("b", 7.9))),
                contradiction(
                        "relief[1].name",
                        whole(4, 10).addReliefValve(valve("a", 7, 7.7, 5)).addReliefValve(valve("a", 8, 8.8, 6))),
                contradiction("start.pressure", whole(4, 10).start(start(3.9))),
                contradiction("start.pressure", whole(4, 10).start(start(20.5))),
                contradiction(
                        "start.pressure",
                        whole(4, 10)
                                .supply(supply(Supply.Arrangement.DIRECT, 4))
                                .start(start(4.5))));
    }

    /** Only a system knows the air that a pressure against vacuum is compared through. */
    private static ReliefValve reseatsAtAbsolute(String name, double bar) {
        return valve(name, 7, 7.7, 5).toBuilder()
                .reseatPressure(Pressure.absolute(bar, BAR))
                .build();
    }

    private static ReliefValve fullAtAbsolute(String name, double bar) {
        return valve(name, 7, 7.7, 5).toBuilder()
                .fullLiftPressure(Pressure.absolute(bar, BAR))
                .build();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    7 | 7.7 | 7   | reseatPressure: 7 bar gauge must be below the set pressure of 7 bar gauge
                    7 | 7.7 | 7.5 | reseatPressure: 7.5 bar gauge must be below the set pressure of 7 bar gauge
                    7 | 6.9 | 5   | fullLiftPressure: 6.9 bar gauge must not be below the set pressure of 7 bar gauge
                    """)
    void aValveWhosePressuresContradictEachOtherIsRefusedByItself(
            double opens, double fullLift, double reseats, String message) {
        InvalidDescriptionException refused =
                assertThrows(InvalidDescriptionException.class, () -> valve("a", opens, fullLift, reseats));
        assertEquals(message, refused.getMessage());
    }

    private static Arguments contradiction(String field, Object builder) {
        return Arguments.of(field, builder);
    }

    @ParameterizedTest
    @MethodSource("contradictions")
    void contradictionsNameTheField(String field, HotWaterSystem.Builder builder) {
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, builder::build);
        assertEquals(
                List.of(field),
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
    }

    @Test
    void allContradictionsAreListedAtOnce() {
        HotWaterSystem.Builder builder = whole(4, 6)
                .vessel(vessel(6.5))
                .addReliefValve(reseatsAtAbsolute("a", 8.6))
                .addReliefValve(fullAtAbsolute("b", 7));
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, builder::build);
        assertEquals(
                List.of("vessel.precharge", "relief[0].reseats", "relief[1].full-lift"),
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
    }

    @Test
    void thermostatMayNotWaitForFrost() {
        assertThrows(InvalidDescriptionException.class, () -> heater(20, 25));
        assertThrows(
                InvalidDescriptionException.class,
                () -> PipeRun.builder()
                        .material(Material.PEX)
                        .outsideDiameter(10, LengthUnit.MILLIMETRE)
                        .wall(5, LengthUnit.MILLIMETRE)
                        .length(1, LengthUnit.METRE)
                        .build());
        assertThrows(IllegalArgumentException.class, () -> ReliefValve.builder().name(" "));
        assertThrows(IllegalArgumentException.class, () -> ReliefValve.builder().name("x".repeat(61)));
        assertThrows(IllegalArgumentException.class, () -> ReliefValve.builder().name("two\nlines"));
        assertThrows(IllegalArgumentException.class, () -> new Material("jelly", Double.NaN, 0.3, 1e-5));
        assertThrows(IllegalArgumentException.class, () -> new Material("jelly", 1e9, 0.6, 1e-5));
        assertThrows(IllegalArgumentException.class, () -> new Material("jelly", 1e9, 0.3, -1e-5));
    }

    /** The house of these tests has no piping, so there is no room for air either. */
    @Test
    void airNeedsRoomInThePiping() {
        HotWaterSystem.Builder builder = whole(4, 10).trappedAir(0.5, VolumeUnit.LITRE);
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, builder::build);
        assertEquals("trappedAir: 0.5 L is more than the cold piping holds, 0 L", refused.getMessage());
    }

    @Test
    void aHeaterMayNotContradictItself() {
        Heater.Builder builder = Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(5, TemperatureDifferenceUnit.KELVIN)
                .simultaneous(true)
                .cutOut(60, TemperatureUnit.CELSIUS);
        InvalidDescriptionException refused = assertThrows(InvalidDescriptionException.class, builder::build);
        assertEquals(
                List.of("simultaneous", "cut-out"),
                refused.problems().stream()
                        .map(InvalidDescriptionException.Problem::field)
                        .toList());
    }

    /** A system copied through its builder is the same system. */
    @Test
    void builderCopiesEverything() {
        HotWaterSystem system = whole(4, 10)
                .vessel(vessel(4))
                .addReliefValve(valve("a", 7, 7.7, 5))
                .start(start(4.5))
                .build();
        HotWaterSystem copy = system.toBuilder().build();
        assertEquals(system.vessel(), copy.vessel());
        assertEquals(system.reliefValves(), copy.reliefValves());
        assertEquals(system.piping(), copy.piping());
        assertEquals(system.start(), copy.start());
        assertTrue(system.toBuilder().withoutVessel().build().vessel().isEmpty());
    }

    /** Contract: 4.48 bar and the same in psi are one pressure, though the last digit differs. */
    @Test
    void roundingOfUnitsIsNoContradiction() {
        double rounded = Math.nextDown(4.48);
        assertEquals(Pressure.gauge(4.48, BAR), valve("a", 4.48, rounded, 3).fullLiftPressure());
    }

    static HotWaterSystem.Builder whole(double supplyBar, double workingBar) {
        return HotWaterSystem.builder()
                .site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .build())
                .supply(supply(Supply.Arrangement.CHECK_VALVE, supplyBar))
                .tank(Tank.builder()
                        .volume(100, VolumeUnit.LITRE)
                        .shell(Shell.rigid())
                        .standingLoss(1, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(workingBar, BAR))
                        .build())
                .heater(heater(60, 5));
    }

    static Supply supply(Supply.Arrangement arrangement, double bar) {
        return Supply.builder()
                .arrangement(arrangement)
                .pressure(Pressure.gauge(bar, BAR))
                .water(10, TemperatureUnit.CELSIUS)
                .build();
    }

    static Heater heater(double setCelsius, double differential) {
        return Heater.builder()
                .energy(Heater.Energy.ELECTRIC)
                .input(3, PowerUnit.KILOWATT)
                .recoveryEfficiency(98, RatioUnit.PERCENT)
                .setPoint(setCelsius, TemperatureUnit.CELSIUS)
                .differential(differential, TemperatureDifferenceUnit.KELVIN)
                .build();
    }

    static ExpansionVessel vessel(double bar) {
        return ExpansionVessel.builder()
                .volume(12, VolumeUnit.LITRE)
                .precharge(Pressure.gauge(bar, BAR))
                .acceptance(60, RatioUnit.PERCENT)
                .build();
    }

    static Start start(double bar) {
        return Start.builder().pressure(Pressure.gauge(bar, BAR)).build();
    }

    static ReliefValve valve(String name, double setPressure, double fullLiftPressure, double reseatPressure) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(setPressure, BAR))
                .fullLiftPressure(Pressure.gauge(fullLiftPressure, BAR))
                .reseatPressure(Pressure.gauge(reseatPressure, BAR))
                .fullFlow(10, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.MODULATING)
                .build();
    }
}

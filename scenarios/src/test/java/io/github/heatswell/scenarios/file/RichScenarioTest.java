package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.Draw;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReducingValve;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.SupplyTemperature;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every further key of the format arrives where it belongs. */
class RichScenarioTest {

    private final HotWaterSystem system =
            ScenarioReader.read("rich", Sources.RICH).system();

    @Test
    void theSupplyArrives() {
        Supply supply = system.supply();
        assertEquals(Supply.Arrangement.REDUCING_VALVE, supply.arrangement());
        assertEquals(
                Map.of(21_600.0, bar(5), 84_600.0, bar(8)),
                Map.copyOf(supply.mains().entries()));
        SupplyTemperature seasons = SupplyTemperature.seasonal(
                        10, TemperatureUnit.CELSIUS, 18, TemperatureDifferenceUnit.KELVIN)
                .southern();
        assertEquals(seasons.on(100), supply.water().on(100), 1e-9); // 10 degC travels through kelvin
        assertEquals(5e-6 / 60, supply.seatLeakage(), 1e-15);
        ReducingValve valve = supply.reducingValve().orElseThrow();
        assertEquals(bar(3.5), valve.set());
        assertEquals(0.2e5, valve.lockUpRise(), 1e-9);
        assertEquals(0.6e5, valve.droop(), 1e-9);
        assertEquals(25e-3 / 60, valve.ratedFlow(), 1e-15);
        assertEquals(0.1e5, valve.bypassOpens().orElseThrow(), 1e-9);
        assertEquals(List.of(new Supply.Outage(7_200, 10_800), new Supply.Outage(86_400, 90_000)), supply.outages());
    }

    @Test
    void tankAndHeaterArrive() {
        assertEquals(12, system.tank().layers());
        assertEquals(0.2, system.tank().inletMixing(), 1e-12); // rounding
        assertEquals(1.3, system.tank().height().orElseThrow(), 1e-12);
        Heater heater = system.heater();
        assertTrue(heater.simultaneous());
        assertTrue(heater.thermostatStuck());
        assertEquals(OptionalDouble.of(358.15), heater.cutOut());
        assertEquals(OptionalDouble.of(321.15), heater.mixedTo());
        assertEquals(0.1, heater.elements().get(0).height(), 1e-12);
        Element upper = heater.elements().get(1);
        assertEquals(2_000, upper.input());
        assertEquals(0.7, upper.height(), 1e-12);
        assertEquals(333.15, upper.setPoint());
        assertEquals(4, upper.differential());
    }

    @Test
    void reliefValvesAndTheirFaultsArrive() {
        ReliefValve first = system.reliefValves().get(0);
        assertEquals(ReliefFault.Condition.LEAKING_SEAT, first.condition());
        assertEquals(Optional.of(bar(3)), first.fault().leaksFrom());
        assertEquals(10e-6 / 60, first.fault().leakage(), 1e-15);
        assertEquals(2, first.height());
        assertEquals(ReliefValve.Location.BRANCH, first.location());
        assertEquals(ReliefValve.Kind.EXPANSION_VALVE, first.kind());
        ReliefValve second = system.reliefValves().get(1);
        assertEquals(ReliefFault.Condition.STUCK_OPEN, second.condition());
        assertEquals(0.05, second.fault().stuckLift(), 1e-12);
        ReliefValve third = system.reliefValves().get(2);
        assertEquals(ReliefFault.Condition.BLOCKED, third.condition());
        assertEquals(ReliefValve.Location.TANK_TOP, third.location());
        assertEquals(OptionalDouble.of(372.15), third.setTemperature());
        assertEquals(OptionalDouble.of(361.15), third.reseatTemperature());
        assertEquals(11_723, third.ratedInput().orElseThrow(), 0.5); // printed digits
    }

    @Test
    void everythingElseArrives() {
        ExpansionVessel vessel = system.vessel().orElseThrow();
        assertEquals(OptionalDouble.of(278.15), vessel.chargedAt());
        assertEquals(OptionalDouble.of(303.15), vessel.temperature());
        assertEquals(1.8, vessel.height());
        assertEquals(ExpansionVessel.Condition.ISOLATED, vessel.condition());
        assertEquals(List.of("on the wall", "in the tank"), system.vesselNames());
        assertEquals(8e-3, system.vessels().get(1).volume(), 1e-15);
        assertEquals(0.5e-3, system.trappedAir().orElseThrow(), 1e-15);
        assertEquals(40e-6 / 60, system.leaks().get(0).flow(), 1e-15);
        assertEquals(bar(4), system.leaks().get(0).at());
        assertEquals(1.5, system.gaugeHeight());
        assertEquals(21_600, system.start().timeOfDay());
        assertEquals(15, system.start().dayOfYear());
    }

    @Test
    void theVesselsPlateArrives() {
        ExpansionVessel.Body body = system.vessel().orElseThrow().body();
        assertEquals(Optional.of(Pressure.gauge(150, PressureUnit.PSI)), body.rating());
        assertEquals(Optional.of(ExpansionVessel.Mounting.HORIZONTAL_SUPPORTED), body.mounting());
        assertEquals(4.5359237, body.emptyMass().orElseThrow(), 1e-12);
        assertEquals(0.38, body.length().orElseThrow(), 1e-12);
    }

    @Test
    void aVesselOnTheWrongSideIsUnderstood() {
        String text = Sources.LEAST + "vessel: { volume: 8 L, precharge: 3 bar, condition: upstream-of-check }\n";
        assertEquals(
                ExpansionVessel.Condition.UPSTREAM_OF_CHECK,
                ScenarioReader.read("m", text).system().vessel().orElseThrow().condition());
    }

    @Test
    void drawsArrive() {
        List<Draw> draws = system.draws().draws();
        assertEquals(25_200, draws.get(0).timeOfDay());
        assertEquals(0.04, draws.get(0).volume().orElseThrow(), 1e-12);
        assertEquals(313.15, draws.get(0).mixedTemperature().orElseThrow(), 1e-9);
        assertEquals(69_330, draws.get(1).timeOfDay());
        assertEquals(1.4 * 3.6e6, draws.get(1).heat().orElseThrow(), 1e-6);
        assertEquals(8e-3 / 60, draws.get(1).flow(), 1e-15);
        assertTrue(draws.get(1).mixedTemperature().isEmpty());
    }

    @Test
    void publishedProfilesHaveNames() {
        HotWaterSystem medium =
                ScenarioReader.read("m", Sources.LEAST + "draws: EU-M\n").system();
        assertEquals("eu-m", medium.draws().name());
        assertFalse(medium.draws().draws().isEmpty());
        assertTrue(ScenarioReader.read("m", Sources.LEAST + "draws: []\n")
                .system()
                .draws()
                .draws()
                .isEmpty());
    }

    @Test
    void aBackflowPreventerIsACheckValve() {
        String text = Sources.LEAST.replace("check-valve", "backflow preventer");
        assertEquals(
                Supply.Arrangement.CHECK_VALVE,
                ScenarioReader.read("m", text).system().supply().arrangement());
    }

    @Test
    void samplingAnewKeepsTheDayAndTheClock() {
        Scenario other = ScenarioReader.read("rich", Sources.RICH).sampledEvery(Duration.ofSeconds(20));
        assertEquals(15, other.system().start().dayOfYear());
        assertEquals(21_600, other.system().start().timeOfDay());
    }

    /** What is assumed for the further keys, and only where they come into play. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            height: 1.3 m, never-fails: no,     | never-fails: no,  | tank.height = 1270 mm
            , differential: 4 K                | ''                | heater.upper.differential = 5 K
            lock-up-rise: 0.2 bar,             | ''                | supply.reducing-valve.lock-up-rise = 0.3 bar
            droop: 0.6 bar,                    | ''                | supply.reducing-valve.droop = 0.7 bar
            rated-flow: 25 L/min,              | ''                | supply.reducing-valve.rated-flow = 20 L/min
            location: tank-top,                | ''                | relief[2].location = tank-top
            reseats-at: 88 degC,               | ''                | relief[2].reseats-at = 88 degC
            'opens-at: 99 degC, reseats-at: 88 degC' | opens-at: 210 degF | relief[2].reseats-at = 190.2 degF
            """)
    void whatIsLeftOutIsAssumed(String piece, String replacement, String assumption) {
        Scenario rich = ScenarioReader.read("rich", Sources.RICH);
        Scenario scenario = ScenarioReader.read("rich", Sources.richWith(piece, replacement));
        List<String> more = scenario.assumptions().stream()
                .filter(each -> !rich.assumptions().contains(each))
                .map(each -> each.field() + " = " + each.value())
                .toList();
        assertEquals(List.of(assumption), more);
    }

    private static Pressure bar(double value) {
        return Pressure.gauge(value, PressureUnit.BAR);
    }
}

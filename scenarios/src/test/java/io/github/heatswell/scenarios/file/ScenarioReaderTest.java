package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("changes the language of the whole Java machine")
class ScenarioReaderTest {

    @TempDir
    private Path folder;

    @Test
    void everyKeyArrivesWhereItBelongs() {
        Scenario scenario = ScenarioReader.read("brook", Sources.FULL);
        HotWaterSystem system = scenario.system();
        assertEquals("House by the brook", scenario.title());
        assertEquals(310, system.site().altitude());
        assertEquals(290.15, system.site().roomTemperature());
        assertEquals(Supply.Arrangement.CHECK_VALVE, system.supply().arrangement());
        assertEquals(bar(4.2), system.supply().mains().entries().get(0.0));
        assertEquals(282.15, system.coldAtStart());
        assertEquals(0.23, system.tank().volume());
        Shell shell = Shell.cylinder(Material.STEEL, 480, 2.2, LengthUnit.MILLIMETRE);
        assertEquals(shell.compliance(), system.tank().shell().compliance());
        assertEquals(shell.thermalGrowth(), system.tank().shell().thermalGrowth());
        assertEquals(2.4, system.tank().standingLoss());
        assertEquals(bar(10), system.tank().workingPressure());
        assertEquals(11_200, system.heater().input());
        assertEquals(0.78, system.heater().recoveryEfficiency());
        assertEquals(331.15, system.heater().setPoint());
        assertEquals(6, system.heater().differential());
        assertEquals(Duration.ofHours(4), scenario.duration());
        assertEquals(Duration.ofMinutes(1), scenario.sample());
        assertEquals(List.of(), scenario.assumptions());
        assertEquals(Sources.FULL, scenario.source());
    }

    @Test
    void listsAndOptionalSectionsArriveToo() {
        HotWaterSystem system = ScenarioReader.read("brook", Sources.FULL).system();
        assertEquals(Material.COPPER, system.piping().get(0).material());
        assertEquals(Math.PI / 4 * 0.0202 * 0.0202 * 14, system.piping().get(0).volume(), 1e-15);
        ReliefValve valve = system.reliefValves().get(0);
        assertEquals("expansion valve", valve.name());
        assertEquals(bar(7), valve.setPressure());
        assertEquals(bar(7.7), valve.fullLiftPressure());
        assertEquals(bar(5.6), valve.reseatPressure());
        assertEquals(20e-3 / 60, valve.fullFlow(), 1e-18);
        assertEquals(Optional.of(ReliefValve.LiftCharacteristic.SNAP), valve.liftCharacteristic());
        assertEquals(0.012, system.vessel().orElseThrow().volume());
        assertEquals(bar(4.2), system.vessel().orElseThrow().precharge());
        assertEquals(0.6, system.vessel().orElseThrow().acceptance());
        assertEquals(OptionalDouble.of(30), system.vessel().orElseThrow().gasTimeConstant());
        assertEquals(OptionalDouble.of(313.15), system.start().waterTemperature());
        assertEquals(Optional.of(bar(4.5)), system.start().pressure());
    }

    @Test
    void extremesThatAreLegalAreTaken() {
        String text = """
                supply: { arrangement: direct, pressure: 5.2 bar abs }
                tank: { volume: 230 L, material: rigid, standing-loss: 0 W/K }
                heater: { energy: electric, input: 3 kW, set-point: 60 degC, recovery-efficiency: 100 % }
                piping: []
                relief: []
                vessel: { volume: 12 L, precharge: 4.2 bar, acceptance: 100 % }
                run: { duration: 30 s }
                """;
        Scenario scenario = ScenarioReader.read("plain", text);
        assertEquals("plain", scenario.title());
        assertEquals(0, scenario.system().tank().shell().compliance());
        assertEquals(0, scenario.system().tank().standingLoss());
        assertEquals(1.0, scenario.system().vessel().orElseThrow().acceptance());
        assertEquals(
                Pressure.absolute(5.2, PressureUnit.BAR),
                scenario.system().supply().mains().entries().get(0.0));
        assertEquals(Duration.ofSeconds(30), scenario.sample());
    }

    @Test
    void dimensionsMayComeInDifferentUnits() {
        Scenario scenario = ScenarioReader.read("mixed", Sources.with("wall: 2.2 mm", "wall: 0.1 in"));
        Shell shell = Shell.cylinder(Material.STEEL, 480, 2.54, LengthUnit.MILLIMETRE);
        assertEquals(shell.compliance(), scenario.system().tank().shell().compliance(), 1e-24);
    }

    @Test
    void aFileIsNamedAfterItself() throws IOException {
        Path file = folder.resolve("My house.yaml");
        Files.writeString(file, "\uFEFF" + Sources.LEAST.replace("\n", "\r\n"), StandardCharsets.UTF_8);
        Scenario scenario = ScenarioReader.read(file);
        assertEquals("My-house", scenario.name());
        assertEquals("My-house", scenario.title());
    }

    @Test
    void faultsOfAFileNameTheFile() throws IOException {
        Path file = folder.resolve("bad.yaml");
        Files.writeString(file, "a: 1\n");
        InvalidScenarioException failure =
                assertThrows(InvalidScenarioException.class, () -> ScenarioReader.read(file));
        assertTrue(failure.getMessage().startsWith(file + ":1:1: "), failure::getMessage);
    }

    @Test
    void theLanguageOfTheMachineDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            String text = Sources.FULL.replace("check-valve", "CHECK-VALVE").replace("energy: gas", "energy: ELECTRIC");
            assertEquals(
                    Supply.Arrangement.CHECK_VALVE,
                    ScenarioReader.read("brook", text).system().supply().arrangement());
            Locale.setDefault(Locale.GERMANY);
            assertEquals(
                    "[4:17: tank.volume: 0.5 L is outside the allowed range, 1 L to 20000 L]",
                    Sources.faults(Sources.with("volume: 230 L", "volume: 0.5 L"))
                            .toString());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void programsMakeScenariosWithoutAText() {
        HotWaterSystem system = ScenarioReader.read("brook", Sources.FULL).system();
        Scenario scenario = Scenario.of("../made", "Made by hand", system, Duration.ofHours(1), Duration.ofSeconds(10));
        assertEquals("made", scenario.name());
        assertEquals("", scenario.source());
        assertEquals(
                Duration.ofSeconds(20),
                scenario.sampledEvery(Duration.ofSeconds(20)).sample());
        assertThrows(
                IllegalArgumentException.class,
                () -> Scenario.of("x", "x", system, Duration.ZERO, Duration.ofSeconds(1)));
    }

    /** Contract: what is not given is named. */
    @Test
    void programsAreToldWhichArgumentIsMissing() {
        HotWaterSystem house = ScenarioReader.read("brook", Sources.FULL).system();
        Duration hour = Duration.ofHours(1);
        isMissing("name", () -> Scenario.of(null, "x", house, hour, hour));
        isMissing("title", () -> Scenario.of("x", null, house, hour, hour));
        isMissing("system", () -> Scenario.of("x", "x", null, hour, hour));
        isMissing("duration", () -> Scenario.of("x", "x", house, null, hour));
        isMissing("sample", () -> Scenario.of("x", "x", house, hour, null));
        Scenario scenario = Scenario.of("x", "x", house, hour, hour);
        isMissing("sample", () -> scenario.sampledEvery(null));
        isMissing("values", () -> scenario.drawn((double[]) null));
        isMissing("units", () -> scenario.in(null));
    }

    private static void isMissing(String argument, Executable call) {
        assertEquals(argument, assertThrows(NullPointerException.class, call).getMessage());
    }

    @Test
    void anotherSamplingIsNoAssumptionAnyMore() {
        Scenario scenario = ScenarioReader.read("least", Sources.LEAST);
        assertTrue(scenario.assumptions().stream().anyMatch(a -> a.field().equals("run.sample")));
        Scenario finer = scenario.sampledEvery(Duration.ofSeconds(10));
        assertTrue(finer.assumptions().stream().noneMatch(a -> a.field().equals("run.sample")));
        for (Duration bad : List.of(Duration.ofMillis(100), Duration.ofDays(2), Duration.ofSeconds(-1))) {
            assertThrows(IllegalArgumentException.class, () -> scenario.sampledEvery(bad));
        }
    }

    private static Pressure bar(double value) {
        return Pressure.gauge(value, PressureUnit.BAR);
    }
}

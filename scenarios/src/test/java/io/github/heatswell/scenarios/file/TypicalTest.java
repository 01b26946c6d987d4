package io.github.heatswell.scenarios.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.PressureUnit;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TypicalTest {

    @Test
    void everythingLeftOutIsListedAsAnAssumption() {
        Scenario scenario = ScenarioReader.read("least", Sources.LEAST);
        String listed = scenario.assumptions().stream()
                .map(assumption -> assumption.field() + " = " + assumption.value())
                .collect(Collectors.joining("\n"));
        assertEquals("""
                site.altitude = 0 m
                site.room = 20 degC
                supply.water = 10 degC
                tank.diameter = 460 mm
                tank.wall = 2.3 mm
                tank.standing-loss = 7.1 W/K
                tank.working-pressure = 10 bar
                heater.recovery-efficiency = 78 %
                heater.differential = 5 K
                piping = []
                relief = []
                run.duration = 24 h
                run.sample = 1 min""", listed);
        assertTrue(scenario.assumptions().stream().noneMatch(a -> a.basis().isBlank()));
    }

    @Test
    void aReliefValveNeedsItsSetPressureAlone() {
        Scenario scenario = ScenarioReader.read("valve", Sources.LEAST + "relief:\n  - opens: 150 psi\n");
        List<String> listed = scenario.assumptions().stream()
                .filter(assumption -> assumption.field().startsWith("relief"))
                .map(assumption -> assumption.field() + " = " + assumption.value())
                .toList();
        assertEquals(
                List.of(
                        "relief[0].name = relief valve",
                        "relief[0].full-lift = 165 psi",
                        "relief[0].reseats = 120 psi",
                        "relief[0].full-flow = 20 L/min",
                        "relief[0].character = modulating"),
                listed);
    }

    /** 80 % and 110 % of 10.28 bar, and 11 K below 98.7 degC, are the same in any unit: only words round them. */
    @Test
    void whatFollowsFromAValueIsTheSameInAnyUnit() {
        List<ReliefValve> pair = List.of(
                        "{ opens: 10.28 bar, opens-at: 98.7 degC }",
                        "{ opens: " + PressureUnit.PSI.fromSi(10.28e5) + " psi, opens-at: 209.66 degF }")
                .stream()
                .map(valve -> ScenarioReader.read("valve", Sources.LEAST + "relief:\n  - " + valve + "\n"))
                .map(scenario -> scenario.system().reliefValves().get(0))
                .toList();
        ReliefValve si = pair.get(0);
        ReliefValve us = pair.get(1);
        assertEquals(0.8 * 10.28e5, us.reseatPressure().value(), 1e-3);
        assertEquals(si.reseatPressure().value(), us.reseatPressure().value(), 1e-3);
        assertEquals(si.fullLiftPressure().value(), us.fullLiftPressure().value(), 1e-3);
        assertEquals(
                si.reseatTemperature().orElseThrow(), us.reseatTemperature().orElseThrow(), 1e-6);
    }

    @Test
    void everyTypicalValueBelongsToAFieldThatHasNoOtherDefault() {
        Schema.typical()
                .keySet()
                .forEach(field -> assertFalse(Schema.field(field).orElseThrow().optional(), field));
    }

    @Test
    void whatATypicalValueDependsOnIsBoundBefore() {
        for (Section<?, ?> section : Schema.allSections()) {
            for (int i = 0; i < section.fields().size(); i++) {
                List<String> before = section.keys().subList(0, i);
                String field = section.of(section.keys().get(i));
                section.fields().get(i).typical().stream()
                        .flatMap(typical -> typical.needs().stream())
                        .forEach(key -> assertTrue(
                                before.contains(key)
                                        || key.contains(".")
                                                && Schema.field(key).isPresent(),
                                field));
            }
        }
    }

    /**
     * Proportions hold from the smallest tank to the largest, so no tank is refused for what was assumed; and a tank in gallons has
     * the plate of the US.
     */
    @ParameterizedTest
    @CsvSource({
        "1 L, steel, 80 mm, 0.5 mm, 0.19 W/K, 10 bar",
        "50 gal, stainless-steel, 430 mm, 1.2 mm, 6.3 W/K, 150 psi",
        "20 m3, copper, 2040 mm, 8.2 mm, 100 W/K, 10 bar"
    })
    void tanksOfAnySizeHaveUsualProportions(
            String volume, String material, String diameter, String wall, String loss, String pressure) {
        String text = Sources.LEAST.replace(
                "volume: 230 L, material: steel", "volume: " + volume + ", material: " + material);
        List<String> values = ScenarioReader.read("tank", text).assumptions().stream()
                .filter(assumption -> assumption.field().startsWith("tank"))
                .map(Assumption::value)
                .toList();
        assertEquals(List.of(diameter, wall, loss, pressure), values);
    }

    /**
     * Validation: the standing loss of a gas tank by the equation of the Home Energy Saver documentation (Lawrence Berkeley
     * National Laboratory), after US DOE (1993): UA = (1/EF - 1/RE) / (67.5 degF (24 h/Q - 1/(RE P))), with Q = 41 093.7 Btu a
     * day. Energy factor 0.60 and recovery efficiency 0.78 are those of a usual tank of 40 gal at 40 000 Btu/h; from memory.
     */
    @Test
    void aGasTankLosesHeatUpItsFlueToo() {
        double energyFactor = 0.60;
        double recovery = 0.78;
        double published = (1 / energyFactor - 1 / recovery) / (67.5 * (24 / 41_093.7 - 1 / (recovery * 40_000)));
        assertEquals(10.3, published, 0.05);
        String gas = "tank: { volume: 40 gal, material: steel }\n"
                + "heater: { energy: gas, input: 40000 Btu/h, set-point: 125 degF }\n";
        String supply = "supply: { arrangement: check-valve, pressure: 60 psi }\n";
        Scenario burner = ScenarioReader.read("burner", supply + gas);
        // the typical value has two figures
        assertEquals(published, loss(burner), 0.1);
        Scenario element = ScenarioReader.read("element", supply + gas.replace("gas,", "Electric,"));
        assertEquals(3.2, loss(element), 0.1);
        assertEquals(loss(element), loss(burner.with(List.of(new Change("heater.energy", "electric")))));
    }

    /** The typical loss follows an uncertain volume. */
    @Test
    void theLossOfAGasTankFollowsItsVolume() {
        Scenario scenario = ScenarioReader.read("range", Sources.LEAST.replace("230 L", "200 L to 300 L"));
        assertEquals(6.5, scenario.drawn(200).tank().standingLoss());
        assertEquals(8.5, scenario.drawn(300).tank().standingLoss());
    }

    private static double loss(Scenario scenario) {
        return ConductanceUnit.BTU_PER_HOUR_FAHRENHEIT.fromSi(
                scenario.system().tank().standingLoss());
    }

    @Test
    void plasticTanksHaveNoUsualWall() {
        String text = Sources.LEAST.replace("material: steel", "material: pex");
        assertEquals(
                "[2:1: tank.wall: is missing; write, for example, 'wall: 2.2 mm']",
                Sources.faults(text).toString());
    }

    @ParameterizedTest
    @CsvSource({"30 s, 30 s", "4 h, 1 min", "61 d, 1 h"})
    void samplesSuitTheLengthOfTheRun(String duration, String sample) {
        Scenario scenario = ScenarioReader.read("run", Sources.LEAST + "run: { duration: " + duration + " }\n");
        assertEquals(
                sample,
                scenario.assumptions().stream()
                        .filter(assumption -> assumption.field().equals("run.sample"))
                        .map(Assumption::value)
                        .findFirst()
                        .orElseThrow());
    }
}

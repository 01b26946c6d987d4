package io.github.heatswell.scenarios.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.choice.VesselAnswer.FormulaAnswer;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.sizing.SizingReconciliation;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.sizing.VesselSizing;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The answers of a sizing are put to the test by simulating the houses they speak of. */
class VesselChoiceTest {

    private static final VesselAnswer LODGE = answer("orchard-lodge");

    /** Regression: of several vessels only the first one's plate was read. */
    @Test
    void ofSeveralVesselsTheOneThatBearsLeastBoundsThePeak() {
        Scenario two = Catalogue.read("orchard-lodge-two-vessels");
        double air = two.system().site().atmosphere();
        List<String> plate = List.of("vessel.rating", "vessels[0].rating");
        for (int weak = 0; weak < 2; weak++) {
            Scenario plates = two.with(
                    List.of(Change.of(plate.get(weak) + "=3 bar"), Change.of(plate.get(1 - weak) + "=10 bar")));
            double head =
                    plates.system().head(plates.system().vessels().get(weak).height());
            SizingTarget target = VesselChoice.of(plates).build().target();
            assertEquals(SizingTarget.Rule.VESSEL_RATING, target.ruling().rule());
            assertEquals(3e5 + air + head, target.absolute(), 100); // heads in water of one density
        }
    }

    @Test
    void theProposedVesselKeepsTheValveShutAndTheNextSmallerPassesTheLimit() {
        SizingResult.Vessel least = LODGE.sizing().smallestOnSale().orElseThrow();
        SizingResult.Vessel bought = LODGE.recommended().orElseThrow();
        RunResult with = LODGE.proposed().orElseThrow();
        assertEquals(bought.volume(), with.system().vessel().orElseThrow().volume());
        assertEquals(Optional.empty(), with.first(Event.Kind.RELIEF_OPENED));
        double limit = LODGE.sizing().target().absolute();
        assertTrue(with.extremes().highestPressure().value() <= limit);
        SizingResult.Vessel smaller = LODGE.sizing().nominal().stream()
                .filter(size -> size.volume() < least.volume())
                .reduce((a, b) -> b)
                .orElseThrow();
        HotWaterSystem house = LODGE.scenario().system();
        ExpansionVessel vessel = ExpansionVessel.builder()
                .volume(smaller.volume(), VolumeUnit.CUBIC_METRE)
                .precharge(smaller.precharge())
                .acceptance(60, RatioUnit.PERCENT)
                .build();
        RunResult run = Simulation.of(
                        house.toBuilder().vessel(vessel).build(),
                        LODGE.scenario().duration())
                .run();
        assertTrue(run.extremes().highestPressure().value() > limit);
        // The run begins with a cold fill behind a check valve, so it is the worst heat-up itself; both runs are
        // within the tolerance of the solver of one another.
        assertEquals(smaller.peakAbsolute(), run.extremes().highestPressure().value(), 20);
    }

    @Test
    void theLowestOfTheLimitsRules() {
        assertEquals(
                SizingTarget.Rule.RELIEF_RESEAT,
                LODGE.sizing().target().ruling().rule());
        assertEquals(
                PressureUnit.BAR.toSi(5.6 - 0.03 * 7), LODGE.sizing().target().gauge(), 1e-6);
        VesselAnswer own = VesselChoice.of(Catalogue.read("orchard-lodge"))
                .limit(Optional.of(Pressure.gauge(5, PressureUnit.BAR)))
                .precharge(VesselSizing.Precharge.STATIC_LESS_FIFTH_BAR)
                .build()
                .answer();
        assertEquals(SizingTarget.Rule.OWN, own.sizing().target().ruling().rule());
        assertEquals(
                4.0,
                PressureUnit.BAR.fromSi(
                        own.sizing().smallestOnSale().orElseThrow().precharge().value()),
                1e-9);
    }

    /** Regression: European formulas stood on the page of a house in Ohio. */
    @Test
    void theUsHasNoEuropeanFormulas() {
        Scenario ohio = Catalogue.read("orchard-lodge").with(List.of(Change.of("site.place=us-ipc")));
        assertEquals(
                List.of("handbook, diaphragm tank"),
                VesselChoice.of(ohio).build().answer().formulas().stream()
                        .map(FormulaAnswer::name)
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge", "tannery-yard", "mill-cottage", "ferry-cottage"})
    void namedDifferencesAddUpFromFormulaToSimulation(String name) {
        for (FormulaAnswer formula : answer(name).formulas()) {
            formula.differences().ifPresent(differences -> {
                double sum = differences.formula().volume();
                for (SizingReconciliation.Term term : differences.terms()) {
                    sum += term.volume();
                }
                assertEquals(differences.simulated(), sum, 1e-12, formula.name());
            });
        }
    }

    @Test
    void whereTheSupplyIsTooHighItSaysToLowerIt() {
        VesselAnswer answer = answer("mill-cottage-high-mains");
        assertEquals(SizingResult.Outcome.NO_VESSEL_CAN, answer.sizing().outcome());
        assertTrue(answer.sizing().lowerSupplyTo().isPresent());
        assertEquals(Optional.empty(), answer.proposed());
        answer.formulas().forEach(formula -> assertTrue(formula.result().isEmpty(), formula.name()));
    }

    @Test
    void anOpenSupplyNeedsNone() {
        VesselAnswer answer = answer("ferry-cottage");
        assertEquals(SizingResult.Outcome.NONE_NEEDED, answer.sizing().outcome());
        assertEquals(Optional.empty(), answer.proposed());
        assertEquals(0, answer.waterAsItIs().orElseThrow().volume());
    }

    @Test
    void aStuckThermostatIsNoCaseForAVessel() {
        VesselChoice choice =
                VesselChoice.of(Catalogue.read("mill-cottage-thermostat")).build();
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, choice::answer);
        assertEquals("thermostat: is stuck; repair it, since no vessel helps against that", refusal.getMessage());
    }

    /** A run of four hours counts as a day, one of three days as three. */
    @ParameterizedTest
    @ValueSource(strings = {"orchard-lodge", "mill-cottage"})
    void theWaterOfAYearIsThatOfTheRunDayByDay(String name) {
        Scenario scenario = Catalogue.read(name);
        RunResult run = scenario.simulation().run();
        double days = Math.max(1, scenario.duration().toHours() / 24.0);
        double expected = run.totals().relieved() * 365 / days;
        assertTrue(expected > 0);
        assertEquals(expected, YearlyWater.of(run.summary()).volume(), 1e-12);
    }

    /** No year is made of a house that nobody should live in, nor is one with a vessel promised that cannot change it. */
    @Test
    void aHazardHasNoYearlyBillAndAStuckValveHasOne() {
        for (String name : List.of("kiln-house-runaway", "kiln-house-cut-out", "mill-cottage-thermostat")) {
            Scenario house = Catalogue.read(name);
            RunResult run = house.simulation().run();
            assertEquals(Optional.empty(), YearlyWater.ofNormalLife(run.summary(), house.doubts()), name);
        }
        VesselAnswer stuck = answer("mill-cottage-stuck-open");
        assertTrue(stuck.waterAsItIs().orElseThrow().volume() > 100);
        assertEquals(Optional.empty(), stuck.waterProposed());
        assertTrue(answer("orchard-lodge").waterProposed().isPresent());
    }

    /** The tank is filled cold once, not every day: of a day of use only what follows the first heat-up counts. */
    @Test
    void theFirstColdFillIsNoPartOfEveryDay() {
        Scenario house = behindAReducingValve("60 psi")
                .with(List.of(Change.of("relief[0].opens=80 psi"), Change.of("vessel.precharge=60 psi")));
        RunResult run = house.simulation().run();
        double filled = run.summary().first(Event.Kind.HEATER_OFF).orElseThrow().time();
        int last = (int) Math.ceil(filled / run.trace().grid().step());
        double later = run.totals().relieved() - run.trace().value(Channel.RELIEVED_TOTAL, last);
        assertTrue(later > 0 && later < 0.9 * run.totals().relieved());
        double days = (run.summary().end() - filled) / 86_400;
        assertEquals(later * 365 / days, YearlyWater.of(run.summary()).volume(), 0.02 * later * 365);
    }

    /** What a relief valve on the cold pipe is said to discharge is what a run of the house with just that valve discharges. */
    @ParameterizedTest
    @ValueSource(strings = {"58 psi", "40 psi"})
    void aReliefValveOnTheColdPipeIsTheRunOfWhatItProposes(String set) {
        Scenario house = behindAReducingValve(set);
        DischargingValve cold = VesselChoice.of(house).build().answer().valves().get(0);
        List<Change> fitted = new ArrayList<>(List.of(
                Change.of("relief[1].name=added"),
                Change.of("relief[1].location=branch"),
                Change.of("relief[1].opens=" + cold.setting().in(PressureUnit.PSI) + " psi")));
        assertEquals(set.equals("58 psi"), cold.reseat().isPresent(), "a usual one closes at 56 psi");
        RunResult usual = house.with(fitted).simulation().run();
        cold.reseat()
                .ifPresent(
                        reseat -> fitted.add(Change.of("relief[1].reseats=" + reseat.in(PressureUnit.PSI) + " psi")));
        RunResult run = house.with(fitted).simulation().run();
        assertEquals(
                YearlyWater.of(run.summary()).volume(),
                cold.water().orElseThrow().volume(),
                1e-6);
        assertEquals(List.of(), run.summary().fedRelief());
        assertEquals(cold.reseat().isPresent(), !usual.summary().fedRelief().isEmpty());
    }

    private static Scenario behindAReducingValve(String set) {
        return ScenarioReader.read("walnut", """
                site: { place: us-ipc }
                supply: { arrangement: reducing-valve, pressure: 90 psi, reducing-valve: { set: %s }, water: 58 degF }
                tank: { volume: 50 gal, material: steel, working-pressure: 150 psi }
                heater: { energy: gas, input: 40000 Btu/h, set-point: 125 degF }
                relief:
                  - { opens: 150 psi, opens-at: 210 degF }
                vessel: { volume: 2 gal, precharge: 40 psi }
                draws: us-high
                run: { begins: 22:00, duration: 26 h }
                """.formatted(set)).in(UnitSystem.US);
    }

    /** Of a house with several vessels the answer is one more, which is added to them; no formula knows such a house. */
    @Test
    void besideSeveralVesselsItIsOneMore() {
        VesselAnswer answer = answer("orchard-lodge-two-vessels");
        SizingResult.Vessel bought = answer.recommended().orElseThrow();
        HotWaterSystem with = answer.proposed().orElseThrow().system();
        assertEquals(3, with.vessels().size());
        assertEquals(bought.volume(), with.vessels().get(2).volume());
        assertEquals(answer.scenario().system().vessels(), with.vessels().subList(0, 2));
        String said = Narrative.of(answer.advice()).answer().text(UnitSystem.SI);
        assertTrue(said.contains("ne more vessel of ") && said.contains(" beside the 2 present, precharged to "), said);
        assertTrue(
                answer.formulas().stream().allMatch(formula -> formula.remark().contains("one more beside others")));
    }

    private static VesselAnswer answer(String name) {
        return VesselChoice.of(Catalogue.read(name)).build().answer();
    }
}

package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.heater;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.opened;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.tank;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.DrawProfile;
import io.github.heatswell.system.Element;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Material;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.water.Saturation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers that findings are made of and say, worked out by hand. Ten metres of cold water are 0.98037 bar. */
class NumbersTest {

    private static final double COLUMN = 999.7 * 9.80665 * 10;
    /** The density of water at 10 degC is published as 999.7 kg/m3, which is rounded to a twentieth: 5 Pa in 10 m (Pa). */
    private static final double ROUNDED = 5;

    private static List<Finding> of(HotWaterSystem.Builder house) {
        return Findings.of(house.build());
    }

    private static Optional<Finding> find(List<Finding> findings, String id) {
        return findings.stream().filter(finding -> finding.id().equals(id)).findFirst();
    }

    private static String said(List<Finding> findings, String id) {
        return find(findings, id).orElseThrow().sentence().text(UnitSystem.SI);
    }

    /**
     * Closed form: a tank of 480 mm by 2.2 mm steel that is warmed by 50 K and put under 3 bar more grows by three times
     * its linear expansion and by D/(E t) (1.25 - nu) for each pascal; so much less has to go into the vessel.
     */
    @Test
    void tankThatGrowsSparesTheVessel() {
        Material steel = Material.STEEL;
        Shell shell = Shell.cylinder(steel, 480, 2.2, LengthUnit.MILLIMETRE);
        double rigid = VesselSizeRule.needed(new AssessmentContext(house().build(), Optional.empty()));
        double elastic = VesselSizeRule.needed(new AssessmentContext(
                house().tank(tank(10).toBuilder().shell(shell).build()).build(), Optional.empty()));
        double growth = 3 * steel.linearExpansion() * 50
                + 480 / (steel.youngsModulus() * 2.2) * (1.25 - steel.poissonRatio()) * 3e5;
        double hot = 1 - rigid / 0.2; // share of the cold fill that a rigid tank still holds
        assertEquals(0.2 * (1 - hot * (1 + growth)), elastic, 1e-12); // rounding
    }

    /** Closed form, Boyle's law at the height of the vessel: from what the supply pushes in there to the first limit. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 10, -10})
    void roomIsBoylesLawAtTheHeightOfTheVessel(double metres) {
        ExpansionVessel vessel = vessel(18, 2)
                .height(metres, LengthUnit.METRE)
                .acceptance(90, RatioUnit.PERCENT)
                .build();
        double lift = COLUMN * metres / 10;
        double charge = 2e5 + 101_325;
        double low = 1 - charge / (4e5 - lift + 101_325);
        double high = 1 - charge / (7e5 - lift + 101_325);
        AssessmentContext subject = new AssessmentContext(house().vessel(vessel).build(), Optional.empty());
        assertEquals(18e-3 * (high - low), VesselSizeRule.room(subject, vessel, 2e5), 1e-7); // ROUNDED
    }

    /** The diaphragm ends what Boyle's law would allow: of 18 L at most 60 %. */
    @Test
    void roomEndsWithTheDiaphragm() {
        ExpansionVessel vessel = vessel(18, 0.5).build();
        double low = 1 - (0.5e5 + 101_325) / (4e5 + 101_325);
        AssessmentContext subject = new AssessmentContext(house().build(), Optional.empty());
        assertEquals(18e-3 * Math.max(0, 0.6 - low), VesselSizeRule.room(subject, vessel, 0.5e5), 1e-12); // rounding
        double some = 1 - (2.2e5 + 101_325) / (4e5 + 101_325);
        assertEquals(
                18e-3 * (Math.min(0.6, 1 - 321_325 / 801_325.0) - some),
                VesselSizeRule.room(subject, vessel, 2.2e5),
                1e-12);
    }

    /** A charge more than a bar off, at the height of the vessel, is put right before the size is judged. */
    @ParameterizedTest
    @CsvSource({
        "0, 5.01, true",
        "0, 4.99, false",
        "0, 3.01, false",
        "0, 2.99, true",
        "10, 4.03, true",
        "10, 4.01, false",
        "10, 2.03, false",
        "10, 2.01, true"
    })
    void farOffIsABar(double metres, double chargeBar, boolean farOff) {
        HotWaterSystem.Builder small = house().vessel(
                        vessel(2, chargeBar).height(metres, LengthUnit.METRE).build());
        assertEquals(farOff, said(of(small), "vessel-too-small").contains("if charged to the supply"));
    }

    /** Closed form: at 4 bar, gas charged to 2.9 bar gives up 1 - 3.91325/5.01325 = 21.9 % of its room to cold water. */
    @Test
    void lowChargeIsSaidWithWhatItCosts() {
        Finding below = find(of(house().vessel(vessel(18, 2.9).build())), "precharge-below-static")
                .orElseThrow();
        String said = below.sentence().text(UnitSystem.SI);
        assertTrue(said.startsWith("The vessel is charged to 2.9 bar, below the 4 bar"), said);
        assertTrue(said.contains("22 % of it is full"), said);
        assertEquals(3.6e5, below.limit().orElseThrow().value(), 1e-6); // rounding
        assertTrue(below.advice().text(UnitSystem.SI).contains("shows 4 bar,"));
        assertEquals(Severity.FAULT, below.severity());
        assertEquals(
                Severity.CAUTION,
                find(of(house().vessel(vessel(18, 3).build())), "precharge-below-static")
                        .orElseThrow()
                        .severity());
    }

    @Test
    void highChargeIsSaidWithWhatItCosts() {
        String said = said(of(house().vessel(vessel(18, 4.5).build())), "precharge-above-static");
        assertTrue(said.startsWith("The vessel is charged to 4.5 bar, above the 4 bar"), said);
        assertTrue(said.endsWith("climbed by 0.5 bar."), said);
    }

    /** However far off the charge is, the limit that the peak passes is said beside it. */
    @ParameterizedTest
    @ValueSource(doubles = {4.5, 5.2, 5.6})
    void aWrongChargeHidesNoLimit(double charge) {
        List<Finding> found =
                Findings.of(run(house().vessel(vessel(18, charge).build()).build(), 5.6, 60));
        assertTrue(find(found, "precharge-above-static").isPresent());
        assertTrue(find(found, "peak-above-code-limit").isPresent());
    }

    /**
     * Two litres in half a day are 730 a year if that is a day's worth; in two days they are 365. Without draws every run must begin
     * again as cold as it did, and says so.
     */
    @ParameterizedTest
    @CsvSource({
        "43200, 0, 'In 12 h the relief valves discharged 2 L without opening; if every day were like this run, a year would come to 730 L.'",
        "43200, 1, 'In 12 h the relief valves discharged 2 L in 1 opening; if every day were like this run, a year would come to 730 L.'",
        "86400, 3, 'In 24 h the relief valves discharged 2 L in 3 openings; at this rate a year would come to 730 L.'",
        "172800, 2, 'In 2 d the relief valves discharged 2 L in 2 openings; at this rate a year would come to 365 L.'"
    })
    void yearlyLossFollowsFromTheRun(double end, int openings, String said) {
        Event[] events = new Event[openings];
        Arrays.fill(events, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7));
        RunSummary half = run(house().build(), 5, 4, 60, 2, events);
        RunSummary run = lasting(half, end);
        assertEquals(said, said(Findings.of(run), "relief-water-loss"));
    }

    /**
     * Regression: a valve that runs on the supply without a pause was counted for the hours of the run only. Two litres in 2 h are
     * 24 a day, 8760 a year; where the valve has closed by the end, the run stands for a day.
     */
    @ParameterizedTest
    @CsvSource({"false, '; at this rate a year would come to 8760 L.'", "true, 730 L."})
    void aValveThatRunsOnRunsAllDay(boolean closes, String year) {
        List<Event> events = new ArrayList<>(
                List.of(event(Event.Kind.SUPPLY_OPENED, "", 7), event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)));
        if (closes) {
            events.add(new Event(7000, Event.Kind.RELIEF_RESEATED, "T&P valve", 7e5, 290, Optional.empty()));
        }
        RunSummary run = run(house().build(), 7, 4, 20, 2, events.toArray(Event[]::new));
        String said = said(Findings.of(lasting(run, 7200)), "relief-water-loss");
        assertTrue(said.endsWith(year), said);
    }

    /** The same run, as if it had lasted so long (s). */
    private static RunSummary lasting(RunSummary run, double end) {
        return new RunSummary(
                run.system(), end, run.events(), run.extremes(), run.totals(), run.audit(), run.numerics(), Map.of());
    }

    /** Regression: a day with the first heat-up from cold was counted 365 times, beside the year of the sizes that leaves it out. */
    @ParameterizedTest
    @CsvSource({"86400, 24 h", "72000, 20 h"})
    void aYearOfRunsThatBeginColdIsNoOrdinaryYear(double end, String length) {
        RunSummary half = run(
                house().draws(DrawProfile.published().values().iterator().next())
                        .build(),
                5,
                4,
                60,
                2,
                event(Event.Kind.RELIEF_OPENED, "T&P valve", 7));
        RunSummary day = lasting(half, end);
        assertEquals(
                "In " + length
                        + " the relief valves discharged 2 L in 1 opening; ordinary days, without a heat-up from cold, give less.",
                said(Findings.of(day), "relief-water-loss"));
    }

    @Test
    void supplyNearTheSetPressureNamesItsLimit() {
        Finding close = find(of(house().supply(supply(5.7).build())), "supply-near-relief-set")
                .orElseThrow();
        assertEquals(0.75 * 7e5, close.limit().orElseThrow().value(), 1e-6); // rounding
        ReliefValve blocked = valve(5, 4.5).fault(ReliefFault.blocked()).build();
        ReliefValve stuck =
                valve(5, 4.5).fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT)).build();
        assertTrue(find(of(house().addReliefValve(blocked)), "supply-near-relief-set")
                .isEmpty());
        assertTrue(find(of(house().supply(supply(4.4).build()).addReliefValve(stuck)), "supply-near-relief-set")
                .isEmpty());
    }

    /** Two elements of 3 and 2 kW take in 5 kW if they heat at once, else 3 kW. */
    @ParameterizedTest
    @CsvSource({"true, 3, 4.9, true", "true, 3, 5, false", "false, 3, 3, false", "false, 2, 2.9, true"})
    void reliefValveIsRatedForTheHeatThatMayCome(boolean both, double lower, double rated, boolean found) {
        Element upper = Element.builder()
                .input(5 - lower, PowerUnit.KILOWATT)
                .height(70, RatioUnit.PERCENT)
                .setPoint(60, TemperatureUnit.CELSIUS)
                .differential(4, TemperatureDifferenceUnit.KELVIN)
                .build();
        HotWaterSystem.Builder house = unguarded()
                .heater(heater(60)
                        .input(lower, PowerUnit.KILOWATT)
                        .upper(upper)
                        .simultaneous(both)
                        .build())
                .addReliefValve(
                        guard(7, 6).ratedInput(rated, PowerUnit.KILOWATT).build());
        assertEquals(found, find(of(house), "tp-relief-rating-low").isPresent());
    }

    /** Ten metres up, a valve that reseats at 6 bar does so at 6.98 bar below; 3 % of its 7 bar stay free. */
    @Test
    void peakIsHeldAgainstTheValvesHeight() {
        ReliefValve high = guard(7, 6).height(10, LengthUnit.METRE).build();
        HotWaterSystem house = unguarded().addReliefValve(high).build();
        double limit = 6e5 + COLUMN - 0.03 * 7e5;
        assertTrue(find(Findings.of(run(house, limit / 1e5 - 1e-4, 60)), "peak-near-relief")
                .isEmpty());
        Finding near = find(Findings.of(run(house, limit / 1e5 + 1e-4, 60)), "peak-near-relief")
                .orElseThrow();
        assertEquals(limit, near.limit().orElseThrow().value(), ROUNDED);
        String said = near.sentence().text(UnitSystem.SI);
        assertTrue(said.contains("opens at 7.98 bar and reseats only at 6.98 bar"), said);
    }

    /** A vessel made for 6 bar that hangs ten metres up is fine with 6.98 bar below. */
    @Test
    void ratingIsHeldAgainstTheVesselsHeight() {
        HotWaterSystem house = house().vessel(vessel(18, 4)
                        .rating(Pressure.gauge(6, BAR))
                        .height(10, LengthUnit.METRE)
                        .build())
                .build();
        double limit = 6 + COLUMN / 1e5;
        assertTrue(find(Findings.of(run(house, limit - 1e-4, 60)), "vessel-rating-exceeded")
                .isEmpty());
        assertTrue(find(Findings.of(run(house, limit + 1e-4, 60)), "vessel-rating-exceeded")
                .isPresent());
    }

    /** Water boils, under 0.1 bar above the air, at the temperature of the boiling line; ten kelvin below is the limit. */
    @Test
    void boilingIsJudgedAtTheLowestPressure() {
        double boils = Saturation.temperature(0.1e5 + 101_325);
        HotWaterSystem.Builder weak = house().supply(supply(0.1).build())
                .vessel(vessel(18, 0.1).build())
                .heater(heater(95).build());
        Finding near = find(of(weak), "boiling-margin-small").orElseThrow();
        assertEquals(boils - 10, near.limit().orElseThrow().value(), 1e-9); // rounding
        Finding byRun = find(Findings.of(run(house().build(), 5, 0.1, 95, 0)), "boiling-margin-small")
                .orElseThrow();
        String said = byRun.sentence().text(UnitSystem.SI);
        // steam tables, from memory: 102.29 degC at 1.1 bar, 104.78 degC at 1.2 bar; between them 102.62 degC at 1.113
        // bar
        assertTrue(said.contains("95 °C, is only 7.6 K below the 102.6 °C"), said);
        assertTrue(said.endsWith("lowest pressure of 0.1 bar."), said);
    }

    /** High up, open water boils before 99 degC: at 3000 m, where the air has 0.701 bar, at 89.9 degC. */
    @Test
    void openWaterBoilsEarlierHighUp() {
        HotWaterSystem high = house().site(Site.builder()
                        .altitude(3000, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .build())
                .build();
        assertTrue(find(Findings.of(run(high, 5, 4, 89.5, 0)), "water-hotter-than-boiling")
                .isEmpty());
        assertTrue(find(Findings.of(run(high, 5, 4, 90.5, 0)), "water-hotter-than-boiling")
                .isPresent());
        Event vapour = event(Event.Kind.VAPOUR_FORMS, 5);
        List<Finding> found = Findings.of(run(high, 5, 4, 150, 0, vapour));
        assertTrue(find(found, "water-hotter-than-boiling").isEmpty());
        assertTrue(find(found, "vapour-forms").isPresent());
    }

    private static RunSummary fullFromTheStart() {
        RunSummary run = run(house().build(), 5, 60);
        return new RunSummary(
                run.system(),
                run.end(),
                run.events(),
                run.extremes(),
                run.totals(),
                run.audit(),
                run.numerics(),
                Map.of(Interval.Phase.VESSEL_FULL, Set.of("")));
    }

    /** The diaphragm of an 18 L vessel that takes 60 % ends at 10.8 L, also if it lay there before the run began. */
    @Test
    void vesselIsFullWhereItsDiaphragmEnds() {
        assertTrue(find(Findings.of(run(house().build(), 5, 60)), "vessel-bottomed-out")
                .isEmpty());
        String said = said(Findings.of(fullFromTheStart()), "vessel-bottomed-out");
        assertEquals(
                "The 18 L vessel was full: its diaphragm had reached its stop with 10.8 L of water behind it.", said);
    }

    /** Only the first valve's own opening by pressure says that the vessel is too small. */
    @Test
    void onlyTheFirstValvesOpeningSpeaksAgainstTheVessel() {
        HotWaterSystem house = house().build();
        String id = "vessel-too-small";
        assertTrue(find(Findings.of(run(house, 7, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7))), id)
                .isPresent());
        assertFalse(find(Findings.of(run(house, 7, 60, event(Event.Kind.RELIEF_RESEATED, "T&P valve", 7))), id)
                .isPresent());
        assertFalse(find(Findings.of(run(house, 7, 60, event(Event.Kind.RELIEF_OPENED, "other valve", 7))), id)
                .isPresent());
        assertFalse(find(Findings.of(run(house, 7, 60, opened("T&P valve", 7, Event.OpeningCause.TEMPERATURE))), id)
                .isPresent());
        assertTrue(find(Findings.of(run(house, 6.995, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7))), id)
                .isPresent());
    }

    /** A vessel that is cut off is not judged by what it is made for; its charge is wrong all the same. */
    @Test
    void deadVesselIsNotJudged() {
        List<Finding> found = of(house().vessel(vessel(18, 2)
                .rating(Pressure.gauge(3, BAR))
                .condition(ExpansionVessel.Condition.ISOLATED)
                .build()));
        assertTrue(find(found, "vessel-isolated").isPresent());
        String charge = said(found, "precharge-below-static");
        assertTrue(charge.contains("back in service, 40 % of it would be full"), charge);
        assertTrue(find(found, "vessel-rating-exceeded").isEmpty());
    }

    /**
     * The gas presses on the shell whatever the water does; beyond 1.3 times its plate the shell may be beyond its own test. In a room as
     * warm as the charge was read in, the tyre gauge's reading is what counts.
     */
    @ParameterizedTest
    @CsvSource({"6.99,", "7.1, FAULT", "9.0, FAULT", "9.2, HAZARD"})
    void gasAboveThePlateLoadsTheShell(double bar, Finding.Severity severity) {
        List<Finding> found =
                of(house().vessel(vessel(18, bar).rating(Pressure.gauge(7, BAR)).build()));
        assertEquals(
                Optional.ofNullable(severity),
                find(found, "vessel-charged-above-plate").map(Finding::severity));
    }

    /** What the findings hold against a valve at a height is what the simulation acts on, whatever the feed's temperature. */
    @ParameterizedTest
    @CsvSource({"30, 30", "30, 2", "-30, 30"})
    void heightsWeighWhatTheyWeighInTheSimulation(double metres, double celsius) {
        ReliefValve high = guard(7, 6).height(metres, LengthUnit.METRE).build();
        HotWaterSystem house = unguarded()
                .supply(supply(4).water(celsius, TemperatureUnit.CELSIUS).build())
                .addReliefValve(high)
                .build();
        AssessmentContext subject = new AssessmentContext(house, Optional.empty());
        assertEquals(7e5 + house.head(metres), subject.setPressure(high), 1e-9); // rounding
        assertEquals(6e5 + house.head(metres), subject.reseatPressure(high), 1e-9); // rounding
    }
}

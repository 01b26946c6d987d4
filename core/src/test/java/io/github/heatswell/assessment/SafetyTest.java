package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.heater;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.opened;
import static io.github.heatswell.assessment.FaultlessHouse.reduced;
import static io.github.heatswell.assessment.FaultlessHouse.reducer;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.unmixed;
import static io.github.heatswell.assessment.FaultlessHouse.unread;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.PressureUnit.PSI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: advice that would have hurt somebody, or that said the opposite of other advice beside it. */
class SafetyTest {

    private static final String SCALD = "scald-without-mixing-valve";

    private static boolean has(List<Finding> findings, String id) {
        return findings.stream().anyMatch(finding -> finding.id().equals(id));
    }

    private static Finding find(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id + " in " + findings));
    }

    private static String said(List<Finding> findings, String id) {
        return find(findings, id).sentence().text(UnitSystem.SI);
    }

    private static String advised(List<Finding> findings, String id) {
        return find(findings, id).advice().text(UnitSystem.SI);
    }

    /** The heater is set to 60 degC; what scalds is the water there was. */
    @Test
    void scaldsBeAsHotAsTheWaterOfTheRun() {
        HotWaterSystem house = house().heater(unmixed(60).build()).build();
        String runaway = said(Findings.of(run(house, 5, 139)), SCALD);
        assertTrue(runaway.startsWith("The water reaches 139 \u00b0C in the run"), runaway);
        assertTrue(runaway.contains("in under 2 s"), runaway);
        assertEquals(
                139 + 273.15,
                find(Findings.of(run(house, 5, 139)), SCALD)
                        .found()
                        .orElseThrow()
                        .value(),
                1e-9);
        assertTrue(said(Findings.of(house), SCALD).startsWith("The heater is set to 60 \u00b0C"));
        String notYet = said(Findings.of(run(house, 5, 40)), SCALD);
        assertTrue(notYet.startsWith("The heater is set to 60 \u00b0C"), notYet);
    }

    /** A mixing valve is no remedy for a heater that does not stop, and a mixing valve that works limits what scalds. */
    @Test
    void runawayIsNotCuredByAMixingValve() {
        HotWaterSystem house = house().heater(unmixed(60).build()).build();
        String advice = advised(Findings.of(run(house, 5, 139)), SCALD);
        assertTrue(advice.startsWith("Open no hot tap"), advice);
        assertFalse(advice.contains("mixing valve"), advice);
        assertTrue(advised(Findings.of(run(house, 5, 61)), SCALD).contains("have a mixing valve fitted"));
        assertFalse(has(Findings.of(run(house().build(), 5, 139)), "mixing-valve-set-high"));
    }

    /** The last valve is for when the others have failed: a lower one before it is no reason to leave it set above the plate. */
    @Test
    void aGuardAboveThePlateIsAHazardBehindALowerValveToo() {
        HotWaterSystem.Builder lower = unguarded().addReliefValve(valve(6, 5).build());
        Finding high =
                find(Findings.of(lower.addReliefValve(guard(11, 9).build()).build()), "tp-relief-set-high");
        assertEquals(Severity.HAZARD, high.severity());
        assertTrue(high.advice().text(UnitSystem.SI).startsWith("Turn the heater off and leave it off"));
        ReliefValve cold = valve(11, 9).name("second").build();
        HotWaterSystem.Builder byPressure =
                unguarded().addReliefValve(valve(6, 5).build());
        assertEquals(
                Severity.HAZARD,
                find(Findings.of(byPressure.addReliefValve(cold).build()), "tp-relief-set-high")
                        .severity());
        HotWaterSystem.Builder suits = unguarded().addReliefValve(valve(6, 5).build());
        assertFalse(has(Findings.of(suits.addReliefValve(guard(10, 9).build()).build()), "tp-relief-set-high"));
    }

    /** The vessel has to stand the last valve's setting: the first one may scale up. */
    @Test
    void aVesselIsMadeForTheLastReliefValve() {
        HotWaterSystem.Builder two = unguarded()
                .addReliefValve(valve(6, 5).build())
                .addReliefValve(guard(7, 6).build());
        HotWaterSystem weak =
                two.vessel(vessel(18, 4).rating(Pressure.gauge(6, BAR)).build()).build();
        String said = said(Findings.of(weak), "vessel-rated-below-relief");
        assertTrue(said.contains("rated for only 6 bar") && said.contains("reaches 7 bar"), said);
        HotWaterSystem strong =
                two.vessel(vessel(18, 4).rating(Pressure.gauge(7, BAR)).build()).build();
        assertFalse(has(Findings.of(strong), "vessel-rated-below-relief"));
    }

    /** Where the rules ask for a cut-out, a heater that has none is a hazard; a silent description is a fault, and a doubted one a caution. */
    @Test
    void aCutOutThatTheRulesAskForIsMissed() {
        HotWaterSystem silent = PlaceFindingsTest.at(house().heater(unmixed(60).build()), Place.UK)
                .build();
        Finding open = find(Findings.of(silent), "cut-out-missing");
        assertEquals(Severity.FAULT, open.severity());
        assertTrue(open.sentence().text(UnitSystem.SI).endsWith("see that it is there."));
        HotWaterSystem without = silent.toBuilder()
                .heater(silent.heater().toBuilder().withoutCutOut().build())
                .build();
        assertEquals(
                Severity.HAZARD, find(Findings.of(without), "cut-out-missing").severity());
        Heater back =
                without.heater().toBuilder().cutOut(80, TemperatureUnit.CELSIUS).build();
        assertFalse(back.isCutOutAbsent());
        Doubts unknown = Doubts.of(
                List.of(Doubts.Doubt.ofChoice(NamedValue.CUT_OUT.field(), "none")), changes -> Optional.empty());
        assertTrue(Findings.of(without, unknown).stream().noneMatch(one -> one.severity() == Severity.HAZARD));
        assertFalse(has(Findings.of(PlaceFindingsTest.at(house(), Place.UK).build()), "cut-out-missing"));
    }

    /** A discharge above 60 degC is caught by nobody, nor one beside any hazard. */
    @ParameterizedTest
    @CsvSource({"60, true", "60.1, false", "99, false"})
    void bucketsAreForCoolDischargesOnly(double celsius, boolean bucket) {
        HotWaterSystem house = house().heater(heater(60).build()).build();
        String advice = advised(Findings.of(run(house, 5, 4, celsius, 2)), "relief-water-loss");
        assertEquals(bucket, advice.contains("bucket"), advice);
        assertEquals(!bucket, advice.contains("Keep clear"), advice);
        HotWaterSystem blocked = unguarded()
                .addReliefValve(valve(7, 6).build())
                .addReliefValve(guard(8, 7).fault(ReliefFault.blocked()).build())
                .build();
        assertFalse(advised(Findings.of(run(blocked, 5, 4, 50, 2)), "relief-water-loss")
                .contains("bucket"));
    }

    /** A valve that runs on, or more than two buckets a day, is caught by nobody either. */
    @Test
    void bucketsAreForWhatTheyHold() {
        HotWaterSystem house = house().heater(heater(60).build()).build();
        assertTrue(advised(Findings.of(run(house, 5, 4, 55, 10)), "relief-water-loss")
                .contains("bucket"));
        assertTrue(advised(Findings.of(run(house, 5, 4, 55, 21)), "relief-water-loss")
                .startsWith("It is too much to catch. Keep the pipe open"));
        HotWaterSystem stuck = unguarded()
                .addReliefValve(valve(7, 6)
                        .fault(ReliefFault.stuckOpen(4, RatioUnit.PERCENT))
                        .build())
                .build();
        assertFalse(advised(Findings.of(run(stuck, 5, 4, 50, 2)), "relief-water-loss")
                .contains("bucket"));
    }

    /** What a valve in the cold branch discharges is cold. */
    @Test
    void coldBranchDischargesColdWater() {
        HotWaterSystem branch = unguarded()
                .heater(heater(75).build())
                .addReliefValve(
                        valve(7, 6).location(ReliefValve.Location.BRANCH).build())
                .build();
        assertTrue(advised(Findings.of(run(branch, 5, 4, 75, 2)), "relief-water-loss")
                .contains("bucket"));
    }

    static Stream<RunSummary> boiling() {
        HotWaterSystem house = house().build();
        return Stream.of(
                run(house, 5, 105),
                run(house, 5, 140, event(Event.Kind.VAPOUR_FORMS, 3)),
                run(house, 20, 60, event(Event.Kind.TEST_PRESSURE_REACHED, 20)),
                run(house, 6, 99, opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE)));
    }

    /** Nobody is sent to a boiling tank, nor told to let its pressure off or to let cold water in. */
    @ParameterizedTest
    @MethodSource("boiling")
    void nobodyGoesNearABoilingTank(RunSummary run) {
        Finding first = Findings.of(run).get(0);
        assertEquals(Severity.HAZARD, first.severity());
        String advice = first.advice().text(UnitSystem.SI);
        assertTrue(advice.startsWith("Stay away from the tank. If you can do it safely from elsewhere, trip"), advice);
        assertTrue(advice.contains("Do not lift the relief valve or open a tap."), advice);
        assertFalse(advice.contains("at its switch"), advice);
        boolean lost = run.first(Event.Kind.VAPOUR_FORMS).isPresent()
                || run.first(Event.Kind.TEST_PRESSURE_REACHED).isPresent();
        assertEquals(lost, advice.contains("Let no cold water in."), advice);
        assertEquals(!lost, advice.contains("Leave the cold feed as it is"), advice);
    }

    /** Where the feed cools a tank whose valve opened hot, and steam then forms all the same, no two findings differ on the feed. */
    @Test
    void noTwoFindingsDisagreeOnTheFeed() {
        RunSummary run = run(
                house().build(),
                6,
                110,
                opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE),
                event(Event.Kind.TEST_PRESSURE_REACHED, 20));
        List<Finding> found = Findings.of(run);
        assertTrue(has(found, "relief-valve-opened-by-heat") && has(found, "water-hotter-than-boiling"));
        assertFalse(found.stream()
                .anyMatch(finding -> finding.advice().text(UnitSystem.SI).contains("Leave the cold feed")));
    }

    /** The feed cools a tank that overheats; only else is it shut to a valve that cannot close. */
    @Test
    void theFeedOfARunawayStaysOpen() {
        ReliefValve open =
                guard(7, 6).fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT)).build();
        HotWaterSystem well = unguarded().addReliefValve(open).build();
        assertTrue(advised(Findings.of(well), "relief-valve-stuck-open").contains("then shut the cold feed"));
        HotWaterSystem runaway = well.toBuilder()
                .heater(heater(60).thermostatStuck(true).build())
                .build();
        String advice = advised(Findings.of(runaway), "relief-valve-stuck-open");
        assertFalse(advice.contains("shut the cold feed"), advice);
        assertTrue(advice.contains("Leave the cold feed open until the water is cold"), advice);
    }

    /** A heater that is to be off is not to be set to 60 degC. */
    @Test
    void nobodySetsARunawayHotter() {
        HotWaterSystem cool = house().heater(heater(55).build()).build();
        assertTrue(has(Findings.of(run(cool, 5, 55)), "stored-too-cool"));
        String advice = advised(Findings.of(run(cool, 5, 55)), "stored-too-cool");
        assertTrue(advice.contains("an expansion vessel must be sized for that first"), advice);
        assertFalse(has(Findings.of(run(cool, 5, 105)), "stored-too-cool"));
        HotWaterSystem stuck =
                house().heater(heater(55).thermostatStuck(true).build()).build();
        assertFalse(has(Findings.of(stuck), "stored-too-cool"));
    }

    @Test
    void newReliefValvesFitThePlateAndTheHeater() {
        List<ReliefValve> worn = List.of(
                guard(7, 6).fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT)).build(),
                guard(7, 6)
                        .fault(ReliefFault.leakingSeat(
                                io.github.heatswell.units.Pressure.gauge(3, BAR),
                                0.01,
                                io.github.heatswell.units.FlowUnit.LITRE_PER_MINUTE))
                        .build());
        for (ReliefValve valve : worn) {
            String advice = Findings.of(unguarded().addReliefValve(valve).build())
                    .get(0)
                    .advice()
                    .text(UnitSystem.SI);
            assertTrue(advice.contains("set no higher than the pressure on the tank's plate"), advice);
            assertTrue(advice.contains("at least the heater's input"), advice);
            assertFalse(advice.contains("larger"), advice);
        }
        HotWaterSystem open = unguarded().addReliefValve(worn.get(0)).build();
        assertTrue(advised(Findings.of(open), "relief-valve-stuck-open")
                .startsWith("Turn the heater off, then shut the cold feed"));
    }

    /** Beside a hazard that keeps the heater off, nothing tells to switch it on, or that it may stay on. */
    @ParameterizedTest
    @ValueSource(strings = {"blocked", "no relief valve", "stuck thermostat"})
    void nothingBesideAHazardLetsTheHeaterOn(String which) {
        HotWaterSystem.Builder house =
                house().tank(unread(6)).vessel(vessel(8, 2.5).build());
        switch (which) {
            case "blocked" ->
                house.withoutReliefValves()
                        .addReliefValve(guard(7, 6).fault(ReliefFault.blocked()).build());
            case "no relief valve" -> house.withoutReliefValves();
            default -> house.heater(unmixed(60).thermostatStuck(true).build());
        }
        List<Finding> found = Findings.of(run(house.build(), 9, 50));
        assertEquals(Severity.HAZARD, found.get(0).severity());
        assertTrue(has(found, "precharge-below-static") && has(found, "tank-rating-unread"), which);
        for (Finding finding : found) {
            String advice = finding.advice().text(UnitSystem.SI);
            assertFalse(advice.contains("then switch the heater on"), advice);
            assertFalse(advice.matches(".* If it is below [^,]*, turn the heater off .*"), advice);
        }
        String plate = advised(found, "tank-rating-unread");
        assertTrue(plate.startsWith("Leave the heater off because of the hazard."), plate);
    }

    /** Charged by hand below the plate, the valve opened again, and no power before the air is out. */
    @ParameterizedTest
    @CsvSource({"2.5, precharge-below-static, Pump it up by hand", "5.5, precharge-above-static, Let air out"})
    void chargingEndsWithWaterInTheTank(double bar, String id, String step) {
        String advice =
                advised(Findings.of(house().vessel(vessel(18, bar).build()).build()), id);
        assertTrue(advice.contains(step), advice);
        assertTrue(
                advice.endsWith(
                        "Before the heater goes back on, close the drain, open the valve again, fill the tank and run a hot"
                                + " tap until no air comes."),
                advice);
        assertEquals(bar < 4, advice.contains("never above the pressure on the vessel's plate"), advice);
    }

    /** A supply above what a plate allows has to come down: nobody is told to pump up to it, or to let gas out down to it. */
    @ParameterizedTest
    @CsvSource({"3, precharge-below-static", "9, precharge-above-static"})
    void nobodyChargesAVesselBeyondItsPlate(double bar, String id) {
        HotWaterSystem house = house().supply(supply(7).build())
                .vessel(vessel(18, bar).rating(Pressure.gauge(6, BAR)).build())
                .build();
        String advice = advised(Findings.of(house), id);
        assertTrue(advice.startsWith("Do not charge the vessel to the supply pressure of 7 bar"), advice);
        assertTrue(advice.contains("rated for only 6 bar"), advice);
        assertTrue(advice.contains("Have the supply pressure lowered by a reducing valve"), advice);
        assertFalse(advice.contains("tyre gauge"), advice);
    }

    /** Behind whatever feed, beside whatever else: a wrong charge is said. */
    @ParameterizedTest
    @EnumSource(
            value = ExpansionVessel.Condition.class,
            names = {"SOUND", "ISOLATED", "UPSTREAM_OF_CHECK"})
    void wrongChargeIsSaidWhateverElseThereIs(ExpansionVessel.Condition condition) {
        ExpansionVessel low = vessel(18, 2).condition(condition).build();
        Stream.of(
                        supply(4),
                        supply(4).arrangement(Supply.Arrangement.DIRECT),
                        supply(6.5),
                        reduced(6, reducer(4).bypassOpens(0.2, BAR)))
                .map(supply -> house().supply(supply.build()).vessel(low).build())
                .forEach(house -> assertTrue(has(Findings.of(house), "precharge-below-static")));
    }

    /** 75 psi, a lock-up of 4.4 psi, a bypass and a vessel charged to 40 psi; the run peaked at 106 psi. */
    private static HotWaterSystem bypassed(double litres, double chargePsi) {
        return house().supply(reduced(
                                PSI.toSi(105) / 1e5,
                                reducer(PSI.toSi(75) / 1e5).lockUpRise(0.3, BAR).bypassOpens(PSI.toSi(3) / 1e5, BAR))
                        .build())
                .vessel(vessel(litres, PSI.toSi(chargePsi) / 1e5).build())
                .addReliefValve(guard(10, 8).name("second").build())
                .build();
    }

    @Test
    void bypassHidesNeitherThePrechargeNorTheSupply() {
        HotWaterSystem house = unguardedBypass();
        List<Finding> found = Findings.of(run(house, 7.33, 60));
        assertEquals(Severity.FAULT, find(found, "precharge-below-static").severity());
        String charge = advised(found, "precharge-below-static");
        assertTrue(
                charge.startsWith("Even with the right charge, this vessel is too small at the present supply. Before"),
                charge);
        String peak = advised(found, "peak-above-code-limit");
        assertTrue(peak.contains("The right precharge alone is not enough."), peak);
        assertTrue(
                peak.contains("have the supply pressure lowered and the precharge matched to it"),
                "a vessel that nobody sells was offered first: " + peak);
        assertTrue(peak.endsWith("At the present supply no vessel of a usual size is large enough."), peak);
        assertFalse(found.stream()
                .anyMatch(finding -> finding.sentence().text(UnitSystem.SI).contains("no vessel is needed")));
    }

    private static HotWaterSystem unguardedBypass() {
        HotWaterSystem house = bypassed(17, 40);
        return HotWaterSystem.builder()
                .site(house.site())
                .supply(house.supply())
                .tank(house.tank())
                .heater(house.heater())
                .vessel(house.vessel().orElseThrow())
                .addReliefValve(guard(10, 8).build())
                .build();
    }

    /** Where the right charge would do, the limits that the peak passes are said all the same, with that advice. */
    @Test
    void peakOfAWrongChargeIsSaidBesideIt() {
        HotWaterSystem lost = house().vessel(vessel(18, 1).build()).build();
        List<Finding> found = Findings.of(run(lost, 6.2, 60));
        assertTrue(has(found, "precharge-below-static"));
        String peak = advised(found, "peak-above-code-limit");
        assertTrue(peak.contains("Have the precharge corrected"), peak);
        assertTrue(has(found, "peak-near-relief"));
    }

    /** A bypass without a vessel meets no code that was read. */
    @Test
    void bypassAloneIsNotSaidToBeEnough() {
        HotWaterSystem.Builder bypass =
                house().supply(reduced(6, reducer(4).bypassOpens(0.2, BAR)).build());
        assertEquals(
                Severity.NOTE,
                find(Findings.of(bypass.build()), "expansion-returns-to-mains").severity());
        List<Finding> bare = Findings.of(bypass.withoutVessel().build());
        Finding alone = find(bare, "expansion-returns-to-mains");
        assertEquals(Severity.CAUTION, alone.severity());
        assertTrue(alone.advice().text(UnitSystem.SI).startsWith("Do not rely on the bypass alone"));
        assertTrue(alone.authority().source().text().contains("UPC 608.2"));
    }

    /** A run above the tank's working pressure is said even where no valve could have held it. */
    @Test
    void workingPressurePassedIsNotHiddenByTheValve() {
        HotWaterSystem weak = unguarded().addReliefValve(guard(11, 9).build()).build();
        List<Finding> found = Findings.of(run(weak, 10.8, 60));
        assertTrue(has(found, "relief-set-above-tank"));
        assertTrue(has(found, "working-pressure-exceeded"));
    }
}

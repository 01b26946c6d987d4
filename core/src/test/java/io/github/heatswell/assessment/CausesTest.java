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
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.units.VolumeUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which device a finding holds to account, and how it says so. */
class CausesTest {

    private static boolean has(List<Finding> findings, String id) {
        return findings.stream().anyMatch(finding -> finding.id().equals(id));
    }

    private static String said(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow()
                .sentence()
                .text(UnitSystem.SI);
    }

    private static List<Finding> of(HotWaterSystem.Builder house) {
        return Findings.of(house.build());
    }

    /** A blocked valve protects nothing: the tank of 10 bar then has only the valve that opens at 11 bar. */
    @Test
    void blockedValveDoesNotCountAsProtection() {
        ReliefValve low = valve(6, 5).build();
        HotWaterSystem.Builder sound =
                unguarded().addReliefValve(low).addReliefValve(guard(11, 9).build());
        assertFalse(has(of(sound), "relief-set-above-tank"));
        HotWaterSystem.Builder blocked = unguarded()
                .addReliefValve(low.toBuilder().fault(ReliefFault.blocked()).build())
                .addReliefValve(guard(11, 9).build());
        assertTrue(has(of(blocked), "relief-set-above-tank"));
    }

    /**
     * A valve is matched to the tank's plate by its own. The water between counts only for a valve in the branch, and only once it
     * comes to more than a tenth of the working pressure: 0.098 bar a metre (closed form), 10.2 m for 1 bar.
     */
    @ParameterizedTest
    @CsvSource({
        "TANK_TOP, 10,   11,   false",
        "TANK_TOP, 10.1, 0,    true",
        "BRANCH,   10,   0.02, false",
        "BRANCH,   10,   2,    false",
        "BRANCH,   10,   10,   false",
        "BRANCH,   10,   11,   true",
        "BRANCH,   9.5,  11,   false",
        "BRANCH,   10.1, 0,    true",
        "BRANCH,   10.1, 2,    true"
    })
    void heightCountsWhereItIsGreatOnly(
            ReliefValve.Location location, double setPressure, double height, boolean tooHigh) {
        ReliefValve valve = valve(setPressure, 8)
                .location(location)
                .height(height, LengthUnit.METRE)
                .build();
        assertEquals(tooHigh, has(of(unguarded().addReliefValve(valve)), "relief-set-above-tank"));
    }

    /** With a thermostat that sticks the run says nothing of the vessel, so its size is estimated all the same. */
    @Test
    void smallVesselIsFoundBesideADrivingFault() {
        HotWaterSystem stuck = house().vessel(vessel(2, 4).build())
                .heater(heater(60).thermostatStuck(true).build())
                .build();
        List<Finding> found = Findings.of(run(stuck, 7, 90, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)));
        assertTrue(has(found, "thermostat-stuck"));
        assertTrue(said(found, "vessel-too-small").startsWith("The 2 L vessel has room for"));
        assertFalse(has(found, "relief-valve-controls-expansion"));
    }

    /**
     * Closed form: 10 m up, 2 L charged to the 3.02 bar that the supply has there take 2 L (1 - 4.033/7.033) = 0.853 L until
     * 7 bar at the tank.
     */
    @Test
    void farOffChargeIsTakenAsPutRightAtItsHeight() {
        String said = said(
                of(house().vessel(vessel(2, 0.2).height(10, LengthUnit.METRE).build())), "vessel-too-small");
        assertTrue(
                said.contains("has room, if charged to the supply, for 0.85 L until 'T&P valve' opens at 7 bar"), said);
    }

    /** The run says what opened the valve; how close the pressure was to the set pressure does not matter. */
    @ParameterizedTest
    @CsvSource({"5, TEMPERATURE, true", "6.9999, TEMPERATURE, true", "7, BOTH, true", "7, PRESSURE, false"})
    void theRunSaysWhetherHeatOpenedTheValve(double bar, Event.OpeningCause cause, boolean byHeat) {
        HotWaterSystem house = house().withoutVessel().build();
        List<Finding> found = Findings.of(run(house, bar, 60, opened("T&P valve", bar, cause)));
        assertEquals(byHeat, has(found, "relief-valve-opened-by-heat"));
        assertEquals(cause.byPressure(), has(found, "relief-valve-controls-expansion"));
    }

    /** Lifted by pressure, the valve opened fully when the water had become hot: that is the hazard. */
    @Test
    void aLiftedValveThatHeatOpensFullyIsAHazard() {
        HotWaterSystem house = house().withoutVessel().build();
        Event hot = new Event(
                7_200,
                Event.Kind.RELIEF_OPENED_FULLY,
                "T&P valve",
                6e5 + 101_325,
                372.15,
                Optional.of(Event.OpeningCause.TEMPERATURE));
        List<Finding> found = Findings.of(run(house, 7, 99, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7), hot));
        assertTrue(has(found, "relief-valve-opened-by-heat"));
        assertTrue(said(found, "relief-valve-controls-expansion").contains("opened once in the run"));
    }

    @Test
    void onlyAnOpeningIsByHeat() {
        HotWaterSystem house = house().build();
        String id = "relief-valve-opened-by-heat";
        assertFalse(has(Findings.of(run(house, 5, 60, event(Event.Kind.HEATER_OFF, 5))), id));
        assertFalse(has(Findings.of(run(house, 5, 60, event(Event.Kind.RELIEF_RESEATED, "T&P valve", 5))), id));
    }

    @ParameterizedTest
    @CsvSource({"1, opened once in the run", "2, opened twice in the run", "3, opened 3 times in the run"})
    void openingsAreCounted(int openings, String text) {
        Event[] events = new Event[openings + 1];
        Arrays.fill(events, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7));
        events[openings] = event(Event.Kind.HEATER_OFF, 7); // not an opening
        String said = said(
                Findings.of(run(house().withoutVessel().build(), 7, 60, events)), "relief-valve-controls-expansion");
        assertTrue(said.contains(text), said);
    }

    /** Hot water opened the valve too; the count is that of all openings, as everywhere. */
    @Test
    void openingsByHeatAreCountedButNotBlamedOnExpansion() {
        Event pressed = event(Event.Kind.RELIEF_OPENED, "T&P valve", 7);
        Event hot = new Event(
                pressed.time(),
                Event.Kind.RELIEF_OPENED,
                "T&P valve",
                8e5,
                372,
                Optional.of(Event.OpeningCause.TEMPERATURE));
        String said = said(
                Findings.of(run(house().withoutVessel().build(), 7, 60, pressed, hot, pressed)),
                "relief-valve-controls-expansion");
        assertTrue(said.contains("opened 3 times in the run, 2 of them because"), said);
    }

    /** Vapour has formed: that there is little left until it does needs no saying any more. */
    @Test
    void vapourIsNotAlsoASmallMargin() {
        List<Finding> found = Findings.of(run(house().build(), 5, 0.1, 95, 0, event(Event.Kind.VAPOUR_FORMS, 0.1)));
        assertTrue(has(found, "vapour-forms"));
        // 1.11 bar absolute: IAPWS-IF97 gives 102.3 degC, and what came before or after it was at 95 degC
        assertTrue(said(found, "vapour-forms").contains("boils at 102"), said(found, "vapour-forms"));
        assertFalse(has(found, "boiling-margin-small"));
    }

    /** Water below air boils off into the air before it boils: no boiling point says when. */
    @Test
    void steamTakesOverTheAirBelowTheBoilingPoint() {
        HotWaterSystem house = house().build();
        HotWaterSystem airy = house.toBuilder()
                .tank(house.tank().toBuilder().air(1, VolumeUnit.LITRE).build())
                .build();
        String said = said(Findings.of(run(airy, 5, 0.1, 95, 0, event(Event.Kind.VAPOUR_FORMS, 0.1))), "vapour-forms");
        assertTrue(said.contains("steam takes over the air under the top of the tank, under 0.1 bar."), said);
    }

    @Test
    void highPressureIsLaidToTheOneThatLetsIt() {
        List<Finding> mains =
                of(house().supply(supply(5.6).build()).vessel(vessel(18, 5.6).build()));
        assertTrue(said(mains, "static-pressure-high").startsWith("The supply goes up to 5.6 bar"));
        List<Finding> reduced = of(house().supply(reduced(8, reducer(5.6)).build())
                .vessel(vessel(18, 5.6).build()));
        assertTrue(said(reduced, "static-pressure-high").startsWith("The reducing valve holds the house at up to 5.6"));
    }

    @Test
    void wayBackIsClosedByTheDeviceThatIsThere() {
        assertTrue(said(of(house().withoutVessel()), "expansion-control-missing")
                .startsWith("Nothing can flow back to the mains"));
        assertTrue(said(of(house().withoutVessel().supply(reduced(6, reducer(4)).build())), "expansion-control-missing")
                .startsWith("The reducing valve, described without a bypass, closes"));
    }

    @Test
    void adviceFitsTheDeviceThatIsThere() {
        List<Finding> mains =
                of(house().supply(supply(5.6).build()).vessel(vessel(18, 5.6).build()));
        assertTrue(advice(mains, "static-pressure-high").contains("reducing valve fitted"));
        List<Finding> reduced = of(house().supply(reduced(8, reducer(5.6)).build())
                .vessel(vessel(18, 5.6).build()));
        assertTrue(advice(reduced, "static-pressure-high").contains("reducing valve set lower"));
    }

    private static String advice(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow()
                .advice()
                .text(UnitSystem.SI);
    }

    /** Ten metres up the supply has 3.02 bar, and a charge may lie 0.4 bar below that. */
    @ParameterizedTest
    @CsvSource({"2.61, true", "2.63, false"})
    void chargeMayLieALittleBelowTheSupplyAtItsHeight(double bar, boolean low) {
        List<Finding> found =
                of(house().vessel(vessel(18, bar).height(10, LengthUnit.METRE).build()));
        assertEquals(low, has(found, "precharge-below-static"));
    }

    @Test
    void weightIsALeastWeightWhereTheSteelIsUnknown() {
        ExpansionVessel.Builder lying = vessel(18, 4).mounting(ExpansionVessel.Mounting.HORIZONTAL);
        String unknown = said(of(house().vessel(lying.build())), "vessel-unsupported");
        assertTrue(unknown.endsWith("weighs at least 18 kg when full of water."), unknown);
        ExpansionVessel known = lying.emptyMass(6, MassUnit.KILOGRAM).build();
        String said = said(of(house().vessel(known)), "vessel-unsupported");
        assertTrue(said.endsWith("weighs 24 kg when full of water."), said);
    }

    /** Without a relief valve nothing gives where the maker's limit is passed: the pressure goes on. */
    @Test
    void nothingIsSaidToGiveAtTheWorkingPressure() {
        HotWaterSystem bare = unguarded().withoutVessel().build();
        String said = said(of(bare.toBuilder()), "expansion-control-missing");
        assertTrue(
                said.endsWith("drives the pressure up until the tank's working pressure of 10 bar is exceeded."), said);
        assertTrue(said(of(house().withoutVessel()), "expansion-control-missing")
                .endsWith("drives the pressure up until 'T&P valve' opens at 7 bar."));
    }
}

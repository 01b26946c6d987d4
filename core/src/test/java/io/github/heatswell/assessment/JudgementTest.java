package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.event;
import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.reduced;
import static io.github.heatswell.assessment.FaultlessHouse.reducer;
import static io.github.heatswell.assessment.FaultlessHouse.run;
import static io.github.heatswell.assessment.FaultlessHouse.tank;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.unmixed;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static io.github.heatswell.assessment.FaultlessHouse.vessel;
import static io.github.heatswell.assessment.LimitsTest.has;
import static io.github.heatswell.assessment.LimitsTest.of;
import static io.github.heatswell.assessment.LimitsTest.only;
import static io.github.heatswell.assessment.LimitsTest.withRelief;
import static io.github.heatswell.assessment.LimitsTest.withSupply;
import static io.github.heatswell.units.PressureUnit.PSI;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.Event;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What rules take into account besides their limits: the run, heights, what nobody read, and other faults. */
class JudgementTest {

    /**
     * Closed form: what 200 L gain from 10 to 60 degC in a rigid tank, and what a vessel charged to 4 bar takes between 4
     * and 7 bar by Boyle's law, 3 / 8.01325 of its volume. The gain is 1.68 % of the cold volume as hot water (IAPWS-95),
     * of which 0.98320 / 0.99970 as cold.
     */
    @Test
    void theEstimateIsBoylesLaw() {
        AssessmentContext subject = new AssessmentContext(house().build(), Optional.empty());
        assertEquals(200e-3 * 0.0168 * 0.9832 / 0.9997, VesselSizeRule.needed(subject), 0.02 * 3.3e-3); // compression
        double size = VesselSizeRule.needed(subject) * 8.01325 / 3 * 1e3;
        assertTrue(!has(of(house().vessel(vessel(size * 1.0001, 4).build())), "vessel-too-small"));
        assertTrue(has(of(house().vessel(vessel(size * 0.9999, 4).build())), "vessel-too-small"));
    }

    /** A run that heated the water through knows better than the estimate; one that did not leaves it standing. */
    @Test
    void theRunOverrulesTheEstimate() {
        HotWaterSystem small = house().vessel(vessel(2, 4).build()).build();
        assertTrue(!has(Findings.of(run(small, 5.4, 60)), "vessel-too-small"));
        assertTrue(has(Findings.of(run(small, 5.4, 30)), "vessel-too-small"));
        List<Finding> opened = Findings.of(run(small, 7, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)));
        assertTrue(has(opened, "vessel-too-small"));
        assertTrue(!has(opened, "relief-valve-controls-expansion"));
    }

    /** A charge that is far off is the cause; the size is judged as if it were right. */
    @Test
    void aLostChargeIsNotASmallVessel() {
        HotWaterSystem lost = house().vessel(vessel(18, 0.2).build()).build();
        List<Finding> found = Findings.of(run(
                lost,
                7,
                60,
                event(Event.Kind.VESSEL_BOTTOMED_OUT, 4),
                event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)));
        assertEquals(
                List.of("precharge-below-static", "peak-above-code-limit"),
                found.stream().map(Finding::id).toList());
        HotWaterSystem both = house().vessel(vessel(2, 0.2).build()).build();
        assertTrue(has(Findings.of(both), "vessel-too-small"));
        assertTrue(has(Findings.of(both), "precharge-below-static"));
    }

    /** Devices are judged at their own height: 10 m up, 0.98 bar are missing. */
    @Test
    void heightsCount() {
        ExpansionVessel roof = vessel(18, 4).height(10, LengthUnit.METRE).build();
        assertEquals(
                4e5 - 999.7 * 9.80665 * 10,
                only(of(house().vessel(roof)), "precharge-above-static")
                        .limit()
                        .orElseThrow()
                        .value(),
                5); // the published density of water at 10 degC is rounded to 0.05 kg/m3
        ReliefValve attic = valve(6.5, 5.5).height(10, LengthUnit.METRE).build();
        assertTrue(!has(of(withSupply(6).addReliefValve(attic)), "supply-opens-relief-valve"));
    }

    @Test
    void aGuardThatWasNotDescribedIsUnknownAndNoFault() {
        Finding guarded = only(of(withRelief(valve(7, 6))), "temperature-relief-missing");
        assertEquals(Severity.NOTE, guarded.severity());
        assertTrue(guarded.sentence().text(UnitSystem.SI).contains("European heaters are built that way"));
        assertTrue(guarded.advice().text(UnitSystem.SI).contains("in the UK an unvented one needs it"));
        Finding bare = only(of(withRelief(valve(7, 6)).heater(unmixed(60).build())), "temperature-relief-missing");
        assertEquals(Severity.NOTE, bare.severity());
        assertTrue(bare.sentence().text(UnitSystem.SI).contains("is not known"));
        assertFalse(bare.advice().text(UnitSystem.SI).contains("fitted"));
    }

    /** A tenth of overpressure is what a valve at full flow may need: from memory, no source was read. */
    @Test
    void aLittleOverpressureIsAFaultAndMoreAHazard() {
        HotWaterSystem sound = house().build();
        String id = "working-pressure-exceeded";
        assertEquals(Severity.FAULT, only(Findings.of(run(sound, 11, 60)), id).severity());
        assertEquals(
                Severity.HAZARD, only(Findings.of(run(sound, 11.001, 60)), id).severity());
    }

    /** A valve of 10 bar, 1.5 m up on a tank of 10 bar, lets the tank come to its set pressure and 0.15 bar of water. */
    @Test
    void whatAFittingValveLetsThroughIsACaution() {
        HotWaterSystem tall = unguarded()
                .tank(tank(10))
                .addReliefValve(guard(10, 8).height(1.5, LengthUnit.METRE).build())
                .build();
        String id = "working-pressure-exceeded";
        Finding head = only(Findings.of(run(tall, 10.14, 60)), id);
        assertEquals(Severity.CAUTION, head.severity());
        assertTrue(head.sentence().text(UnitSystem.SI).contains("is higher than the gauge"));
        Finding open = only(Findings.of(run(tall, 10.5, 60)), id);
        assertEquals(Severity.CAUTION, open.severity());
        assertTrue(open.sentence().text(UnitSystem.SI).contains("opens fully only a little above"));
        assertEquals(Severity.HAZARD, only(Findings.of(run(tall, 11.5, 60)), id).severity());
    }

    /**
     * 150 psi are 10.34 bar: beside 10 bar that nobody read on a plate they are no hazard, and beyond 11 bar still none.
     * A tenth above the 12.5 bar that no tank of a house exceeds, no plate could make it right.
     */
    @Test
    void anAssumedRatingMakesNoHazardThatAPlateCouldTakeBack() {
        HotWaterSystem house = unguarded()
                .tank(FaultlessHouse.unread(10))
                .addReliefValve(guard(150 * PSI.factor() / 1e5, 8.3).build())
                .build();
        for (List<Finding> found : List.of(Findings.of(house), Findings.of(run(house, 10.34, 60)))) {
            Finding unread = only(found, "tank-rating-unread");
            assertEquals(Severity.CAUTION, unread.severity());
            assertTrue(unread.sentence().text(UnitSystem.SI).endsWith("not given, and 10 bar is assumed."));
            assertTrue(unread.advice().text(UnitSystem.SI).startsWith("Read the working pressure on the tank's plate"));
            assertTrue(unread.authority().source().text().contains("assumed"));
            assertTrue(found.stream().noneMatch(finding -> finding.severity() == Severity.HAZARD));
            assertFalse(has(found, "working-pressure-exceeded") || has(found, "tp-relief-set-high"));
        }
        assertEquals(
                Severity.FAULT,
                only(Findings.of(run(house, 11.1, 60)), "tank-rating-unread").severity());
        assertEquals(
                Severity.FAULT,
                only(Findings.of(run(house, 13.74, 60)), "tank-rating-unread").severity());
        Finding beyond = only(Findings.of(run(house, 13.76, 60)), "tank-rating-unread");
        assertEquals(Severity.HAZARD, beyond.severity());
        assertEquals(12.5e5, beyond.limit().orElseThrow().value());
        HotWaterSystem read = house.toBuilder().tank(tank(10)).build();
        assertFalse(has(Findings.of(read), "tank-rating-unread"));
        assertTrue(has(Findings.of(read), "relief-set-above-tank"));
    }

    /** Regression: water that only cooled, to below freezing, was said to be heated to 5.85 bar, and a vessel was to be bought for it. */
    @Test
    void waterThatOnlyCoolsIsNotSaidToBeHeated() {
        HotWaterSystem house = withRelief(guard(10, 9))
                .start(Start.builder().water(4, TemperatureUnit.CELSIUS).build())
                .build();
        Finding above = only(Findings.of(run(house, 5.85, 4)), "peak-above-code-limit");
        assertTrue(above.sentence().text(UnitSystem.SI).startsWith("The pressure reaches 5.85 bar"));
        assertTrue(above.advice().text(UnitSystem.SI).contains("whatever drives the pressure up fixed first"));
        Finding heated = only(Findings.of(run(house, 5.85, 60)), "peak-above-code-limit");
        assertTrue(heated.sentence().text(UnitSystem.SI).startsWith("Heating drives the pressure to 5.85 bar"));
    }

    /** Regression: a valve set to 24 bar was a fault beside a tank without a plate, though no tank that is accepted suits it. */
    @Test
    void aValveAboveEveryTankIsAHazardWithoutAPlate() {
        HotWaterSystem house = unguarded()
                .tank(FaultlessHouse.unread(10))
                .addReliefValve(guard(24, 20).build())
                .build();
        Finding hazard = only(Findings.of(house), "relief-set-above-tank");
        assertEquals(Severity.HAZARD, hazard.severity());
        assertEquals(
                "No relief valve opens below 24 bar at the tank, and no tank of a house is rated for more than 12.5 bar.",
                hazard.sentence().text(UnitSystem.SI));
        String unread = only(Findings.of(house), "tank-rating-unread").advice().text(UnitSystem.SI);
        assertTrue(unread.startsWith("Leave the heater off because of the hazard."), unread);
        assertTrue(
                Findings.of(house).stream()
                        .noneMatch(finding -> finding.sentence()
                                .text(UnitSystem.SI)
                                .contains("drives the pressure up until 'T&P valve'")),
                "the tank bursts before");
        HotWaterSystem lower = house.toBuilder()
                .withoutReliefValves()
                .addReliefValve(guard(12.5, 10).build())
                .build();
        assertFalse(has(Findings.of(lower), "relief-set-above-tank"));
    }

    /** The mains of another hour is above the assumed rating; the run is not, and neither is the relief valve. */
    @Test
    void aSupplyAboveAnAssumedRatingIsNotSaidOfTheRun() {
        HotWaterSystem house = unguarded()
                .tank(FaultlessHouse.unread(10))
                .supply(FaultlessHouse.supply(11).build())
                .addReliefValve(guard(7, 5).build())
                .build();
        Finding unread = only(Findings.of(run(house, 4.99, 60)), "tank-rating-unread");
        assertTrue(
                unread.sentence().text(UnitSystem.SI).startsWith("The supply reaches 11 bar"),
                unread.sentence()::toString);
        String advice = unread.advice().text(UnitSystem.SI);
        assertTrue(advice.contains("until a reducing valve keeps the supply below the plate's pressure"), advice);
        assertFalse(advice.contains("replaced"), advice);
        String without = only(
                        Findings.of(unguarded()
                                .tank(FaultlessHouse.unread(10))
                                .supply(FaultlessHouse.supply(11).build())
                                .build()),
                        "tank-rating-unread")
                .advice()
                .text(UnitSystem.SI);
        assertTrue(without.contains("has been fitted"), without);
    }

    /** Whatever a vessel is sized against is a caution where a run passes it, and one does not silence the other. */
    @Test
    void aPeakNearTheReliefValveAndAboveTheCodeIsBoth() {
        HotWaterSystem sound = house().build();
        for (double bar : new double[] {5.8, 6.3, 6.9}) {
            List<Finding> found = Findings.of(run(sound, bar, 60));
            assertEquals(
                    List.of("peak-above-code-limit", "peak-near-relief"),
                    found.stream().map(Finding::id).toList());
            assertTrue(found.stream().allMatch(finding -> finding.severity() == Severity.CAUTION));
            // the lower of 80 psi and 5.79 bar
            assertTrue(found.get(1).advice().text(UnitSystem.SI).contains("below 5.52 bar cures this too"));
        }
        assertTrue(!has(Findings.of(run(sound, 7, 60)), "peak-near-relief"));
    }

    /** What a fault drives up is not the vessel's doing. */
    @Test
    void aCreepingReducingValveIsNotASmallVessel() {
        Supply creeping = reduced(8, reducer(4))
                .seatLeakage(0.1, FlowUnit.LITRE_PER_MINUTE)
                .build();
        List<Finding> found = Findings.of(
                run(house().supply(creeping).build(), 7, 60, event(Event.Kind.RELIEF_OPENED, "T&P valve", 7)));
        assertEquals(
                List.of("reducing-valve-creeps", "peak-above-code-limit"),
                found.stream().map(Finding::id).toList());
        assertTrue(
                found.get(1).advice().text(UnitSystem.SI).contains("Have whatever drives the pressure up fixed first"));
        assertTrue(found.get(1).sentence().text(UnitSystem.SI).startsWith("The pressure reaches 7 bar"));
    }
}

package io.github.heatswell.assessment;

import static io.github.heatswell.system.ExpansionVessel.Condition.ISOLATED;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What is found in a house with several vessels: each is judged by itself, and their room together. */
class SeveralVesselsFindingsTest {

    private static HotWaterSystem with(ExpansionVessel... vessels) {
        HotWaterSystem.Builder house = FaultlessHouse.house().withoutVessel();
        List.of(vessels).forEach(house::addVessel);
        return house.build();
    }

    private static RunSummary run(HotWaterSystem house) {
        return Simulation.of(house, Duration.ofHours(12)).summary();
    }

    private static List<String> vesselFindings(List<Finding> found) {
        return found.stream()
                .map(Finding::id)
                .filter(id -> id.startsWith("vessel") || id.startsWith("precharge"))
                .toList();
    }

    /** Three vessels that share the expansion are enough together, although each alone is too small. */
    @Test
    void vesselsAreEnoughTogether() {
        ExpansionVessel third = FaultlessHouse.vessel(4, 4).build();
        HotWaterSystem three = with(third, third.toBuilder().name("b").build(), third);
        assertEquals(List.of(), vesselFindings(Findings.of(run(three))));
        assertEquals(List.of(), vesselFindings(Findings.of(three)));
        assertEquals(List.of("vessel-too-small"), vesselFindings(Findings.of(with(third))));
        assertEquals(List.of("vessel-too-small"), vesselFindings(Findings.of(with(third, third))));
        RunSummary two = run(with(third, third));
        assertEquals(true, two.first(Event.Kind.RELIEF_OPENED).isPresent());
        assertEquals(List.of("vessel-too-small"), vesselFindings(Findings.of(two)));
    }

    /** Each vessel's charge and condition is judged, whichever it is. */
    @Test
    void eachVesselIsJudged() {
        ExpansionVessel right = FaultlessHouse.vessel(18, 4).build();
        ExpansionVessel low = FaultlessHouse.vessel(8, 2).name("in the tank").build();
        ExpansionVessel cut =
                right.toBuilder().condition(ExpansionVessel.Condition.ISOLATED).build();
        List<Finding> found = Findings.of(run(with(right, low, cut)));
        assertEquals(
                List.of("vessel-isolated", "precharge-below-static"),
                vesselFindings(found).stream().sorted(Comparator.reverseOrder()).toList());
    }

    /** The rating of a vessel further down limits the peak as well. */
    @Test
    void theWeakestRatingLimitsThePeak() {
        ExpansionVessel strong =
                FaultlessHouse.vessel(9, 4).rating(Pressure.gauge(10, BAR)).build();
        ExpansionVessel weak = FaultlessHouse.vessel(9, 4)
                .rating(Pressure.gauge(5, BAR))
                .height(-2, LengthUnit.METRE)
                .build();
        List<Finding> found = Findings.of(run(with(strong, weak)));
        assertEquals(
                1,
                found.stream()
                        .filter(one -> one.id().equals("vessel-rating-exceeded"))
                        .count());
    }

    /** Whatever is said of one of several vessels says which, so that no sentence stands there twice. */
    @Test
    void eachFindingSaysWhichVesselItIsAbout() {
        for (ExpansionVessel.Condition condition : ExpansionVessel.Condition.values()) {
            ExpansionVessel bad = bad().condition(condition).build();
            assertNames(List.of("'attic'", "'cellar'"), with(named(bad, "attic"), named(bad, "cellar")));
            assertNames(List.of("essel 1", "essel 2"), with(bad, bad));
        }
        ExpansionVessel high = bad().height(29, LengthUnit.METRE).build();
        assertNames(List.of("'attic'", "'cellar'"), with(named(high, "attic"), named(high, "cellar")));
        ExpansionVessel far = bad().height(-20, LengthUnit.METRE)
                .rating(Pressure.gauge(5, BAR))
                .build();
        assertNames(List.of("essel 1", "essel 2"), with(far, far));
        ExpansionVessel small = FaultlessHouse.vessel(2, 4).build();
        assertNames(
                List.of("essel 2"), with(small.toBuilder().condition(ISOLATED).build(), small));
    }

    /** Of the only vessel no more is said than that it is the vessel. */
    @Test
    void theOnlyVesselHasNoNumber() {
        ExpansionVessel cut = named(bad().condition(ISOLATED).build(), "attic");
        for (Finding one : Findings.of(with(cut))) {
            String sentence = one.sentence().text(UnitSystem.SI);
            assertFalse(sentence.contains("attic") || sentence.contains("essel 1"), sentence);
        }
    }

    /** Regression: a vessel left alone by one that does nothing is not to be exchanged before that is put right. */
    @Test
    void theOneThatTakesNoWaterIsPutRightFirst() {
        ExpansionVessel small = FaultlessHouse.vessel(2, 4).build();
        HotWaterSystem house = with(small.toBuilder().condition(ISOLATED).build(), small);
        for (List<Finding> found : List.of(Findings.of(house), Findings.of(run(house)))) {
            Finding size = found.stream()
                    .filter(one -> one.id().equals("vessel-too-small"))
                    .findFirst()
                    .orElseThrow();
            String sentence = size.sentence().text(UnitSystem.SI);
            assertTrue(sentence.startsWith("Vessel 2 (2 L) alone "), sentence);
            String advice = size.advice().text(UnitSystem.SI);
            assertTrue(advice.contains("First have every vessel that takes no water fixed."), advice);
        }
    }

    private static ExpansionVessel.Builder bad() {
        return FaultlessHouse.vessel(12, 2)
                .mounting(ExpansionVessel.Mounting.HORIZONTAL)
                .emptyMass(4, MassUnit.KILOGRAM);
    }

    private static ExpansionVessel named(ExpansionVessel vessel, String name) {
        return vessel.toBuilder().name(name).build();
    }

    /** Each sentence of what is found of a vessel has one of the names, and each name has its sentence. */
    private static void assertNames(List<String> names, HotWaterSystem house) {
        for (List<Finding> found : List.of(Findings.of(house), Findings.of(run(house)))) {
            List<String> sentences = found.stream()
                    .filter(one -> one.id().startsWith("vessel") || one.id().startsWith("precharge"))
                    .map(one -> one.sentence().text(UnitSystem.SI))
                    .filter(sentence -> !sentence.contains(" together"))
                    .toList();
            assertEquals(sentences.size(), Set.copyOf(sentences).size(), sentences::toString);
            for (String name : names) {
                assertTrue(sentences.stream().anyMatch(sentence -> sentence.contains(name)), name + " in " + sentences);
            }
            for (String sentence : sentences) {
                assertTrue(sentence.matches(".*('attic'|'cellar'|[Vv]essel [12]).*"), sentence);
            }
        }
    }
}

package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.house;
import static io.github.heatswell.assessment.FaultlessHouse.supply;
import static io.github.heatswell.assessment.FaultlessHouse.unguarded;
import static io.github.heatswell.assessment.FaultlessHouse.valve;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.RulesHere.Held;
import io.github.heatswell.assessment.RulesHere.Verdict;
import io.github.heatswell.place.Place;
import io.github.heatswell.place.PlaceRule;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Regression: which rules of a place are shown of a house, and what became of each. */
class RulesHereTest {

    /** A supply of 5.3 bar is above 500 kPa of EN 806-2 and within 80 psi of UPC 608.2. */
    @Test
    void aBrokenRuleIsNamedWithItsFinding() {
        HotWaterSystem.Builder high = house().supply(supply(5.3).build());
        Held broken = held(RulesHere.of(at(high, Place.EN), Doubts.NONE), Topic.STATIC_LIMIT);
        assertEquals(Verdict.AGAINST, broken.verdict());
        assertEquals("static-pressure-high", broken.finding().orElseThrow().id());
        Held kept = held(RulesHere.of(at(high, Place.US_UPC), Doubts.NONE), Topic.STATIC_LIMIT);
        assertEquals(Verdict.KEPT, kept.verdict());
        assertTrue(kept.finding().isEmpty());
    }

    /** Regression: a limiting valve of 500 kPa with an assumed lock-up rise was said to break the rule that it was fitted for. */
    @Test
    void aRuleIsNotBrokenByAValueThatNobodyHasRead() {
        Doubts assumed = Doubts.of(
                List.of(new Doubts.Doubt(
                        NamedValue.SUPPLY.field(), Statement.plain("5.3 bar"), Optional.empty(), List.of())),
                changes -> Optional.empty());
        Held held = held(RulesHere.of(at(house().supply(supply(5.3).build()), Place.EN), assumed), Topic.STATIC_LIMIT);
        assertEquals(Verdict.ON_SITE, held.verdict());
        assertEquals("static-pressure-high", held.finding().orElseThrow().id());
    }

    /** Where a vessel is a choice, a dripping valve is nothing against the rules; where it is not, it is. */
    @Test
    void whatIsLeftOpenIsNotBroken() {
        HotWaterSystem.Builder closed =
                unguarded().addReliefValve(valve(7, 6).build()).withoutVessel();
        assertEquals(
                Verdict.OPEN,
                held(RulesHere.of(at(closed, Place.EN), Doubts.NONE), Topic.RELIEF_FOR_EXPANSION)
                        .verdict());
        assertEquals(
                Verdict.AGAINST,
                held(RulesHere.of(at(closed, Place.US_IPC), Doubts.NONE), Topic.EXPANSION_CONTROL)
                        .verdict());
    }

    /** Where the T&P valve is the only outlet, every rule against that is broken by the one finding; a run is not needed for it. */
    @Test
    void aHouseThatReliesOnItsTemperatureReliefValveKeepsNoRuleOnExpansion() {
        RulesHere rules = RulesHere.of(at(house().withoutVessel(), Place.US_IPC), Doubts.NONE);
        for (Topic topic : List.of(Topic.EXPANSION_CONTROL, Topic.RELIEF_FOR_EXPANSION, Topic.PEAK_LIMIT)) {
            Held broken = held(rules, topic);
            assertEquals(Verdict.AGAINST, broken.verdict(), topic::label);
            assertEquals(
                    "expansion-control-missing", broken.finding().orElseThrow().id());
        }
    }

    /** A guard that never opens, or is not there, answers no rule that asks for one; a second one that opens does. */
    @ParameterizedTest
    @EnumSource(
            value = Place.class,
            names = {"US_IPC", "US_UPC", "UK", "AU_NZ"})
    void aLostGuardIsAgainstTheRuleThatAsksForIt(Place place) {
        ReliefValve blocked = guard(7, 6).fault(ReliefFault.blocked()).build();
        Held lost = held(RulesHere.of(at(unguarded().addReliefValve(blocked), place), Doubts.NONE), Topic.HEAT_RELIEF);
        assertEquals(Verdict.AGAINST, lost.verdict());
        assertEquals("relief-valve-blocked", lost.finding().orElseThrow().id());
        Held missing = held(RulesHere.of(at(unguarded(), place), Doubts.NONE), Topic.HEAT_RELIEF);
        assertEquals(Verdict.AGAINST, missing.verdict());
        assertEquals("relief-valve-missing", missing.finding().orElseThrow().id());
        HotWaterSystem.Builder second = house().addReliefValve(
                        guard(7, 6).name("second").fault(ReliefFault.blocked()).build());
        assertEquals(
                place == Place.UK ? Verdict.CUT_OUT_ON_SITE : Verdict.KEPT,
                held(RulesHere.of(at(second, place), Doubts.NONE), Topic.HEAT_RELIEF)
                        .verdict());
    }

    /** Two guards besides the thermostat: a house without a cut-out was said to have nothing against it. */
    @Test
    void aCutOutThatIsAskedForIsMissedWhereNoneIsDescribed() {
        Heater.Builder heater = FaultlessHouse.unmixed(60).mixedTo(45, TemperatureUnit.CELSIUS);
        HotWaterSystem silent = at(house().heater(heater.build()), Place.UK);
        HotWaterSystem without = at(house().heater(heater.withoutCutOut().build()), Place.UK);
        RulesHere rules = RulesHere.of(without, Doubts.NONE);
        assertEquals(Verdict.AGAINST, held(rules, Topic.HEAT_RELIEF).verdict());
        assertEquals(
                "cut-out-missing",
                held(rules, Topic.HEAT_RELIEF).finding().orElseThrow().id());
        assertTrue(rules.against().contains(held(rules, Topic.HEAT_RELIEF)));
        assertEquals(
                Verdict.CUT_OUT_ON_SITE,
                held(RulesHere.of(silent, Doubts.NONE), Topic.HEAT_RELIEF).verdict());
    }

    /** Whether a relief valve described without a temperature is a T&P valve, the description cannot tell. */
    @Test
    void aValveWithoutItsTemperatureIsToBeChecked() {
        HotWaterSystem.Builder closed =
                unguarded().addReliefValve(valve(7, 6).build()).withoutVessel();
        assertEquals(
                Verdict.ON_SITE,
                held(RulesHere.of(at(closed, Place.US_IPC), Doubts.NONE), Topic.RELIEF_FOR_EXPANSION)
                        .verdict());
        assertEquals(
                Verdict.BY_A_RUN,
                held(RulesHere.of(at(house(), Place.US_IPC), Doubts.NONE), Topic.RELIEF_FOR_EXPANSION)
                        .verdict());
    }

    /** An open house is not told that nothing is asked about its expansion: what holds in full behind a check valve is shown. */
    @ParameterizedTest
    @EnumSource(
            value = Place.class,
            names = {"US_IPC", "US_UPC", "UK"})
    void anOpenHouseIsToldWhatHoldsBehindACheckValve(Place place) {
        HotWaterSystem.Builder open = house().withoutVessel()
                .supply(supply(4).arrangement(Supply.Arrangement.DIRECT).build());
        RulesHere rules = RulesHere.of(at(open, place), Doubts.NONE);
        assertEquals(Verdict.ONCE_CLOSED, held(rules, Topic.EXPANSION_CONTROL).verdict());
        assertTrue(rules.against().stream().noneMatch(held -> held.rule().topic() == Topic.EXPANSION_CONTROL));
    }

    /** What limits the water may be at the tap itself, of which nobody was asked: the house is not called against the rule. */
    @Test
    void whatLimitsTheWaterAtATapIsToBeChecked() {
        HotWaterSystem.Builder unmixed =
                house().heater(FaultlessHouse.unmixed(60).build());
        Held held = held(RulesHere.of(at(unmixed, Place.AU_NZ), Doubts.NONE), Topic.TAP_TEMPERATURE);
        assertEquals(Verdict.ON_SITE, held.verdict());
        assertEquals("scald-without-mixing-valve", held.finding().orElseThrow().id());
        Held publishers = held(RulesHere.of(at(unmixed, Place.US_UPC), Doubts.NONE), Topic.TAP_TEMPERATURE);
        assertEquals(Verdict.ON_SITE, publishers.verdict());
        assertTrue(publishers.rule().limit().isEmpty(), "the sections were not read, only an answer about them");
    }

    /** A valve that is called a T&P valve is there; its temperature is not described, so someone has to look. */
    @Test
    void aNameWithoutATemperatureIsToBeChecked() {
        HotWaterSystem.Builder named =
                unguarded().addReliefValve(valve(7, 6).name("T&P valve").build());
        Held held = held(RulesHere.of(at(named, Place.US_IPC), Doubts.NONE), Topic.HEAT_RELIEF);
        assertEquals(Verdict.ON_SITE, held.verdict());
        String said = held.finding().orElseThrow().sentence().text(UnitSystem.US);
        assertTrue(said.startsWith("'T&P valve' is described without its temperature (opens-at)"), said);
        HotWaterSystem.Builder bare = unguarded().addReliefValve(valve(7, 6).build());
        assertEquals(
                Verdict.AGAINST,
                held(RulesHere.of(at(bare, Place.US_IPC), Doubts.NONE), Topic.HEAT_RELIEF)
                        .verdict());
    }

    /** What nobody read is a topic to ask about and no rule; no topic is both. */
    @ParameterizedTest
    @EnumSource(Place.class)
    void nothingUnreadIsShown(Place place) {
        RulesHere rules = RulesHere.of(at(house(), place), Doubts.NONE);
        assertTrue(rules.rules().stream().allMatch(held -> held.rule().isRead()));
        assertFalse(rules.rules().isEmpty());
        assertEquals(!place.isKnown(), rules.unread().isEmpty());
        assertTrue(rules.rules().stream().map(held -> held.rule().topic()).noneMatch(rules.unread()::contains));
        if (!place.isKnown()) {
            assertEquals(
                    Set.of(Verdict.NOT_KNOWN),
                    rules.rules().stream().map(Held::verdict).collect(Collectors.toSet()));
        }
        PlaceRule unread = Place.UK.rules().stream()
                .filter(rule -> !rule.isRead())
                .findFirst()
                .orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> new Held(unread, Verdict.KEPT, Optional.empty()));
    }

    /** Contract: of a place that is not known only rules that state a number or ask for something are shown; of any other, all. */
    @Test
    void anUnknownPlaceShowsNumbersAndDemands() {
        assertTrue(RulesHere.of(at(house(), Place.NOT_KNOWN), Doubts.NONE).rules().stream()
                .map(Held::rule)
                .allMatch(RulesHereTest::saysSomething));
        assertFalse(RulesHere.of(at(house(), Place.US_UPC), Doubts.NONE).rules().stream()
                .map(Held::rule)
                .allMatch(RulesHereTest::saysSomething));
        assertFalse(Place.NOT_KNOWN.rules().stream().allMatch(RulesHereTest::saysSomething), "some are left out");
    }

    private static boolean saysSomething(PlaceRule rule) {
        return rule.limit().isPresent() || rule.demand().isPresent();
    }

    /** Contract: a rule on a part that the house does not have is not shown. */
    @Test
    void topicsFollowTheHouse() {
        Set<Topic> ofAnyValve = Set.of(Topic.RELIEF_CAPACITY, Topic.DISCHARGE_PIPE, Topic.SUPPLY_TO_RELIEF);
        Set<Topic> ofAGuard = Set.of(Topic.RELIEF_TEMPERATURE, Topic.RELIEF_PRESSURE);
        for (Place place : List.of(Place.US_IPC, Place.UK, Place.EN, Place.AU_NZ)) {
            Set<Topic> without = topics(at(unguarded(), place));
            assertTrue(Collections.disjoint(without, ofAnyValve) && Collections.disjoint(without, ofAGuard));
            Set<Topic> plain = topics(at(unguarded().addReliefValve(valve(7, 6).build()), place));
            assertTrue(plain.containsAll(ofAnyValve) && Collections.disjoint(plain, ofAGuard));
            assertTrue(topics(at(house(), place)).containsAll(ofAGuard));
            HotWaterSystem.Builder open = house().supply(
                            supply(4).arrangement(Supply.Arrangement.DIRECT).build());
            assertTrue(topics(at(open, place)).contains(Topic.VESSEL));
            assertFalse(topics(at(open.withoutVessel(), place)).contains(Topic.VESSEL));
        }
    }

    /** The topics of a house, read or not. */
    private static Set<Topic> topics(HotWaterSystem house) {
        RulesHere rules = RulesHere.of(house, Doubts.NONE);
        return Stream.concat(rules.rules().stream().map(held -> held.rule().topic()), rules.unread().stream())
                .collect(Collectors.toSet());
    }

    /** Contract: a vessel with a fault is there, but whether it takes the expansion a run has to show; a caution leaves the rule kept. */
    @Test
    void aVesselWithAFaultIsNoExpansionControlYet() {
        RulesHere small =
                RulesHere.of(at(house().vessel(FaultlessHouse.vessel(2, 4).build()), Place.US_IPC), Doubts.NONE);
        Held control = held(small, Topic.EXPANSION_CONTROL);
        assertEquals(Verdict.BY_A_RUN, control.verdict());
        assertEquals("vessel-too-small", control.finding().orElseThrow().id());
        assertEquals(List.of(control.finding().get()), small.vessel());
        RulesHere high =
                RulesHere.of(at(house().vessel(FaultlessHouse.vessel(18, 4.5).build()), Place.US_IPC), Doubts.NONE);
        assertEquals(Verdict.KEPT, held(high, Topic.EXPANSION_CONTROL).verdict());
        assertEquals(List.of(), high.vessel());
        RulesHere hot = RulesHere.of(
                at(
                        house().heater(FaultlessHouse.heater(60)
                                .thermostatStuck(true)
                                .build()),
                        Place.US_IPC),
                Doubts.NONE);
        assertEquals(List.of(), hot.vessel(), "a fault, but not of the vessel");
    }

    private static Held held(RulesHere rules, Topic topic) {
        return rules.rules().stream()
                .filter(held -> held.rule().topic() == topic)
                .findFirst()
                .orElseThrow();
    }

    private static HotWaterSystem at(HotWaterSystem.Builder house, Place place) {
        return house.site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .place(place)
                        .build())
                .build();
    }
}

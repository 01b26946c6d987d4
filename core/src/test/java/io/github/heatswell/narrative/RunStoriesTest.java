package io.github.heatswell.narrative;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.narrative.Observer.Observed;
import io.github.heatswell.place.Place;
import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Totals;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Start;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Regression: limits, alarms and remarks of a run, and the words for runs of many days. */
class RunStoriesTest {

    private static final QuantityFormat SI = QuantityFormat.unicode(UnitSystem.SI);
    private static final HotWaterSystem ONE = Houses.warm().build();

    /** Also of a valve far above or below the tank. */
    @ParameterizedTest
    @ValueSource(doubles = {-20, 0, 25})
    void theReliefSetPressureIsThatAtWhichTheValveOpens(double height) {
        HotWaterSystem house = Houses.bare()
                .addReliefValve(Houses.valve("lid", 7, 5.6)
                        .height(height, LengthUnit.METRE)
                        .build())
                .build();
        RunResult run = Simulation.of(house, Duration.ofHours(8)).run();
        Event opened = run.first(Event.Kind.RELIEF_OPENED).orElseThrow();
        Limit limit = Limit.reliefSet(run.summary()).orElseThrow();
        // the event is located to a nanosecond, in which the pressure rises by less than a thousandth of a pascal
        assertEquals(run.gauge(opened.pressureAbsolute()), limit.gauge(), 1e-3);
        assertEquals(limit.gauge(), Limit.reliefSetGauge(house).orElseThrow());
        assertTrue(limit.reached() && !limit.passed(), limit.toString());
        assertEquals("reached", limit.room().text(SI));
    }

    @Test
    void roundingPassesNoLimit() {
        assertFalse(Limit.passes(7e5 + 0.5, 7e5));
        assertTrue(Limit.passes(7e5 + 2, 7e5));
    }

    @Test
    void aLimitSaysHowMuchRoomIsLeft() {
        RunSummary calm = RunByHand.run(ONE, 60, 4.2, 5.8).summary();
        assertEquals(
                "1.2 bar left", Limit.reliefSet(calm).orElseThrow().room(calm).text(SI));
        assertEquals("4.2 bar left", Limit.workingPressure(calm).room().text(SI));
        assertEquals("14.2 bar left", Limit.testPressure(calm).room().text(SI));
        RunSummary high = RunByHand.run(ONE, 60, 4.2, 10.3).summary();
        assertEquals("exceeded by 0.3 bar", Limit.workingPressure(high).room().text(SI));
    }

    /** A valve that never opens limits nothing, also where it is set lowest; one that is stuck open keeps no distance. */
    @Test
    void aFaultyValveIsNoLimit() {
        HotWaterSystem blocked = with(ReliefFault.blocked());
        RunSummary run = RunByHand.run(blocked, 60, 4.2, 5.8).summary();
        assertEquals(Optional.empty(), Limit.reliefSet(run));
        assertEquals(OptionalDouble.empty(), Limit.reliefSetGauge(blocked));
        assertEquals("no working relief valve", Limit.withoutRelief(blocked));
        assertEquals("no relief valve", Limit.withoutRelief(Houses.bare().build()));
        RunSummary stuck = RunByHand.run(with(ReliefFault.stuckOpen(2, RatioUnit.PERCENT)), 60, 4.2, 5.8)
                .summary();
        assertEquals(
                "stuck open", Limit.reliefSet(stuck).orElseThrow().room(stuck).text(SI));
    }

    private static HotWaterSystem with(ReliefFault fault) {
        return Houses.bare()
                .addReliefValve(Houses.valve("lid", 7, 5.6).fault(fault).build())
                .build();
    }

    @Test
    void anAssumedWorkingPressureIsCalledSo() {
        HotWaterSystem unread = Houses.bare().tank(FaultlessHouse.unread(10)).build();
        assertEquals("assumed working pressure", Limit.workingPressureName(unread));
        assertEquals("tank working pressure", Limit.workingPressureName(ONE));
        assertEquals("assumed " + Limit.workingPressureExceeded(ONE), Limit.workingPressureExceeded(unread));
    }

    @Test
    void whatAValveDidIsOnePhrase() {
        ReliefValve sound = ONE.reliefValves().get(0);
        assertEquals("stayed shut", did(sound, 0));
        assertEquals("opened twice", did(sound, 2));
        assertEquals(
                "which is blocked",
                did(with(ReliefFault.blocked()).reliefValves().get(0), 0));
    }

    private static String did(ReliefValve valve, int openings) {
        return Narrative.did(valve, new Totals.Relief(valve.name(), 0, 0, openings));
    }

    /** A hazard of a finding brings its advice, and the same advice is given once. */
    @Test
    void hazardsComeFirstWithWhatToDo() {
        List<Alarm> alarms = Narrative.alarms(Houses.bare().build(), Doubts.NONE);
        assertFalse(alarms.isEmpty());
        assertTrue(alarms.stream().allMatch(alarm -> alarm.level() == Alarm.Level.HAZARD));
        assertTrue(alarms.get(0).advice().isPresent());
        assertTrue(alarms.get(0)
                .text()
                .text(SI)
                .endsWith(alarms.get(0).advice().orElseThrow().text(SI)));
        assertEquals(
                alarms.stream()
                        .flatMap(alarm -> alarm.advice().stream())
                        .distinct()
                        .count(),
                alarms.stream().flatMap(alarm -> alarm.advice().stream()).count());
    }

    @Test
    void aRunThatDoesNotBalanceIsNotReliable() {
        List<Alarm> alarms = Narrative.of(
                        RunByHand.run(ONE, 60, 4.2, 5).unbalanced(2e4).summary())
                .alarms();
        Alarm last = alarms.get(alarms.size() - 1);
        assertEquals(Alarm.Level.NOT_RELIABLE, last.level());
        assertTrue(last.what()
                .text(SI)
                .matches("The balance of this run does not close: 2 % of the heat is unaccounted for\\. .*"));
        assertEquals(Optional.empty(), Alarm.open(new Balances(0, 9), "this answer"));
        assertEquals(
                "The balance of 2 of the 9 runs behind this answer does not close. Do not rely on its figures; unless"
                        + " run.tolerance was loosened, please report the scenario.",
                Alarm.open(new Balances(2, 9), "this answer")
                        .orElseThrow()
                        .text()
                        .text(SI));
    }

    private static List<String> remarks(RunSummary run, Observed observed) {
        return Narrative.of(run).with(run, observed).remarkTexts(SI);
    }

    @Test
    void drawsThatFellShortAreRemarked() {
        RunSummary run = RunByHand.run(ONE, 60, 4.2, 5).cutShort(1).summary();
        assertEquals(
                List.of(
                        "1 draw was not fully served: the next draw began before the heat asked for had been delivered.",
                        "3 draws were not fully served: the water was cooler than wanted at the tap."),
                remarks(run, new Observed(2, 5e5, 285, 0, 3)));
        assertEquals(List.of(), remarks(RunByHand.run(ONE, 60, 4.2, 5).summary(), new Observed(2, 5e5, 285, 0, 0)));
    }

    /** A twentieth of what was discharged, and a tenth of a litre, is worth a remark. */
    @Test
    void waterFedThroughAnOpenValveIsRemarked() {
        RunSummary run = RunByHand.run(ONE, 600, 4.2, 7)
                .event(600, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(20)
                .summary();
        assertEquals(
                List.of("The valve runs on water from the supply: 5 L of the 20 L discharged came in while it ran."),
                remarks(run, new Observed(2, 5e5, 285, 5e-3, 0)));
        assertEquals(List.of(), remarks(run, new Observed(2, 5e5, 285, 0.9e-3, 0)));
    }

    @Test
    void heightsThatMatterAreRemarked() {
        HotWaterSystem tall = Houses.bare()
                .addReliefValve(Houses.valve("attic valve", 7, 5.6)
                        .height(10, LengthUnit.METRE)
                        .build())
                .build();
        String said = remarks(RunByHand.run(tall, 60, 4.2, 5).summary(), new Observed(2, 5e5, 285, 0, 0))
                .get(0);
        assertTrue(
                said.startsWith(
                        "At the peak of 5 bar at the drain cock, each at its own height: “attic valve” sees 4.0"),
                said);
    }

    /** The samples of a run say what it says of itself. */
    @Test
    void theSamplesOfARunAreObserved() {
        RunResult run = Houses.day(
                Houses.warm().supply(FaultlessHouse.supply(7.5).build()).draws(Houses.tap(8, 60)));
        Observed observed = Observed.of(run);
        assertEquals(run.trace().count(), observed.samples());
        assertEquals(60 + 273.15, observed.startTemperature(), 1e-9);
        assertTrue(observed.relievedWhileFed() > 0.9 * run.totals().relieved(), "the supply holds the valve open");
        assertEquals(0, observed.drawsTooCool());
    }

    /** A year of 365 days; dates only where the day of the year was told or matters. */
    @Test
    void daysHaveDatesWhereTheSeasonMatters() {
        HotWaterSystem march =
                Houses.warm().start(Start.builder().dayOfYear(60).build()).build();
        Moments dated = Moments.of(march, 800 * 86_400.0);
        assertEquals("1 Mar", dated.day(0));
        assertEquals("1 Jan of year 2", dated.day(306));
        assertEquals("day 15", Moments.of(ONE, 30 * 86_400.0).day(14));
        assertFalse(Moments.of(ONE, 30 * 86_400.0).dated());
        assertEquals("06:12", Moments.sinceStart().clock(372));
        Moments american = Moments.of(
                ONE.toBuilder()
                        .site(Site.builder()
                                .altitude(0, LengthUnit.METRE)
                                .room(20, TemperatureUnit.CELSIUS)
                                .place(Place.US_UPC)
                                .build())
                        .build(),
                86_400);
        assertEquals(
                List.of("midnight", "12:05 am", "6:12 am", "noon", "1 pm", "11:59 pm"),
                Stream.of(0, 5, 372, 720, 780, 1439)
                        .map(minutes -> american.clock(minutes))
                        .toList());
    }

    @Test
    void manyDaysAreToldByTheirNumber() {
        int days = 20;
        double[] gauge = new double[days + 1];
        Arrays.fill(gauge, 4.2);
        RunSummary run = RunByHand.run(ONE, 86_400, gauge)
                .event(86_400, Event.Kind.RELIEF_OPENED, "lid", 7)
                .relieved(9)
                .summary();
        List<Double> relieved = new ArrayList<>(Collections.nCopies(days, 0.0));
        relieved.set(1, 4e-3);
        relieved.set(7, 5e-3);
        assertTrue(Narrative.isByDay(run));
        assertEquals(
                "The relief valve discharges water on 2 of 20 days, 9 L in all, most on day 8: 5 L",
                Narrative.ofDays(run, Doubts.NONE, relieved).headline().text(SI));
        assertFalse(Narrative.isByDay(RunByHand.run(ONE, 86_400, 4.2, 5).summary()));
    }

    @Test
    void whatRunsHaveInCommonIsToldOnce() {
        RunSummary calm = RunByHand.run(ONE, 60, 4.2, 5).summary();
        RunSummary high = RunByHand.run(
                        ONE.toBuilder()
                                .site(Site.builder()
                                        .altitude(0, LengthUnit.METRE)
                                        .room(15, TemperatureUnit.CELSIUS)
                                        .build())
                                .build(),
                        60,
                        4.2,
                        6)
                .summary();
        List<NamedSummary> runs = List.of(new NamedSummary("a", calm), new NamedSummary("b", high));
        Narrative both = Narrative.comparing(runs);
        assertTrue(both.facts().text(SI).startsWith("All runs: 200 L tank, set point 60 °C, supply 4.2 bar at 10 °C"));
        assertEquals(List.of(), both.remarks());
        assertEquals(
                List.of(
                        "Peaks go from 5 bar (a) to 6 bar (b). None of 2 runs reach the set pressure of a relief valve. The"
                                + " picture shows 1 of them."),
                Narrative.comparing(runs, 1).remarkTexts(SI));
        assertThrows(IllegalArgumentException.class, () -> new NamedSummary(" ", calm));
    }

    private static String facts(HotWaterSystem house) {
        return Narrative.of(RunByHand.run(house, 60, 4.2, 5).summary()).facts().text(SI);
    }

    @Test
    void factsDescribeTheHouse() {
        String begins = "200 L tank, set point 60 °C, supply 4.2 bar at 10 °C with no way back to the mains, ";
        assertEquals(begins + "no vessel, relief valve set at 7 bar.", facts(ONE));
        assertEquals(begins + "no vessel, no relief valve.", facts(Houses.bare().build()));
        assertEquals(
                begins
                        + "18 L vessel precharged to 4 bar but behind a closed isolating valve, 2 relief valves set at 6 bar and"
                        + " 7 bar, “attic valve” blocked, 11 draws a day (EU profile S).",
                facts(ONE.toBuilder()
                        .vessel(FaultlessHouse.vessel(18, 4)
                                .condition(ExpansionVessel.Condition.ISOLATED)
                                .build())
                        .addReliefValve(Houses.valve("attic valve", 6, 5)
                                .fault(ReliefFault.blocked())
                                .build())
                        .draws(Houses.published("eu-s"))
                        .build()));
        assertEquals(
                "200 L tank, set point 60 °C but the thermostat stuck, supply 5 bar at 10 °C through a reducing valve set at"
                        + " 3.5 bar with bypass, no vessel, 3 relief valves set at 7 bar, 1 draw a day.",
                facts(ONE.toBuilder()
                        .heater(Houses.runaway().build())
                        .supply(FaultlessHouse.reduced(
                                        5, FaultlessHouse.reducer(3.5).bypassOpens(0.2, PressureUnit.BAR))
                                .build())
                        .addReliefValve(Houses.valve("a", 7, 5).build())
                        .addReliefValve(Houses.valve("b", 7, 5).build())
                        .draws(Houses.tap(7, 20))
                        .build()));
    }

    /** Each hazard with its time; beyond six the rest are counted. */
    @Test
    void hazardsOfSeveralRunsAreListed() {
        RunSummary calm = RunByHand.run(ONE, 60, 4.2, 5).summary();
        RunSummary bursts = RunByHand.run(Houses.bare().build(), 1320, 4.2, 20)
                .event(1320, Event.Kind.TEST_PRESSURE_REACHED, "", 20)
                .summary();
        List<Alarm> one = Narrative.comparing(List.of(new NamedSummary("a", calm), new NamedSummary("b", bursts)))
                .alarms();
        assertEquals(1, one.size());
        assertTrue(
                one.get(0).what().text(SI).matches("“b”: .* after 22 min\\. That run ends there\\."),
                one.get(0)::toString);
        List<NamedSummary> eight = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            eight.add(new NamedSummary("run " + i, bursts));
        }
        String all = Narrative.comparing(eight).alarms().get(0).what().text(SI);
        assertTrue(all.contains("“run 5”: ") && !all.contains("“run 6”"), all);
        assertTrue(all.endsWith("; and 2 more. Those runs end there."), all);
        assertEquals(
                List.of(),
                Narrative.comparing(List.of(new NamedSummary("a", calm), new NamedSummary("b", calm)))
                        .alarms());
    }

    /** The clock is common only to runs that go by it and begin at one time of the day. */
    @Test
    void runsShareAClockOrCountFromTheirStart() {
        HotWaterSystem drawing = ONE.toBuilder().draws(Houses.published("eu-s")).build();
        double day = 86_400;
        assertTrue(Moments.common(List.of(drawing, drawing), day).byClock());
        assertFalse(Moments.common(List.of(drawing, ONE), day).byClock());
        HotWaterSystem noon = drawing.toBuilder()
                .start(Start.builder().timeOfDay(12, DurationUnit.HOUR).build())
                .build();
        assertFalse(Moments.common(List.of(drawing, noon), day).byClock());
        assertEquals(43_200, Moments.of(noon, day).clockStart());
        assertEquals(
                "at 06:00 on day 3", Moments.of(noon, 3 * day).at(42 * 3600).text(SI));
        assertFalse(Moments.of(noon, 3 * day + 1).byClock());
    }

    @Test
    void aPassedWorkingPressureIsAWarning() {
        RunSummary strained = RunByHand.run(ONE, 600, 4.2, 10.5)
                .event(600, Event.Kind.WORKING_PRESSURE_EXCEEDED, "", 10.5)
                .summary();
        Alarm alarm = Narrative.of(strained).alarms().get(0);
        assertEquals(Alarm.Level.WARNING, alarm.level());
        assertEquals("WARNING", alarm.level().word());
        String said = alarm.what().text(SI);
        assertTrue(
                said.endsWith(
                        "after 10 min, at 10.5 bar and 13 °C. The manufacturer allows no more than 10 bar in use."),
                said);
    }
}

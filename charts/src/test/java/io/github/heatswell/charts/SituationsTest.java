package io.github.heatswell.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.table.ComparisonTable;
import io.github.heatswell.charts.table.EventTable;
import io.github.heatswell.narrative.Moments;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What headlines and tables say of streets, faults and draws. Volumes and counts are left to the engine. */
class SituationsTest {

    private static final QuantityFormat SI = QuantityFormat.unicode(UnitSystem.SI);

    static Stream<Arguments> days() {
        return Stream.of(
                Arguments.of(
                        "Mains pressure above the relief set: the valve runs for 7 h \\d+ min and discharges 6\\d\\d0 L",
                        Houses.nightMains()),
                Arguments.of(
                        "Runaway heating is held at 99 °C by “T&P valve”, which opens \\d+ times, first after 2 h \\d+"
                                + " min, and lets 1\\d\\d0 L through",
                        Houses.runaway()),
                Arguments.of(
                        "Water leaves the range of known water properties after .*, at 150 °C: the thermostat is stuck"
                                + " and there is no cut-out; “T&P valve” is blocked",
                        Houses.blocked()),
                Arguments.of(
                        "Cut-out stops the heater after .* at 85 °C; relief valve opens after 6 min 1 s and discharges .* L",
                        Houses.cutOut()),
                Arguments.of(
                        "The bypass returns .* L to the mains; pressure peaks at 5.2 bar, 1.8 bar below the relief set"
                                + " pressure; 23 draws take .* L",
                        Houses.bypass()),
                Arguments.of(
                        "Relief valve opens at 06:01 and discharges .* L; supply is shut off at 06:00 for 2 h; 2 draws"
                                + " take .* L",
                        Houses.shutOff()),
                Arguments.of(
                        "Falls to the pressure of the surrounding air at 07:00: a tap is open while the supply is shut"
                                + " off",
                        Houses.dryTap()),
                Arguments.of(
                        "A leak takes 86.4 L, which hides the expansion; pressure stays at about 4.2 bar, 2.8 bar below the"
                                + " relief set pressure; 11 draws take .* L",
                        Houses.leaking()),
                Arguments.of("Relief valve is stuck open and discharges .* L; 11 draws take .* L", Houses.stuckOpen()),
                Arguments.of(
                        "Relief valve “attic valve” opens 3 times, first at .*, and discharges .* L in all; 11 draws"
                                + " take .* L",
                        Houses.upstairs()));
    }

    @ParameterizedTest
    @MethodSource("days")
    void saysWhy(String pattern, RunResult result) {
        String headline = headline(result);
        assertTrue(headline.matches(pattern), headline);
    }

    /** Heating opens the valve; a supply above its reseat pressure does not let it close again. */
    @Test
    void tellsOfASupplyThatKeepsAValveOpen() {
        HotWaterSystem house = Plants.bare()
                .supply(Plants.supply(Supply.Arrangement.CHECK_VALVE, 6))
                .addReliefValve(Plants.valve("lid", 7, 5.6, ReliefValve.LiftCharacteristic.MODULATING))
                .build();
        RunResult result = Simulation.of(house, Duration.ofHours(6)).run();
        String headline = headline(result);
        assertTrue(
                headline.matches("Mains pressure above the relief reseat: once open, the valve runs for 5 h \\d+ min"
                        + " and discharges .* L"),
                headline);
    }

    @Test
    void warnsOfAValveThatChatters() {
        RunResult result = Handmade.run(Houses.snapDay().system(), 60, 4.2, 7)
                .event(60, Event.Kind.RELIEF_CHATTERS, "expansion valve", 7)
                .result();
        assertEquals(
                "Relief valve chatters after 1 min: it opens and closes several times a second, at 7 bar",
                headline(result));
        String warning = Narrative.of(result.summary(), Doubts.NONE)
                .hazard()
                .orElseThrow()
                .text(SI);
        assertTrue(warning.contains("No valve stands that for long."), warning);
    }

    @Test
    void holdsRunawaysAgainstEachOther() {
        List<NamedRun> runs = List.of(new NamedRun("T&P", Houses.runaway()), new NamedRun("cut-out", Houses.cutOut()));
        String headline = verdict(runs);
        assertTrue(
                headline.startsWith("“T&P” runs hot and is held by a valve that opens by temperature; “cut-out” trips"
                        + " its cut-out; "),
                headline);
        List<NamedRun> worse = List.of(runs.get(0), new NamedRun("blocked", Houses.blocked()));
        assertTrue(verdict(worse).startsWith("“blocked” leaves the range"), "a hazard first");
    }

    @Test
    void tablesTellWhatOpenedAValve() throws IOException {
        RunResult runaway = Houses.runaway();
        StringBuilder events = new StringBuilder();
        EventTable.write(runaway, UnitSystem.SI, events);
        assertTrue(events.toString().contains(",no,temperature\n"));
        assertTrue(events.toString().contains(",no,pressure\n"));
        StringBuilder comparison = new StringBuilder();
        ComparisonTable.write(
                List.of(new NamedRun("bypass", Houses.bypass()), new NamedRun("cut-out", Houses.cutOut())),
                UnitSystem.SI,
                comparison);
        String[] rows = comparison.toString().split("\n");
        String[] bypass = rows[1].split(",", -1);
        assertEquals("23", bypass[15]);
        assertTrue(Double.parseDouble(bypass[17]) > 1, "returned: " + bypass[17]);
        assertEquals("6", bypass[20]);
        assertTrue(Double.parseDouble(rows[2].split(",", -1)[22]) > 3600, "cut-out");
    }

    @Test
    void tellsMomentsByTheClock() {
        HotWaterSystem house = Houses.nightMains().system();
        Moments night = Moments.of(house, 86_400);
        assertEquals("at the start", night.at(0).text(SI));
        assertEquals("at 23:00", night.at(11 * 3600).text(SI));
        assertEquals("at 00:30 the next day", night.at(12.5 * 3600).text(SI));
        assertEquals("after 3 h", Moments.sinceStart().at(3 * 3600).text(SI));
        assertEquals("after 2 h", Moments.of(house, 2 * 3600).at(2 * 3600).text(SI));
    }

    private static String headline(RunResult run) {
        return Narrative.of(run.summary(), Doubts.NONE).headline().text(SI);
    }

    private static String verdict(List<NamedRun> runs) {
        return Narrative.comparing(runs.stream().map(NamedRun::summary).toList())
                .headline()
                .text(SI);
    }
}

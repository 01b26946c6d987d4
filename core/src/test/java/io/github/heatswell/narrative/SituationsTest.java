package io.github.heatswell.narrative;

import static io.github.heatswell.narrative.Houses.bar;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.FaultlessHouse;
import io.github.heatswell.assessment.Moments;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.MainsPressure;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.Start;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.DurationUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Regression: what is said of simulated supplies, faults and draws. Volumes and counts are left to the engine. */
class SituationsTest {

    private static final QuantityFormat SI = QuantityFormat.unicode(UnitSystem.SI);

    private static final Supply SHUT_OFF = FaultlessHouse.supply(4.2)
            .addOutage(new Supply.Outage(6 * 3600, 8 * 3600))
            .build();

    private static HotWaterSystem.Builder nightMains() {
        return Houses.bare()
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.CHECK_VALVE)
                        .mains(MainsPressure.daily(Map.of(
                                5 * 3600.0,
                                bar(7.4),
                                7 * 3600.0,
                                bar(4.2),
                                20 * 3600.0,
                                bar(4.2),
                                23 * 3600.0,
                                bar(7.4))))
                        .water(12, TemperatureUnit.CELSIUS)
                        .build())
                .addReliefValve(Houses.valve("lid", 7, 5.6).build())
                .start(Start.builder()
                        .timeOfDay(12, DurationUnit.HOUR)
                        .water(59, TemperatureUnit.CELSIUS)
                        .build())
                .draws(Houses.published("eu-s"));
    }

    private static HotWaterSystem.Builder runaway(boolean blocked) {
        ReliefFault fault = blocked ? ReliefFault.blocked() : ReliefFault.none();
        return Houses.bare()
                .heater(Houses.runaway().build())
                .addReliefValve(FaultlessHouse.guard(10, 8.5).fault(fault).build())
                .addReliefValve(Houses.valve("lid", 7, 5.6).build());
    }

    private static HotWaterSystem.Builder cutOut() {
        return Houses.bare()
                .heater(Houses.runaway().cutOut(85, TemperatureUnit.CELSIUS).build())
                .addReliefValve(Houses.valve("lid", 7, 5.6).build());
    }

    static Stream<Arguments> days() {
        return Stream.of(
                Arguments.of(
                        "Mains pressure above the relief set: the valve runs for 7 h \\d+ min and discharges \\d+ L",
                        nightMains()),
                Arguments.of(
                        "Runaway heating is held at 99 °C by “T&P valve”, which opens \\d+ times, first after 1 h \\d+"
                                + " min, and lets 2\\d\\d0 L through",
                        runaway(false)),
                Arguments.of(
                        "Water leaves the range of known water properties after .*, at 150 °C: the thermostat is stuck"
                                + " and there is no cut-out; “T&P valve” is blocked",
                        runaway(true)),
                Arguments.of(
                        "The cut-out stops the heater after .* at 85 °C; the relief valve opens after .* and discharges .* L",
                        cutOut()),
                Arguments.of(
                        "The bypass returns .* L to the mains; the pressure peaks at 5.2 bar, 1.8 bar below the relief set"
                                + " pressure; .* L of hot water leaves the tank in 23 draws",
                        Houses.warm()
                                .supply(FaultlessHouse.reduced(
                                                5, FaultlessHouse.reducer(3.5).bypassOpens(0.2, PressureUnit.BAR))
                                        .build())
                                .draws(Houses.published("eu-m"))),
                Arguments.of(
                        "The relief valve opens twice, first at 05:59, and discharges .* L in all; the supply is shut off at 06:00"
                                + " for 2 h; .* L of hot water leaves the tank in one draw",
                        Houses.warm().supply(SHUT_OFF).draws(Houses.tap(5.8, 60))),
                Arguments.of(
                        "Pressure falls to the pressure of the surrounding air at 07:00: a tap is open while the supply is shut"
                                + " off",
                        Houses.warm().supply(SHUT_OFF).draws(Houses.tap(7, 20))),
                Arguments.of(
                        "A leak loses 86.4 L, which hides the expansion; the pressure stays at about 4.2 bar, 2.8 bar below the"
                                + " relief set pressure; .* L of hot water leaves the tank in 11 draws",
                        Houses.warm()
                                .addLeak(Leak.of(60, FlowUnit.MILLILITRE_PER_MINUTE, bar(4.2)))
                                .draws(Houses.published("eu-s"))),
                Arguments.of(
                        "The relief valve is stuck open and discharges .* L; .* L of hot water leaves the tank in 11 draws",
                        Houses.warm()
                                .withoutReliefValves()
                                .addReliefValve(Houses.valve("lid", 7, 5.6)
                                        .fault(ReliefFault.stuckOpen(2, RatioUnit.PERCENT))
                                        .build())
                                .draws(Houses.published("eu-s"))),
                Arguments.of(
                        "The “attic valve” opens \\d+ times, first at .*, and discharges .* L in all; .* L of hot water leaves the tank in"
                                + " 11 draws",
                        Houses.warm()
                                .withoutReliefValves()
                                .addReliefValve(Houses.valve("attic valve", 6, 5.2)
                                        .height(10, LengthUnit.METRE)
                                        .build())
                                .addReliefValve(FaultlessHouse.guard(10, 8.5).build())
                                .draws(Houses.published("eu-s"))));
    }

    @ParameterizedTest
    @MethodSource("days")
    void saysWhy(String pattern, HotWaterSystem.Builder house) {
        String headline = headline(Houses.day(house).summary());
        assertTrue(headline.matches(pattern), headline);
    }

    /** Heating opens the valve; a supply above its reseat pressure does not let it close again. */
    @Test
    void tellsOfASupplyThatKeepsAValveOpen() {
        HotWaterSystem house = Houses.bare()
                .supply(FaultlessHouse.supply(6).build())
                .addReliefValve(Houses.valve("lid", 7, 5.6).build())
                .build();
        String headline =
                headline(Simulation.of(house, Duration.ofHours(6)).run().summary());
        assertTrue(
                headline.matches("Mains pressure above the relief reseat: once open, the valve runs for 5 h \\d+ min"
                        + " and discharges .* L"),
                headline);
    }

    @Test
    void warnsOfAValveThatChatters() {
        RunSummary run = RunByHand.run(Houses.warm().build(), 60, 4.2, 7)
                .event(60, Event.Kind.RELIEF_CHATTERS, "lid", 7)
                .summary();
        assertEquals(
                "The relief valve chatters after 1 min: it opens and closes several times a second, at 7 bar",
                headline(run));
        String warning = Narrative.of(run).hazard().orElseThrow().text(SI);
        assertTrue(warning.contains("No valve stands that for long."), warning);
    }

    @Test
    void holdsRunawaysAgainstEachOther() {
        NamedSummary held = named("T&P", runaway(false));
        String headline = verdict(List.of(held, named("cut-out", cutOut())));
        assertTrue(
                headline.startsWith("“T&P” runs hot and is held by a valve that opens on temperature; “cut-out” trips"
                        + " its cut-out; "),
                headline);
        List<NamedSummary> worse = List.of(held, named("blocked", runaway(true)));
        assertTrue(verdict(worse).startsWith("“blocked” leaves the range"), "a hazard first");
    }

    @Test
    void tellsMomentsByTheClock() {
        HotWaterSystem house = nightMains().build();
        Moments night = Moments.of(house, 86_400);
        assertEquals("at the start", night.at(0).text(SI));
        assertEquals("at 23:00", night.at(11 * 3600).text(SI));
        assertEquals("at 00:30 the next day", night.at(12.5 * 3600).text(SI));
        assertEquals("after 3 h", Moments.sinceStart().at(3 * 3600).text(SI));
        assertEquals("after 2 h", Moments.of(house, 2 * 3600).at(2 * 3600).text(SI));
    }

    private static NamedSummary named(String name, HotWaterSystem.Builder house) {
        RunResult run = Houses.day(house);
        return new NamedSummary(name, run.summary());
    }

    private static String headline(RunSummary run) {
        return Narrative.of(run).headline().text(SI);
    }

    private static String verdict(List<NamedSummary> runs) {
        return Narrative.comparing(runs).headline().text(SI);
    }
}

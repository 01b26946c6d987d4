package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.Heater;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Shell;
import io.github.heatswell.system.Site;
import io.github.heatswell.system.Supply;
import io.github.heatswell.system.Tank;
import io.github.heatswell.units.ConductanceUnit;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.LengthUnit;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureDifferenceUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What results say of themselves, without a run behind them. */
class ResultTest {

    /** Both books must close, each to the stated share of what moved, and a residual counts whichever sign it has. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, true",
        "1e-6, 0, true",
        "0, 1e-6, true",
        "-1e-6, -1e-6, true",
        "1.001e-6, 0, false",
        "0, 1.001e-6, false",
        "-1.001e-6, 0, false",
        "NaN, 0, false",
        "0, NaN, false"
    })
    void booksCloseToTheStatedShare(double massShare, double energyShare, boolean closes) {
        // Moved amounts that are powers of two leave the shares exact.
        RunSummary.Audit audit = new RunSummary.Audit(massShare * 2, 2, energyShare * 0x1p21, 0x1p21);
        assertEquals(closes, audit.closes());
        assertEquals(Math.abs(massShare), audit.massFraction());
        assertEquals(Math.abs(energyShare), audit.energyFraction());
    }

    /** What is left over where little moved is held against a kilogram and a megajoule. */
    @Test
    void whereNothingMovedAMilligramAndAJouleMayBeLeftOver() {
        assertTrue(new RunSummary.Audit(0, 0, 0, 0).closes());
        assertTrue(new RunSummary.Audit(-1e-6, 0, 1, 0).closes());
        assertTrue(new RunSummary.Audit(1e-6, 0.5, -1, 5e5).closes());
        assertFalse(new RunSummary.Audit(1.01e-6, 0, 0, 0).closes());
        assertFalse(new RunSummary.Audit(0, 0, -1.01, 0).closes());
        assertTrue(new RunSummary.Audit(2e-6, 2, 2, 2e6).closes());
    }

    /** One short line, for a log or a debugger. */
    @Test
    void anEventTellsWhatItIs() {
        assertEquals(
                "HEATER_OFF, 1 h 30 min, 7.004 bar abs",
                new Event(5400, Event.Kind.HEATER_OFF, "", 700_367.63, 330).toString());
        Event opened = new Event(20, Event.Kind.RELIEF_RESEATED, "a valve", 6e5, 310);
        assertEquals("RELIEF_RESEATED 'a valve', 20 s, 6 bar abs", opened.toString());
    }

    /** By the documentation of the kinds: those that say "the run ends". */
    @Test
    void hazardsEndTheRun() {
        Set<Event.Kind> ending = EnumSet.noneOf(Event.Kind.class);
        for (Event.Kind kind : Event.Kind.values()) {
            if (kind.endsRun()) {
                ending.add(kind);
            }
        }
        assertEquals(
                EnumSet.of(
                        Event.Kind.TEST_PRESSURE_REACHED,
                        Event.Kind.VAPOUR_FORMS,
                        Event.Kind.ATMOSPHERE_REACHED,
                        Event.Kind.RELIEF_CHATTERS,
                        Event.Kind.WATER_OUT_OF_RANGE,
                        Event.Kind.WATER_FREEZES),
                ending);
    }

    @Test
    void whatAllValvesGaveOffIsTheSum() {
        List<Totals.Relief> valves =
                List.of(new Totals.Relief("a", 1.5, 1.5e-3, 3), new Totals.Relief("b", 0.25, 0.25e-3, 1));
        assertEquals(1.75e-3, new Totals(valves, 0, 0, 0, 0, 0, 0, 0, 0, 0).relieved(), 1e-18); // rounding
        assertEquals(0, new Totals(List.of(), 0, 0, 0, 0, 0, 0, 0, 0, 0).relieved());
    }

    /** Tables and pictures tell channels apart by these words. */
    @Test
    void channelsHaveNamesOfTheirOwn() {
        Set<String> symbols = new HashSet<>();
        Set<String> descriptions = new HashSet<>();
        for (Channel channel : Channel.values()) {
            assertTrue(symbols.add(channel.symbol()), channel.symbol());
            assertTrue(descriptions.add(channel.description()), channel.description());
            assertTrue(Set.of("K", "Pa", "W", "m3", "m3/s").contains(channel.unit()), channel + " " + channel.unit());
        }
    }

    @ParameterizedTest
    @EnumSource(Event.Kind.class)
    void eventsAreDescribed(Event.Kind kind) {
        assertTrue(kind.description().matches("[a-z][a-z -]+"), kind.description());
    }

    @ParameterizedTest
    @CsvSource({"SEALED, sealed", "FED, fed", "RELIEVING, relieving", "RETURNED, returned", "UNSEALED, unsealed"})
    void regimesAreWordsInLowerCase(Trace.Regime regime, String label) {
        assertEquals(label, regime.label());
    }

    private static ReliefValve valve(String name) {
        return ReliefValve.builder()
                .name(name)
                .setPressure(Pressure.gauge(7, PressureUnit.BAR))
                .fullLiftPressure(Pressure.gauge(7.7, PressureUnit.BAR))
                .reseatPressure(Pressure.gauge(6, PressureUnit.BAR))
                .fullFlow(10, FlowUnit.LITRE_PER_MINUTE)
                .liftCharacteristic(ReliefValve.LiftCharacteristic.SNAP)
                .build();
    }

    /** A house at sea level, where the air has 101 325 Pa, and a run in which the relief valve opened twice. */
    private static RunSummary summary(Event.Kind last) {
        HotWaterSystem house = HotWaterSystem.builder()
                .site(Site.builder()
                        .altitude(0, LengthUnit.METRE)
                        .room(20, TemperatureUnit.CELSIUS)
                        .build())
                .supply(Supply.builder()
                        .arrangement(Supply.Arrangement.DIRECT)
                        .pressure(Pressure.gauge(4, PressureUnit.BAR))
                        .water(10, TemperatureUnit.CELSIUS)
                        .build())
                .tank(Tank.builder()
                        .volume(100, VolumeUnit.LITRE)
                        .shell(Shell.rigid())
                        .standingLoss(1, ConductanceUnit.WATT_PER_KELVIN)
                        .workingPressure(Pressure.gauge(10, PressureUnit.BAR))
                        .build())
                .heater(Heater.builder()
                        .energy(Heater.Energy.ELECTRIC)
                        .input(3, PowerUnit.KILOWATT)
                        .recoveryEfficiency(98, RatioUnit.PERCENT)
                        .setPoint(60, TemperatureUnit.CELSIUS)
                        .differential(5, TemperatureDifferenceUnit.KELVIN)
                        .build())
                .addReliefValve(valve("a"))
                .addReliefValve(valve("b"))
                .build();
        List<Event> events = List.of(
                new Event(10, Event.Kind.RELIEF_OPENED, "a", 8e5, 300, Optional.of(Event.OpeningCause.PRESSURE)),
                new Event(20, Event.Kind.RELIEF_RESEATED, "a", 6e5, 310),
                new Event(30, Event.Kind.RELIEF_OPENED, "a", 7e5, 372, Optional.of(Event.OpeningCause.TEMPERATURE)),
                new Event(40, last, "tank", 21e5, 330));
        RunSummary.Extreme extreme = new RunSummary.Extreme(1, 2);
        return new RunSummary(
                house,
                40,
                events,
                new RunSummary.Extremes(extreme, extreme, extreme, extreme),
                new Totals(List.of(), 1, 2, 3, 4, 5, 6, 7, 8, 0),
                new RunSummary.Audit(0, 1, 0, 1),
                new RunSummary.Numerics("none", 1e-7, 0, 0, 0),
                Map.of());
    }

    @Test
    void eventsAreFoundByKindAndHazardsAmongThem() {
        RunSummary summary = summary(Event.Kind.TEST_PRESSURE_REACHED);
        assertEquals(10, summary.first(Event.Kind.RELIEF_OPENED).orElseThrow().time());
        assertTrue(summary.first(Event.Kind.VAPOUR_FORMS).isEmpty());
        assertEquals(40, summary.hazard().orElseThrow().time());
        assertTrue(summary(Event.Kind.HEATER_OFF).hazard().isEmpty());
        assertEquals(4e5, summary.gauge(4e5 + 101_325), 1e-9); // rounding
    }

    private static RunSummary with(Map<Interval.Phase, Set<String>> initially, Event... events) {
        RunSummary other = summary(Event.Kind.HEATER_OFF);
        return new RunSummary(
                other.system(),
                100,
                List.of(events),
                other.extremes(),
                other.totals(),
                other.audit(),
                other.numerics(),
                initially);
    }

    private static Event event(double time, Event.Kind kind, String device) {
        return new Event(
                time,
                kind,
                device,
                5e5,
                300,
                kind.hasCause() ? Optional.of(Event.OpeningCause.PRESSURE) : Optional.empty());
    }

    @Test
    void whatLastedBeginsAndEndsWithItsEvents() {
        RunSummary run = with(
                Map.of(),
                event(10, Event.Kind.RELIEF_OPENED, "a"),
                event(15, Event.Kind.RELIEF_OPENED, "b"),
                event(20, Event.Kind.RELIEF_RESEATED, "a"),
                event(30, Event.Kind.RELIEF_RESEATED, "b"),
                event(40, Event.Kind.RELIEF_OPENED, "a"),
                event(50, Event.Kind.DRAW_STARTED, ""),
                event(60, Event.Kind.DRAW_ENDED, ""),
                event(60, Event.Kind.DRAW_STARTED, ""));
        assertEquals(
                List.of(new Interval(10, 20, "a"), new Interval(15, 30, "b"), new Interval(40, 100, "a")),
                run.intervals(Interval.Phase.RELIEF_OPEN));
        assertEquals(
                List.of(new Interval(10, 30, ""), new Interval(40, 100, "")), run.joined(Interval.Phase.RELIEF_OPEN));
        assertEquals(List.of(new Interval(50, 60, ""), new Interval(60, 100, "")), run.intervals(Interval.Phase.DRAW));
        assertEquals(List.of(new Interval(50, 100, "")), run.joined(Interval.Phase.DRAW));
        assertEquals(List.of(), run.intervals(Interval.Phase.HEATER_ON));
        assertEquals(85, Interval.total(run.intervals(Interval.Phase.RELIEF_OPEN)));
    }

    /** What goes on at the start has no event at its beginning; a supply that is shut off feeds no longer. */
    @Test
    void whatGoesOnAtTheStartBeginsThere() {
        RunSummary run = with(
                Map.of(Interval.Phase.SUPPLY_FEEDING, Set.of(""), Interval.Phase.VESSEL_FULL, Set.of("")),
                event(25, Event.Kind.SUPPLY_SHUT_OFF, ""),
                event(35, Event.Kind.SUPPLY_RESTORED, ""),
                event(45, Event.Kind.SUPPLY_OPENED, ""),
                event(55, Event.Kind.SUPPLY_CLOSED, ""),
                event(65, Event.Kind.SUPPLY_SHUT_OFF, ""));
        assertEquals(
                List.of(new Interval(0, 25, ""), new Interval(45, 55, "")),
                run.intervals(Interval.Phase.SUPPLY_FEEDING));
        assertEquals(
                List.of(new Interval(25, 35, ""), new Interval(65, 100, "")),
                run.intervals(Interval.Phase.SUPPLY_SHUT_OFF));
        assertEquals(List.of(new Interval(0, 100, "")), run.intervals(Interval.Phase.VESSEL_FULL));
    }

    /** An opening that the supply fed for a minute ran on it, unless hot water held the valve open. */
    @Test
    void aValveRunsOnASupplyThatFeedsItForAMinute() {
        RunSummary fed = fedFrom(10, Event.Kind.RELIEF_OPENED);
        assertEquals(List.of(new Interval(10, 100, "a")), fed.fedRelief());
        assertTrue(fed.supplyOpenedRelief());
        RunSummary keptOpen = fedFrom(40, Event.Kind.RELIEF_OPENED);
        assertEquals(List.of(new Interval(10, 100, "a")), keptOpen.fedRelief());
        assertFalse(keptOpen.supplyOpenedRelief());
        RunSummary shortly = fedFrom(41, Event.Kind.RELIEF_OPENED);
        assertEquals(List.of(), shortly.fedRelief());
        assertFalse(shortly.supplyOpenedRelief());
        assertEquals(List.of(), fedFrom(10, Event.Kind.RELIEF_OPENED_FULLY).fedRelief());
    }

    /** Valve a opens at 10 s, by pressure or a moment later by hot water, and the supply feeds from some time on until 100 s. */
    private static RunSummary fedFrom(double feeds, Event.Kind opened) {
        Event hot = new Event(50, opened, "a", 8e5, 372, Optional.of(Event.OpeningCause.TEMPERATURE));
        Event pressed = event(10, Event.Kind.RELIEF_OPENED, "a");
        Event feeding = event(feeds, Event.Kind.SUPPLY_OPENED, "");
        return opened == Event.Kind.RELIEF_OPENED
                ? with(Map.of(), pressed, feeding)
                : with(Map.of(), pressed, feeding, hot);
    }

    /** It heats if it switches on, or was on from the start and used energy. */
    @Test
    void aHeaterThatNeverSwitchesOnMayHaveHeatedAllTheSame() {
        RunSummary on = summary(Event.Kind.HEATER_OFF);
        assertTrue(on.heats());
        Totals idle = new Totals(List.of(), 0, 0, 0, 0, 0, 0, 0, 0, 0);
        RunSummary off =
                new RunSummary(on.system(), 40, List.of(), on.extremes(), idle, on.audit(), on.numerics(), Map.of());
        assertFalse(off.heats());
        RunSummary switched = new RunSummary(
                on.system(),
                40,
                List.of(event(1, Event.Kind.HEATER_ON, "")),
                on.extremes(),
                idle,
                on.audit(),
                on.numerics(),
                Map.of());
        assertTrue(switched.heats());
        assertEquals(1, switched.count(Event.Kind.HEATER_ON));
        assertEquals(0, switched.count(Event.Kind.HEATER_OFF));
    }

    /** A gauge does not show a twentieth of a bar. */
    @Test
    void pressureThatStaysWithinATwentiethOfABarIsSteady() {
        RunSummary.Extreme low = new RunSummary.Extreme(4e5, 0);
        assertTrue(new RunSummary.Extremes(new RunSummary.Extreme(4.0499e5, 1), low, low, low).isSteady());
        assertFalse(new RunSummary.Extremes(new RunSummary.Extreme(4.05e5, 1), low, low, low).isSteady());
    }

    @Test
    void aRunOfNoKnownLengthIsRefused() {
        RunSummary known = summary(Event.Kind.HEATER_OFF);
        for (double end : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertEquals(
                    "end: " + end + " s is outside the allowed range, 0 or more",
                    assertThrows(
                                    IllegalArgumentException.class,
                                    () -> new RunSummary(
                                            known.system(),
                                            end,
                                            known.events(),
                                            known.extremes(),
                                            known.totals(),
                                            known.audit(),
                                            known.numerics(),
                                            Map.of()))
                            .getMessage());
        }
    }

    @Test
    void intervalsOverlapWhereTheyHaveTimeInCommon() {
        Interval first = new Interval(10, 20, "a");
        assertEquals(4, first.overlap(new Interval(16, 30, "b")));
        assertEquals(0, first.overlap(new Interval(20, 30, "b")));
        assertEquals(0, first.overlap(new Interval(50, 60, "b")));
        assertTrue(first.contains(10) && first.contains(20) && !first.contains(20.001));
        assertThrows(IllegalArgumentException.class, () -> new Interval(2, 1, ""));
    }

    /** The extremes are absolute; a gauge on site shows less by the air. */
    @Test
    void thePeakIsWhatAGaugeShows() {
        RunSummary summary = summary(Event.Kind.HEATER_OFF);
        assertEquals(Pressure.gauge(1 - 101_325, PressureUnit.PASCAL), summary.peak());
        assertEquals(2, summary.peakTime());
    }

    @Test
    void openingsAreThoseOfTheValveWithTheirCause() {
        RunSummary summary = summary(Event.Kind.TEST_PRESSURE_REACHED);
        List<Event> openings = summary.openings("a").toList();
        assertEquals(List.of(10.0, 30.0), openings.stream().map(Event::time).toList());
        assertTrue(openings.get(0).openedByPressure() && !openings.get(0).openedByTemperature());
        assertTrue(openings.get(1).openedByTemperature() && !openings.get(1).openedByPressure());
        assertEquals(0, summary.openings("b").count());
    }

    @Test
    void aNameThatNoValveHasIsRefusedWithThoseThereAre() {
        RunSummary summary = summary(Event.Kind.TEST_PRESSURE_REACHED);
        String message = "valve: 'typo' is no relief valve of this system, which has 'a', 'b'";
        for (Executable mistake :
                List.<Executable>of(() -> summary.openings("typo"), () -> summary.openedByTemperature("typo"))) {
            assertEquals(
                    message,
                    assertThrows(IllegalArgumentException.class, mistake).getMessage());
        }
    }

    /** Opened fully while it is open, a valve has not opened twice. */
    @Test
    void openedFullyIsNoOpening() {
        RunSummary known = summary(Event.Kind.TEST_PRESSURE_REACHED);
        List<Event> events = List.of(
                new Event(10, Event.Kind.RELIEF_OPENED, "a", 8e5, 350, Optional.of(Event.OpeningCause.PRESSURE)),
                new Event(
                        20, Event.Kind.RELIEF_OPENED_FULLY, "a", 8e5, 372, Optional.of(Event.OpeningCause.TEMPERATURE)),
                new Event(30, Event.Kind.RELIEF_RESEATED, "a", 7e5, 360),
                new Event(40, Event.Kind.RELIEF_OPENED, "a", 7e5, 372, Optional.of(Event.OpeningCause.TEMPERATURE)));
        RunSummary summary = new RunSummary(
                known.system(),
                60,
                events,
                known.extremes(),
                known.totals(),
                known.audit(),
                known.numerics(),
                Map.of());
        assertEquals(List.of(10.0, 40.0), summary.openings("a").map(Event::time).toList());
        assertEquals(
                List.of(20.0, 40.0),
                summary.openedByTemperature("a").map(Event::time).toList());
        assertEquals(0, summary.openedByTemperature("b").count());
    }

    @Test
    void numbersOfEventsAndRunsAreInTheirRanges() {
        for (double wrong : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1}) {
            refused("time: ", () -> new Event(wrong, Event.Kind.HEATER_ON, "", 5e5, 300));
            refused("pressureAbsolute: ", () -> new Event(1, Event.Kind.HEATER_ON, "", wrong, 300));
            refused("waterTemperature: ", () -> new Event(1, Event.Kind.HEATER_ON, "", 5e5, wrong));
            RunSummary known = summary(Event.Kind.TEST_PRESSURE_REACHED);
            refused(
                    "end: ",
                    () -> new RunSummary(
                            known.system(),
                            wrong,
                            List.of(),
                            known.extremes(),
                            known.totals(),
                            known.audit(),
                            known.numerics(),
                            Map.of()));
        }
    }

    private static void refused(String start, Executable mistake) {
        String message = assertThrows(IllegalArgumentException.class, mistake).getMessage();
        assertTrue(message.startsWith(start) && message.contains("allowed range"), message);
    }

    @Test
    void anOpeningAndNothingElseHasACause() {
        for (Event.Kind kind : Event.Kind.values()) {
            boolean setPressure = kind == Event.Kind.RELIEF_OPENED || kind == Event.Kind.RELIEF_OPENED_FULLY;
            Optional<Event.OpeningCause> wrong = setPressure ? Optional.empty() : Optional.of(Event.OpeningCause.BOTH);
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> new Event(0, kind, "a", 5e5, 300, wrong));
            assertTrue(refused.getMessage().startsWith("cause: " + kind), refused.getMessage());
        }
        Event both = new Event(0, Event.Kind.RELIEF_OPENED, "a", 8e5, 372, Optional.of(Event.OpeningCause.BOTH));
        assertTrue(both.openedByPressure() && both.openedByTemperature());
    }

    /** A result passes on what its summary holds, and its trace what was sampled. */
    @Test
    void resultIsItsSummaryAndItsTrace() {
        RunSummary summary = summary(Event.Kind.TEST_PRESSURE_REACHED);
        Map<Channel, double[]> columns = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            columns.put(channel, new double[] {channel.ordinal(), 100 + channel.ordinal()});
        }
        List<Trace.Regime> regimes = List.of(Trace.Regime.SEALED, Trace.Regime.RELIEVING);
        RunResult result = new RunResult(summary, new Trace(new Trace.Grid(60, 40), columns, regimes));
        assertSame(summary.system(), result.system());
        assertEquals(summary.events(), result.events());
        assertSame(summary.extremes(), result.extremes());
        assertSame(summary.totals(), result.totals());
        assertSame(summary.audit(), result.audit());
        assertSame(summary.numerics(), result.numerics());
        assertEquals(40, result.end());
        assertEquals(summary.hazard(), result.hazard());
        assertTrue(result.hazard().isPresent());
        assertEquals(10, result.first(Event.Kind.RELIEF_OPENED).orElseThrow().time());
        assertEquals(summary.gauge(5e5), result.gauge(5e5));
        assertEquals(summary.peak(), result.peak());
        assertEquals(
                List.of(new Interval(10, 20, "a"), new Interval(30, 40, "a")),
                result.summary().intervals(Interval.Phase.RELIEF_OPEN));
        assertEquals(new Trace.Grid(60, 40), result.trace().grid());
        assertEquals(2, result.trace().count());
        assertEquals(100 + Channel.WATER_TOP.ordinal(), result.trace().value(Channel.WATER_TOP, 1));
        assertEquals(regimes, result.trace().regimes());
    }
}

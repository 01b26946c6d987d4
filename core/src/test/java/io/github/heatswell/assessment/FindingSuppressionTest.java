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
import static io.github.heatswell.units.PressureUnit.BAR;
import static io.github.heatswell.units.TemperatureUnit.CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Doubts.Doubt;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel.Condition;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.PowerUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of the two tables at work: in a house or run in which the rules say both things, the second is left out, and no other
 * row would have left it out. So each row is needed, and taking one away is seen. The runs are written by hand.
 */
class FindingSuppressionTest {

    private static final String OPENED = "relief-valve-controls-expansion";
    private static final String WORKS = "expansion-valve-works";
    private static final String CODE = "peak-above-code-limit";
    private static final String NEAR = "peak-near-relief";
    private static final String COOL = "stored-too-cool";

    /** What is kept, what is left out beside it, and where the rules say both. */
    private record Row(String kept, String gone, AssessmentContext subject) {
        @Override
        public String toString() {
            return kept + ", without " + gone;
        }
    }

    private static AssessmentContext of(HotWaterSystem.Builder house) {
        return Cases.of(house.build());
    }

    static Stream<Row> rows() {
        return Stream.of(vessels(), expansion(), pressures(), cool(), before()).flatMap(List::stream);
    }

    private static Event opens() {
        return event(Event.Kind.RELIEF_OPENED, "T&P valve", 7);
    }

    private static HotWaterSystem.Builder in(Condition condition) {
        return house().vessel(vessel(18, 4).condition(condition).build());
    }

    private static HotWaterSystem.Builder lateBypass() {
        return house().withoutVessel()
                .supply(reduced(6.9, reducer(4).bypassOpens(0.2, BAR)).build());
    }

    private static List<Row> vessels() {
        Map<String, Condition> dead = Map.of(
                "vessel-isolated", Condition.ISOLATED,
                "vessel-waterlogged", Condition.WATERLOGGED,
                "vessel-upstream-of-check", Condition.UPSTREAM_OF_CHECK);
        return dead.entrySet().stream()
                .map(entry -> new Row(
                        entry.getKey(),
                        OPENED,
                        Cases.of(run(in(entry.getValue()).build(), 7, 60, opens()))))
                .toList();
    }

    /** A finding that is left out itself says nothing in the place of others: the limit that its sentence names is said. */
    @ParameterizedTest
    @EnumSource(value = Condition.class, names = "SOUND", mode = EnumSource.Mode.EXCLUDE)
    void whatIsLeftOutLeavesNothingOut(Condition condition) {
        Set<String> ids = ids(Findings.of(run(in(condition).build(), 7, 60, opens())));
        assertFalse(ids.contains(OPENED), ids::toString);
        assertTrue(ids.contains(CODE), ids::toString);
    }

    private static List<Row> expansion() {
        HotWaterSystem bare = house().withoutVessel().build();
        HotWaterSystem late = lateBypass().build();
        RunSummary opens = run(late, 7, 60, opens());
        HotWaterSystem grouped = FaultlessHouse.grouped(6, 5).build();
        RunSummary drips = run(grouped, 6, 4, 60, 1, event(Event.Kind.RELIEF_OPENED, "safety group", 6));
        Doubts mains = Doubts.of(
                List.of(new Doubt(
                        "supply.pressure",
                        Statement.plain("6.9 bar"),
                        Optional.of(Statement.plain("5 bar to 6.9 bar")),
                        List.of())),
                changes -> Optional.empty());
        return List.of(
                new Row("bypass-opens-too-late", OPENED, Cases.of(opens)),
                new Row(OPENED, "expansion-control-missing", Cases.of(run(bare, 7, 60, opens()))),
                // with the mains in doubt the bypass is a caution only, and leaves nothing out
                new Row(OPENED, CODE, new AssessmentContext(late, Optional.of(opens), mains)),
                new Row(
                        "water-freezes",
                        "frost-likely",
                        Cases.of(run(
                                house().site(FaultlessHouse.site(-15)).build(),
                                5,
                                5,
                                event(Event.Kind.WATER_FREEZES, "", 5)))),
                new Row(
                        "vessel-charged-above-plate",
                        "vessel-rating-exceeded",
                        Cases.of(run(
                                house().vessel(vessel(18, 5.6)
                                                .rating(Pressure.gauge(5.5, PressureUnit.BAR))
                                                .build())
                                        .build(),
                                6,
                                60))),
                new Row(WORKS, CODE, Cases.of(drips)),
                new Row(WORKS, "expansion-valve-provided", Cases.of(drips)),
                new Row(WORKS, "relief-water-loss", Cases.of(drips)),
                new Row("expansion-valve-provided", NEAR, Cases.of(run(grouped, 5.4, 60))));
    }

    /** What is assumed of one relief valve is no doubt of a finding about another. */
    @Test
    void theValuesOfAnotherValveAreNoDoubt() {
        HotWaterSystem house = house().supply(supply(5.3).build())
                .addReliefValve(valve(6, 5.2).name("EV").build())
                .build();
        for (int assumed : List.of(0, 1)) {
            Doubts doubts = Doubts.of(
                    List.of(new Doubt(
                            "relief[" + assumed + "].reseats", Statement.plain("5 bar"), Optional.empty(), List.of())),
                    changes -> Optional.of(house));
            Finding runsOn = Findings.of(house, doubts).stream()
                    .filter(finding -> finding.id().equals("relief-reseats-below-supply"))
                    .findFirst()
                    .orElseThrow();
            assertEquals(assumed == 1, runsOn.sentence().text(UnitSystem.SI).contains("Not confirmed on site"));
        }
    }

    private static List<Row> pressures() {
        HotWaterSystem unread = house().tank(FaultlessHouse.unread(10)).build();
        HotWaterSystem textbook = house().tank(
                        FaultlessHouse.tank(10).toBuilder().neverFails(true).build())
                .build();
        Event tested = event(Event.Kind.TEST_PRESSURE_REACHED, 20);
        return List.of(
                new Row(
                        "test-pressure-reached",
                        "working-pressure-exceeded",
                        Cases.of(run(house().build(), 20, 60, tested))),
                new Row(
                        "textbook-run-beyond-test-pressure",
                        "working-pressure-exceeded",
                        Cases.of(run(textbook, 59, 60))),
                new Row(
                        "textbook-run-beyond-test-pressure",
                        "tank-rating-unread",
                        Cases.of(run(
                                house().tank(FaultlessHouse.unread(10).toBuilder()
                                                .neverFails(true)
                                                .build())
                                        .build(),
                                59,
                                60))),
                new Row("test-pressure-reached", CODE, Cases.of(run(unread, 20, 60, tested))),
                new Row("textbook-run-beyond-test-pressure", CODE, Cases.of(run(textbook, 59, 60))),
                new Row(
                        "relief-set-above-tank",
                        "tp-relief-set-high",
                        of(unguarded().addReliefValve(guard(11, 9).build()))));
    }

    /** A sound house but for its thermostat, set to 55 degC, in all states in which it is not to be set hotter. */
    private static List<Row> cool() {
        HotWaterSystem.Builder cool = house().heater(heater(55).build());
        HotWaterSystem.Builder open = unguarded().heater(heater(55).build());
        Map<String, Event.Kind> ends = new LinkedHashMap<>();
        ends.put("cut-out-tripped", Event.Kind.CUT_OUT_TRIPPED);
        ends.put("vapour-forms", Event.Kind.VAPOUR_FORMS);
        ends.put("test-pressure-reached", Event.Kind.TEST_PRESSURE_REACHED);
        ends.put("water-out-of-range", Event.Kind.WATER_OUT_OF_RANGE);
        ends.put("water-freezes", Event.Kind.WATER_FREEZES);
        ends.put("pressure-lost", Event.Kind.ATMOSPHERE_REACHED);
        ends.put("relief-valve-chatters", Event.Kind.RELIEF_CHATTERS);
        Stream<Row> ended = ends.entrySet().stream()
                .map(end -> new Row(
                        end.getKey(), COOL, Cases.of(run(cool.build(), 5, 55, event(end.getValue(), "T&P valve", 5)))));
        Stream<Row> others = Stream.of(
                new Row(
                        "thermostat-stuck",
                        COOL,
                        of(house().heater(heater(55).thermostatStuck(true).build()))),
                new Row(
                        "relief-valve-opened-by-heat",
                        COOL,
                        Cases.of(run(cool.build(), 5, 55, opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE)))),
                new Row("water-hotter-than-boiling", COOL, Cases.of(run(cool.build(), 5, 105))),
                new Row("boiling-margin-small", COOL, Cases.of(run(cool.build(), 5, 0.1, 95, 0))),
                new Row("relief-valve-missing", COOL, of(open)),
                new Row(
                        "relief-valve-blocked",
                        COOL,
                        of(guarded(open, guard(7, 6).fault(ReliefFault.blocked())))),
                new Row("relief-set-above-tank", COOL, of(guarded(open, guard(11, 9)))),
                new Row(
                        "set-point-above-relief",
                        COOL,
                        of(guarded(open, guard(7, 6).opensAt(55, CELSIUS).reseatsAt(45, CELSIUS)))),
                new Row(
                        "tp-relief-rating-low",
                        COOL,
                        of(guarded(open, guard(7, 6).ratedInput(2.9, PowerUnit.KILOWATT)))));
        return Stream.concat(ended, others).toList();
    }

    /** Water that trips the cut-out before any thermostat calls, or opens a valve before the thermostat switches off. */
    private static List<Row> before() {
        HotWaterSystem low = unguarded()
                .addReliefValve(
                        guard(7, 6).opensAt(60, CELSIUS).reseatsAt(50, CELSIUS).build())
                .build();
        return List.of(
                new Row(
                        "cut-out-tripped",
                        "heater-never-heats",
                        Cases.of(run(Cases.startingAt(60), 4, 60, event(Event.Kind.CUT_OUT_TRIPPED, 4)))),
                new Row(
                        "relief-valve-opened-by-heat",
                        "set-point-above-relief",
                        Cases.of(run(low, 5, 60, opened("T&P valve", 5, Event.OpeningCause.TEMPERATURE)))));
    }

    private static HotWaterSystem.Builder guarded(HotWaterSystem.Builder open, ReliefValve.Builder valve) {
        return open.build().toBuilder().addReliefValve(valve.build());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void rowLeavesOutWhatNoOtherDoes(Row row) {
        List<CandidateFinding> all = Findings.all(row.subject());
        Set<String> said = all.stream().map(CandidateFinding::id).collect(Collectors.toSet());
        assertTrue(said.contains(row.kept()) && said.contains(row.gone()), () -> "the rules do not say both: " + said);
        Doubts doubts = row.subject().doubts;
        Set<String> open = all.stream()
                .filter(found ->
                        doubts.weighed(found).severity() != found.finding().severity())
                .map(CandidateFinding::id)
                .collect(Collectors.toSet());
        CandidateFinding gone = all.stream()
                .filter(found -> found.id().equals(row.gone()))
                .findFirst()
                .orElseThrow();
        Set<String> by = said.stream().filter(id -> gone.isLeftOutBy(id, open)).collect(Collectors.toSet());
        assertEquals(Set.of(row.kept()), by, "what leaves it out");
        Set<String> kept = ids(CandidateFinding.kept(all, doubts));
        assertTrue(kept.contains(row.kept()), kept::toString);
        assertFalse(kept.contains(row.gone()), kept::toString);
    }

    private static Set<String> ids(List<Finding> findings) {
        return findings.stream().map(Finding::id).collect(Collectors.toCollection(TreeSet::new));
    }

    /** What any rule says of any house here names no finding beside which it is left out without a house that needs it. */
    @Test
    void everyRowHasItsHouse() {
        Set<String> rows = new TreeSet<>();
        Stream.concat(Cases.subjects(), rows().map(Row::subject))
                .flatMap(subject -> Findings.all(subject).stream())
                .forEach(found -> Stream.concat(found.unless().stream(), found.neverBeside().stream())
                        .forEach(kept -> rows.add(kept + ", without " + found.id())));
        assertEquals(rows, rows().map(Row::toString).collect(Collectors.toCollection(TreeSet::new)));
    }
}

package io.github.heatswell.assessment;

import static io.github.heatswell.assessment.FaultlessHouse.guard;
import static io.github.heatswell.assessment.FaultlessHouse.reducer;
import static io.github.heatswell.units.PressureUnit.BAR;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.ExpansionVessel.Condition;
import io.github.heatswell.system.ExpansionVessel.Mounting;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefFault;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.MassUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.RatioUnit;
import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.units.VolumeUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every pair of the table of {@link ContradictionsTest}, provoked: what brings about one finding and what brings about the other are
 * done to the same house, in either order, and the two still do not stand side by side. Each of them alone brings about its finding.
 */
class OppositesTest {

    /** What is done to a sound house and to its run, so that there is a finding. */
    private record Cause(
            UnaryOperator<HotWaterSystem> house, double peak, double hottest, double relieved, Event... events) {
        static Cause in(UnaryOperator<HotWaterSystem> house) {
            return new Cause(house, 4, 60, 0);
        }

        Cause then(Cause other) {
            Event[] all = Stream.of(events, other.events).flatMap(Stream::of).toArray(Event[]::new);
            return new Cause(
                    before -> other.house.apply(house.apply(before)),
                    Math.max(peak, other.peak),
                    Math.max(hottest, other.hottest),
                    Math.max(relieved, other.relieved),
                    all);
        }

        Set<String> found() {
            HotWaterSystem changed = house.apply(FaultlessHouse.house().build());
            RunSummary run = FaultlessHouse.run(changed, peak, Math.min(peak, 3.9), hottest, relieved, events);
            return Findings.of(run).stream().map(Finding::id).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private record Pair(String one, String other) {
        @Override
        public String toString() {
            return one + " beside " + other;
        }
    }

    private static final Map<String, Cause> CAUSES = new LinkedHashMap<>();

    static {
        UnaryOperator<HotWaterSystem> bare =
                house -> house.toBuilder().withoutVessel().build();
        supplies(bare);
        vessels(bare);
        valves();
        cause("scald-without-mixing-valve", heater(60, 0));
        cause("mixing-valve-set-high", heater(60, 52));
        CAUSES.put("water-hotter-than-boiling", new Cause(house -> house, 4, 105, 0));
        CAUSES.put("boiling-margin-small", new Cause(heater(95, 45), 0.1, 98.9, 0));
        cause(
                "frost-likely",
                house -> house.toBuilder().site(FaultlessHouse.site(-15)).build());
        CAUSES.put(
                "water-freezes",
                new Cause(house -> house, 4, 60, 0, FaultlessHouse.event(Event.Kind.WATER_FREEZES, "", 4)));
        CAUSES.put(
                "vapour-forms",
                new Cause(house -> house, 4, 60, 0, FaultlessHouse.event(Event.Kind.VAPOUR_FORMS, "", 4)));
    }

    private static void supplies(UnaryOperator<HotWaterSystem> bare) {
        cause(
                "expansion-returns-to-mains",
                house -> house.toBuilder()
                        .supply(FaultlessHouse.supply(4)
                                .arrangement(Supply.Arrangement.DIRECT)
                                .build())
                        .build());
        cause("expansion-control-missing", bare);
        cause(
                "bypass-opens-too-late",
                house -> bare.apply(house).toBuilder()
                        .supply(FaultlessHouse.reduced(6.9, reducer(4).bypassOpens(0.2, BAR))
                                .build())
                        .build());
        cause(
                "supply-opens-relief-valve",
                house -> house.toBuilder()
                        .supply(house.supply().toBuilder()
                                .pressure(Pressure.gauge(7, BAR))
                                .build())
                        .build());
    }

    private static void vessels(UnaryOperator<HotWaterSystem> bare) {
        Event opens = FaultlessHouse.event(Event.Kind.RELIEF_OPENED, "T&P valve", 7);
        CAUSES.put("relief-valve-controls-expansion", new Cause(bare, 7, 60, 0, opens));
        UnaryOperator<HotWaterSystem> inlet = house -> bare.apply(house).toBuilder()
                .withoutReliefValves()
                .addReliefValve(FaultlessHouse.valve(6, 5)
                        .name("inlet")
                        .kind(ReliefValve.Kind.EXPANSION_VALVE)
                        .build())
                .addReliefValve(guard(7, 6).build())
                .build();
        cause("expansion-valve-provided", inlet);
        CAUSES.put(
                "expansion-valve-works",
                new Cause(inlet, 6, 60, 0, FaultlessHouse.event(Event.Kind.RELIEF_OPENED, "inlet", 6)));
        cause("vessel-isolated", vessel(vessel -> vessel.condition(Condition.ISOLATED)));
        cause("vessel-waterlogged", vessel(vessel -> vessel.condition(Condition.WATERLOGGED)));
        cause("vessel-upstream-of-check", vessel(vessel -> vessel.condition(Condition.UPSTREAM_OF_CHECK)));
        CAUSES.put(
                "vessel-too-small", new Cause(vessel(vessel -> vessel.volume(2, VolumeUnit.LITRE)), 7, 60, 0, opens));
        CAUSES.put(
                "vessel-bottomed-out",
                new Cause(vessel(v -> v), 5, 60, 0, FaultlessHouse.event(Event.Kind.VESSEL_BOTTOMED_OUT, 5)));
        cause("precharge-above-static", vessel(vessel -> vessel.precharge(Pressure.gauge(4.5, BAR))));
        cause("precharge-below-static", vessel(vessel -> vessel.precharge(Pressure.gauge(3.5, BAR))));
        cause("vessel-weight", vessel(mounted(Mounting.UPRIGHT)));
        cause("vessel-unsupported", vessel(mounted(Mounting.HORIZONTAL)));
    }

    private static void valves() {
        cause(
                "relief-valve-missing",
                house -> house.toBuilder().withoutReliefValves().build());
        cause("temperature-relief-missing", valve(FaultlessHouse.valve(7, 6)));
        cause("relief-set-above-tank", valve(FaultlessHouse.guard(11, 9)));
        cause("relief-valve-blocked", valve(guard(7, 6).fault(ReliefFault.blocked())));
        cause("relief-valve-stuck-open", valve(guard(7, 6).fault(ReliefFault.stuckOpen(5, RatioUnit.PERCENT))));
        CAUSES.put("relief-water-loss", new Cause(house -> house, 4, 60, 1));
        CAUSES.put("peak-near-relief", new Cause(house -> house, 6.2, 60, 0));
    }

    private static void cause(String id, UnaryOperator<HotWaterSystem> house) {
        CAUSES.put(id, Cause.in(house));
    }

    /** A sound vessel is put back where there is none, so that either order of two causes is another house. */
    private static UnaryOperator<HotWaterSystem> vessel(UnaryOperator<ExpansionVessel.Builder> change) {
        return house -> house.toBuilder()
                .vessel(change.apply(
                                house.vessel().map(ExpansionVessel::toBuilder).orElse(FaultlessHouse.vessel(18, 4)))
                        .build())
                .build();
    }

    private static UnaryOperator<ExpansionVessel.Builder> mounted(Mounting mounting) {
        return vessel -> vessel.emptyMass(6, MassUnit.KILOGRAM).mounting(mounting);
    }

    private static UnaryOperator<HotWaterSystem> valve(ReliefValve.Builder valve) {
        return house -> house.toBuilder()
                .withoutReliefValves()
                .addReliefValve(valve.build())
                .build();
    }

    /** A heater with its set point and its mixing valve (degC), or none at 0. */
    private static UnaryOperator<HotWaterSystem> heater(double set, double mixed) {
        return house -> house.toBuilder()
                .heater(
                        mixed > 0
                                ? FaultlessHouse.heater(set)
                                        .mixedTo(mixed, TemperatureUnit.CELSIUS)
                                        .build()
                                : FaultlessHouse.unmixed(set).build())
                .build();
    }

    static Stream<Pair> pairs() {
        return ContradictionsTest.OPPOSITES.entrySet().stream()
                .flatMap(row -> row.getValue().stream().sorted().map(other -> new Pair(row.getKey(), other)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void opposites(Pair pair) {
        Cause one = CAUSES.get(pair.one());
        Cause other = CAUSES.get(pair.other());
        assertTrue(one.found().contains(pair.one()), () -> pair.one() + " alone: " + one.found());
        assertTrue(other.found().contains(pair.other()), () -> pair.other() + " alone: " + other.found());
        for (Cause both : List.of(one.then(other), other.then(one))) {
            Set<String> found = both.found();
            assertFalse(found.contains(pair.one()) && found.contains(pair.other()), found::toString);
        }
    }

    /** No pair is looked at without what provokes it. */
    @Test
    void everyFindingOfTheTableHasItsCause() {
        Set<String> all =
                pairs().flatMap(pair -> Stream.of(pair.one(), pair.other())).collect(Collectors.toSet());
        assertEquals(all, CAUSES.keySet());
    }
}

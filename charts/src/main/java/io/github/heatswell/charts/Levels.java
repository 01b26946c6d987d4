package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Panel.Level;
import io.github.heatswell.charts.picture.Panel.Level.Kind;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.sizing.SizingTarget;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The reference pressures of a system. */
final class Levels {

    /** With more valves than this, those of equal set pressure share a line and reseating is not shown. */
    private static final int MAX_VALVES = 4;

    /** How near (as a share of it) a run must come to the test pressure for that to be shown. */
    private static final double NEAR_TEST = 0.95;

    private final RunSummary summary;
    private final HotWaterSystem system;
    private final QuantityFormat amounts;
    private final double atmosphere;

    Levels(RunSummary summary, QuantityFormat amounts) {
        this.summary = summary;
        this.system = summary.system();
        this.amounts = amounts;
        this.atmosphere = system.site().atmosphere();
    }

    /** All levels of one system. */
    List<Level> all() {
        List<Level> levels = new ArrayList<>(shared());
        List<ReliefValve> valves = system.reliefValves();
        if (valves.size() <= MAX_VALVES) {
            for (ReliefValve valve : valves) {
                levels.add(level(
                        Kind.RELIEF_RESEAT,
                        atDrainCock(valve.reseatPressure(), valve.height()),
                        "relief reseats" + whose(valve)));
            }
        }
        for (int i = 0; i < system.vessels().size(); i++) {
            ExpansionVessel vessel = system.vessels().get(i);
            if (vessel.condition() == ExpansionVessel.Condition.SOUND) {
                String name = system.vesselNames().get(i);
                levels.add(level(
                        Kind.PRECHARGE,
                        atDrainCock(vessel.precharge(), vessel.height()),
                        (name.isEmpty() ? amounts.units().spelled("vessel precharge") : "precharge of “" + name + "”")
                                + seen(vessel.height())));
            }
        }
        return levels;
    }

    /** The levels that matter where several systems are compared. */
    List<Level> shared() {
        List<Level> levels = new ArrayList<>();
        double test = summary.gauge(system.tank().testPressureAbsolute(atmosphere));
        if (summary.peak().value() >= NEAR_TEST * test) {
            levels.add(level(Kind.TEST_PRESSURE, test, "tank test pressure"));
        }
        levels.add(level(
                Kind.WORKING_PRESSURE,
                system.tank().workingPressure().gauge(atmosphere),
                Limit.workingPressureName(system)));
        levels.addAll(reliefSets());
        double peak = summary.peak().value();
        limit(system, amounts)
                .filter(level -> isOwn(system, amounts)
                        || summary.totals().relieved() == 0
                                && amounts.units().pressure().fromSi(peak) > level.value())
                .ifPresent(levels::add);
        addSupply(levels);
        return levels;
    }

    /**
     * What keeps a pressure in bounds over a log, or over years: where the relief valve of a house opens, what the rules of its place
     * allow while the water heats, and what a sizing keeps to, unless that is the same.
     */
    static List<Level> limits(HotWaterSystem system, QuantityFormat amounts) {
        List<Level> levels = new ArrayList<>();
        Limit.reliefSetGauge(system)
                .ifPresent(set -> levels.add(new Level(
                        Kind.RELIEF_SET,
                        amounts.units().pressure().fromSi(set),
                        amounts.pressure(set),
                        "relief opens")));
        limit(system, amounts).filter(level -> isOwn(system, amounts)).ifPresent(levels::add);
        addLimit(
                levels,
                SizingTarget.builder(system)
                        .assumedVesselRating(system.tank().workingPressure())
                        .build()
                        .gauge(),
                amounts);
        return levels;
    }

    /** Whether the limit is that of the place, or of the codes of readers who think in these units. */
    private static boolean isOwn(HotWaterSystem system, QuantityFormat amounts) {
        return system.site().place().isKnown() || amounts.units() == UnitSystem.US;
    }

    /** What the rules of the place allow while the water heats; of the US model codes where the place is not known. */
    private static Optional<Level> limit(HotWaterSystem system, QuantityFormat amounts) {
        String name = system.site().place().isKnown() ? "limit here" : "limit of US model codes";
        return SizingTarget.cap(system)
                .map(rule -> rule.limit().orElseThrow())
                .map(cap -> new Level(
                        Kind.PLACE_LIMIT, amounts.units().pressure().fromSi(cap), amounts.pressure(cap), name));
    }

    /** What a sizing keeps to (Pa, gauge), unless a line is there already. */
    private static void addLimit(List<Level> levels, double gauge, QuantityFormat amounts) {
        String amount = amounts.pressure(gauge);
        if (levels.stream().noneMatch(level -> level.amount().equals(amount))) {
            levels.add(new Level(
                    Kind.PLACE_LIMIT, amounts.units().pressure().fromSi(gauge), amount, "limit of the sizing"));
        }
    }

    /** A mains that changes over the day is a curve, not a level. */
    private void addSupply(List<Level> levels) {
        double supply = system.supplyAtStart().gauge(atmosphere);
        boolean steady = system.supply().mains().isConstant();
        double mains = system.supply().mains().absolute(0, atmosphere) - atmosphere;
        if (system.supply().reducingValve().isEmpty()) {
            if (steady) {
                levels.add(level(Kind.SUPPLY, supply, "supply"));
            }
            return;
        }
        levels.add(level(Kind.SUPPLY, supply, "supply at rest, after the reducing valve"));
        if (steady && mains > supply) {
            levels.add(level(Kind.MAINS, mains, amounts.units().spelled("mains")));
        }
    }

    private List<Level> reliefSets() {
        List<ReliefValve> valves = system.reliefValves();
        List<Level> levels = new ArrayList<>();
        if (valves.size() <= MAX_VALVES) {
            for (ReliefValve valve : valves) {
                levels.add(level(
                        Kind.RELIEF_SET,
                        atDrainCock(valve.setPressure(), valve.height()),
                        setPressure(valve) + whose(valve)));
            }
            return levels;
        }
        Map<Double, Integer> valvesAt = new LinkedHashMap<>();
        valves.forEach(valve -> valvesAt.merge(atDrainCock(valve.setPressure(), valve.height()), 1, Integer::sum));
        valvesAt.forEach((set, count) -> levels.add(
                level(Kind.RELIEF_SET, set, count == 1 ? "relief opens" : "relief opens, " + count + " valves")));
        return levels;
    }

    private static String setPressure(ReliefValve valve) {
        return switch (valve.condition()) {
            case SOUND, LEAKING_SEAT -> "relief opens";
            case STUCK_OPEN -> "relief set, but stuck open";
            case BLOCKED -> "relief set, but blocked";
        };
    }

    private String whose(ReliefValve valve) {
        String name = system.reliefValves().size() == 1 ? "" : ", " + valve.name();
        return name + seen(valve.height());
    }

    /** That a pressure at another height is drawn as it would read at the drain cock. */
    private String seen(double height) {
        return Math.abs(system.head(height)) < 1_000 ? "" : amounts.units().spelled(", as seen at the drain cock");
    }

    private double atDrainCock(Pressure seen, double height) {
        return system.atDrainCock(seen, height).gauge(atmosphere);
    }

    private Level level(Kind kind, double gauge, String name) {
        return new Level(kind, amounts.units().pressure().fromSi(gauge), amounts.pressure(gauge), name);
    }

    /** The levels of several systems: what they share stands once; what differs says whose it is. A limit (Pa, gauge) of all is added. */
    static List<Level> shared(List<NamedRun> runs, OptionalDouble limitGauge, QuantityFormat amounts) {
        Map<Alike, List<Owned>> alike = new LinkedHashMap<>();
        for (NamedRun run : runs) {
            for (Level level : new Levels(run.result().summary(), amounts).shared()) {
                alike.computeIfAbsent(new Alike(level.kind(), level.amount(), level.name()), key -> new ArrayList<>())
                        .add(new Owned(level, run.name()));
            }
        }
        List<Level> levels = new ArrayList<>(
                alike.values().stream().map(group -> named(group, alike)).toList());
        limitGauge.ifPresent(gauge -> addLimit(levels, gauge, amounts));
        return levels;
    }

    private static Level named(List<Owned> group, Map<Alike, List<Owned>> alike) {
        Level level = group.get(0).level();
        long ofThisKind = alike.keySet().stream()
                .filter(key -> key.kind() == level.kind())
                .count();
        List<String> owners = group.stream().map(Owned::run).distinct().toList();
        if (ofThisKind == 1) {
            return level;
        }
        String whose = owners.size() == 1 ? "“" + owners.get(0) + "”" : owners.size() + " runs";
        return new Level(level.kind(), level.value(), level.amount(), level.name() + ": " + whose);
    }

    /**
     * What makes two levels one line.
     *
     * @param kind the kind of level
     * @param amount where it lies, as written
     * @param name what it is: a valve that opens there and one that is stuck open are not alike
     */
    private record Alike(Level.Kind kind, String amount, String name) {}

    /**
     * A level and the run it belongs to.
     *
     * @param level the level
     * @param run the name of the run
     */
    private record Owned(Level level, String run) {}
}

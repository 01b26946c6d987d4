package io.github.heatswell.charts;

import io.github.heatswell.charts.picture.Level;
import io.github.heatswell.charts.picture.Level.Kind;
import io.github.heatswell.plant.ExpansionVessel;
import io.github.heatswell.plant.HotWaterSystem;
import io.github.heatswell.plant.ReliefValve;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.Pressure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pressures of a system against which its course is read. */
final class Levels {

    /** With more valves than this, those of equal set pressure share a line and reseating is not shown. */
    private static final int MOST_VALVES = 4;

    /** How near (as a share of it) a run must come to the test pressure for that to be shown. */
    private static final double NEAR_TEST = 0.95;

    private final RunResult result;
    private final HotWaterSystem system;
    private final Amounts amounts;
    private final double atmosphere;

    Levels(RunResult result, Amounts amounts) {
        this.result = result;
        this.system = result.system();
        this.amounts = amounts;
        this.atmosphere = system.site().atmosphere();
    }

    /** All levels of one system. */
    List<Level> all() {
        List<Level> levels = new ArrayList<>(shared());
        List<ReliefValve> valves = system.reliefValves();
        if (valves.size() <= MOST_VALVES) {
            for (ReliefValve valve : valves) {
                String whose = valves.size() == 1 ? "" : ", " + valve.name();
                levels.add(level(Kind.RELIEF_RESEAT, valve.reseats(), "relief reseats" + whose));
            }
        }
        system.vessel()
                .map(ExpansionVessel::precharge)
                .ifPresent(precharge -> levels.add(level(Kind.PRECHARGE, precharge, "vessel precharge")));
        return levels;
    }

    /** The levels that matter where several systems are compared. */
    List<Level> shared() {
        List<Level> levels = new ArrayList<>();
        double test = result.gauge(system.tank().testPressureAbsolute(atmosphere));
        if (result.gauge(result.extremes().highestPressure().value()) >= NEAR_TEST * test) {
            levels.add(level(Kind.TEST_PRESSURE, new Pressure(test, Pressure.Reference.GAUGE), "tank test pressure"));
        }
        levels.add(level(Kind.WORKING_PRESSURE, system.tank().workingPressure(), "tank working pressure"));
        levels.addAll(reliefSets());
        levels.add(level(Kind.SUPPLY, system.supplyAtStart(), "supply"));
        return levels;
    }

    private List<Level> reliefSets() {
        List<ReliefValve> valves = system.reliefValves();
        List<Level> levels = new ArrayList<>();
        if (valves.size() <= MOST_VALVES) {
            for (ReliefValve valve : valves) {
                String whose = valves.size() == 1 ? "" : ", " + valve.name();
                levels.add(level(Kind.RELIEF_SET, valve.opens(), "relief opens" + whose));
            }
            return levels;
        }
        Map<Double, Integer> valvesAt = new LinkedHashMap<>();
        valves.forEach(valve -> valvesAt.merge(valve.opens().gauge(atmosphere), 1, Integer::sum));
        valvesAt.forEach((set, count) -> levels.add(level(
                Kind.RELIEF_SET,
                new Pressure(set, Pressure.Reference.GAUGE),
                count == 1 ? "relief opens" : "relief opens, " + count + " valves")));
        return levels;
    }

    private Level level(Kind kind, Pressure pressure, String name) {
        double gauge = pressure.gauge(atmosphere);
        return new Level(kind, amounts.units().pressure().fromSi(gauge), amounts.chosenPressure(gauge), name);
    }
}

package io.github.heatswell.charts;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.system.ReliefValve.LiftCharacteristic;
import io.github.heatswell.system.Supply.Arrangement;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The situations a picture must cope with. */
public final class Gallery {

    private static final double HOUR = 3600;

    private Gallery() {}

    /** A relief valve and nothing else: it drips. */
    public static RunResult dripping() {
        return run(withValve(LiftCharacteristic.MODULATING).build(), 3 * HOUR);
    }

    /** A vessel of the right size. */
    public static RunResult calm() {
        return run(
                withValve(LiftCharacteristic.MODULATING)
                        .vessel(Plants.vessel(18, 4.2))
                        .build(),
                3 * HOUR);
    }

    /** Nothing that could give way. */
    public static RunResult bursting() {
        return run(Plants.bare().build(), 3 * HOUR);
    }

    /** A valve that pops open and shut. */
    public static RunResult popping() {
        return run(
                Plants.bare()
                        .addReliefValve(Plants.valve("safety valve", 7, 6.3, LiftCharacteristic.SNAP))
                        .build(),
                3 * HOUR);
    }

    /** A vessel that is too small. */
    public static RunResult cramped() {
        return run(
                withValve(LiftCharacteristic.MODULATING)
                        .vessel(Plants.vessel(2, 0.8))
                        .build(),
                3 * HOUR);
    }

    /** Two valves at nearly the same pressure, with long names. */
    public static RunResult rivals() {
        HotWaterSystem system = Plants.bare()
                .supply(Plants.supply(Arrangement.CHECK_VALVE, 6.2))
                .addReliefValve(Plants.valve(
                        "Combined temperature and pressure valve on the tank lid",
                        7.05,
                        6.2,
                        LiftCharacteristic.MODULATING))
                .addReliefValve(
                        Plants.valve("Cold branch safety group, cellar", 7.0, 6.3, LiftCharacteristic.MODULATING))
                .build();
        return run(system, HOUR);
    }

    /** Open to the mains: nothing happens to the pressure. */
    public static RunResult open() {
        HotWaterSystem system = withValve(LiftCharacteristic.MODULATING)
                .supply(Plants.supply(Arrangement.DIRECT, 4.2))
                .build();
        return run(system, 3 * HOUR);
    }

    /** A week. */
    public static RunResult week() {
        return run(withValve(LiftCharacteristic.MODULATING).build(), 7 * 24 * HOUR);
    }

    /** A run that exceeds the working pressure and lives. */
    public static RunResult strained() {
        return run(
                Plants.bare()
                        .addReliefValve(Plants.valve("too strong", 12, 11, LiftCharacteristic.SNAP))
                        .build(),
                2 * HOUR);
    }

    /** All of them by name. */
    public static Map<String, RunResult> all() {
        Map<String, RunResult> runs = new LinkedHashMap<>();
        runs.put("dripping", dripping());
        runs.put("calm", calm());
        runs.put("bursting", bursting());
        runs.put("popping", popping());
        runs.put("cramped", cramped());
        runs.put("rivals", rivals());
        runs.put("open", open());
        runs.put("week", week());
        runs.put("strained", strained());
        return runs;
    }

    /** Three ways out of the dripping. */
    public static List<NamedRun> waysOut() {
        return List.of(
                new NamedRun("no vessel", dripping()),
                new NamedRun("18 L vessel", calm()),
                new NamedRun("2 L vessel", cramped()));
    }

    /** Six runs, one of them a hazard, with names of all lengths. */
    public static List<NamedRun> six() {
        return List.of(
                new NamedRun("as found: relief valve drips, check valve fitted last spring", dripping()),
                new NamedRun("18 L vessel", calm()),
                new NamedRun("2 L vessel", cramped()),
                new NamedRun("relief valve removed", bursting()),
                new NamedRun("snap valve", popping()),
                new NamedRun("no check valve", open()));
    }

    /** Charts of everything above. */
    public static Map<String, Chart> charts(UnitSystem units) {
        Map<String, Chart> charts = new LinkedHashMap<>();
        all().forEach((name, result) -> charts.put(name, Chart.of(result, units)));
        charts.put("ways-out", Chart.comparing(waysOut(), units));
        charts.put("six", Chart.comparing(six(), units));
        return charts;
    }

    private static RunResult run(HotWaterSystem system, double seconds) {
        return Simulation.of(system, Duration.ofSeconds((long) seconds)).run();
    }

    private static HotWaterSystem.Builder withValve(ReliefValve.LiftCharacteristic character) {
        return Plants.bare().addReliefValve(Plants.valve("safety valve", 7, 6.3, character));
    }
}

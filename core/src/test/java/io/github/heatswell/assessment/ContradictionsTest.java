package io.github.heatswell.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.RandomHouses;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * What holds for the findings of every house and every run: none says the opposite of another, a wrong charge is always said, no
 * bucket stands under a scalding discharge, and the water that scalds is as hot as that of the run. More houses are looked at with
 * {@code -Dtest.jvm.options="-Dfindings.houses=100000 -Dfindings.runs=5000"}.
 */
class ContradictionsTest {

    private static final int HOUSES = Integer.getInteger("findings.houses", 2000);
    private static final int RUNS = Integer.getInteger("findings.runs", 40);
    private static final long SEED = Long.getLong("findings.seed", 1);
    private static final Duration RUN = Duration.ofHours(6);
    private static final double SIXTY = 333.15;

    /** Whatever says that a vessel is or is not there, or that it works or does not. */
    private static final Set<String> DEAD = Set.of("vessel-isolated", "vessel-waterlogged", "vessel-upstream-of-check");

    private static final Set<String> NEEDS_ROOM = Set.of(
            "expansion-control-missing",
            "bypass-opens-too-late",
            "relief-valve-controls-expansion",
            "expansion-valve-provided",
            "expansion-valve-works",
            "vessel-too-small",
            "vessel-bottomed-out");

    private static final Set<String> OPEN_VALVE = Set.of(
            "relief-valve-missing",
            "relief-valve-blocked",
            "thermostat-stuck",
            "water-hotter-than-boiling",
            "vapour-forms");

    /** By a finding, those that may not stand beside it: one would say the opposite of the other. */
    static final Map<String, Set<String>> OPPOSITES = Map.ofEntries(
            Map.entry("expansion-returns-to-mains", NEEDS_ROOM),
            Map.entry(
                    "expansion-control-missing",
                    union(DEAD, Set.of("vessel-too-small", "vessel-bottomed-out", "bypass-opens-too-late"))),
            Map.entry(
                    "expansion-valve-works",
                    Set.of(
                            "expansion-valve-provided",
                            "expansion-control-missing",
                            "vessel-too-small",
                            "relief-water-loss")),
            Map.entry("vessel-isolated", Set.of("vessel-waterlogged", "vessel-too-small", "vessel-bottomed-out")),
            Map.entry(
                    "vessel-waterlogged",
                    Set.of("precharge-above-static", "precharge-below-static", "vessel-too-small")),
            Map.entry("vessel-upstream-of-check", Set.of("vessel-isolated", "vessel-waterlogged", "vessel-too-small")),
            Map.entry("precharge-above-static", Set.of("precharge-below-static")),
            Map.entry("vessel-weight", Set.of("vessel-unsupported")),
            Map.entry("scald-without-mixing-valve", Set.of("mixing-valve-set-high")),
            Map.entry(
                    "relief-valve-missing",
                    Set.of(
                            "temperature-relief-missing",
                            "relief-set-above-tank",
                            "relief-valve-blocked",
                            "relief-valve-stuck-open",
                            "relief-water-loss",
                            "peak-near-relief")),
            Map.entry("water-freezes", Set.of("frost-likely")),
            Map.entry("water-hotter-than-boiling", Set.of("boiling-margin-small", "vapour-forms")),
            Map.entry("supply-opens-relief-valve", Set.of("vessel-too-small")));

    private static Set<String> union(Set<String> one, Set<String> other) {
        Set<String> all = new TreeSet<>(one);
        all.addAll(other);
        return all;
    }

    private final Set<String> broken = new TreeSet<>();
    private final Set<String> seen = new TreeSet<>();

    private void look(String which, HotWaterSystem house, List<Finding> found, RunSummary run) {
        Set<String> ids = found.stream().map(Finding::id).collect(Collectors.toCollection(TreeSet::new));
        seen.addAll(ids);
        OPPOSITES.forEach((one, others) -> others.forEach(other -> beside(which, ids, one, other)));
        WaterTemperatureRule.HEATER_OFF.forEach(one -> beside(which, ids, one, "stored-too-cool"));
        if (chargeIsWrong(house)
                && !ids.contains("precharge-above-static")
                && !ids.contains("precharge-below-static")) {
            broken.add(which + "a wrong charge is not said: " + ids);
        }
        String text = found.stream().map(ContradictionsTest::text).collect(Collectors.joining(" "));
        boolean hazard = found.stream().anyMatch(finding -> finding.severity() == Severity.HAZARD);
        boolean hot = house.reliefValves().stream().anyMatch(v -> v.location() == ReliefValve.Location.TANK_TOP)
                && run != null
                && run.extremes().highestTemperature().value() > SIXTY + 1e-3;
        if (text.contains("bucket") && (hot || hazard || text.contains("tay away") || text.contains("eep clear"))) {
            broken.add(which + "a bucket beside a hazard: " + ids);
        }
        if (text.contains("no vessel is needed") || text.contains("larger, or")) {
            broken.add(which + "words that are not true: " + ids);
        }
        if (ids.stream().anyMatch(OPEN_VALVE::contains) && !hazard) {
            broken.add(which + "a hazard that is none: " + ids);
        }
        for (int i = 1; i < found.size(); i++) {
            if (found.get(i).severity().compareTo(found.get(i - 1).severity()) < 0) {
                broken.add(which + "the graver does not come first: " + ids);
            }
        }
        if (run != null) {
            scald(which, found, run);
        }
    }

    private void beside(String which, Set<String> ids, String one, String other) {
        if (ids.contains(one) && ids.contains(other)) {
            broken.add(which + one + " beside " + other);
        }
    }

    private static String text(Finding finding) {
        return finding.sentence().text(UnitSystem.SI) + " " + finding.advice().text(UnitSystem.SI);
    }

    /** Further off the supply's pressure, at the temperature and the height of the vessel, than the reading of any gauge. */
    private static boolean chargeIsWrong(HotWaterSystem house) {
        if (house.vessel().isEmpty() || house.vessel().get().condition() == ExpansionVessel.Condition.WATERLOGGED) {
            return false;
        }
        ExpansionVessel vessel = house.vessel().get();
        double air = house.site().atmosphere();
        double room = house.site().roomTemperature();
        double charge = vessel.precharge().absolute(air)
                * vessel.temperature().orElse(room)
                / vessel.chargedAt().orElse(room);
        double lift = 999.7 * 9.80665 * vessel.height();
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int minute = 0; minute < 1440; minute++) {
            double here = house.supply().staticAbsolute(60.0 * minute, air) - lift;
            lowest = Math.min(lowest, here);
            highest = Math.max(highest, here);
        }
        if (lowest < 0.1e5) {
            return false; // that the supply does not rise to the vessel is said instead
        }
        return charge > highest + 0.5e5 || charge < lowest - 0.5e5;
    }

    /** The temperature that is said to burn is the run's hottest, or the mixing valve's, or what the heater is set to. */
    private void scald(String which, List<Finding> found, RunSummary run) {
        found.stream()
                .filter(finding -> finding.id().equals("scald-without-mixing-valve"))
                .forEach(finding -> {
                    double said = finding.found().orElseThrow().value();
                    double hottest = run.extremes().highestTemperature().value();
                    if (text(finding).contains("in the run") ? said != hottest : said < hottest - 1e-9) {
                        broken.add(which + "water of " + said + " K is said to scald, and there was " + hottest);
                    }
                });
    }

    @Test
    void housesAreNotContradicted(TestReporter reporter) {
        RandomHouses houses = new RandomHouses(SEED);
        for (int i = 0; i < HOUSES; i++) {
            HotWaterSystem house = houses.next();
            look("house " + i + ": ", house, Findings.of(house), null);
        }
        reporter.publishEntry(HOUSES + " houses, findings " + seen.size() + ", broken " + broken.size());
        assertEquals(List.of(), new ArrayList<>(broken));
        assertTrue(seen.size() > 20, seen::toString);
    }

    @Test
    void runsAreNotContradicted(TestReporter reporter) {
        RandomHouses houses = new RandomHouses(SEED + 1);
        int failed = 0;
        for (int i = 0; i < RUNS; i++) {
            HotWaterSystem house = houses.next();
            try {
                RunSummary run = Simulation.of(house, RUN).sampledEvery(Duration.ofHours(1)).stream(
                        (time, values, regime) -> {});
                look("run " + i + ": ", house, Findings.of(run), run);
            } catch (SimulationException stopped) {
                failed++;
            }
        }
        reporter.publishEntry(
                RUNS + " runs, " + failed + " failed, findings " + seen.size() + ", broken " + broken.size());
        assertEquals(List.of(), new ArrayList<>(broken));
        assertTrue(failed < RUNS / 20, failed + " runs failed");
    }
}

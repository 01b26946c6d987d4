package io.github.heatswell.scenarios.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.generated.RandomScenarios;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * What holds for the report of every file: it is a hazard to its caller, and begins with one, exactly where a finding or the end of
 * the run is a hazard, and a hazard stands beside no bucket. More files with
 * {@code -Dtest.jvm.options=-Dhazard.files=2000}.
 */
class HazardContractTest {

    private static final int FILES = Integer.getInteger("hazard.files", 40);
    private static final Duration LONGEST = Duration.ofHours(6);

    @Test
    void hazardsStandFirstAndNowhereElse(TestReporter reporter) {
        List<String> broken = new ArrayList<>();
        int hazards = 0;
        for (int seed = 0; seed < FILES; seed++) {
            try {
                Scenario whole = RandomScenarios.tame(seed).scenario();
                Duration duration = whole.duration().compareTo(LONGEST) < 0 ? whole.duration() : LONGEST;
                Scenario scenario = Scenario.of(whole.name(), whole.title(), whole.system(), duration, duration);
                RunResult run = scenario.simulation().run();
                boolean hazard = run.hazard().isPresent()
                        || Findings.of(run.summary()).stream()
                                .anyMatch(finding -> finding.severity() == Severity.HAZARD);
                Report report = Pages.onScreen(scenario, run, UnitSystem.SI);
                String text = report.text();
                hazards += hazard ? 1 : 0;
                if (report.isHazard() != hazard || text.startsWith("HAZARD: ") != hazard) {
                    broken.add(seed + ": a hazard is " + hazard + ", and the report begins with "
                            + text.lines().findFirst());
                }
                if (hazard && text.contains("bucket")) {
                    broken.add(seed + ": a bucket beside a hazard");
                }
            } catch (SimulationException stopped) {
                // a run that cannot be simulated has no report; how many there are is watched elsewhere
            }
        }
        reporter.publishEntry(FILES + " files, " + hazards + " with a hazard");
        assertEquals(List.of(), broken);
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Severity;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.Set;

/** Says what a hazard means for somebody who stands next to the tank. */
final class Hazards {

    /** Findings on events, which reports tell as what happened. */
    private static final Set<String> EVENTS = Set.of(
            "test-pressure-reached",
            "vapour-forms",
            "relief-valve-chatters",
            "pressure-lost",
            "water-out-of-range",
            "water-freezes",
            "working-pressure-exceeded");

    private Hazards() {}

    /** The findings by which people may be hurt. */
    static List<Finding> among(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.HAZARD)
                .toList();
    }

    /** Whether people may be hurt, by what happened in a run or by what the house is. */
    static boolean in(RunSummary run, Doubts doubts) {
        return run.hazard().isPresent() || !among(Findings.of(run, doubts)).isEmpty();
    }

    /** Whether people may be hurt by what a house is, whatever runs of it come to. */
    static boolean in(Scenario scenario) {
        return !among(Findings.of(scenario.system(), scenario.doubts())).isEmpty();
    }

    /** Whether a finding tells of an event that ended the run or passed a limit. */
    static boolean isEvent(Finding finding) {
        return EVENTS.contains(finding.id());
    }

    static String meaning(EventKind kind) {
        return switch (kind) {
            case TEST_PRESSURE_REACHED ->
                "A tank is tested up to this pressure and no further: beyond it, it may burst.";
            case VAPOUR_FORMS ->
                "The water begins to boil. If its pressure is let go, it flashes into steam at once,"
                        + " with the force of an explosion.";
            case ATMOSPHERE_REACHED ->
                "The pressure falls below that of the air: air or dirty water may be sucked in,"
                        + " and a thin tank may buckle.";
            case WATER_OUT_OF_RANGE ->
                "The water left the temperatures this model knows. Nothing is known of what" + " follows.";
            case WATER_FREEZES ->
                "Ice takes more room than water: it bursts tanks and pipes, and blocks relief valves.";
            case WORKING_PRESSURE_EXCEEDED -> "The maker allows no more than this in use.";
            default -> "";
        };
    }
}

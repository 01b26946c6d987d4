package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.scenarios.file.Scenario;

/** Tells whether people may be hurt. */
final class Hazards {

    private Hazards() {}

    /** Whether people may be hurt by what a house is, whatever runs of it come to. */
    static boolean in(Scenario scenario) {
        return !Narrative.alarms(scenario.system(), scenario.doubts()).isEmpty();
    }
}

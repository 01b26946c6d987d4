package io.github.heatswell.scenarios.choice;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import java.util.Optional;

/**
 * What the relief valves would discharge in a year of days like those of a run.
 *
 * @param inRun what they discharged in the run (m3 of cold water)
 * @param days how much of a year the run counts as (days); a run shorter than a day counts as one
 */
public record YearlyWater(double inRun, double days) {

    private static final double DAY = 86_400;
    private static final double DAYS_OF_YEAR = 365;

    /**
     * Takes it from a run.
     *
     * @param run what the run found
     * @return what it would be in a year
     */
    public static YearlyWater of(RunSummary run) {
        return new YearlyWater(run.totals().relieved(), Math.max(1, run.end() / DAY));
    }

    /**
     * Takes it from a run that is normal life: a house in which something is a hazard, or whose cut-out tripped, is not lived in for
     * a year.
     *
     * @param run what the run found
     * @param doubts what is not known of the house
     * @return what it would be in a year; empty if the run is not normal life
     */
    public static Optional<YearlyWater> ofNormalLife(RunSummary run, Doubts doubts) {
        boolean hazard = Findings.of(run, doubts).stream().anyMatch(finding -> finding.severity() == Severity.HAZARD);
        return hazard || run.first(Event.Kind.CUT_OUT_TRIPPED).isPresent() ? Optional.empty() : Optional.of(of(run));
    }

    /**
     * What it comes to.
     *
     * @return the volume (m3 of cold water in 365 days)
     */
    public double volume() {
        return inRun / days * DAYS_OF_YEAR;
    }
}

package io.github.heatswell.scenarios.choice;

import io.github.heatswell.result.RunSummary;

/**
 * What the relief valves would give off in a year of days like those of a run.
 *
 * @param inRun what they gave off in the run (m3 of cold water)
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
     * What it comes to.
     *
     * @return the volume (m3 of cold water in 365 days)
     */
    public double volume() {
        return inRun / days * DAYS_OF_YEAR;
    }
}

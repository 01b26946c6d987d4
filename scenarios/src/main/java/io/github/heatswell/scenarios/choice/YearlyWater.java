package io.github.heatswell.scenarios.choice;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.Interval;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import java.time.Duration;
import java.util.Optional;

/**
 * What the relief valves would discharge in a year of days like those of a run. A tank is filled cold once, not every day: the first
 * heat-up from cold is left out where the run goes on to days of use.
 *
 * @param inRun what they discharged in these days (m3 of cold water)
 * @param days how much of a year they are (days); less than a day counts as one
 */
public record YearlyWater(double inRun, double days) {

    private static final double DAY = 86_400;
    private static final double DAYS_OF_YEAR = 365;
    private static final double MILLIS = 1000;

    /**
     * Takes it from a run.
     *
     * @param run what the run found
     * @return what it would be in a year
     */
    public static YearlyWater of(RunSummary run) {
        double from = run.totals().relieved() > 0 ? endOfColdFill(run) : 0;
        double before = from > 0
                ? Simulation.of(run.system(), Duration.ofMillis(Math.round(MILLIS * from)))
                        .summary()
                        .totals()
                        .relieved()
                : 0;
        return new YearlyWater(run.totals().relieved() - before, Math.max(1, (run.end() - from) / DAY));
    }

    /** When the first heat-up from cold is over (s); 0 if the tank was hot at the start, or the run shows nothing but that heat-up. */
    private static double endOfColdFill(RunSummary run) {
        HotWaterSystem house = run.system();
        double start = house.start().waterTemperature().orElse(house.coldAtStart());
        if (start >= house.heater().setPoint() - house.heater().differential()) {
            return 0;
        }
        return run.joined(Interval.Phase.HEATER_ON).stream()
                .findFirst()
                .map(Interval::to)
                .filter(end -> run.end() - end >= DAY
                        || run.intervals(Interval.Phase.DRAW).stream().anyMatch(draw -> draw.from() >= end))
                .orElse(0.0);
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

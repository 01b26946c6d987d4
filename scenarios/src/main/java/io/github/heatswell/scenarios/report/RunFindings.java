package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Doubts;
import io.github.heatswell.charts.DailyFigures;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Observer.Observed;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Objects;

/**
 * What a run found, as far as reports need it: everything but its course.
 *
 * @param summary what the run found
 * @param observed what its samples showed
 * @param days what relief valves discharged on each day (m3); empty for a run that is not told day by day
 */
record RunFindings(RunSummary summary, Observed observed, List<Double> days) {

    /** Two times (s) this close are one, whatever rounding did to them. */
    private static final double SAME_MOMENT = 1e-3;

    RunFindings {
        Objects.requireNonNull(summary, "summary");
        Objects.requireNonNull(observed, "observed");
        days = List.copyOf(days);
    }

    /** The findings of a run whose course was kept. */
    static RunFindings of(RunResult result) {
        RunSummary summary = Objects.requireNonNull(result, "result").summary();
        List<Double> days = Narrative.isByDay(summary) ? DailyFigures.of(result).relieved() : List.of();
        return new RunFindings(summary, Observed.of(result), days);
    }

    /** The run in sentences. */
    Narrative narrative(Doubts doubts) {
        Narrative told = days.isEmpty() ? Narrative.of(summary, doubts) : Narrative.ofDays(summary, doubts, days);
        return told.with(summary, observed);
    }

    /** Refuses a run of another house, or one that was asked for longer or shorter than the scenario says. */
    void requireOf(Scenario scenario) {
        Objects.requireNonNull(scenario, "scenario");
        if (scenario.system() != summary.system()) {
            throw new IllegalArgumentException("result: is not a run of the house of scenario "
                    + Printable.quote(scenario.name())
                    + "; run scenario.simulation(), or make a scenario of the changed house with Scenario.of");
        }
        double asked = scenario.duration().toNanos() / 1e9;
        double over = summary.end() - asked;
        if (over > SAME_MOMENT || summary.hazard().isEmpty() && over < -SAME_MOMENT) {
            throw new IllegalArgumentException("result: covers " + span(summary.end()) + ", but scenario "
                    + Printable.quote(scenario.name()) + " asks for " + span(asked) + "; run scenario.simulation()");
        }
    }

    private static String span(double seconds) {
        return QuantityFormat.ascii(UnitSystem.SI).time(seconds);
    }
}

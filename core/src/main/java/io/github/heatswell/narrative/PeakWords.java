package io.github.heatswell.narrative;

import static io.github.heatswell.assessment.Measure.gauge;
import static io.github.heatswell.assessment.Statement.plain;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.result.RunSummary;

/** How high the pressure rose in one run, against its limits. */
final class PeakWords {

    private final RunSummary summary;

    PeakWords(RunSummary summary) {
        this.summary = summary;
    }

    /** The peak against the lowest set pressure of the valves that can open. */
    Statement sentence() {
        boolean steady = summary.extremes().isSteady();
        Statement peak = plain(steady ? "pressure stays at about " : "pressure peaks at ")
                .then(gauge(highest()));
        return Limit.reliefSet(summary)
                .map(set -> peak.then(", ").then(against(set.gauge())).then(" the relief set pressure"))
                .orElseGet(() -> peak.then(
                        summary.system().reliefValves().isEmpty()
                                ? "; there is no relief valve"
                                : "; the relief valve is blocked"));
    }

    /** The peak against what the tank's maker allows. */
    Statement overWorkingPressure() {
        double limit = Limit.workingPressure(summary).gauge();
        Statement over =
                plain("pressure peaks at ").then(gauge(highest())).then(", ").then(against(limit));
        return summary.system().tank().workingPressureGiven()
                ? over.then(" the tank's working pressure")
                : over.then(" the ").then(gauge(limit)).then(" assumed for the tank");
    }

    /** Whether the highest pressure lies above what the tank's maker allows. */
    boolean exceedsWorkingPressure() {
        return highest() > Limit.workingPressure(summary).gauge() * (1 + 1e-9);
    }

    private double highest() {
        return summary.peak().value();
    }

    private Statement against(double limit) {
        double difference = Math.abs(limit - highest());
        return plain("")
                .then(new Measure(Measure.Kind.PRESSURE_GAP, difference))
                .then(highest() > limit ? " above" : " below");
    }
}

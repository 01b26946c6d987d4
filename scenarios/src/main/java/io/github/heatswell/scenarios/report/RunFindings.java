package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Observed;
import io.github.heatswell.narrative.Observer;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.Objects;

/**
 * What a run found, as far as reports need it: everything but its course.
 *
 * @param summary what the run found
 * @param observed what its samples showed
 */
record RunFindings(RunSummary summary, Observed observed) {

    /** Two times (s) this close are one, whatever rounding did to them. */
    private static final double SAME_MOMENT = 1e-3;

    /**
     * Checks that both parts are there.
     *
     * @param summary what the run found
     * @param observed what its samples showed
     */
    public RunFindings {
        Objects.requireNonNull(summary, "summary");
        Objects.requireNonNull(observed, "observed");
    }

    /**
     * The findings of a run whose course was kept.
     *
     * @param result the run
     * @return its findings
     */
    public static RunFindings of(RunResult result) {
        Observer observer =
                new Observer(Objects.requireNonNull(result, "result").system());
        Trace trace = result.trace();
        double[] values = new double[Channel.values().length];
        for (int i = 0; i < trace.count(); i++) {
            for (Channel channel : Channel.values()) {
                values[channel.ordinal()] = trace.value(channel, i);
            }
            observer.sample(trace.grid().time(i), values, trace.regime(i));
        }
        return new RunFindings(result.summary(), observer.observed());
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

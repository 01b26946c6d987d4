package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;

/**
 * What a run found, as far as reports need it: everything but its course.
 *
 * @param summary what the run found
 * @param observed what its samples showed
 */
public record RunFindings(RunSummary summary, Observed observed) {

    /**
     * The findings of a run whose course was kept.
     *
     * @param result the run
     * @return its findings
     */
    public static RunFindings of(RunResult result) {
        Observer observer = new Observer(result.system());
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
}

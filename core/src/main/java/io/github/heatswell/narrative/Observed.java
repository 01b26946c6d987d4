package io.github.heatswell.narrative;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import java.util.Objects;

/**
 * What the samples of a run showed.
 *
 * @param samples how many there were
 * @param startPressureAbsolute the pressure of the first (Pa, absolute)
 * @param startTemperature the mean water temperature of the first (K)
 * @param relievedWhileFed the volume (m3, as cold water) that relief valves discharged while the supply replaced it; what
 *     lies between two samples counts only if a valve discharges water at both
 * @param drawsTooCool how many draws met water in the tank that was cooler than what was wanted at the tap
 */
public record Observed(
        long samples,
        double startPressureAbsolute,
        double startTemperature,
        double relievedWhileFed,
        long drawsTooCool) {

    /**
     * What the samples of a run showed whose course was kept.
     *
     * @param result the run
     * @return the same as an {@link Observer} would say that had watched it
     */
    public static Observed of(RunResult result) {
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
        return observer.observed();
    }
}

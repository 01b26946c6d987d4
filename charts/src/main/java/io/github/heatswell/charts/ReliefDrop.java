package io.github.heatswell.charts;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import io.github.heatswell.system.ReliefValve;
import java.util.OptionalDouble;

/**
 * When the pressure settled after a modulating valve opened between two samples. It falls within seconds; a straight
 * line to the next sample would show a fall of up to a minute that never happened.
 *
 * <p>The time follows from what the trace holds. Part of the water discharged until the next sample is steady flow; the
 * rest left during the fall, as the opening valve's flow decayed. An exponential decay is 95 % complete after three
 * times that rest divided by the initial flow.
 */
final class ReliefDrop {

    private static final double TIME_CONSTANTS = 3;

    private final RunResult result;

    ReliefDrop(RunResult result) {
        this.result = result;
    }

    /**
     * The end of the fall, before the next sample.
     *
     * @param index the number of the event
     * @return the time since the start (s), or empty if the event is none of this kind or the trace does not tell
     */
    OptionalDouble end(int index) {
        Event opening = result.events().get(index);
        int sample = sampleAfter(opening.time());
        if (opening.kind() != Event.Kind.RELIEF_OPENED || sample < 0 || interrupted(index, sample)) {
            return OptionalDouble.empty();
        }
        Trace trace = result.trace();
        boolean settled = trace.regime(sample) == Trace.Regime.RELIEVING
                && trace.value(Channel.PRESSURE_ABSOLUTE, sample) < opening.pressureAbsolute();
        double firstFlow = firstFlow(opening.device());
        if (!settled || !(firstFlow > 0)) {
            return OptionalDouble.empty();
        }
        double left = trace.grid().time(sample) - opening.time();
        double rest = trace.value(Channel.RELIEVED_TOTAL, sample)
                - trace.value(Channel.RELIEVED_TOTAL, sample - 1)
                - trace.value(Channel.RELIEF_FLOW, sample) * left;
        double fall = TIME_CONSTANTS * rest / firstFlow;
        return fall >= 0 && fall < left ? OptionalDouble.of(opening.time() + fall) : OptionalDouble.empty();
    }

    /** The sample next after a moment, or -1 if there is none with one before it. */
    int sampleAfter(double time) {
        int sample = (int) Math.floor(time / result.trace().grid().step()) + 1;
        return sample < result.trace().count() ? sample : -1;
    }

    private boolean interrupted(int index, int sample) {
        boolean last = index == result.events().size() - 1;
        return !last
                && result.events().get(index + 1).time()
                        <= result.trace().grid().time(sample);
    }

    /** The flow (m3/s) of a modulating valve as it opens, by its lift; 0 for any other. */
    private double firstFlow(String name) {
        double atmosphere = result.system().site().atmosphere();
        for (ReliefValve valve : result.system().reliefValves()) {
            if (valve.name().equals(name) && valve.liftCharacteristic() == ReliefValve.LiftCharacteristic.MODULATING) {
                double reseatPressure = valve.reseatPressure().gauge(atmosphere);
                double lift = (valve.setPressure().gauge(atmosphere) - reseatPressure)
                        / (valve.fullLiftPressure().gauge(atmosphere) - reseatPressure);
                return lift * valve.fullFlow();
            }
        }
        return 0;
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.EventKind;
import io.github.heatswell.result.Extreme;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.Trace;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One run of the house under a slider, rounded to what a picture can show.
 *
 * @param si the value of the slider in SI units, such as {@code 8 L}
 * @param us the same in US units
 * @param course the gauge pressure, sample by sample (kPa)
 * @param peak the highest gauge pressure (kPa)
 * @param peakTime when it was reached (s)
 * @param relieved what the relief valves gave off (mL)
 * @param opening when the first relief valve opened (s), if one did
 * @param hazard what ended the run, or nothing
 */
record SliderStep(
        String si,
        String us,
        List<Long> course,
        long peak,
        long peakTime,
        long relieved,
        OptionalDouble opening,
        String hazard) {

    private static final double KILO = 1e3;
    private static final double MILLILITRES = 1e6;

    /** A picture has no room for more samples than this. */
    private static final int MAX_SAMPLES = 241;

    static SliderStep of(String si, String us, RunResult run) {
        Extreme peak = run.extremes().highestPressure();
        return new SliderStep(
                si,
                us,
                course(run),
                Math.round(run.gauge(peak.value()) / KILO),
                Math.round(peak.time()),
                Math.round(run.totals().relieved() * MILLILITRES),
                run.first(EventKind.RELIEF_OPENED).stream()
                        .mapToDouble(Event::time)
                        .findFirst(),
                run.hazard().map(event -> event.kind().description()).orElse(""));
    }

    /** The gauge pressure (kPa) at every sample that is kept, at the drain cock as the peak is. */
    static List<Long> course(RunResult run) {
        Trace trace = run.trace();
        int stride = stride(run);
        List<Long> course = new ArrayList<>();
        for (int i = 0; i < trace.count(); i += stride) {
            course.add(Math.round(run.gauge(trace.value(Channel.PRESSURE_ABSOLUTE, i)) / KILO));
        }
        return course;
    }

    /** How many samples of the run make one that is kept. */
    static int stride(RunResult run) {
        return (run.trace().count() + MAX_SAMPLES - 2) / (MAX_SAMPLES - 1);
    }
}

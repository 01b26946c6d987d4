package io.github.heatswell.scenarios.teaching;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.result.Trace;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The runs of a slider, and what the picture around them needs.
 *
 * @param steps the runs, in the order of the slider
 * @param own which of them is the house of the lesson itself
 * @param sample the distance of the samples (s)
 * @param end the time the runs cover (s)
 * @param reliefSet the lowest set pressure of a relief valve (kPa, gauge), as closely as words say it; below 0 without one
 */
record SliderGrid(List<Step> steps, int own, double sample, double end, double reliefSet) {

    private static final double KILO = 1e3;

    /**
     * One run of the house under a slider: a course rounded to what a picture can show, and numbers that read as those of the text.
     *
     * @param si the value of the slider in SI units, such as {@code 8 L}
     * @param us the same in US units
     * @param course the gauge pressure, sample by sample (kPa)
     * @param peak the highest gauge pressure (kPa)
     * @param peakTime when it was reached (s)
     * @param relieved what the relief valves released (mL)
     * @param opening when the first relief valve opened (s), if one did
     * @param hazard what ended the run, or nothing
     */
    record Step(
            String si,
            String us,
            List<Long> course,
            double peak,
            long peakTime,
            double relieved,
            OptionalDouble opening,
            String hazard) {

        private static final double MILLILITRES = 1e6;

        /** A picture has no room for more samples than this. */
        private static final int MAX_SAMPLES = 241;

        static Step of(String si, String us, RunResult run) {
            RunSummary.Extreme peak = run.extremes().highestPressure();
            return new Step(
                    si,
                    us,
                    course(run),
                    fine(run.gauge(peak.value()) / KILO),
                    Math.round(peak.time()),
                    relieved(run.totals().relieved() * MILLILITRES),
                    run.first(Event.Kind.RELIEF_OPENED).stream()
                            .mapToDouble(Event::time)
                            .findFirst(),
                    run.hazard().map(event -> event.kind().description()).orElse(""));
        }

        /** Less than half a millilitre is nothing. */
        private static double relieved(double millilitres) {
            return millilitres < 0.5 ? 0 : fine(millilitres);
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

    /** A value to six decimals, far finer than any words about it, so that it is not rounded twice. */
    private static double fine(double value) {
        return Math.round(value * 1e6) / 1e6;
    }

    static SliderGrid of(List<Step> steps, RunResult house) {
        List<Long> course = Step.course(house);
        int own = 0;
        for (int i = 0; i < steps.size(); i++) {
            own = steps.get(i).course().equals(course) ? i : own;
        }
        double atmosphere = house.system().site().atmosphere();
        double set = house.system().reliefValves().stream()
                .mapToDouble(valve -> fine(valve.setPressure().gauge(atmosphere) / KILO))
                .min()
                .orElse(-1);
        double sample = house.trace().grid().step() * Step.stride(house);
        return new SliderGrid(
                List.copyOf(steps), own, sample, house.trace().grid().end(), set);
    }

    /** The runs as the script of the page reads them, and the words before a value of the slider in a sentence. */
    String json(String with, UnitSystem first) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("first", first == UnitSystem.SI ? "si" : "us");
            json.writeStringField("with", with);
            json.writeNumberField("own", own);
            json.writeNumberField("sample", Math.round(sample));
            json.writeNumberField("end", Math.round(end));
            json.writeNumberField("set", reliefSet);
            json.writeArrayFieldStart("runs");
            for (Step step : steps) {
                write(json, step);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, Step step) throws IOException {
        json.writeStartObject();
        json.writeStringField("si", step.si());
        json.writeStringField("us", step.us());
        json.writeNumberField("peak", step.peak());
        json.writeNumberField("at", step.peakTime());
        json.writeNumberField("out", step.relieved());
        json.writeNumberField("opens", Math.round(step.opening().orElse(-1)));
        json.writeStringField("hazard", step.hazard());
        json.writeArrayFieldStart("p");
        for (long pressure : step.course()) {
            json.writeNumber(pressure);
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}

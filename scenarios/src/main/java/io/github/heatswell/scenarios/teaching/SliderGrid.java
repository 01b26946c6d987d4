package io.github.heatswell.scenarios.teaching;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * The runs of a slider, and what the picture around them needs.
 *
 * @param steps the runs, in the order of the slider
 * @param own which of them is the house of the lesson itself
 * @param sample the distance of the samples (s)
 * @param end the time the runs cover (s)
 * @param reliefSet the lowest set pressure of a relief valve (kPa, gauge); below 0 without one
 */
record SliderGrid(List<SliderStep> steps, int own, double sample, double end, long reliefSet) {

    private static final double KILO = 1e3;

    static SliderGrid of(List<SliderStep> steps, RunResult house) {
        List<Long> course = SliderStep.course(house);
        int own = 0;
        for (int i = 0; i < steps.size(); i++) {
            own = steps.get(i).course().equals(course) ? i : own;
        }
        double atmosphere = house.system().site().atmosphere();
        long set = house.system().reliefValves().stream()
                .mapToLong(valve -> Math.round(valve.setPressure().gauge(atmosphere) / KILO))
                .min()
                .orElse(-1);
        double sample = house.trace().grid().step() * SliderStep.stride(house);
        return new SliderGrid(
                List.copyOf(steps), own, sample, house.trace().grid().end(), set);
    }

    /** The runs as the script of the page reads them. */
    String json(UnitSystem first) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeStringField("first", first == UnitSystem.SI ? "si" : "us");
            json.writeNumberField("own", own);
            json.writeNumberField("sample", Math.round(sample));
            json.writeNumberField("end", Math.round(end));
            json.writeNumberField("set", reliefSet);
            json.writeArrayFieldStart("runs");
            for (SliderStep step : steps) {
                write(json, step);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void write(JsonGenerator json, SliderStep step) throws IOException {
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

package io.github.heatswell.scenarios.lessonsite;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import io.github.heatswell.finding.Measure;
import io.github.heatswell.finding.Measure.Kind;
import io.github.heatswell.scenarios.lessonsite.SliderRuns.SliderRun;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;

/** A curve that follows a slider. Without script it is a still picture of one run. */
final class SliderFigure {

    private static final int WIDTH = 700;
    private static final int HEIGHT = 360;
    private static final double LEFT = 96;
    private static final double RIGHT = 680;
    private static final double TOP = 30;
    private static final double BOTTOM = 310;
    private static final double KILO = 1e3;
    private static final double BAR = 1e5;
    private static final double MINUTE = 60;
    private static final int MOST_LINES = 8;

    private final SliderRuns runs;
    private final double highest;
    private final double end;

    SliderFigure(SliderRuns runs) {
        this.runs = runs;
        double most = 0;
        double longest = 0;
        for (SliderRun run : runs.runs()) {
            for (double gauge : run.gauge()) {
                most = Math.max(most, gauge);
            }
            most = Math.max(most, Double.isNaN(run.relief()) ? 0 : run.relief());
            longest = Math.max(longest, run.end());
        }
        highest = BAR * Math.ceil(most / BAR + 0.3);
        end = longest;
    }

    void write(Html html) {
        SliderRun still = runs.runs().get(runs.first());
        html.open("figure");
        html.leaf("h3", "Move it: " + runs.label());
        html.open(
                "svg",
                "viewBox",
                "0 0 " + WIDTH + " " + HEIGHT,
                "role",
                "img",
                "aria-label",
                "Gauge pressure over time. " + still.text(UnitSystem.SI));
        grid(html);
        relief(html, still);
        line(html, "trace-still", still, null);
        line(html, "trace-now", still, "trace");
        html.closeLine();
        html.leaf("figcaption", "Full line: the run chosen. Dotted line: the run this began with.");
        control(html);
        html.closeLine();
    }

    private void control(Html html) {
        html.open("div", "class", "moving", "hidden", "hidden");
        html.leaf("label", runs.label(), "for", "slider");
        html.empty(
                "input",
                "type",
                "range",
                "id",
                "slider",
                "min",
                "0",
                "max",
                Integer.toString(runs.runs().size() - 1),
                "step",
                "1",
                "value",
                Integer.toString(runs.first()));
        html.open("output", "id", "said", "for", "slider", "aria-live", "polite")
                .text(runs.runs().get(runs.first()).text(UnitSystem.SI))
                .closeLine();
        html.closeLine();
        html.open("div", "id", "runs", "hidden", "hidden", "data-runs", json()).closeLine();
    }

    private void grid(Html html) {
        int step = (int) Math.ceil(highest / BAR / MOST_LINES);
        for (int bar = 0; bar * BAR <= highest; bar += step) {
            double y = y(bar * BAR);
            rule(html, "trace-grid", LEFT, y, RIGHT, y);
            Measure measure = new Measure(Kind.GAUGE_PRESSURE, bar * BAR);
            words(html, "trace-text si", LEFT - 8, y + 5, "end", measure.text(UnitSystem.SI));
            words(html, "trace-text us only", LEFT - 8, y + 5, "end", measure.text(UnitSystem.US));
        }
        double quarter = end / 4;
        for (int i = 0; i <= 4; i++) {
            double x = LEFT + (RIGHT - LEFT) * i / 4;
            rule(html, "trace-grid", x, TOP, x, BOTTOM);
            words(html, "trace-text", x, BOTTOM + 22, i == 4 ? "end" : "middle", time(i * quarter));
        }
        words(html, "trace-name", LEFT, TOP - 12, "start", "gauge pressure");
        words(html, "trace-name", RIGHT, HEIGHT - 4, "end", "time since the start");
    }

    private String time(double seconds) {
        return end >= 2 * MINUTE * MINUTE
                ? String.format(Locale.ROOT, "%.1f h", seconds / MINUTE / MINUTE)
                        .replace(".0 ", " ")
                : Math.round(seconds / MINUTE) + " min";
    }

    private void relief(Html html, SliderRun run) {
        if (!Double.isNaN(run.relief())) {
            double y = y(run.relief());
            rule(html, "trace-set", LEFT, y, RIGHT, y);
            words(html, "trace-text", RIGHT - 4, y - 6, "end", "relief valve set");
        }
    }

    private void line(Html html, String look, SliderRun run, String id) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < run.gauge().length; i++) {
            double x = LEFT + (RIGHT - LEFT) * Math.min(i * run.step(), run.end()) / end;
            points.append(i == 0 ? "" : " ")
                    .append(String.format(Locale.ROOT, "%.1f,%.1f", x, y(KILO * Math.round(run.gauge()[i] / KILO))));
        }
        if (id == null) {
            html.empty("polyline", "class", look, "points", points.toString());
        } else {
            html.empty("polyline", "class", look, "points", points.toString(), "id", id);
        }
    }

    private double y(double gauge) {
        return BOTTOM - (BOTTOM - TOP) * gauge / highest;
    }

    private static void rule(Html html, String look, double x1, double y1, double x2, double y2) {
        html.empty("line", "class", look, "x1", at(x1), "y1", at(y1), "x2", at(x2), "y2", at(y2));
    }

    private static void words(Html html, String look, double x, double y, String anchor, String text) {
        html.leaf("text", text, "class", look, "x", at(x), "y", at(y), "text-anchor", anchor);
    }

    private static String at(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    /** What the script needs: where the plot is, and every run in whole kilopascals. */
    private String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            json.writeNumberField("left", LEFT);
            json.writeNumberField("width", RIGHT - LEFT);
            json.writeNumberField("bottom", BOTTOM);
            json.writeNumberField("height", BOTTOM - TOP);
            json.writeNumberField("low", 0);
            json.writeNumberField("high", Math.round(highest / KILO));
            json.writeNumberField("end", end);
            json.writeArrayFieldStart("list");
            for (SliderRun run : runs.runs()) {
                json.writeStartObject();
                json.writeStringField("si", run.text(UnitSystem.SI));
                json.writeStringField("us", run.text(UnitSystem.US));
                json.writeNumberField("step", run.step());
                json.writeNumberField("last", run.end());
                json.writeArrayFieldStart("kpa");
                for (double gauge : run.gauge()) {
                    json.writeNumber(Math.round(gauge / KILO));
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}

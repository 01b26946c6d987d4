package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.scenarios.markup.Svg;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.Locale;

/** An empty graph to sketch curves into, with axes on which those of the lesson's runs have room. */
final class SketchGrid {

    private static final int WIDTH = 720;
    private static final int HEIGHT = 250;
    private static final int LEFT = 60;
    private static final int RIGHT = 15;
    private static final int TOP = 26;
    private static final int BOTTOM = 38;

    /** As many lines as this, or somewhat fewer, are easy to read. */
    private static final int MOST_LINES = 8;

    private static final double HOUR = 3600;
    private static final double MINUTE = 60;

    private final StringBuilder svg = new StringBuilder();
    private final LessonRun run;
    private final Channel channel;
    private final UnitSystem units;

    private SketchGrid(LessonRun run, UnitSystem units) {
        this.run = run;
        this.channel = run.lesson().cases().get(0).channel();
        this.units = units;
    }

    static Svg of(LessonRun run, UnitSystem units) {
        return new SketchGrid(run, units).draw();
    }

    private Svg draw() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double end = 0;
        for (RunResult result : run.results()) {
            end = Math.max(end, result.end());
            for (int i = 0; i < result.trace().count(); i++) {
                double value = value(result, i);
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT + "\">");
        upright(low, high);
        across(end);
        String name = name();
        text(4, 14, "start", name);
        svg.append("</svg>");
        return Svg.of(svg.toString(), "Empty graph: " + name + " over time.", "sketch-");
    }

    private void upright(double low, double high) {
        double step = step((high - low) * 1.2 + 1e-9);
        double first = Math.floor(low / step) * step;
        double last = Math.max(first + 2 * step, Math.ceil(high / step) * step);
        long lines = Math.round((last - first) / step);
        for (int i = 0; i <= lines; i++) {
            double y = HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * (double) i / lines;
            line(LEFT, y, WIDTH - RIGHT, y);
            text(LEFT - 8, y + 4, "end", number(first + i * step));
        }
    }

    private void across(double end) {
        double unit = end > 2 * HOUR ? HOUR : MINUTE;
        double step = step(end / unit);
        for (int i = 0; i * step <= end / unit * (1 + 1e-9); i++) {
            double x = LEFT + (WIDTH - LEFT - RIGHT) * i * step * unit / end;
            line(x, TOP, x, HEIGHT - BOTTOM);
            text(x, HEIGHT - BOTTOM + 18, "middle", number(i * step));
        }
        text(
                (LEFT + WIDTH - RIGHT) / 2.0,
                HEIGHT - 4,
                "middle",
                "time since the start (" + (unit == HOUR ? "h" : "min") + ")");
    }

    private double value(RunResult result, int index) {
        double si = result.trace().value(channel, index);
        return unit().fromSi(
                        channel == Channel.PRESSURE_ABSOLUTE || channel == Channel.STREET_ABSOLUTE
                                ? result.gauge(si)
                                : si);
    }

    private Unit unit() {
        return switch (channel) {
            case WATER_MEAN, WATER_TOP, WATER_BOTTOM -> units.temperature();
            case RELIEVED_TOTAL, VESSEL_WATER, INFLOW_TOTAL, DRAWN_TOTAL, RETURNED_TOTAL -> units.volume();
            case RELIEF_FLOW, DRAW_FLOW -> units.flow();
            case HEATER_POWER -> units.power();
            default -> units.pressure();
        };
    }

    private String name() {
        String symbol = unit().symbol().replace("deg", "\u00b0");
        boolean pressure = unit() == units.pressure();
        return (pressure ? "gauge pressure" : channel.description()) + " (" + symbol + ")";
    }

    /** A distance of 1, 2 or 5 times a power of ten. */
    private static double step(double span) {
        double power = Math.pow(10, Math.floor(Math.log10(span / MOST_LINES)));
        double part = span / MOST_LINES / power;
        return power * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        String trimmed = text.replaceAll("\\.?0+$", "");
        return trimmed.equals("-0") ? "0" : trimmed;
    }

    private void line(double x1, double y1, double x2, double y2) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#9aa7ad\" stroke-width=\"1\"/>",
                x1,
                y1,
                x2,
                y2));
    }

    private void text(double x, double y, String anchor, String words) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" font-size=\"13\" font-family=\"sans-serif\">%s</text>",
                x,
                y,
                anchor,
                words));
    }
}

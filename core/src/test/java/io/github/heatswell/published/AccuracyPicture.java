package io.github.heatswell.published;

import java.util.List;
import java.util.Locale;

/** A picture of the page: predicted bands and published figures, each divided by the published figure. */
final class AccuracyPicture {

    private static final int WIDTH = 1116;
    private static final int LEFT = 500;
    private static final int RIGHT = 950;
    private static final int TOP = 96;
    private static final int ROW = 23;
    private static final double FROM = 0.125;
    private static final double TO = 8;
    private static final double[] TICKS = {0.125, 0.25, 0.5, 1, 2, 4, 8};
    private static final String[] TICK_NAMES = {"1/8", "1/4", "1/2", "1", "2", "4", "8"};

    private final List<PublishedComparison> rows;
    private final StringBuilder out = new StringBuilder();

    AccuracyPicture(List<PublishedComparison> comparisons) {
        rows = comparisons.stream()
                .filter(c -> c.simulated() && c.bands().size() == 1)
                .toList();
    }

    String svg() {
        out.setLength(0);
        int bottom = TOP + ROW * rows.size();
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" role=\"img\""
                        + " font-family=\"Helvetica, Arial, sans-serif\" font-size=\"13\" fill=\"#1f2d36\">",
                WIDTH, bottom + 62, WIDTH, bottom + 62);
        line("<title>Predicted bands and published figures</title>");
        line("<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>");
        line(
                "<text x=\"20\" y=\"32\" font-size=\"18\" font-weight=\"bold\">What others published, and what the simulation"
                        + " predicts</text>");
        key();
        line("<text x=\"%d\" y=\"%d\" fill=\"#52626c\">published figure</text>", RIGHT + 14, TOP - 10);
        for (int i = 0; i < TICKS.length; i++) {
            boolean one = TICKS[i] == 1;
            line(
                    "<line x1=\"%s\" y1=\"%d\" x2=\"%s\" y2=\"%d\" stroke=\"%s\"/>",
                    x(TICKS[i]), TOP - 6, x(TICKS[i]), bottom, one ? "#52626c" : "#dfe4e7");
            line("<text x=\"%s\" y=\"%d\" text-anchor=\"middle\">%s</text>", x(TICKS[i]), bottom + 18, TICK_NAMES[i]);
        }
        line(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"middle\">predicted, divided by the published figure</text>",
                (LEFT + RIGHT) / 2, bottom + 42);
        for (int i = 0; i < rows.size(); i++) {
            row(rows.get(i), TOP + ROW * i + ROW / 2);
        }
        line("</svg>");
        return out.toString();
    }

    private void key() {
        bar(22, 62, 58);
        line("<text x=\"72\" y=\"63\">predicted, over all that the source leaves open</text>");
        mark(402, 58);
        line("<text x=\"414\" y=\"63\">published, with its tolerance</text>");
        whisker(392, 412, 58);
        range(622, 658, 58);
        line("<text x=\"666\" y=\"63\">published as a range</text>");
        bound(838, 58);
        line("<text x=\"850\" y=\"63\">published as an upper bound</text>");
    }

    private void row(PublishedComparison c, int y) {
        PublishedFigure.Value number = c.figure().numbers().get(0);
        Band band = c.bands().get(0);
        double unit = number.low() > 0 ? Math.sqrt(number.low() * number.high()) : number.high();
        line("<text x=\"%d\" y=\"%d\" text-anchor=\"end\">%s</text>", LEFT - 14, y + 4, escaped(name(c)));
        double low = onScale(band.low() / unit);
        double high = onScale(band.high() / unit);
        double least = high - low < 0.02 * low ? 2 : 0;
        bar(place(low) - least, place(high) + least, y);
        if (band.high() / unit > TO) {
            arrow(RIGHT, y, 1);
        }
        if (band.low() / unit < FROM) {
            arrow(LEFT, y, -1);
        }
        if (number.atMost()) {
            bound(place(1), y);
        } else if (number.low() == number.high()) {
            double tolerance = number.tolerance() / unit;
            whisker(place(onScale(1 - tolerance)), place(1 + tolerance), y);
            mark(place(1), y);
        } else {
            range(place(onScale(number.low() / unit)), place(number.high() / unit), y);
        }
        line(
                "<text x=\"%d\" y=\"%d\"%s>%s</text>",
                RIGHT + 14, y + 4, c.verdict() == BandVerdict.IN ? "" : " font-weight=\"bold\"", c.verdict().words);
    }

    private static String name(PublishedComparison c) {
        String suffix = c.prediction().method() == Prediction.Method.SIZING ? " (sizing)" : "";
        return c.figure().id() + " " + c.figure().quantity().replaceAll(", the same (house|heater)", "") + suffix;
    }

    private void bar(double from, double to, int y) {
        line(
                "<rect x=\"%s\" y=\"%d\" width=\"%s\" height=\"12\" fill=\"#8fb4c5\" stroke=\"#17506b\"/>",
                number(from), y - 6, number(to - from));
    }

    private void range(double from, double to, int y) {
        stroke(from, to, y, 3);
    }

    private void whisker(double from, double to, int y) {
        stroke(from, to, y, 1);
    }

    private void stroke(double from, double to, int y, int width) {
        line(
                "<line x1=\"%s\" y1=\"%d\" x2=\"%s\" y2=\"%d\" stroke=\"#8c1c13\" stroke-width=\"%d\"/>",
                number(from), y, number(to), y, width);
    }

    private void mark(double x, int y) {
        line("<path d=\"M%s %d l5 5 -5 5 -5 -5z\" fill=\"#8c1c13\"/>", number(x), y - 5);
    }

    /** A bar with a roof to its left: this and less. */
    private void bound(double x, int y) {
        line(
                "<path d=\"M%s %d v14 M%s %d h-9 m4 -4 l-4 4 4 4\" stroke=\"#8c1c13\" stroke-width=\"2\" fill=\"none\"/>",
                number(x), y - 7, number(x), y);
    }

    private void arrow(double x, int y, int direction) {
        line("<path d=\"M%s %d l%d 6 %d 6z\" fill=\"#17506b\"/>", number(x), y - 6, 7 * direction, -7 * direction);
    }

    private static double onScale(double ratio) {
        return Math.max(FROM, Math.min(TO, ratio));
    }

    private static String x(double ratio) {
        return number(place(ratio));
    }

    private static double place(double ratio) {
        return LEFT + (RIGHT - LEFT) * Math.log(ratio / FROM) / Math.log(TO / FROM);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}

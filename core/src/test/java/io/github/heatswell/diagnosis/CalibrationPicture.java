package io.github.heatswell.diagnosis;

import java.util.List;
import java.util.Locale;

/** A picture of the page: how sure the diagnosis was, and how often it was right. */
public final class CalibrationPicture {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 520;
    private static final int LEFT = 90;
    private static final int TOP = 70;
    private static final int SIZE = 360;
    /** Standard deviations on either side that hold 90 % of a normal distribution. */
    private static final double NORMAL_90 = 1.645;

    private final List<Calibration.Point> points;
    private final int houses;
    private final StringBuilder out = new StringBuilder();

    /** Of a look at many houses. */
    public CalibrationPicture(Calibration found) {
        points = found.points();
        houses = points.stream().mapToInt(Calibration.Point::houses).sum();
    }

    /** {@return the picture} */
    public String svg() {
        out.setLength(0);
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\" viewBox=\"0 0 %d %d\" role=\"img\""
                        + " font-family=\"Helvetica, Arial, sans-serif\" font-size=\"14\" fill=\"#1f2d36\">",
                WIDTH, HEIGHT, WIDTH, HEIGHT);
        line("<title>How sure the diagnosis was, and how often it was right</title>");
        line("<rect width=\"100%%\" height=\"100%%\" fill=\"#ffffff\"/>");
        line(
                "<text x=\"20\" y=\"32\" font-size=\"18\" font-weight=\"bold\">How sure it was, and how often it was right</text>");
        line(
                "<text x=\"20\" y=\"54\" fill=\"#52626c\">%d houses whose readings are explained; bars hold 90 %% of what chance does</text>",
                houses);
        for (int tenth = 0; tenth <= 10; tenth += 2) {
            double at = tenth / 10.0;
            line("<line x1=\"%d\" y1=\"%s\" x2=\"%d\" y2=\"%s\" stroke=\"#dfe4e7\"/>", LEFT, y(at), LEFT + SIZE, y(at));
            line("<line x1=\"%s\" y1=\"%d\" x2=\"%s\" y2=\"%d\" stroke=\"#dfe4e7\"/>", x(at), TOP, x(at), TOP + SIZE);
            line("<text x=\"%d\" y=\"%s\" text-anchor=\"end\" dy=\"5\">%d %%</text>", LEFT - 8, y(at), 10 * tenth);
            line("<text x=\"%s\" y=\"%d\" text-anchor=\"middle\">%d %%</text>", x(at), TOP + SIZE + 22, 10 * tenth);
        }
        line(
                "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"#52626c\" stroke-dasharray=\"6 4\"/>",
                x(0), y(0), x(1), y(1));
        line("<text x=\"%s\" y=\"%s\" fill=\"#52626c\">as often as it says</text>", x(1.02), y(0.985));
        points.forEach(this::point);
        line(
                "<text x=\"%s\" y=\"%d\" text-anchor=\"middle\">how likely the first cause was called</text>",
                x(0.5), TOP + SIZE + 50);
        line(
                "<text transform=\"translate(26 %s) rotate(-90)\" text-anchor=\"middle\">how often it was the true one</text>",
                y(0.5));
        line("</svg>");
        return out.toString();
    }

    /** A share with the interval of Wilson (Journal of the American Statistical Association 22, 1927; from memory), and how many houses. */
    private void point(Calibration.Point point) {
        double count = point.houses();
        double square = NORMAL_90 * NORMAL_90;
        double middle = (point.share() + square / (2 * count)) / (1 + square / count);
        double reach = NORMAL_90
                / (1 + square / count)
                * Math.sqrt(point.share() * (1 - point.share()) / count + square / (4 * count * count));
        line(
                "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" stroke=\"#17506b\" stroke-width=\"2\"/>",
                x(point.called()), y(middle - reach), x(point.called()), y(middle + reach));
        line("<circle cx=\"%s\" cy=\"%s\" r=\"5\" fill=\"#17506b\"/>", x(point.called()), y(point.share()));
        line(
                "<text x=\"%s\" y=\"%s\" dx=\"9\" dy=\"5\" font-size=\"12\">%d</text>",
                x(point.called()), y(point.share()), point.houses());
    }

    private static String x(double share) {
        return String.format(Locale.ROOT, "%.1f", LEFT + SIZE * share);
    }

    private static String y(double share) {
        return String.format(Locale.ROOT, "%.1f", TOP + SIZE * (1 - share));
    }

    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}

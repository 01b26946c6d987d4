package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import java.io.IOException;

/** A chart as the printed report shows it: narrow, so that its words are large enough on a sheet of paper. */
final class PagePicture {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 620;

    private PagePicture() {}

    static Illustration ofRuns(Chart chart, String answer) throws IOException {
        return of(
                chart,
                "Gauge pressure above, and what went with it below. The table gives the numbers in both unit systems.",
                "Chart of the pressure over time. " + answer);
    }

    static Illustration ofDiagnosis(Chart chart, String answer) throws IOException {
        return of(
                chart,
                "The readings and the likeliest causes above, what each cause leaves unexplained below; gauge pressure.",
                "Chart of the readings over time. " + answer);
    }

    static Illustration ofSizes(Chart chart) throws IOException {
        return of(
                chart,
                "Peak of the worst heat-up over the volume of the vessel, gauge pressure.",
                "Chart of the peak pressure over the sizes on sale. " + chart.headline());
    }

    static Illustration ofYears(Chart chart) throws IOException {
        return of(
                chart,
                "Gauge pressure on the worst day of each month above, and what the relief valves give off below.",
                "Chart of the peak pressure over the years. " + chart.headline());
    }

    private static Illustration of(Chart chart, String caption, String inWords) throws IOException {
        StringBuilder svg = new StringBuilder();
        chart.withSize(WIDTH, HEIGHT).writeSvg(svg);
        return new Illustration(svg.toString(), caption, inWords);
    }
}

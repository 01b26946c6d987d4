package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;

/** A chart as the printed report shows it: narrow, so that its words are large enough on a sheet of paper. */
final class PagePicture {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 620;

    private PagePicture() {}

    static Block.Picture ofRuns(Chart chart, String answer) {
        return of(
                chart,
                "Gauge pressure above, and what went with it below. The table gives the numbers in both unit systems.",
                "Chart of the pressure over time. " + answer);
    }

    static Block.Picture ofDiagnosis(Chart chart, String answer) {
        return of(
                chart,
                "The readings and the likeliest causes above, what each cause leaves unexplained below; gauge pressure.",
                "Chart of the readings over time. " + answer);
    }

    static Block.Picture ofSizes(Chart chart) {
        return of(
                chart,
                "Peak of the worst heat-up over the volume of the vessel, gauge pressure.",
                "Chart of the peak pressure over the sizes on sale. " + chart.headline());
    }

    static Block.Picture ofYears(Chart chart) {
        return of(
                chart,
                "Gauge pressure on the worst day of each month above, and what the relief valves discharge below.",
                "Chart of the peak pressure over the years. " + chart.headline());
    }

    static Block.Picture ofMap(Chart chart) {
        return of(
                chart,
                "Peak of the worst heat-up over volume and precharge of the vessel, gauge pressure.",
                "Map of the peak pressure. " + chart.headline());
    }

    static Block.Picture ofSamples(Chart chart) {
        return of(
                chart,
                "Peaks of all samples, gauge pressure, and how strongly each input goes with them.",
                "Chart of the peaks of the samples. " + chart.headline());
    }

    private static Block.Picture of(Chart chart, String caption, String inWords) {
        return new Block.Picture(chart.withSize(WIDTH, HEIGHT)::writeSvg, caption, inWords);
    }
}

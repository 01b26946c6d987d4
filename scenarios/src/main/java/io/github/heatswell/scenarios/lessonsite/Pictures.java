package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.charts.Headline;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.RunChart;
import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pictures of a lesson. */
final class Pictures {

    private static final int WIDTH = 800;
    private static final int HEIGHT = 600;

    private final LessonRun run;
    private final Optional<SliderFigure> slider;

    Pictures(LessonRun run) {
        this.run = run;
        this.slider = run.lesson().slider().map(moved -> new SliderFigure(SliderRuns.of(run.lesson(), moved)));
    }

    Optional<SliderFigure> slider() {
        return slider;
    }

    /** One run alone, or several over one another. */
    String svg(UnitSystem units) {
        RunChart chart =
                run.results().size() == 1 ? RunChart.of(run.result(0), units) : RunChart.comparing(named(), units);
        StringBuilder svg = new StringBuilder();
        try {
            chart.withSize(WIDTH, HEIGHT).writeSvg(svg);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return svg.toString();
    }

    String headline(UnitSystem units) {
        return run.results().size() == 1
                ? Headline.of(run.result(0).summary(), units)
                : Headline.comparing(named(), units);
    }

    private List<NamedRun> named() {
        List<NamedRun> named = new ArrayList<>();
        for (int i = 0; i < run.results().size(); i++) {
            named.add(new NamedRun(run.lesson().cases().get(i).label(), run.result(i)));
        }
        return named;
    }
}

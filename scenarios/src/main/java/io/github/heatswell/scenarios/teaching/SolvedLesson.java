package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.narrative.NamedRun;
import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.report.Svg;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A lesson with everything computed that its pages show.
 *
 * @param run the runs of its cases
 * @param pictures the pictures of these runs in each system of units
 * @param grid the runs of its slider, if it has one
 */
record SolvedLesson(LessonRun run, Map<UnitSystem, List<Drawn>> pictures, Optional<SliderGrid> grid) {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 560;
    private static final Pattern PLACE = Pattern.compile("\\W+");

    Lesson lesson() {
        return run.lesson();
    }

    List<Drawn> pictures(UnitSystem units) {
        return pictures.get(units);
    }

    /**
     * A picture.
     *
     * @param label which cases it shows, or nothing if it shows them all
     * @param svg the picture
     */
    record Drawn(String label, Svg svg) {}

    static SolvedLesson of(LessonRun run, List<SliderStep> steps) {
        Map<UnitSystem, List<Drawn>> pictures = new EnumMap<>(UnitSystem.class);
        for (UnitSystem units : UnitSystem.values()) {
            pictures.put(units, draw(run, units));
        }
        Optional<SliderGrid> grid = run.lesson()
                .slider()
                .map(slider ->
                        SliderGrid.of(steps, run.house(slider.house().name()).run()));
        return new SolvedLesson(run, pictures, grid);
    }

    /** One picture for all cases that run equally long, so that no short run is squeezed by a long one. */
    private static List<Drawn> draw(LessonRun run, UnitSystem units) {
        List<LessonHouse> cases = run.lesson().houses();
        boolean apart = cases.stream().anyMatch(SolvedLesson::showsHeat);
        Map<Double, List<Integer>> together = new LinkedHashMap<>();
        for (int i = 0; i < cases.size(); i++) {
            double key = apart ? i : cases.get(i).scenario().duration().toSeconds();
            together.computeIfAbsent(key, any -> new ArrayList<>()).add(i);
        }
        return together.values().stream()
                .map(members -> drawn(run, members, units))
                .toList();
    }

    /** Only the picture of a single run has a panel for the temperature. */
    private static boolean showsHeat(LessonHouse one) {
        return one.channel() == Channel.WATER_MEAN
                || one.channel() == Channel.WATER_TOP
                || one.channel() == Channel.WATER_BOTTOM;
    }

    private static Drawn drawn(LessonRun run, List<Integer> members, UnitSystem units) {
        List<LessonHouse> cases = run.lesson().houses();
        List<NamedRun> runs = members.stream()
                .map(index ->
                        new NamedRun(cases.get(index).label(), run.results().get(index)))
                .toList();
        boolean all = members.size() == cases.size();
        String label = all ? "" : runs.stream().map(NamedRun::name).collect(Collectors.joining("; "));
        Chart chart = runs.size() == 1 ? Chart.of(runs.get(0).result(), units) : Chart.comparing(runs, units);
        StringBuilder svg = new StringBuilder();
        try {
            chart.withSize(WIDTH, HEIGHT).writeSvg(svg);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String prefix =
                (units == UnitSystem.SI ? "si-" : "us-") + PLACE.matcher(label).replaceAll("-") + "-";
        return new Drawn(label, Svg.of(svg.toString(), ChartWords.of(runs, units), prefix));
    }
}

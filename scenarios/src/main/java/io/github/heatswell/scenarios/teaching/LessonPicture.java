package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.report.Svg;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A picture of runs of a lesson, with its own words for those who cannot see it.
 *
 * @param label which houses it shows, or nothing if it shows them all
 * @param svg the picture
 * @param hasLimitOfTheUs whether it draws the limit of US model codes, as one in bar does only where the house may stand there
 */
record LessonPicture(String label, Svg svg, boolean hasLimitOfTheUs) {

    private static final int WIDTH = 760;
    private static final int HEIGHT = 560;

    /** With a third panel. */
    private static final int TALL = 640;

    private static final String LIMIT_OF_THE_US = "limit of US model codes";
    private static final Pattern PLACE = Pattern.compile("\\W+");

    /** Only the picture of a single run has a panel for the temperature. */
    static final Set<Channel> HEAT = Set.of(Channel.WATER_MEAN, Channel.WATER_TOP, Channel.WATER_BOTTOM);

    /** One picture for all houses that run equally long, so that no short run is squeezed by a long one. */
    static List<LessonPicture> all(LessonRun run, UnitSystem units) {
        List<Lesson.House> houses = run.lesson().houses();
        boolean apart = houses.stream().anyMatch(house -> HEAT.contains(house.channel()));
        Map<Double, List<NamedRun>> together = new LinkedHashMap<>();
        for (int i = 0; i < houses.size(); i++) {
            double key = apart ? i : houses.get(i).scenario().duration().toSeconds();
            together.computeIfAbsent(key, any -> new ArrayList<>())
                    .add(new NamedRun(
                            units.spelled(houses.get(i).label()), run.results().get(i)));
        }
        return together.values().stream()
                .map(runs ->
                        drawn(runs, runs.size() == houses.size(), isDischargeRead(run.lesson(), runs, units), units))
                .toList();
    }

    /** Whether a reader is asked for a volume that the picture of a single run must show. */
    private static boolean isDischargeRead(Lesson lesson, List<NamedRun> runs, UnitSystem units) {
        return runs.size() == 1
                && lesson.readings().stream()
                        .filter(reading -> units.spelled(reading.house().label())
                                .equals(runs.get(0).name()))
                        .anyMatch(reading -> reading.answer().kind().equals(Optional.of(Measure.Kind.VOLUME)));
    }

    private static LessonPicture drawn(List<NamedRun> runs, boolean all, boolean discharge, UnitSystem units) {
        String label = all ? "" : runs.stream().map(NamedRun::name).collect(Collectors.joining("; "));
        Chart chart = discharge
                ? Chart.discharging(runs.get(0).result(), units)
                : runs.size() == 1 ? Chart.of(runs.get(0).result(), units) : Chart.comparing(runs, units);
        StringBuilder svg = new StringBuilder();
        try {
            chart.withSize(WIDTH, discharge ? TALL : HEIGHT).writeSvg(svg);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String prefix = Page.mark(units) + "-" + PLACE.matcher(label).replaceAll("-") + "-";
        return new LessonPicture(
                label, Svg.of(svg.toString(), words(runs, units), prefix), svg.indexOf(LIMIT_OF_THE_US) >= 0);
    }

    private static String words(List<NamedRun> runs, UnitSystem units) {
        return runs.stream()
                .map(one -> one.name() + ": "
                        + Narrative.course(one.result().summary()).text(units))
                .collect(Collectors.joining(" ", "Chart of the gauge pressure over time. ", ""));
    }
}

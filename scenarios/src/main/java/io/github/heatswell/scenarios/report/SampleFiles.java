package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.SpreadTable.SampleWriter;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.study.HouseDay.Answer;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.SampledPeaks.Influence;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** The samples of a spread, as a table and as a picture. */
final class SampleFiles {

    private SampleFiles() {}

    /** Every sample as CSV. */
    static void table(SpreadAnswer answer, UnitSystem units, Appendable out) throws IOException {
        StudyResult result = answer.result();
        List<String> names =
                answer.house().inputs().stream().map(SampleFiles::column).toList();
        SampleWriter writer = new SampleWriter(names, units, out);
        for (int i = 0; i < result.completed(); i++) {
            writer.add(
                    result.input(i),
                    result.output(i, Answer.PEAK.ordinal()),
                    result.output(i, Answer.RELIEVED.ordinal()),
                    result.output(i, Answer.HAZARD.ordinal()) > 0.5);
        }
        writer.end();
    }

    private static String column(VariedHouse.Input input) {
        return input.unit().isEmpty() ? input.name() : input.name() + " (" + input.unit() + ")";
    }

    /** The peaks of the samples, with what they mean for this house. */
    static Chart chart(SpreadAnswer answer, UnitSystem units) {
        return Chart.of(sampled(answer), units).below(Alarms.ofHouse(answer.scenario()), units);
    }

    /** What the picture shows, of two samples or more. */
    static SampledPeaks sampled(SpreadAnswer answer) {
        HotWaterSystem house = answer.scenario().system();
        double air = house.site().atmosphere();
        SampledPeaks.Builder sampled = SampledPeaks.builder(peaks(answer))
                .workingPressure(house.tank().workingPressure().gauge(air))
                .dripping(answer.dripping().count())
                .endedEarly(answer.hazardous().count())
                .subject(answer.scenario().title() + ".");
        if (!reliefVaries(answer)) {
            Limit.reliefSetGauge(house).ifPresent(sampled::reliefSet);
        }
        for (int i = 0; i < answer.result().inputs().size(); i++) {
            sampled.influence(new Influence(answer.house().inputs().get(i).label(), answer.onPeak(i)));
        }
        return sampled.build();
    }

    /** A line at one set pressure would mislead where every sample has its own. */
    private static boolean reliefVaries(SpreadAnswer answer) {
        return answer.house().inputs().stream()
                .map(VariedHouse.Input::name)
                .anyMatch(name -> name.startsWith("relief"));
    }

    private static double[] peaks(SpreadAnswer answer) {
        return IntStream.range(0, answer.result().completed())
                .mapToObj(i -> answer.result().output(i, Answer.PEAK.ordinal()))
                .filter(peak -> !peak.isNaN())
                .flatMapToDouble(DoubleStream::of)
                .toArray();
    }
}

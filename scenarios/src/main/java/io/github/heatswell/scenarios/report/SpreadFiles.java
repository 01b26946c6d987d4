package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.SampleWriter;
import io.github.heatswell.charts.table.SpreadTable;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedInput;
import io.github.heatswell.study.HouseDay.Answer;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.SampledPeaks.Influence;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The files of a spread.
 */
final class SpreadFiles {

    private static final int MIN_TO_DRAW = 2;

    private final SpreadAnswer answer;
    private final StudyResult result;
    private final UnitSystem units;

    private SpreadFiles(SpreadAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.units = units;
    }

    /**
     * The files.
     *
     * @param answer what was found
     * @param units the units of tables and picture; the JSON is in SI units always
     * @return spread.csv, samples.csv, spread.json and, with two samples or more, spread.png and spread.svg
     */
    static List<ResultFile> of(SpreadAnswer answer, UnitSystem units) {
        return new SpreadFiles(answer, units).all();
    }

    private List<ResultFile> all() {
        List<ResultFile> files = new ArrayList<>(List.of(
                ResultFile.ofText("spread.csv", out -> SpreadTable.write(answer.peak(), answer.relieved(), units, out)),
                ResultFile.ofText("samples.csv", this::samples),
                ResultFile.of("spread.json", out -> SpreadJson.write(answer, out))));
        if (answer.peak().answered() >= MIN_TO_DRAW) {
            Chart chart = Chart.of(sampled(), units);
            files.add(ResultFile.of("spread.png", chart::writePng));
            files.add(ResultFile.ofText("spread.svg", chart::writeSvg));
        }
        return files;
    }

    private void samples(Appendable out) throws IOException {
        List<String> names =
                answer.house().inputs().stream().map(SpreadFiles::column).toList();
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

    private static String column(VariedInput input) {
        return input.unit().isEmpty() ? input.name() : input.name() + " (" + input.unit() + ")";
    }

    private SampledPeaks sampled() {
        HotWaterSystem house = answer.scenario().system();
        double air = house.site().atmosphere();
        SampledPeaks.Builder sampled = SampledPeaks.builder(peaks())
                .workingPressure(house.tank().workingPressure().gauge(air))
                .dripping(answer.dripping().count())
                .endedEarly(answer.hazardous().count())
                .subject(answer.scenario().title() + ".");
        if (!reliefVaries()) {
            house.reliefValves().stream()
                    .filter(ReliefValve::relieves)
                    .map(valve -> house.atDrainCock(valve.setPressure(), valve.height())
                            .gauge(air))
                    .min(Comparator.naturalOrder())
                    .ifPresent(sampled::reliefSet);
        }
        for (int i = 0; i < result.inputs().size(); i++) {
            sampled.influence(new Influence(result.inputs().get(i).name(), answer.onPeak(i)));
        }
        return sampled.build();
    }

    /** A line at one set pressure would mislead where every sample has its own. */
    private boolean reliefVaries() {
        return answer.house().inputs().stream().map(VariedInput::name).anyMatch(name -> name.startsWith("relief"));
    }

    private double[] peaks() {
        return IntStream.range(0, result.completed())
                .mapToObj(i -> result.output(i, Answer.PEAK.ordinal()))
                .filter(peak -> !peak.isNaN())
                .flatMapToDouble(DoubleStream::of)
                .toArray();
    }
}

package io.github.heatswell.scenarios.page;

import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Channel;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.Study;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** The same run in many houses that differ from the one described as much as its numbers are uncertain. */
final class SampledBand {

    private static final int SAMPLES = 200;
    private static final int MOMENTS = 60;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final long SHORTEST = 1000;

    private static final int PEAK = MOMENTS + 1;
    private static final int RELIEVED = PEAK + 1;
    private static final int HAZARD = RELIEVED + 1;
    private static final int ANSWERS = HAZARD + 1;

    private final Scenario scenario;
    private final Duration step;

    private final VariedHouse varied;
    /** How far each of the houses is off. */
    private final List<double[]> houses = new ArrayList<>();

    SampledBand(Scenario scenario) {
        this.scenario = scenario;
        varied = VariedHouse.of(scenario);
        study(deviations -> {
            houses.add(deviations);
            return new double[ANSWERS];
        });
        step = Duration.ofMillis(Math.max(SHORTEST, scenario.duration().toMillis() / MOMENTS));
    }

    /**
     * The answers of one of so many parts of the samples, one sample after another; of a sample that fails they are not numbers. Parts
     * may be computed beside each other.
     */
    double[] part(int part, int parts) {
        int from = part * SAMPLES / parts;
        int to = (part + 1) * SAMPLES / parts;
        double[] answers = new double[(to - from) * ANSWERS];
        for (int sample = from; sample < to; sample++) {
            double[] deviations = houses.get(sample);
            try {
                double[] found = answers(Study.orFailed(() -> varied.house().apply(deviations)));
                System.arraycopy(found, 0, answers, (sample - from) * ANSWERS, ANSWERS);
            } catch (Study.SampleFailedException | SimulationException failure) {
                Arrays.fill(answers, (sample - from) * ANSWERS, (sample - from + 1) * ANSWERS, Double.NaN);
            }
        }
        return answers;
    }

    private StudyResult study(Study.Model model) {
        return Study.builder()
                .inputs(varied.inputs().stream().map(VariedHouse.Input::input).toList())
                .outputs(IntStream.range(0, ANSWERS).mapToObj(Integer::toString).toList())
                .model(model)
                .samples(SAMPLES)
                .threads(1)
                .build()
                .run();
    }

    /**
     * Pressures (Pa, gauge) below which 5 % and 95 % of the houses lie, every {@code step} seconds, and what is said of all.
     *
     * @param answers those of all parts, in their order
     */
    Values values(double[] answers) {
        Iterator<double[]> samples = IntStream.range(0, SAMPLES)
                .mapToObj(sample -> Arrays.copyOfRange(answers, sample * ANSWERS, (sample + 1) * ANSWERS))
                .iterator();
        StudyResult result = study(deviations -> known(samples.next()));
        Narrative narrative = Narrative.of(sampled(result));
        QuantityFormat format = QuantityFormat.unicode(scenario.units());
        return new Values()
                .with("step", step.toMillis() / 1e3)
                .with("low", quantiles(result, LOW))
                .with("high", quantiles(result, HIGH))
                .with("headline", narrative.headline().text(format) + ".")
                .texts(
                        "varied",
                        varied.inputs().stream()
                                .map(input -> input.label() + ": " + input.words())
                                .toList())
                .with("usual", varied.usual());
    }

    /** A house that could be simulated has a peak. */
    private static double[] known(double[] answers) {
        if (Double.isNaN(answers[PEAK])) {
            throw new Study.SampleFailedException("this sample could not be simulated");
        }
        return answers;
    }

    private double[] answers(HotWaterSystem house) {
        double[] answers = new double[ANSWERS];
        Arrays.fill(answers, Double.NaN);
        double air = house.site().atmosphere();
        int[] moment = {0};
        RunSummary run = Simulation.of(house, scenario.duration()).sampledEvery(step).stream(
                Set.of(Channel.PRESSURE_ABSOLUTE), (time, values, regime) -> {
                    if (moment[0] < PEAK) {
                        answers[moment[0]] = values[Channel.PRESSURE_ABSOLUTE.ordinal()] - air;
                        moment[0]++;
                    }
                });
        answers[PEAK] = run.peak().value();
        answers[RELIEVED] = run.totals().relieved();
        answers[HAZARD] = run.hazard().isPresent() ? 1 : 0;
        return answers;
    }

    private static double[] quantiles(StudyResult result, double share) {
        return IntStream.range(0, PEAK)
                .mapToDouble(moment -> result.spread(moment).quantile(share))
                .toArray();
    }

    private SampledPeaks sampled(StudyResult result) {
        double[] peaks = IntStream.range(0, result.completed())
                .mapToDouble(sample -> result.output(sample, PEAK))
                .filter(peak -> !Double.isNaN(peak))
                .toArray();
        SampledPeaks.Builder sampled = SampledPeaks.builder(peaks)
                .dripping(result.spread(RELIEVED).above(0).count())
                .endedEarly(result.spread(HAZARD).above(1.0 / 2).count());
        Limit.reliefSetGauge(scenario.system()).ifPresent(sampled::reliefSet);
        return sampled.reliefVaries(
                        varied.inputs().stream().anyMatch(input -> input.name().startsWith("relief")))
                .build();
    }
}

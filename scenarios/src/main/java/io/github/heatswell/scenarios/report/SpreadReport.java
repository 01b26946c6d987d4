package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.SpreadTable;
import io.github.heatswell.charts.table.SpreadTable.SampleWriter;
import io.github.heatswell.narrative.Limit;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.SpreadStory;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.study.HouseDay;
import io.github.heatswell.study.SampledPeaks;
import io.github.heatswell.study.SampledPeaks.Influence;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Decimals;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Report on how far an answer may be off.
 */
public final class SpreadReport {

    private static final int MIN_TO_DRAW = 2;
    /** Two inputs that go together more than this in the samples make their correlations doubtful; our own judgement. */
    private static final double MAX_STRAY = 0.25;

    private static final double PERCENT = 100;
    private static final double[] SHARES = {0.05, 0.25, 0.5, 0.75, 0.95};

    private final SpreadAnswer answer;
    private final StudyResult result;
    private final Optional<Chart> chart;

    private SpreadReport(SpreadAnswer answer, UnitSystem units) {
        this.answer = answer;
        this.result = answer.result();
        this.chart = answer.peak().answered() < MIN_TO_DRAW ? Optional.empty() : Optional.of(drawn(answer, units));
    }

    /**
     * The answer.
     *
     * @param answer what was found
     * @param units the units of screen, tables and picture; the JSON is in SI units always
     * @return with the files spread.csv, samples.csv, spread.json, report.html and, with two samples or more, spread.png and
     *     spread.svg
     */
    public static CommandResult answer(SpreadAnswer answer, UnitSystem units) {
        SpreadReport report = new SpreadReport(answer, units);
        return CommandResult.of(
                        report::content,
                        answer.balances(),
                        units,
                        List.of(
                                ResultFile.ofText(
                                        "spread.csv",
                                        out -> SpreadTable.write(answer.peak(), answer.relieved(), units, out)),
                                ResultFile.ofText("samples.csv", out -> samples(answer, units, out)),
                                SpreadJson.of(answer).file("spread.json")),
                        report.chart
                                .map(chart -> CommandResult.pictures("spread", chart))
                                .orElse(List.of()))
                .then(NextStep.afterSpread(answer));
    }

    private Document content(QuantityFormat shown) {
        Scenario scenario = answer.scenario();
        return Document.of(
                        scenario.title() + ": how sure is that?",
                        scenario.name(),
                        alarms(shown),
                        List.of(
                                Document.answer("", headline().text(shown) + ".", stopped()),
                                Document.pictures(
                                        chart
                                                .map(drawn -> Block.Picture.of(
                                                        drawn,
                                                        "Peaks of all samples, gauge pressure, and how strongly each input is correlated with them.",
                                                        "Chart of the peaks of the samples. " + drawn.headline()))
                                                .stream()
                                                .toList(),
                                        List.of(quantiles(shown))),
                                new Document.Section("What was uncertain", inputs(shown)).inAppendix(),
                                PageFindings.section(Findings.of(scenario.system(), scenario.doubts()), shown)
                                        .onPageInAppendix(),
                                PageBasis.of(scenario, false, shown).onPageInAppendix(),
                                PageMethods.ofStudy(answer.balances().runs()).inAppendix()),
                        shown)
                .printedFor(answer.scenario().system())
                .ofSamples();
    }

    private List<AlarmNote> alarms(QuantityFormat shown) {
        List<AlarmNote> alarms = new ArrayList<>(AlarmNote.of(answer.scenario(), shown));
        if (answer.hazardFound().count() > 0) {
            alarms.add(new AlarmNote(
                    "HAZARD in " + SpreadStory.inWords(answer.hazardFound()).text(shown),
                    SpreadStory.hazards(answer.hazardous().count(), answer.firstHazards())
                            .text(shown)));
        }
        alarms.addAll(AlarmNote.open(answer.balances(), shown));
        return alarms;
    }

    private List<String> stopped() {
        return result.completed() < result.planned()
                ? List.of("Stopped early: " + result.completed() + " of " + result.planned() + " samples were done.")
                : List.of();
    }

    /** The same as that of the picture, which takes two samples. */
    private Statement headline() {
        return chart.isPresent() ? Narrative.of(sampled(answer)).headline() : SpreadStory.dripping(answer.dripping());
    }

    private List<Block> inputs(QuantityFormat shown) {
        List<Block> figures = new ArrayList<>();
        if (answer.house().usual()) {
            figures.add(new Block.Paragraph(
                    "The scenario gives no uncertain values, so these usual ranges were assumed: common practice, no source.",
                    Block.Tone.PLAIN));
        }
        figures.add(correlations(shown));
        double stray = result.strayCorrelation();
        if (stray > MAX_STRAY) {
            figures.add(new Block.Paragraph(
                    "With so few samples, unrelated inputs correlate by chance, here by up to "
                            + Decimals.fixed(stray, 2)
                            + ". A correlation no stronger than that may mean nothing. Take more samples, such as -n 256.",
                    Block.Tone.PLAIN));
        }
        if (result.failed() > 0) {
            figures.add(new Block.Paragraph(
                    result.failed()
                            + " of the samples could not be simulated and were left out, the first for this reason: "
                            + result.firstFailure().orElse(""),
                    Block.Tone.QUOTING));
        }
        return figures;
    }

    private Grid quantiles(QuantityFormat shown) {
        List<String> heads = new ArrayList<>(List.of("Share of samples"));
        for (double share : SHARES) {
            heads.add(Math.round(PERCENT * share) + " %");
        }
        return new Grid(
                "How the samples spread, gauge pressures",
                heads,
                List.of(
                        quantiles("Peak up to", answer.peak(), shown::pressure),
                        quantiles("Discharge up to", answer.relieved(), shown::volume)));
    }

    private static List<String> quantiles(String label, StudyResult.Spread spread, DoubleFunction<String> words) {
        List<String> cells = new ArrayList<>(List.of(label));
        for (double share : SHARES) {
            cells.add(words.apply(spread.quantile(share)));
        }
        return cells;
    }

    private Grid correlations(QuantityFormat shown) {
        List<List<String>> rows = new ArrayList<>();
        List<VariedHouse.Input> inputs = answer.house().inputs();
        for (int i = 0; i < inputs.size(); i++) {
            VariedHouse.Input input = inputs.get(i);
            rows.add(List.of(
                    PageWords.capitalised(input.label()),
                    signed(answer.onPeak(i)),
                    signed(answer.onRelieved(i)),
                    PageWords.inUnits(input.words(), shown)));
        }
        return new Grid(
                "Rank correlation (-1 to 1) of each input with peak and discharge",
                List.of("Input", "Peak", "Discharge", "Value"),
                rows);
    }

    private static String signed(double correlation) {
        String number = Decimals.fixed(correlation, 2);
        return number.startsWith("-") ? number : "+" + number;
    }

    /** Every sample as CSV. */
    private static void samples(SpreadAnswer answer, UnitSystem units, Appendable out) throws IOException {
        StudyResult result = answer.result();
        List<String> names =
                answer.house().inputs().stream().map(SpreadReport::column).toList();
        SampleWriter writer = new SampleWriter(names, units, out);
        for (int i = 0; i < result.completed(); i++) {
            writer.add(
                    result.input(i),
                    result.output(i, HouseDay.Output.PEAK.ordinal()),
                    result.output(i, HouseDay.Output.RELIEVED.ordinal()),
                    result.output(i, HouseDay.Output.HAZARD.ordinal()) > 0.5);
        }
        writer.end();
    }

    private static String column(VariedHouse.Input input) {
        return input.unit().isEmpty() ? input.name() : input.name() + " (" + input.unit() + ")";
    }

    /** The peaks of the samples, with what they mean for this house. */
    private static Chart drawn(SpreadAnswer answer, UnitSystem units) {
        return Chart.of(sampled(answer), units).below(AlarmNote.ofHouse(answer.scenario()), units);
    }

    /** What the picture shows, of two samples or more. */
    private static SampledPeaks sampled(SpreadAnswer answer) {
        HotWaterSystem house = answer.scenario().system();
        double air = house.site().atmosphere();
        SampledPeaks.Builder sampled = SampledPeaks.builder(peaks(answer))
                .dripping(answer.dripping().count())
                .endedEarly(answer.hazardous().count())
                .subject(answer.scenario().title() + ".");
        double working = house.tank().workingPressure().gauge(air);
        if (house.tank().workingPressureGiven()) {
            sampled.workingPressure(working);
        } else {
            sampled.assumedWorkingPressure(working);
        }
        Limit.reliefSetGauge(house).ifPresent(sampled::reliefSet);
        sampled.limit(limitGauge(answer));
        sampled.reliefVaries(reliefVaries(answer));
        for (int i = 0; i < answer.result().inputs().size(); i++) {
            sampled.influence(new Influence(answer.house().inputs().get(i).label(), answer.onPeak(i)));
        }
        return sampled.build();
    }

    /** What a sizing of the house keeps to (Pa, gauge). */
    private static double limitGauge(SpreadAnswer answer) {
        return VesselChoice.of(answer.scenario()).build().target().gauge();
    }

    /** In how many samples the peak passes that. */
    static Json beyondLimit(SpreadAnswer answer) {
        double limit = limitGauge(answer);
        double[] peaks = peaks(answer);
        int above = (int)
                Arrays.stream(peaks).filter(peak -> Limit.passes(peak, limit)).count();
        return SpreadJson.share(new StudyResult.Share(above, peaks.length)).with("limit_gauge_pa", limit);
    }

    private static boolean reliefVaries(SpreadAnswer answer) {
        return answer.house().inputs().stream()
                .map(VariedHouse.Input::name)
                .anyMatch(name -> name.startsWith("relief"));
    }

    private static double[] peaks(SpreadAnswer answer) {
        return IntStream.range(0, answer.result().completed())
                .mapToObj(i -> answer.result().output(i, HouseDay.Output.PEAK.ordinal()))
                .filter(peak -> !peak.isNaN())
                .flatMapToDouble(DoubleStream::of)
                .toArray();
    }
}

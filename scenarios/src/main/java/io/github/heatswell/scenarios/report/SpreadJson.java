package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** How far an answer may be off, for other programs: {@code spread.json}. */
final class SpreadJson {

    private static final double[] SHARES = {0, 0.05, 0.25, 0.5, 0.75, 0.95, 1};
    private static final double HUNDRED = 100;

    private SpreadJson() {}

    static Json of(SpreadAnswer answer) {
        StudyResult result = answer.result();
        return new Json()
                .each(
                        "hazards_of_house",
                        // By these people may be hurt, whatever the runs come to.
                        Findings.of(
                                        answer.scenario().system(),
                                        answer.scenario().doubts())
                                .stream()
                                .filter(finding -> finding.severity() == Severity.HAZARD)
                                .toList(),
                        finding -> new Json()
                                .with("id", finding.id())
                                .with(
                                        "sentence",
                                        finding.sentence()
                                                .text(answer.scenario().units())))
                .with("ended_in_hazard", share(answer.hazardous()))
                .with("hazard_found", share(answer.hazardFound()))
                .program(answer.scenario().name())
                .with(
                        "samples",
                        new Json()
                                .with("planned", result.planned())
                                .with("completed", result.completed())
                                .with("left_out", result.failed())
                                .with("first_reason", result.firstFailure().orElse("")))
                .with("usual_uncertainties", answer.house().usual())
                .with("dripping", share(answer.dripping()))
                .with("beyond_limit", SpreadReport.beyondLimit(answer))
                .balances(answer.balances())
                .with("peak_gauge_pa", quantiles(answer.peak()))
                .with("relieved_m3", quantiles(answer.relieved()))
                .with("inputs", inputs(answer));
    }

    static Json share(StudyResult.Share share) {
        return new Json()
                .with("count", share.count())
                .with("of", share.of())
                .known("share", share.of() == 0 ? Double.NaN : share.value())
                .known("standard_error", share.of() == 0 ? Double.NaN : share.standardError());
    }

    private static Json quantiles(StudyResult.Spread spread) {
        Json json = new Json();
        for (double share : SHARES) {
            json.known("up_to_" + Math.round(HUNDRED * share) + "_percent", spread.quantile(share));
        }
        return json;
    }

    private static List<Json> inputs(SpreadAnswer answer) {
        List<Json> inputs = new ArrayList<>();
        for (VariedHouse.Input input : answer.house().inputs()) {
            int i = inputs.size();
            inputs.add(new Json()
                    .with("name", input.name())
                    .with("unit", input.unit())
                    .with(
                            "value",
                            PageWords.inUnits(
                                    input.words(),
                                    QuantityFormat.ascii(answer.scenario().units())))
                    .with("low", input.input().distribution().low())
                    .with("centre", input.input().distribution().centre())
                    .with("high", input.input().distribution().high())
                    .known("rank_correlation_with_peak", answer.onPeak(i))
                    .known("rank_correlation_with_relieved", answer.onRelieved(i)));
        }
        return inputs;
    }
}

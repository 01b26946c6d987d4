package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.study.Distribution;
import io.github.heatswell.study.Share;
import io.github.heatswell.study.StudyResult;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** How far an answer may be off, for other programs: {@code spread.json}. */
final class SpreadJson {

    private static final double[] SHARES = {0, 0.05, 0.25, 0.5, 0.75, 0.95, 1};
    private static final double HUNDRED = 100;

    private final SpreadAnswer answer;
    private final StudyResult result;
    private final Json json;

    private SpreadJson(SpreadAnswer answer, Json json) {
        this.answer = answer;
        this.result = answer.result();
        this.json = json;
    }

    static void write(SpreadAnswer answer, OutputStream out) throws IOException {
        try (Json json = new Json(out)) {
            new SpreadJson(answer, json).write();
        }
    }

    private void write() throws IOException {
        json.object(() -> {
            json.array("hazards_of_house", this::hazards);
            share("ended_in_hazard", answer.hazardous());
            share("hazard_found", answer.hazardFound());
            json.text("scenario", answer.scenario().name()).text("heatswell_version", Version.number());
            json.object(
                    "samples",
                    () -> json.count("planned", result.planned())
                            .count("completed", result.completed())
                            .count("left_out", result.failed())
                            .text("first_reason", result.firstFailure().orElse("")));
            json.flag("usual_uncertainties", answer.house().usual());
            share("dripping", answer.dripping());
            OpenBalance.write(answer.balances(), json);
            quantiles("peak_gauge_pa", answer.peak());
            quantiles("relieved_m3", answer.relieved());
            json.array("inputs", this::inputs);
        });
    }

    /** The findings by which people may be hurt, whatever the runs come to. */
    private void hazards() throws IOException {
        List<Finding> all =
                Findings.of(answer.scenario().system(), answer.scenario().doubts());
        for (Finding finding :
                all.stream().filter(one -> one.severity() == Severity.HAZARD).toList()) {
            json.object(() -> json.text("id", finding.id())
                    .text("sentence", finding.sentence().text(UnitSystem.SI)));
        }
    }

    private void share(String name, Share share) throws IOException {
        json.object(name, () -> {
            json.count("count", share.count()).count("of", share.of());
            number("share", share.of() == 0 ? Double.NaN : share.value());
            number("standard_error", share.of() == 0 ? Double.NaN : share.standardError());
        });
    }

    private void quantiles(String name, StudyResult.Spread spread) throws IOException {
        json.object(name, () -> {
            for (double share : SHARES) {
                number("up_to_" + Math.round(HUNDRED * share) + "_percent", spread.quantile(share));
            }
        });
    }

    /** JSON has no NaN: what is not known is null. */
    private void number(String name, double value) throws IOException {
        if (Double.isNaN(value)) {
            json.nothing(name);
        } else {
            json.number(name, value);
        }
    }

    private void inputs() throws IOException {
        List<VariedHouse.Input> inputs = answer.house().inputs();
        for (int i = 0; i < inputs.size(); i++) {
            VariedHouse.Input input = inputs.get(i);
            double onPeak = answer.onPeak(i);
            double onRelieved = answer.onRelieved(i);
            json.object(() -> {
                Distribution spread = input.input().distribution();
                json.text("name", input.name()).text("unit", input.unit()).text("value", input.words());
                json.number("low", spread.low())
                        .number("centre", spread.centre())
                        .number("high", spread.high());
                number("rank_correlation_with_peak", onPeak);
                number("rank_correlation_with_relieved", onRelieved);
            });
        }
    }
}

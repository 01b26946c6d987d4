package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.Evidence;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.InstalledCheck;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;

/** Diagnosis for other programs: {@code diagnosis.json}, in SI units. */
final class DiagnosisJson {

    private final DiagnosisAnswer answer;
    private final DiagnosisResult result;
    private final Json json;

    private DiagnosisJson(DiagnosisAnswer answer, Json json) {
        this.answer = answer;
        this.result = answer.result();
        this.json = json;
    }

    static void write(DiagnosisAnswer answer, OutputStream out) throws IOException {
        try (Json json = new Json(out)) {
            new DiagnosisJson(answer, json).write();
        }
    }

    private void write() throws IOException {
        json.object(() -> {
            json.flag("hazard", !result.hazards().isEmpty());
            json.text("scenario", answer.scenario().name()).text("heatswell_version", Version.number());
            json.flag("decided", result.isDecided()).flag("misfit", result.misfit());
            json.text("start_remark", answer.story().start().orElse(""));
            json.count("readings", result.readings());
            number("uncertainty_pa", result.uncertainty());
            OpenBalance.write(answer.balances(), json);
            json.array("causes", () -> {
                for (HypothesisFit fit : result.fits()) {
                    json.object(() -> cause(fit));
                }
            });
            json.array("on_site", this::onSite);
            check();
        });
    }

    private void cause(HypothesisFit fit) throws IOException {
        json.text("cause", lower(fit.cause()))
                .text("description", fit.cause().words())
                .text("device", fit.device());
        json.flag("tested", !result.untested().contains(fit));
        number("weight", fit.weight());
        number("sum_of_squares", fit.sumOfSquares());
        number("criterion", fit.criterion());
        json.array("estimates", () -> {
            for (Estimate estimate : fit.estimates()) {
                json.object(() -> estimate(estimate));
            }
        });
        json.array("evidence", () -> {
            for (Evidence part : fit.evidence()) {
                json.object(() -> json.text("part", lower(part.part()))
                        .number("from_s", part.from())
                        .count("readings", part.count())
                        .number("mean_difference_pa", part.meanDifference())
                        .flag("against", part.against()));
            }
        });
    }

    private void estimate(Estimate estimate) throws IOException {
        json.text("parameter", lower(estimate.parameter()))
                .text("unit", estimate.parameter().unit())
                .text("standing", lower(estimate.standing()));
        number("value", estimate.value());
        number("low", estimate.low());
        number("high", estimate.high());
        json.text("settled_by", estimate.settledBy().map(DiagnosisJson::lower).orElse(""));
    }

    /** What is not known, or has no end, is null. */
    private void number(String name, double value) throws IOException {
        if (Math.abs(value) < Double.POSITIVE_INFINITY) {
            json.number(name, value);
        } else {
            json.nothing(name);
        }
    }

    private void onSite() throws IOException {
        for (InstalledCheck.Line line :
                answer.installed().map(InstalledCheck::lines).orElse(List.of())) {
            json.object(() -> json.text("check", lower(line.check()))
                    .text("unit", line.check().unit())
                    .number("described", line.planned())
                    .number("read", line.reading().value())
                    .number("uncertainty", line.reading().uncertainty())
                    .flag("agrees", line.agrees()));
        }
    }

    private void check() throws IOException {
        if (result.check().isEmpty()) {
            json.nothing("check");
            return;
        }
        var check = result.check().get();
        json.object(
                "check",
                () -> json.text("check", lower(check.check()))
                        .text("unit", check.check().unit())
                        .text("first", lower(check.first()))
                        .number("expected_first", check.expectedFirst())
                        .text("second", lower(check.second()))
                        .number("expected_second", check.expectedSecond()));
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.diagnosis.DiagnosisResult;
import io.github.heatswell.diagnosis.Estimate;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.InstalledCheck;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Diagnosis for other programs: {@code diagnosis.json}, in SI units. */
final class DiagnosisJson {

    private DiagnosisJson() {}

    static Json of(DiagnosisAnswer answer) {
        DiagnosisResult result = answer.result();
        boolean over = answer.story().isHazardByReading();
        return new Json()
                .with("hazard", answer.story().hazard().isPresent())
                .program(answer.scenario().name())
                .with("decided", result.isDecided() && !over)
                .with("misfit", result.misfit())
                .with(
                        "overpressure",
                        result.overpressure()
                                .map(plate -> new Json()
                                        .with("level", plate.level())
                                        .with("plate", plate.plate())
                                        .with("reading_pa", plate.reading())
                                        .with("marked_pa", plate.marked())))
                .with(
                        "overheat",
                        result.overheat()
                                .map(hot -> new Json()
                                        .with("level", hot.level())
                                        .with("device", hot.exceeded())
                                        .with("reading_k", hot.reading())
                                        .with("set_k", hot.set())))
                .with(
                        "start_remark",
                        answer.story()
                                .start()
                                .map(start -> start.text(answer.scenario().units()))
                                .orElse(""))
                .with(
                        "cautions",
                        Stream.of(answer.story().beyondLimit(), answer.story().notRuledOut())
                                .flatMap(Optional::stream)
                                .map(caution -> caution.text(answer.scenario().units()))
                                .toList())
                .with("doubts", answer.readings().doubts())
                .with("readings", result.readings())
                .known("uncertainty_pa", result.uncertainty())
                .balances(answer.balances())
                .each(
                        "causes",
                        result.fits(),
                        fit -> cause(fit, !result.untested().contains(fit), result.misfit(), over))
                .each(
                        "on_site",
                        answer.installed().map(InstalledCheck::lines).orElse(List.of()),
                        line -> new Json()
                                .with("check", line.check())
                                .with("unit", line.check().unit())
                                .with("described", line.planned())
                                .with("read", line.reading().value())
                                .with("uncertainty", line.reading().uncertainty())
                                .with("agrees", line.agrees()))
                .with(
                        "check",
                        result.check()
                                .filter(check -> !over)
                                .map(check -> new Json()
                                        .with("check", check.check())
                                        .with("unit", check.check().unit())
                                        .with("first", check.first())
                                        .with("expected_first", check.expectedFirst())
                                        .with("second", check.second())
                                        .with("expected_second", check.expectedSecond())));
    }

    private static Json cause(HypothesisFit fit, boolean tested, boolean misfit, boolean over) {
        return new Json()
                .with("cause", fit.cause())
                .with("description", fit.cause().words())
                .with("device", fit.device())
                .with(
                        "also",
                        fit.also()
                                .map(second -> new Json()
                                        .with("cause", second.cause())
                                        .with("description", second.cause().words())
                                        .with("device", second.device())))
                .with("tested", tested)
                .known("weight", fit.weight())
                .known("sum_of_squares", fit.sumOfSquares())
                .known("criterion", fit.criterion())
                .each("estimates", misfit ? List.of() : fit.estimates(), one -> estimate(one, over))
                .each(
                        "evidence",
                        fit.evidence(),
                        part -> new Json()
                                .with("part", part.part())
                                .with("check", part.check())
                                .with("from_s", part.from())
                                .with("readings", part.count())
                                .with("mean_difference_pa", part.meanDifference())
                                .with("missed", part.missed())
                                .with("against", part.against()));
    }

    private static Json estimate(Estimate estimate, boolean over) {
        return new Json()
                .with("parameter", estimate.parameter())
                .with("unit", estimate.parameter().unit())
                .with("standing", estimate.standing())
                .known("value", estimate.value())
                .known("low", estimate.low())
                .known("high", estimate.high())
                .with(
                        "settled_by",
                        estimate.settledBy()
                                .filter(check -> !over)
                                .map(check -> check.name().toLowerCase(Locale.ROOT))
                                .orElse(""));
    }
}

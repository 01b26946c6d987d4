package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Measure;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Findings for other programs. */
final class FindingsJson {

    private FindingsJson() {}

    static void write(List<Finding> findings, Json json) throws IOException {
        json.array("findings", () -> {
            for (Finding finding : findings) {
                json.object(() -> finding(finding, json));
            }
        });
    }

    private static void finding(Finding finding, Json json) throws IOException {
        json.text("id", finding.id())
                .text("severity", lower(finding.severity()))
                .text("sentence", finding.sentence().text(UnitSystem.SI))
                .text("sentence_us", finding.sentence().text(UnitSystem.US))
                .text("advice", finding.advice().text(UnitSystem.SI))
                .text(
                        "ask",
                        finding.askAuthority()
                                .map(ask -> ask.text(UnitSystem.SI))
                                .orElse(""));
        measure("found", finding.found(), json);
        measure("limit", finding.limit(), json);
        json.text("basis", lower(finding.authority().basis()))
                .text("source", finding.authority().source().text())
                .text("source_standing", lower(finding.authority().source().standing()));
    }

    private static void measure(String name, Optional<Measure> measure, Json json) throws IOException {
        if (measure.isEmpty()) {
            json.nothing(name);
            return;
        }
        json.object(
                name,
                () -> json.text("kind", lower(measure.get().kind()))
                        .number("value", measure.get().value()));
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}

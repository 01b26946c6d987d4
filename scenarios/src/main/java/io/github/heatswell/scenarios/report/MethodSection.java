package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** How the numbers were made. */
final class MethodSection {

    private MethodSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        if (content.methods().isEmpty()) {
            return;
        }
        html.open("section").leaf("h2", "How the numbers were made");
        Tables.grid(
                html,
                new Grid(
                        "Model, solver and checks",
                        List.of("About", "What was done"),
                        content.methods().stream()
                                .map(note -> List.of(note.topic(), note.text()))
                                .toList()));
        html.closeLine();
    }
}

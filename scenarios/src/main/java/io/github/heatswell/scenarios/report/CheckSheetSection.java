package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;

/** What the gauge should read, and when; with room for what it does read. */
final class CheckSheetSection {

    private CheckSheetSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        content.check().ifPresent(check -> {
            html.open("section", "class", "sheet").leaf("h2", "What the gauge should read, and when");
            if (!check.readings().isEmpty()) {
                sheet(html, check, shown);
            }
            check.remarks().forEach(remark -> html.leaf("p", remark, "dir", "auto"));
            html.closeLine();
        });
    }

    private static void sheet(Html html, Check check, QuantityFormat shown) {
        if (!check.steps().isEmpty()) {
            html.open("ol");
            check.steps().forEach(step -> html.leaf("li", step));
            html.closeLine();
        }
        html.open("div", "class", "fields");
        List.of("Date", "Gauge", "Read by").forEach(name -> field(html, name));
        html.closeLine();
        Tables.begin(html, "Check sheet, gauge readings", List.of("When", "Should read", "Your reading"), true);
        check.readings().forEach(reading -> row(html, reading, shown));
        html.close().closeLine();
    }

    private static void field(Html html, String name) {
        html.open("label").text(name + " ");
        html.empty("input", "type", "text", "autocomplete", "off").closeLine();
    }

    private static void row(Html html, Reading reading, QuantityFormat shown) {
        html.open("tr");
        html.open("th", "scope", "row", "class", Tables.breaks(reading.when() + " " + reading.note()));
        html.text(reading.when());
        note(html, reading.note());
        html.closeLine();
        html.open("td");
        if (reading.expectedGauge().isPresent()) {
            html.text(shown.pressure(reading.expectedGauge().getAsDouble()));
            note(html, range(reading, shown));
        } else {
            html.text("not known");
        }
        html.closeLine();
        html.open("td");
        html.empty("input", "type", "text", "autocomplete", "off", "aria-label", "Your reading, " + reading.when());
        html.close().closeLine();
    }

    private static String range(Reading reading, QuantityFormat shown) {
        if (reading.lowestGauge().isEmpty() || reading.highestGauge().isEmpty()) {
            return "";
        }
        return "agrees: "
                + shown.pressures(
                        reading.lowestGauge().getAsDouble(),
                        reading.highestGauge().getAsDouble());
    }

    private static void note(Html html, String text) {
        if (!text.isBlank()) {
            html.text(" ").open("span", "class", "note").text(text).close();
        }
    }
}

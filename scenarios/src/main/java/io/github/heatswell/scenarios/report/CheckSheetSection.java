package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Shown;
import java.util.List;

/** What the gauge should read, and when; with room for what it does read. */
final class CheckSheetSection {

    private static final List<String> PROCEDURE = List.of(
            "Screw a pressure gauge onto the drain cock of the heater, or onto a tap that is fed from the cold pipe behind"
                    + " the check valve, reducing valve or backflow preventer. One with a second hand that stays at the"
                    + " highest reading saves waiting.",
            "Open the cock slowly. Look for drips at the thread; water from the heater may be hot.",
            "Let nobody draw water, hot or cold, from the first reading to the last but where the sheet says so. Mind"
                    + " washing machines and cisterns.",
            "Read the gauge at each moment below and write down what it says, with its unit. Note the clock, and whether"
                    + " the relief valve drips.",
            "A reading within the tolerance agrees with the model. Outside it, something differs from what the scenario"
                    + " says: ask which before anything is changed.",
            "At the end close the cock before the gauge comes off, and look once more for drips.");

    private CheckSheetSection() {}

    static void write(Html html, ReportContent content, Shown shown) {
        if (content.readings().isEmpty()) {
            return;
        }
        html.open("section", "class", "sheet").leaf("h2", "What the gauge should read, and when");
        html.open("ol");
        PROCEDURE.forEach(step -> html.leaf("li", step));
        html.closeLine();
        html.open("div", "class", "fields");
        List.of("Date", "Gauge", "Read by").forEach(name -> field(html, name));
        html.closeLine();
        Tables.begin(html, "Check sheet, gauge readings", List.of("When", "Should read", "Your reading"), true);
        content.readings().forEach(reading -> row(html, reading, shown));
        html.close().closeLine().closeLine();
    }

    private static void field(Html html, String name) {
        html.open("label").text(name + " ");
        html.empty("input", "type", "text", "autocomplete", "off").closeLine();
    }

    private static void row(Html html, Reading reading, Shown shown) {
        html.open("tr").open("th", "scope", "row", "class", Tables.breaks(reading.when() + " " + reading.note()));
        html.text(reading.when());
        if (!reading.note().isBlank()) {
            html.open("span", "class", "note").text(reading.note()).close();
        }
        html.closeLine();
        html.leaf("td", expected(reading, shown));
        html.open("td");
        html.empty("input", "type", "text", "autocomplete", "off", "aria-label", "Your reading, " + reading.when());
        html.close().closeLine();
    }

    private static String expected(Reading reading, Shown shown) {
        if (reading.expectedGauge().isEmpty()) {
            return "not known";
        }
        String value = shown.pressure(reading.expectedGauge().getAsDouble());
        return reading.tolerance().isEmpty()
                ? value
                : value + ", give or take " + shown.pressure(reading.tolerance().getAsDouble());
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;

/** What can hurt somebody: what the run met, and what holds for every house. */
final class HazardsSection {

    private HazardsSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        html.open("section").leaf("h2", "Hazards and cautions");
        for (AlarmNote alarm : content.alarms()) {
            html.open("div", "class", "alarm").open("p");
            html.open("strong").text(alarm.word()).close();
            html.text(" ").text(alarm.text()).closeLine();
            html.closeLine();
        }
        if (content.alarms().isEmpty()) {
            html.leaf(
                    "p",
                    "The simulation met no hazard, and the pressure stayed within the working pressure of the tank."
                            + " That is said of the model; whether the house is safe it cannot say.");
        }
        html.open("ul");
        Cautions.of(shown).forEach(caution -> html.leaf("li", caution));
        html.closeLine().closeLine();
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;

/** How a vessel is fitted and looked after, to be ticked off. */
final class CommissioningSection {

    private CommissioningSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        if (!content.commissioning()) {
            return;
        }
        html.open("section", "class", "sheet").leaf("h2", "Fitting the expansion vessel, to tick off");
        html.leaf(
                "p",
                "A list for whoever fits it, in the order of the work. It is common practice, drawn from no standard; the"
                        + " maker's instructions and local code go before it.");
        CommissioningList.stages().forEach(stage -> stage(html, stage));
        html.closeLine();
    }

    private static void stage(Html html, CommissioningList.Stage stage) {
        html.leaf("h3", stage.name());
        html.open("ul", "class", "ticks");
        for (String step : stage.steps()) {
            html.open("li").open("label");
            html.empty("input", "type", "checkbox", "autocomplete", "off");
            html.open("span").text(step).close().close().closeLine();
        }
        html.closeLine();
    }
}

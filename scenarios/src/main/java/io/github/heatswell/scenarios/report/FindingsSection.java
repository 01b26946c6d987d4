package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;

/** What was found about the installation, each finding with the rule it is held against. */
final class FindingsSection {

    private FindingsSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        if (content.findings().isEmpty()) {
            return;
        }
        html.open("section").leaf("h2", "Findings");
        content.findings().forEach(finding -> finding(html, finding));
        html.closeLine();
    }

    private static void finding(Html html, FindingNote finding) {
        html.open("div", "class", "finding");
        html.open("h3", "dir", "auto");
        html.open("span", "class", "severity").text(finding.severity()).close();
        html.text(" ").text(finding.sentence()).closeLine();
        html.open("dl");
        entry(html, "Found", finding.found());
        entry(html, "Limit", finding.limit());
        entry(html, "What to do", finding.advice());
        entry(html, "Source", sourced(finding));
        entry(html, "To ask", finding.question());
        html.closeLine().closeLine();
    }

    private static String sourced(FindingNote finding) {
        return finding.standing().isBlank() ? finding.source() : finding.source() + " (" + finding.standing() + ")";
    }

    private static void entry(Html html, String name, String text) {
        if (!text.isBlank()) {
            html.open("div").leaf("dt", name).leaf("dd", text, "dir", "auto").closeLine();
        }
    }
}

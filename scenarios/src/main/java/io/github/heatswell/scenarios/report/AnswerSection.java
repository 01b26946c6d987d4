package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.QuantityFormat;

/** The answer in one sentence, below the question. */
final class AnswerSection {

    private AnswerSection() {}

    static void write(Html html, ReportContent content, QuantityFormat shown) {
        content.answer().ifPresent(answer -> {
            html.open("section").leaf("h2", "The answer");
            said(html, "The question", content.heading().question());
            html.leaf("p", answer.sentence(), "class", "answer", "dir", "auto");
            answer.remarks().forEach(remark -> html.leaf("p", remark, "dir", "auto"));
            said(html, "Expected beforehand", content.heading().expectation());
            html.closeLine();
        });
    }

    private static void said(Html html, String label, String text) {
        if (!text.isBlank()) {
            html.open("p").open("span", "class", "label").text(label + ": ").close();
            html.quoted(text).closeLine();
        }
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The answer key of all worksheets, on a page of its own. */
final class AnswersPage {

    private AnswersPage() {}

    static String of(SitePlan plan, List<SolvedLesson> solved, UnitSystem first) {
        Html html = Frame.begin("Answer key", "answers", true);
        Frame.contents(html, plan, SitePlan.ANSWERS);
        html.open("main", "id", "main").leaf("h1", "Answer key");
        Parts.reliability(html, plan);
        html.leaf(
                "p",
                "The numbers are those of the runs behind the pages. A reading from a picture is good if it is within the"
                        + " width of a line or two.");
        Frame.units(html, first);
        InBoth units = new InBoth(first);
        for (int i = 0; i < solved.size(); i++) {
            lesson(html, i + 1, solved.get(i), units);
        }
        html.closeLine();
        return Frame.end(html, true);
    }

    private static void lesson(Html html, int number, SolvedLesson solved, InBoth units) {
        Lesson lesson = solved.lesson();
        html.open("section", "class", "key", "aria-labelledby", "key-" + lesson.id());
        html.leaf("h2", number + ". " + lesson.title(), "id", "key-" + lesson.id());
        html.open("p")
                .leaf("span", lesson.prediction().question(), "class", "quiet")
                .text(" ");
        html.leaf(
                        "strong",
                        lesson.prediction()
                                .options()
                                .get(solved.run().outcome())
                                .text())
                .closeLine();
        if (!lesson.readings().isEmpty()) {
            html.open("table").leaf("caption", "Readings").open("tbody");
            List<Measure> answers = solved.run().answers();
            for (int i = 0; i < answers.size(); i++) {
                html.open("tr").leaf("th", lesson.readings().get(i).label(), "scope", "row");
                units.measure(html.open("td"), answers.get(i));
                html.close().closeLine();
            }
            html.closeLine().closeLine();
        }
        html.open("p").leaf("span", lesson.checkQuestion(), "class", "quiet").text(" ");
        units.statement(html, lesson.checkAnswer().words().in(solved.run()));
        html.closeLine();
        html.closeLine();
    }
}

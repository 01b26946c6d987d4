package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.WorksheetRow;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The answer key of all worksheets, on a page of its own. */
final class AnswersPage {

    private AnswersPage() {}

    static String of(Course course, List<SolvedLesson> solved, UnitSystem first) {
        Html html = Frame.begin("Answer key", "answers", true);
        Frame.contents(html, course, Course.ANSWERS);
        html.open("main", "id", "main").leaf("h1", "Answer key");
        Parts.reliability(html, course);
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
        html.leaf("strong", lesson.prediction().texts().get(solved.run().outcome()))
                .closeLine();
        if (!lesson.worksheet().isEmpty()) {
            html.open("table").leaf("caption", "Readings").open("tbody");
            for (WorksheetRow.Answer answer : solved.run().answers()) {
                html.open("tr").leaf("th", answer.label(), "scope", "row");
                units.measure(html.open("td"), answer.value());
                html.close().closeLine();
            }
            html.closeLine().closeLine();
        }
        html.open("p").leaf("span", lesson.checkQuestion(), "class", "quiet").text(" ");
        units.statement(html, lesson.checkAnswer().in(solved.run()));
        html.closeLine();
        html.closeLine();
    }
}

package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.scenarios.lesson.WorksheetRow;
import io.github.heatswell.scenarios.markup.Html;
import java.util.List;

/** The key to all worksheets. */
final class AnswersPage {

    private AnswersPage() {}

    static String of(Frame frame, List<LessonRun> runs) {
        return frame.page(
                "Answers", html -> Frame.link(html, "index.html", "All lessons"), html -> content(html, runs));
    }

    private static void content(Html html, List<LessonRun> runs) {
        html.leaf("h1", "Answers to the worksheets");
        html.leaf("p", "Readings taken off a picture may differ in the last digit.");
        for (LessonRun run : runs) {
            html.open("section").leaf("h2", run.lesson().title());
            html.leaf("p", "Prediction: " + run.lesson().prediction().options().get(run.outcome()));
            if (!run.answers().isEmpty()) {
                readings(html, run);
            }
            html.leaf("p", run.lesson().checkQuestion() + " " + run.lesson().checkAnswer());
            html.closeLine();
        }
    }

    private static void readings(Html html, LessonRun run) {
        html.open("table", "class", "key")
                .leaf("caption", "Readings: " + run.lesson().title());
        html.open("thead").open("tr");
        html.leaf("th", "What", "scope", "col").leaf("th", "Reading", "scope", "col");
        html.closeLine().closeLine().open("tbody");
        for (WorksheetRow.Answer answer : run.answers()) {
            html.open("tr").leaf("th", answer.label(), "scope", "row").open("td");
            Quantity.write(html, answer.value());
            html.closeLine().closeLine();
        }
        html.closeLine().closeLine();
    }
}

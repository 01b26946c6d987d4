package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.scenarios.report.Html;
import java.util.List;

/** The answer key of all worksheets, on a page of its own: what is right, and what to say to what is not. */
final class AnswerKey {

    private final List<SolvedLesson> solved;
    private final Page page;
    private final Html html;

    AnswerKey(LessonSite site, List<SolvedLesson> solved) {
        this.solved = solved;
        this.page = new Page(site, "answers", site.course().say("key"));
        this.html = page.html();
    }

    String write() {
        page.contents(LessonSite.ANSWERS);
        html.open("main", "id", "main").leaf("h1", page.say("key"));
        page.reliability();
        html.leaf("p", page.say("key-intro"));
        page.unitsChoice();
        for (int i = 0; i < solved.size(); i++) {
            lesson(i + 1, solved.get(i));
        }
        html.closeLine();
        return page.end();
    }

    private void lesson(int number, SolvedLesson one) {
        Lesson lesson = one.lesson();
        html.open("section", "class", "key", "aria-labelledby", "key-" + lesson.id());
        html.leaf("h2", number + ". " + lesson.title(), "id", "key-" + lesson.id());
        question(lesson.prediction().question());
        html.leaf("strong", one.run().right().text()).closeLine();
        html.leaf("p", page.say("key-wrong"), "class", "quiet").open("ul");
        for (Lesson.Option option : lesson.prediction().options()) {
            option.reply().ifPresent(reply -> {
                html.open("li").text("\u201c" + option.text() + "\u201d ");
                page.statement(reply.words().in(one.run()));
                html.closeLine();
            });
        }
        html.closeLine();
        readings(one);
        question(lesson.checkQuestion());
        page.statement(lesson.checkAnswer().words().in(one.run()));
        html.closeLine();
        html.closeLine();
    }

    private void question(String text) {
        html.open("p").leaf("span", text, "class", "quiet").text(" ");
    }

    private void readings(SolvedLesson one) {
        List<Measure> answers = one.run().answers();
        if (!answers.isEmpty()) {
            html.open("table").leaf("caption", page.say("key-readings")).open("tbody");
            for (int i = 0; i < answers.size(); i++) {
                html.open("tr")
                        .leaf("th", one.lesson().readings().get(i).label(), "scope", "row")
                        .open("td");
                page.measure(answers.get(i));
                html.close().closeLine();
            }
            html.closeLine().closeLine();
        }
    }
}

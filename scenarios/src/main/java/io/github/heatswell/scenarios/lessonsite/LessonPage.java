package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.scenarios.lesson.Claim;
import io.github.heatswell.scenarios.lesson.Formula;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.Prediction;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The page of a lesson: question and prediction, and folded below them what the run shows, why, and what to try. */
final class LessonPage {

    /** What to press to see the rest. */
    static final String SHOW = "Show what happens";

    private final Html html;
    private final Course course;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final InBoth units;
    private final int number;

    private LessonPage(Course course, SolvedLesson solved, UnitSystem first) {
        this.course = course;
        this.solved = solved;
        this.lesson = solved.lesson();
        this.units = new InBoth(first);
        this.number = course.lessons().indexOf(lesson) + 1;
        this.html = Frame.begin(number + ". " + lesson.title(), "lesson", true);
    }

    static String of(Course course, SolvedLesson solved, UnitSystem first) {
        return new LessonPage(course, solved, first).write();
    }

    private String write() {
        Frame.contents(html, course, Course.page(lesson));
        html.open("main", "id", "main");
        html.leaf("p", "Lesson " + number + " of " + course.lessons().size(), "class", "quiet");
        html.leaf("h1", lesson.title());
        Parts.reliability(html, course);
        Parts.cautions(html, "caution", lesson.cautions());
        html.leaf("p", lesson.question(), "class", "question");
        Frame.units(html, units.first());
        prediction();
        html.open("details", "id", "look", "class", "look");
        html.leaf("summary", SHOW);
        Parts.cautions(html, "caution-after", lesson.cautionsAfter());
        outcome();
        picture();
        notice();
        solved.grid().ifPresent(grid -> SliderPart.write(html, lesson, grid, units));
        why();
        TryPart.write(html, lesson);
        check();
        sources();
        html.closeLine();
        neighbours();
        html.closeLine();
        return Frame.end(html, true);
    }

    private void prediction() {
        html.leaf("h2", "Predict first", "id", "predict");
        html.open("fieldset", "class", "prediction");
        html.leaf("legend", lesson.prediction().question());
        for (String option : lesson.prediction().texts()) {
            html.open("label").empty("input", "type", "radio", "name", "prediction", "autocomplete", "off");
            html.leaf("span", option).closeLine();
        }
        html.closeLine();
        String outcome = Integer.toString(solved.run().outcome());
        html.leaf(
                "p",
                "",
                "id",
                "verdict",
                "class",
                "verdict",
                "role",
                "status",
                "aria-live",
                "polite",
                "data-outcome",
                outcome);
    }

    private void outcome() {
        int outcome = solved.run().outcome();
        String right = lesson.prediction().texts().get(outcome);
        html.open("section", "aria-labelledby", "outcome").leaf("h2", "What happens", "id", "outcome");
        html.open("p", "class", "outcome").text("The run shows: ");
        html.leaf("strong", right).closeLine();
        replies();
    }

    /** What to tell whoever chose otherwise; without a script all of it stands here. */
    private void replies() {
        html.open("dl", "class", "replies", "id", "replies");
        List<Prediction.Option> options = lesson.prediction().options();
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).reply().isPresent()) {
                html.open("div", "data-option", Integer.toString(i));
                html.leaf("dt", "\u201c" + options.get(i).text() + "\u201d");
                units.statement(html.open("dd"), options.get(i).reply().get().in(solved.run()));
                html.closeLine().closeLine();
            }
        }
        html.closeLine();
    }

    private void picture() {
        html.open("div", "class", InBoth.mark(units.first()));
        Parts.pictures(html, solved, units.first());
        html.closeLine();
        UnitSystem second = units.second();
        html.open("details", "class", "other " + InBoth.mark(second));
        html.leaf("summary", "The same picture in " + (second == UnitSystem.US ? "psi" : "bar"));
        Parts.pictures(html, solved, second);
        html.closeLine().closeLine();
    }

    private void notice() {
        html.open("section", "aria-labelledby", "notice").leaf("h2", "What to notice", "id", "notice");
        html.open("ul", "class", "notice");
        for (Statement statement : solved.run().notice()) {
            units.statement(html.open("li"), statement);
            html.closeLine();
        }
        html.closeLine().closeLine();
    }

    private void why() {
        html.open("section", "aria-labelledby", "why").leaf("h2", "Why", "id", "why");
        for (Claim claim : lesson.why()) {
            units.statement(html.open("p"), claim.in(solved.run()));
            html.closeLine();
        }
        Formula formula = lesson.formula();
        FormulaText.write(html.open("p", "class", "formula"), formula.text());
        html.closeLine();
        html.open("dl", "class", "symbols");
        for (Formula.Symbol symbol : formula.symbols()) {
            FormulaText.write(html.open("div").open("dt"), symbol.letter());
            html.close().leaf("dd", symbol.meaning()).closeLine();
        }
        html.closeLine();
        html.leaf(
                "p",
                "Formula from: " + formula.source().text() + " (" + Parts.standing(formula.source()) + ").",
                "class",
                "quiet");
        html.closeLine();
    }

    private void check() {
        html.open("section", "aria-labelledby", "check").leaf("h2", "Check yourself", "id", "check");
        html.leaf("p", lesson.checkQuestion());
        html.open("details", "class", "answer").leaf("summary", "Answer");
        units.statement(html.open("p"), lesson.checkAnswer().in(solved.run()));
        html.closeLine().closeLine().closeLine();
    }

    private void sources() {
        html.open("section", "aria-labelledby", "sources").leaf("h2", "Sources", "id", "sources");
        Parts.sources(html, lesson.sources());
        List<String> commands =
                lesson.cases().stream().flatMap(one -> one.command().stream()).toList();
        if (!commands.isEmpty()) {
            html.leaf("p", "The runs of this page, to make them again:");
            html.open("ul", "class", "commands");
            commands.forEach(command -> html.open("li").leaf("code", command).closeLine());
            html.closeLine();
        }
        html.closeLine();
    }

    private void neighbours() {
        html.open("nav", "class", "neighbours", "aria-label", "Lessons before and after");
        if (number > 1) {
            Lesson before = course.lessons().get(number - 2);
            html.leaf("a", "Before: " + before.title(), "href", Course.page(before), "rel", "prev");
        } else {
            html.leaf("a", "About this course", "href", Course.INDEX);
        }
        html.leaf("a", "Worksheet", "href", Course.worksheet(lesson));
        if (number < course.lessons().size()) {
            Lesson next = course.lessons().get(number);
            html.leaf("a", "Next: " + next.title(), "href", Course.page(next), "rel", "next");
        } else {
            html.leaf("a", "End of the course: contents", "href", Course.INDEX);
        }
        html.closeLine();
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The page of a lesson: question and prediction, and folded below them what the run shows, why, and what to try. */
final class LessonPage {

    /** What to press to see the rest. */
    static final String SHOW = "Show what happens";

    private final Html html;
    private final SitePlan plan;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final InBoth units;
    private final int number;

    private LessonPage(SitePlan plan, SolvedLesson solved, UnitSystem first) {
        this.plan = plan;
        this.solved = solved;
        this.lesson = solved.lesson();
        this.units = new InBoth(first);
        this.number = plan.lessons().indexOf(lesson) + 1;
        this.html = Frame.begin(number + ". " + lesson.title(), "lesson", true);
    }

    static String of(SitePlan plan, SolvedLesson solved, UnitSystem first) {
        return new LessonPage(plan, solved, first).write();
    }

    private String write() {
        Frame.contents(html, plan, SitePlan.page(lesson));
        html.open("main", "id", "main");
        html.leaf("p", "Lesson " + number + " of " + plan.lessons().size(), "class", "quiet");
        html.leaf("h1", lesson.title());
        Parts.reliability(html, plan);
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
        TryPart.write(html, solved.run(), units);
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
        for (Lesson.Option option : lesson.prediction().options()) {
            html.open("label").empty("input", "type", "radio", "name", "prediction", "autocomplete", "off");
            html.leaf("span", option.text()).closeLine();
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
        String right = lesson.prediction().options().get(outcome).text();
        html.open("section", "aria-labelledby", "outcome").leaf("h2", "What happens", "id", "outcome");
        html.open("p", "class", "outcome").text("The run shows: ");
        html.leaf("strong", right).closeLine();
        replies();
    }

    /** What to tell whoever chose otherwise; without a script all of it stands here. */
    private void replies() {
        html.open("dl", "class", "replies", "id", "replies");
        List<Lesson.Option> options = lesson.prediction().options();
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).reply().isPresent()) {
                html.open("div", "data-option", Integer.toString(i));
                html.leaf("dt", "\u201c" + options.get(i).text() + "\u201d");
                units.statement(
                        html.open("dd"), options.get(i).reply().get().words().in(solved.run()));
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
        for (Lesson.Claim claim : lesson.why()) {
            units.statement(html.open("p"), claim.words().in(solved.run()));
            html.closeLine();
        }
        Lesson.Formula formula = lesson.formula();
        FormulaText.write(html.open("p", "class", "formula"), formula.text());
        html.closeLine();
        html.open("dl", "class", "symbols");
        formula.symbols().forEach((letter, meaning) -> {
            FormulaText.write(html.open("div").open("dt"), letter);
            units.statement(html.close().open("dd"), meaning.in(solved.run()));
            html.closeLine().closeLine();
        });
        html.closeLine();
        html.leaf(
                "p",
                "Formula from: " + formula.source().text() + Parts.standing(formula.source()) + ".",
                "class",
                "quiet");
        html.closeLine();
    }

    private void check() {
        html.open("section", "aria-labelledby", "check").leaf("h2", "Check yourself", "id", "check");
        html.leaf("p", lesson.checkQuestion());
        html.open("details", "class", "answer").leaf("summary", "Answer");
        units.statement(html.open("p"), lesson.checkAnswer().words().in(solved.run()));
        html.closeLine().closeLine().closeLine();
    }

    private void sources() {
        html.open("section", "aria-labelledby", "sources").leaf("h2", "Sources", "id", "sources");
        Parts.sources(html, lesson.sources());
        html.leaf("p", "The runs of this page, to make them again:");
        html.open("ul", "class", "commands");
        lesson.houses()
                .forEach(house ->
                        html.open("li").leaf("code", house.command(List.of())).closeLine());
        html.closeLine();
        html.closeLine();
    }

    private void neighbours() {
        html.open("nav", "class", "neighbours", "aria-label", "Lessons before and after");
        if (number > 1) {
            Lesson before = plan.lessons().get(number - 2);
            html.leaf("a", "Before: " + before.title(), "href", SitePlan.page(before), "rel", "prev");
        } else {
            html.leaf("a", "About this course", "href", SitePlan.INDEX);
        }
        html.leaf("a", "Worksheet", "href", SitePlan.worksheet(lesson));
        if (number < plan.lessons().size()) {
            Lesson next = plan.lessons().get(number);
            html.leaf("a", "Next: " + next.title(), "href", SitePlan.page(next), "rel", "next");
        } else {
            html.leaf("a", "End of the course: contents", "href", SitePlan.INDEX);
        }
        html.closeLine();
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The page of a lesson: question and prediction, and folded below them what the run shows, why, and what to try. */
final class LessonPage {

    private final Page page;
    private final Html html;
    private final List<Lesson> all;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final int number;

    LessonPage(LessonSite site, SolvedLesson solved) {
        this.all = site.course().lessons();
        this.solved = solved;
        this.lesson = solved.lesson();
        this.number = all.indexOf(lesson) + 1;
        this.page = new Page(site, "lesson", number + ". " + lesson.title());
        this.html = page.html();
    }

    String write() {
        HandsOn handsOn = new HandsOn(page, solved);
        page.contents(LessonSite.page(lesson));
        html.open("main", "id", "main");
        html.leaf("p", page.say("place", number, all.size()), "class", "quiet");
        html.leaf("h1", lesson.title());
        page.reliability();
        page.cautions("caution", lesson.cautions());
        html.leaf("p", lesson.question(), "class", "question");
        page.unitsChoice();
        prediction();
        html.open("details", "id", "look", "class", "look");
        html.leaf("summary", page.say("show"));
        page.cautions("caution-after", lesson.cautionsAfter());
        outcome();
        html.open("div", "class", "stage");
        pictures();
        handsOn.slider();
        html.closeLine().closeLine();
        notice();
        why();
        handsOn.tryIt();
        check();
        sources();
        html.closeLine();
        neighbours();
        html.closeLine();
        return page.end();
    }

    private void prediction() {
        html.leaf("h2", page.say("predict"), "id", "predict");
        html.open("fieldset", "class", "prediction");
        html.leaf("legend", lesson.prediction().question());
        for (Lesson.Option option : lesson.prediction().options()) {
            html.open("label");
            page.radio("prediction");
            html.leaf("span", option.text()).closeLine();
        }
        html.closeLine();
        String right = Integer.toString(solved.run().outcome());
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
                right);
    }

    /** What the run shows, and what to tell whoever chose otherwise; without a script all of it stands here. */
    private void outcome() {
        page.section("outcome");
        html.open("p", "class", "outcome").text(page.say("shown") + " ");
        html.leaf("strong", solved.run().right().text()).closeLine();
        html.open("dl", "class", "replies", "id", "replies");
        List<Lesson.Option> options = lesson.prediction().options();
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).reply().isPresent()) {
                html.open("div", "data-option", Integer.toString(i));
                html.leaf("dt", "\u201c" + options.get(i).text() + "\u201d");
                page.statement("dd", options.get(i).reply().get().words().in(solved.run()));
                html.closeLine();
            }
        }
        html.closeLine();
    }

    private void pictures() {
        html.open("div").open("div", "class", Page.mark(page.first()));
        pictures(page.first());
        html.closeLine();
        String other = Page.mark(page.second());
        html.open("details", "class", "other " + other);
        html.leaf("summary", page.say("other-" + other));
        pictures(page.second());
        html.closeLine().closeLine();
    }

    /** The pictures in a system of units; on a narrow screen they scroll in their own box. */
    private void pictures(UnitSystem units) {
        List<LessonPicture> shown = solved.pictures().get(units);
        for (int i = 0; i < shown.size(); i++) {
            LessonPicture picture = shown.get(i);
            html.open("figure");
            if (!picture.label().isEmpty()) {
                html.leaf("figcaption", picture.label());
            }
            String name = page.say("picture") + (picture.label().isEmpty() ? "" : ": " + picture.label());
            html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", name);
            html.picture(picture.svg()).closeLine();
            html.closeLine();
            boolean inPsi = solved.pictures().get(UnitSystem.US).get(i).hasLimitOfTheUs();
            if (inPsi && !picture.hasLimitOfTheUs()) {
                html.leaf("p", page.say("limit-of-the-us"), "class", "quiet");
            }
        }
        html.leaf("p", page.say("scrolls"), "class", "hint");
    }

    private void notice() {
        page.section("notice");
        html.open("ul", "class", "notice");
        for (Statement statement : solved.run().notice()) {
            page.statement("li", statement);
        }
        html.closeLine().closeLine();
    }

    private void why() {
        page.section("why");
        for (Lesson.Claim claim : lesson.why()) {
            page.statement("p", claim.words().in(solved.run()));
        }
        Lesson.Formula formula = lesson.formula();
        html.open("p", "class", "formula");
        page.formula(formula.text());
        html.closeLine();
        html.open("dl", "class", "symbols");
        formula.symbols().forEach((letter, meaning) -> {
            html.open("div").open("dt");
            page.formula(letter);
            html.close();
            page.statement("dd", meaning.in(solved.run()));
            html.closeLine();
        });
        html.closeLine();
        Citation source = formula.source();
        if (Page.isChecked(source)) {
            html.leaf("p", page.say("formula-from", source.text(), page.standing(source)), "class", "quiet");
        }
        html.closeLine();
    }

    private void check() {
        page.section("check");
        html.leaf("p", lesson.checkQuestion());
        html.open("details", "class", "answer").leaf("summary", page.say("answer"));
        page.statement("p", lesson.checkAnswer().words().in(solved.run()));
        html.closeLine().closeLine();
    }

    private void sources() {
        page.section("sources");
        page.sources(lesson.sources());
        html.leaf("p", page.say("again"));
        html.open("ul", "class", "commands");
        lesson.houses()
                .forEach(house -> html.open("li")
                        .leaf("code", house.command(List.of(), page.first()))
                        .closeLine());
        html.closeLine();
        html.closeLine();
    }

    private void neighbours() {
        html.open("nav", "class", "neighbours", "aria-label", page.say("neighbours"));
        if (number > 1) {
            Lesson before = all.get(number - 2);
            html.leaf("a", page.say("before", before.title()), "href", LessonSite.page(before), "rel", "prev");
        } else {
            html.leaf("a", page.say("about"), "href", LessonSite.INDEX);
        }
        html.leaf("a", page.say("worksheet"), "href", LessonSite.worksheet(lesson));
        if (number < all.size()) {
            Lesson next = all.get(number);
            html.leaf("a", page.say("next", next.title()), "href", LessonSite.page(next), "rel", "next");
        } else {
            html.leaf("a", page.say("last"), "href", LessonSite.INDEX);
        }
        html.closeLine();
    }
}

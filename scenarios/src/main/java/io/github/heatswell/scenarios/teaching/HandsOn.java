package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.report.Html;
import java.util.List;

/**
 * What a reader can do on the page of a lesson: move a slider over runs made beforehand, and try a change to a house oneself. The
 * slider only shows with a script; without one there is the picture above.
 *
 * @param page the page
 * @param solved the lesson
 */
record HandsOn(Page page, SolvedLesson solved) {

    /** Half way between two runs the slider shows both. */
    private static final String STEP = "0.5";

    private Html html() {
        return page.html();
    }

    /** The slider, if the lesson has one. */
    void slider() {
        solved.grid().ifPresent(grid -> slider(solved.lesson().slider().orElseThrow(), grid));
    }

    private void slider(LessonSlider slider, SliderGrid grid) {
        html().open("section", "id", "explore", "aria-labelledby", "move", "hidden", "hidden");
        html().leaf("h2", page.say("move"), "id", "move");
        html().leaf(
                        "p",
                        page.say(
                                "move-how",
                                page.first().spelled(slider.house().label()),
                                grid.steps().size()),
                        "class",
                        "how");
        html().leaf("label", slider.label(), "for", "slider");
        String last = Integer.toString(grid.steps().size() - 1);
        String own = Integer.toString(grid.own());
        html().empty(
                        "input",
                        "id",
                        "slider",
                        "type",
                        "range",
                        "min",
                        "0",
                        "max",
                        last,
                        "step",
                        STEP,
                        "value",
                        own,
                        "autocomplete",
                        "off");
        html().open("p", "class", "ends")
                .leaf("span", "", "id", "first")
                .leaf("span", "", "id", "last")
                .closeLine();
        html().leaf("p", "", "id", "shown", "class", "shown");
        html().open("div", "id", "trace", "class", "trace").closeLine();
        html().open("dl", "class", "readout");
        for (String row : List.of("peak", "opens", "relieved")) {
            html().open("div")
                    .leaf("dt", page.say(row))
                    .leaf("dd", "", "id", "read-" + row)
                    .closeLine();
        }
        html().closeLine();
        html().open(
                        "div",
                        "id",
                        "runs",
                        "hidden",
                        "hidden",
                        "data-runs",
                        grid.json(page.first().spelled(slider.with()), page.first()))
                .closeLine();
        html().closeLine();
        html().open("noscript")
                .leaf("p", page.say("move-not", page.first().spelled(slider.label())), "class", "quiet")
                .closeLine();
    }

    /** What to try oneself: the command, and the scenario as a file to copy. */
    void tryIt() {
        Lesson lesson = solved.lesson();
        page.section("try");
        page.statement("p", lesson.tryIt().shows().words().in(solved.run()));
        html().leaf("p", page.say("try-command"));
        code("command", page.say("the-command"), lesson.tryIt().command(page.first()));
        html().open("details", "class", "file").leaf("summary", page.say("try-file"));
        String file = LessonSite.scenario(lesson);
        html().leaf(
                        "p",
                        page.say(
                                "try-house",
                                page.first().spelled(lesson.tryIt().house().label())),
                        "class",
                        "quiet");
        html().open("p").text(page.say("try-take") + " ");
        html().leaf("a", file, "href", file).text(" " + page.say("try-change")).closeLine();
        html().open("ul");
        for (Change change : lesson.tryIt().changes()) {
            html().open("li")
                    .leaf("code", FileUnits.in(page.first(), change.toString()))
                    .closeLine();
        }
        html().closeLine().open("p").text(page.say("try-then") + " ");
        html().leaf("code", "heatswell run " + file).closeLine();
        code("scenario", page.say("the-file"), lesson.file(page.first()));
        html().closeLine().closeLine();
    }

    private void code(String id, String name, String text) {
        html().open("div", "class", "code");
        html().open("pre", "class", "scroll", "id", id, "tabindex", "0", "role", "region", "aria-label", name);
        html().leaf("code", text).closeLine();
        html().leaf("button", page.say("copy"), "type", "button", "class", "copy", "data-copy", id, "hidden", "hidden");
        html().closeLine();
    }
}

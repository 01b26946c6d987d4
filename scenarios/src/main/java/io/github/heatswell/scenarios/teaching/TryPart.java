package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.report.Html;

/** What to try oneself: the command, and the scenario as a file to copy. */
final class TryPart {

    private TryPart() {}

    static void write(Html html, LessonRun run, InBoth units) {
        Lesson lesson = run.lesson();
        html.open("section", "aria-labelledby", "try").leaf("h2", "Try it yourself", "id", "try");
        units.statement(html.open("p"), lesson.tryIt().shows().words().in(run));
        html.closeLine();
        html.leaf("p", "With Heatswell on your computer:");
        code(html, "command", "The command", lesson.tryIt().command());
        html.open("details", "class", "file").leaf("summary", "The house as a file, to change it yourself");
        String file = SitePlan.scenario(lesson);
        html.leaf("p", house(lesson), "class", "quiet");
        html.open("p").text("Take the file ");
        html.leaf("a", file, "href", file).text(" beside this page, or copy the text below, and change:");
        html.closeLine().open("ul");
        for (Change change : lesson.tryIt().changes()) {
            html.open("li").leaf("code", change.toString()).closeLine();
        }
        html.closeLine().open("p").text("Then: ");
        html.leaf("code", "heatswell run " + file).closeLine();
        code(html, "scenario", "The scenario file", scenario(lesson));
        html.closeLine().closeLine();
    }

    private static String house(Lesson lesson) {
        return "It is the house of this page called \u201c"
                + lesson.tryIt().house().label() + "\u201d.";
    }

    /** The text of the file: the house before anything is changed. */
    static String scenario(Lesson lesson) {
        return lesson.tryIt().file(lesson);
    }

    private static void code(Html html, String id, String name, String text) {
        html.open("div", "class", "code")
                .open("pre", "class", "scroll", "id", id, "tabindex", "0", "role", "region", "aria-label", name);
        html.leaf("code", text).closeLine();
        html.leaf("button", "Copy", "type", "button", "class", "copy", "data-copy", id, "hidden", "hidden");
        html.closeLine();
    }
}

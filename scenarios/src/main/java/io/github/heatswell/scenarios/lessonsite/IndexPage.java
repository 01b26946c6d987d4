package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The first page: what the course is, its lessons in order, and how to use it. */
final class IndexPage {

    private static final List<String> CAUTIONS = List.of(
            "Hot water scalds within seconds. A gauge, a valve and the pipes beside them can be hot.",
            "Never plug, cap or downsize a relief valve. A heater without working relief can explode.",
            "Turn the heater off, let it cool and relieve the pressure before any work. Gas and electricity kill.",
            "Local code and a licensed professional decide what may be built and who may build it. Nothing here does.");

    private static final List<String> TEACHING = List.of(
            "Projecting: the pages enlarge with the browser (Ctrl and +), and the picture grows with the window. Let the"
                    + " class vote on the prediction before you unfold the rest.",
            "Worksheets: each is one sheet of A4 or US Letter. Print the page of the worksheet, not that of the lesson.",
            "The answer key is a page of its own. Leave answers.html out when you copy the folder for the class.",
            "The page of a lesson prints too, with everything unfolded.",
            "No account, no server, no network: copy the folder to a stick or a shared drive and open index.html.",
            "A lesson takes a quarter of an hour. Lessons 1 to 4 stand on their own; the others build on them.");

    private IndexPage() {}

    static String of(Course course, UnitSystem first) {
        Html html = Frame.begin("Why relief valves weep: a course in pressure", "index", false);
        html.open("main", "id", "main").leaf("h1", "Why relief valves weep");
        html.leaf(
                "p",
                "A course of " + course.lessons().size()
                        + " short lessons on the pressure in a closed hot-water system."
                        + " Each asks a question, lets you predict, and shows what a simulated house does.",
                "class",
                "question");
        Parts.cautions(html, CAUTIONS);
        html.leaf("h2", "The lessons");
        html.leaf("p", "They are best read in this order.");
        html.open("ol", "class", "course");
        course.lessons().forEach(lesson -> entry(html, lesson));
        html.closeLine();
        using(html, first);
        html.leaf("h2", "For teachers");
        Parts.list(html, "ul", TEACHING);
        html.open("p").leaf("a", "Answer key", "href", Course.ANSWERS).closeLine();
        licence(html);
        html.closeLine();
        return Frame.end(html, false);
    }

    private static void entry(Html html, Lesson lesson) {
        html.open("li").leaf("a", lesson.title(), "href", Course.page(lesson));
        html.leaf("span", lesson.question());
        html.open("span", "class", "sheet");
        html.leaf("a", "Worksheet: " + lesson.title(), "href", Course.worksheet(lesson))
                .closeLine();
        html.closeLine();
    }

    private static void using(Html html, UnitSystem first) {
        html.leaf("h2", "How to use it");
        Parts.list(
                html,
                "ol",
                List.of(
                        "Read the question and choose an answer before you look. A wrong guess teaches more than none.",
                        "Unfold the rest: the picture, what to notice, why it is so, and something to try.",
                        "Answer the question at the end without looking back.",
                        "Pressures are what a gauge shows. " + order(first)
                                + " come first, the others stand beside them; on the page of a lesson you can choose."));
    }

    private static String order(UnitSystem first) {
        return first == UnitSystem.SI ? "Bar, degrees Celsius and litres" : "Psi, degrees Fahrenheit and gallons";
    }

    private static void licence(Html html) {
        html.leaf("h2", "Where the numbers come from, and the licence");
        html.leaf(
                "p",
                "Every number and every curve was computed by Heatswell when this folder was written. The houses are"
                        + " invented. It is a model: it leaves out pressure waves, flow losses in the piping and what"
                        + " happens once a tank fails. Each lesson names its sources, and how far they were checked.");
        html.leaf(
                "p",
                "Apache License 2.0. You may copy, change and share these pages; keep this notice of the licence.");
    }
}

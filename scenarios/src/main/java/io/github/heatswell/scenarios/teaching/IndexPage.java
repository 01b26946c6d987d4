package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** The first page: what the course is, its lessons in order, and how to use it. */
final class IndexPage {

    private static final List<String> CAUTIONS = List.of(
            "Hot water scalds within seconds. A gauge, a valve and the pipes beside them can be hot.",
            "Never plug, cap or downsize a relief valve. A heater without working relief can explode.",
            "Turn the heater off, let it cool and relieve the pressure before any work. Gas and electricity kill.",
            "Local code and a licensed professional decide what may be built and who may build it. Nothing here does.");

    private IndexPage() {}

    static String of(SitePlan plan, UnitSystem first) {
        Html html = Frame.begin("Why relief valves weep: a course in pressure", "index", false);
        html.open("main", "id", "main").leaf("h1", "Why relief valves weep");
        Parts.reliability(html, plan);
        html.leaf(
                "p",
                "A course of " + plan.lessons().size()
                        + " short lessons on the pressure in a closed hot-water system."
                        + " Each asks a question, lets you predict, and shows what a simulated house does.",
                "class",
                "question");
        Parts.cautions(html, "caution", CAUTIONS);
        html.leaf("h2", "The lessons");
        html.leaf("p", "They are best read in this order.");
        html.open("ol", "class", "course");
        plan.lessons().forEach(lesson -> entry(html, lesson));
        html.closeLine();
        using(html, first);
        html.leaf("h2", "For teachers");
        html.open("p").leaf("a", "How to use the course in class", "href", SitePlan.TEACHERS);
        html.closeLine();
        licence(html);
        html.closeLine();
        return Frame.end(html, false);
    }

    private static void entry(Html html, Lesson lesson) {
        html.open("li").leaf("a", lesson.title(), "href", SitePlan.page(lesson));
        html.leaf("span", lesson.question());
        html.open("span", "class", "sheet");
        html.leaf("a", "Worksheet: " + lesson.title(), "href", SitePlan.worksheet(lesson))
                .closeLine();
        html.closeLine();
    }

    private static void using(Html html, UnitSystem first) {
        html.leaf("h2", "How to use it");
        Parts.list(
                html,
                "ol",
                List.of(
                        "Read the question and choose an answer. The page shows the rest once you have: a wrong guess teaches more than"
                                + " none.",
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

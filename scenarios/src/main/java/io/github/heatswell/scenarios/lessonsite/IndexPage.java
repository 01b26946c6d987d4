package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.markup.Html;
import java.util.List;

/** The page that leads to all others. */
final class IndexPage {

    private static final List<String> CAUTIONS = List.of(
            "Hot water scalds. Above 60 °C it burns within seconds.",
            "Never plug, cap or downsize a relief valve. A heater without relief can explode.",
            "Leave gas valves, wiring and the heater's own controls to people licensed for them.",
            "Local code and a licensed professional decide what may be built. These lessons decide nothing.");

    private IndexPage() {}

    static String of(Frame frame) {
        return frame.page(
                Frame.COURSE, html -> Frame.link(html, "answers.html", "Answers"), html -> content(html, frame));
    }

    private static void content(Html html, Frame frame) {
        html.leaf("h1", Frame.COURSE);
        html.leaf(
                "p",
                "A heater warms water, the water grows, and a valve drips. These "
                        + frame.lessons().size()
                        + " lessons show why. Every curve and every number in them was computed by Heatswell, and checked"
                        + " when these pages were made. All houses are invented.");
        html.leaf("h2", "Cautions");
        html.open("ul");
        CAUTIONS.forEach(caution -> html.leaf("li", caution));
        html.closeLine();
        html.leaf("h2", "Lessons");
        html.open("ol", "class", "lessons");
        for (Lesson lesson : frame.lessons()) {
            html.open("li").leaf("a", lesson.title(), "href", Frame.file(lesson));
            html.open("span", "class", "note").text(lesson.question()).close();
            html.open("span", "class", "note").open("a", "href", Frame.worksheet(lesson));
            html.text("Worksheet: " + lesson.title()).close().close();
            html.closeLine();
        }
        html.closeLine();
        html.leaf("h2", "How to use them");
        html.leaf(
                "p",
                "Alone: read the question, write down what you expect, then look. Where there is a slider, move it by"
                        + " finger, mouse or arrow keys. Every lesson ends with a question; its answer is folded away.");
        html.leaf(
                "p",
                "In class: project a lesson and let everybody predict before you open the picture. Print the worksheets,"
                        + " one sheet each. The answers stand on a page of their own.");
        html.leaf(
                "p",
                "The pages need no network and no server. Without script they show everything but the sliders; with it,"
                        + " the buttons on top switch the units.");
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.report.Html;
import java.util.List;

/** A slider over runs made beforehand. It only shows with a script; without one there is the picture above. */
final class SliderPart {

    /** Half way between two runs the slider shows both. */
    private static final String STEP = "0.5";

    private SliderPart() {}

    static void write(Html html, Lesson lesson, SliderGrid grid, InBoth units) {
        LessonSlider slider = lesson.slider().orElseThrow();
        html.open("section", "id", "explore", "aria-labelledby", "explore-head", "hidden", "hidden");
        html.leaf("h2", "Move it yourself", "id", "explore-head");
        html.leaf(
                "p",
                "This is the house \u201c"
                        + slider.house().label() + "\u201d, run "
                        + grid.steps().size()
                        + " times beforehand. Move the slider with the mouse, a finger or the arrow"
                        + " keys. Between two runs both are drawn. The dotted line"
                        + " is this house as it is.");
        html.leaf("label", slider.label(), "for", "slider");
        html.empty(
                "input",
                "id",
                "slider",
                "type",
                "range",
                "min",
                "0",
                "max",
                Integer.toString(grid.steps().size() - 1),
                "step",
                STEP,
                "value",
                Integer.toString(grid.own()),
                "autocomplete",
                "off");
        html.leaf("p", "", "id", "shown", "class", "shown");
        html.open("div", "id", "trace", "class", "trace").closeLine();
        html.open("dl", "class", "readout");
        for (List<String> row : List.of(
                List.of("peak", "Highest pressure"),
                List.of("opens", "Relief valve"),
                List.of("relieved", "Discharged"))) {
            html.open("div").leaf("dt", row.get(1)).leaf("dd", "", "id", "read-" + row.get(0));
            html.closeLine();
        }
        html.closeLine();
        html.open("div", "id", "runs", "hidden", "hidden", "data-runs", grid.json(units.first()))
                .closeLine();
        html.closeLine();
        html.open("noscript")
                .leaf(
                        "p",
                        "With scripts allowed, a slider for \u201c" + slider.label() + "\u201d stands here.",
                        "class",
                        "quiet")
                .closeLine();
    }
}

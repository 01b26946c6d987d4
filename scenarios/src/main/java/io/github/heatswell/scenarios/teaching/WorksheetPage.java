package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;

/** The worksheet of a lesson, one sheet of paper: what to predict, an empty graph, readings to fill in, and a question. */
final class WorksheetPage {

    private final Html html;
    private final SitePlan plan;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final InBoth units;

    private WorksheetPage(SitePlan plan, SolvedLesson solved, UnitSystem first) {
        this.plan = plan;
        this.solved = solved;
        this.lesson = solved.lesson();
        this.units = new InBoth(first);
        this.html = Frame.begin("Worksheet: " + lesson.title(), "worksheet", false);
    }

    static String of(SitePlan plan, SolvedLesson solved, UnitSystem first) {
        return new WorksheetPage(plan, solved, first).write();
    }

    private String write() {
        Frame.contents(html, plan, "");
        html.open("main", "id", "main");
        html.open("p", "class", "name");
        html.leaf("span", "Name").leaf("span", "Date").closeLine();
        html.leaf("h1", lesson.title());
        Parts.reliability(html, plan);
        for (String caution : lesson.cautions()) {
            html.open("p", "class", "warned")
                    .leaf("strong", "Caution: ")
                    .text(caution)
                    .closeLine();
        }
        html.leaf("p", lesson.question(), "class", "question");
        prediction();
        readings();
        html.leaf("h2", (lesson.readings().isEmpty() ? 2 : 3) + ". Explain");
        html.leaf("p", lesson.checkQuestion());
        lines(3);
        html.open("p", "class", "back").leaf("a", "Back to the lesson", "href", SitePlan.page(lesson));
        html.closeLine().closeLine();
        return Frame.end(html, false);
    }

    private void prediction() {
        html.leaf("h2", "1. Predict");
        html.leaf("p", lesson.prediction().question());
        html.open("ul", "class", "boxes");
        lesson.prediction().options().forEach(option -> html.leaf("li", option.text()));
        html.closeLine();
        String several = sketched().size() > 1 ? ", one for each house (" + labels() + ")" : "";
        html.leaf(
                "p",
                "Sketch the curve you expect" + several + ". Then look at the lesson and draw what the run shows"
                        + " in another colour.");
        html.open("figure");
        html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", "Empty graph");
        html.picture(SketchGrid.of(solved.run(), units.first())).closeLine().closeLine();
    }

    private String labels() {
        return String.join(", ", sketched());
    }

    private List<String> sketched() {
        return IntStream.range(0, lesson.houses().size())
                .filter(index -> SketchGrid.isShown(lesson, index))
                .mapToObj(index -> "\u201c" + lesson.houses().get(index).label() + "\u201d")
                .toList();
    }

    private void readings() {
        if (lesson.readings().isEmpty()) {
            return;
        }
        html.leaf("h2", "2. Look and read off");
        html.open("table", "class", "readings").leaf("caption", "From the pictures of the lesson");
        html.open("thead").open("tr");
        html.leaf("th", "What", "scope", "col").leaf("th", "Your reading", "scope", "col");
        html.leaf("th", "Unit", "scope", "col").closeLine().closeLine();
        html.open("tbody");
        for (Lesson.Reading row : lesson.readings()) {
            Measure.Kind kind = row.answer().kind().orElseThrow();
            String first = Kinds.unit(kind, units.first());
            String second = Kinds.unit(kind, units.second());
            html.open("tr").leaf("th", row.label(), "scope", "row").leaf("td", "", "class", "blank");
            html.leaf("td", first.equals(second) ? first : first + " or " + second)
                    .closeLine();
        }
        html.closeLine().closeLine();
    }

    private void lines(int count) {
        for (int i = 0; i < count; i++) {
            html.open("div", "class", "line").closeLine();
        }
    }
}

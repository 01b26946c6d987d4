package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.WorksheetRow;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.stream.IntStream;

/** The worksheet of a lesson, one sheet of paper: what to predict, an empty graph, readings to fill in, and a question. */
final class WorksheetPage {

    private final Html html;
    private final Course course;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final InBoth units;

    private WorksheetPage(Course course, SolvedLesson solved, UnitSystem first) {
        this.course = course;
        this.solved = solved;
        this.lesson = solved.lesson();
        this.units = new InBoth(first);
        this.html = Frame.begin("Worksheet: " + lesson.title(), "worksheet", false);
    }

    static String of(Course course, SolvedLesson solved, UnitSystem first) {
        return new WorksheetPage(course, solved, first).write();
    }

    private String write() {
        Frame.contents(html, course, "");
        html.open("main", "id", "main");
        html.open("p", "class", "name");
        html.leaf("span", "Name").leaf("span", "Date").closeLine();
        html.leaf("h1", lesson.title());
        Parts.reliability(html, course);
        for (String caution : lesson.cautions()) {
            html.open("p", "class", "warned")
                    .leaf("strong", "Caution: ")
                    .text(caution)
                    .closeLine();
        }
        html.leaf("p", lesson.question(), "class", "question");
        prediction();
        readings();
        html.leaf("h2", (lesson.worksheet().isEmpty() ? 2 : 3) + ". Explain");
        html.leaf("p", lesson.checkQuestion());
        lines(3);
        html.open("p", "class", "back").leaf("a", "Back to the lesson", "href", Course.page(lesson));
        html.closeLine().closeLine();
        return Frame.end(html, false);
    }

    private void prediction() {
        html.leaf("h2", "1. Predict");
        html.leaf("p", lesson.prediction().question());
        html.open("ul", "class", "boxes");
        lesson.prediction().texts().forEach(option -> html.leaf("li", option));
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
        return IntStream.range(0, lesson.cases().size())
                .filter(index -> SketchGrid.isShown(lesson, index))
                .mapToObj(index -> "\u201c" + lesson.cases().get(index).label() + "\u201d")
                .toList();
    }

    private void readings() {
        if (lesson.worksheet().isEmpty()) {
            return;
        }
        html.leaf("h2", "2. Look and read off");
        html.open("table", "class", "readings").leaf("caption", "From the pictures of the lesson");
        html.open("thead").open("tr");
        html.leaf("th", "What", "scope", "col").leaf("th", "Your reading", "scope", "col");
        html.leaf("th", "Unit", "scope", "col").closeLine().closeLine();
        html.open("tbody");
        for (WorksheetRow row : lesson.worksheet()) {
            String first = Kinds.unit(row.kind(), units.first());
            String second = Kinds.unit(row.kind(), units.second());
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

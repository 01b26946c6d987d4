package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The worksheet of a lesson, one sheet of paper: what to predict, an empty graph, readings to fill in, and a question. */
final class Worksheet {

    private static final int LINES = 3;

    private final Page page;
    private final Html html;
    private final SolvedLesson solved;
    private final Lesson lesson;
    private final LessonSite site;

    Worksheet(LessonSite site, SolvedLesson solved) {
        this.site = site;
        this.solved = solved;
        this.lesson = solved.lesson();
        this.page = new Page(site, "worksheet", site.course().say("worksheet-of", title()));
        this.html = page.html();
    }

    String write() {
        page.contents("");
        html.open("main", "id", "main");
        html.open("p", "class", "name")
                .leaf("span", page.say("name"))
                .leaf("span", page.say("date"))
                .closeLine();
        html.leaf("h1", title());
        page.reliability();
        for (String caution : lesson.cautions()) {
            html.open("p", "class", "warned")
                    .leaf("strong", page.say("caution") + ":")
                    .text(" " + caution)
                    .closeLine();
        }
        html.leaf("p", lesson.question(), "class", "question");
        prediction();
        if (!lesson.readings().isEmpty()) {
            readings();
        }
        html.leaf("h2", page.say("sheet-explain", lesson.readings().isEmpty() ? 2 : 3));
        html.leaf("p", lesson.checkQuestion());
        for (int i = 0; i < LINES; i++) {
            html.open("div", "class", "line").closeLine();
        }
        html.open("p", "class", "back").leaf("a", page.say("sheet-back"), "href", LessonSite.page(lesson));
        html.closeLine().closeLine();
        return page.end();
    }

    /** With the number that the lesson has in the course. */
    private String title() {
        return site.course().lessons().indexOf(lesson) + 1 + ". " + lesson.title();
    }

    private void prediction() {
        html.leaf("h2", page.say("sheet-predict"));
        html.leaf("p", lesson.prediction().question());
        html.open("ul", "class", "boxes");
        lesson.prediction().options().forEach(option -> html.leaf("li", option.text()));
        html.closeLine();
        List<String> sketched = IntStream.range(0, lesson.houses().size())
                .filter(index -> SketchGrid.isShown(lesson, index))
                .mapToObj(index -> "\u201c"
                        + page.first().spelled(lesson.houses().get(index).label()) + "\u201d")
                .toList();
        String each = sketched.size() > 1 ? page.say("sheet-each", String.join(", ", sketched)) : "";
        html.leaf("p", page.say("sheet-sketch", page.say(sketched.size() > 1 ? "sheet-curves" : "sheet-curve"), each));
        starts();
        html.open("div", "class", Page.mark(page.first()));
        graph(page.first());
        html.closeLine();
        html.open("div", "class", "asked " + Page.mark(page.second()));
        graph(page.second());
        html.closeLine();
    }

    /** Where the curves to sketch start, and where a relief valve would open. */
    private void starts() {
        Map<String, List<String>> alike = new LinkedHashMap<>();
        Map<String, Statement> said = new LinkedHashMap<>();
        for (int i = 0; i < lesson.houses().size(); i++) {
            if (SketchGrid.isShown(lesson, i)) {
                Statement start = SketchGrid.start(
                        lesson.houses().get(i).channel(), solved.run().results().get(i), page::say);
                said.put(start.text(UnitSystem.SI), start);
                alike.computeIfAbsent(start.text(UnitSystem.SI), any -> new ArrayList<>())
                        .add("\u201c"
                                + page.first().spelled(lesson.houses().get(i).label()) + "\u201d");
            }
        }
        page.statement(
                "p",
                Statement.joined(
                        " ",
                        alike.entrySet().stream()
                                .map(one -> Statement.plain(
                                                alike.size() == 1 ? "" : String.join(", ", one.getValue()) + ": ")
                                        .then(said.get(one.getKey())))
                                .toList()));
    }

    /** An empty graph; that of the second units shows only where they were chosen on another page. */
    private void graph(UnitSystem units) {
        html.open("figure");
        html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", page.say("sheet-graph"));
        html.picture(SketchGrid.of(solved.run(), units)).closeLine().closeLine();
    }

    private void readings() {
        html.leaf("h2", page.say("sheet-read"));
        html.open("table", "class", "readings").leaf("caption", page.say("sheet-from"));
        html.open("thead").open("tr");
        for (String column : List.of("sheet-what", "sheet-reading", "sheet-unit")) {
            html.leaf("th", page.say(column), "scope", "col");
        }
        html.closeLine().closeLine().open("tbody");
        for (Lesson.Reading row : lesson.readings()) {
            String first = unit(row, page.first());
            String second = unit(row, page.second());
            html.open("tr").leaf("th", row.label(), "scope", "row").leaf("td", "", "class", "blank");
            html.leaf("td", first.equals(second) ? first : page.say("sheet-or", first, second))
                    .closeLine();
        }
        html.closeLine().closeLine();
    }

    /** The unit of a reading; a time is read in what the axis of the picture has. */
    private String unit(Lesson.Reading reading, UnitSystem units) {
        Kind kind = reading.answer().kind().orElseThrow();
        boolean hours = SketchGrid.inHours(
                List.of(solved.run().house(reading.house().name()).run()));
        return kind == Kind.TIME && hours ? page.say("sheet-hours") : KnownUnit.symbol(kind, units);
    }
}

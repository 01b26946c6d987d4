package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.report.Html;
import java.util.stream.Collectors;

/** A page of prose, such as the first page or that for teachers, written as the text of the course has it. */
final class ProsePage {

    private final LessonSite site;
    private final Fields from;
    private final Page page;
    private final Html html;

    ProsePage(LessonSite site, String name) {
        this.site = site;
        this.from = site.course().prose(name);
        this.page = new Page(site, "index", from.text("name"));
        this.html = page.html();
    }

    String write() {
        html.open("main", "id", "main").leaf("h1", from.text("title"));
        page.reliability();
        from.list("parts", 1, Integer.MAX_VALUE, node -> part(Fields.of(node, "part")));
        from.done();
        html.closeLine();
        return page.end();
    }

    private Fields part(Fields part) {
        part.value("heading").ifPresent(node -> html.leaf("h2", said(node)));
        part.value("lead").ifPresent(node -> html.leaf("p", said(node), "class", "question"));
        part.value("text").ifPresent(node -> html.leaf("p", said(node)));
        part.value("cautions").ifPresent(node -> page.cautions("caution", part.list("cautions", 1, 9, this::said)));
        part.value("list").ifPresent(node -> page.list("ul", part.list("list", 1, 99, this::said)));
        part.value("steps").ifPresent(node -> page.list("ol", part.list("steps", 1, 99, this::said)));
        part.value("terms").ifPresent(node -> terms(part));
        part.value("link").ifPresent(node -> link(Fields.of(node, "link")));
        part.value("shows").ifPresent(node -> lessons(said(node).equals("aims")));
        part.done();
        return part;
    }

    /** A text of the course, with what the program fills in. */
    private String said(Node node) {
        return Fields.text(node, "text")
                .replace("{lessons}", Integer.toString(site.course().lessons().size()))
                .replace("{show}", page.say("show"))
                .replace("{units}", page.say("long-units-" + Page.mark(site.first())));
    }

    private void terms(Fields part) {
        html.open("dl", "class", "terms");
        part.named("terms")
                .forEach((term, meaning) -> html.open("div")
                        .leaf("dt", term)
                        .leaf("dd", said(meaning))
                        .closeLine());
        html.closeLine();
    }

    private void link(Fields link) {
        html.open("p").leaf("a", link.text("text"), "href", link.text("to")).closeLine();
        link.done();
    }

    private void lessons(boolean aims) {
        html.open("ol", "class", "course");
        for (Lesson lesson : site.course().lessons()) {
            html.open("li").leaf("a", lesson.title(), "href", LessonSite.page(lesson));
            if (aims) {
                html.leaf("span", page.say("aim", lesson.aim()));
                html.leaf(
                        "span",
                        page.say(
                                "wrong",
                                lesson.prediction().options().stream()
                                        .filter(option -> option.reply().isPresent())
                                        .map(option -> "\u201c" + option.text().replaceAll("\\.$", "") + "\u201d")
                                        .collect(Collectors.joining(", "))),
                        "class",
                        "sheet");
            } else {
                html.leaf("span", lesson.question());
                html.open("span", "class", "sheet")
                        .leaf("a", page.say("worksheet-of", lesson.title()), "href", LessonSite.worksheet(lesson))
                        .closeLine();
            }
            html.closeLine();
        }
        html.closeLine();
    }
}

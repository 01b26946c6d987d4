package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.report.Html;
import java.util.List;

/** How to use the course in class, and the way to the answer key, which no page of the pupils leads to. */
final class TeachersPage {

    private static final List<String> TEACHING = List.of(
            "Projecting: the pages enlarge with the browser (Ctrl and +), and the picture grows with the window. Let the"
                    + " class vote, choose what most say and press \u201c" + LessonPage.SHOW
                    + "\u201d: the page unfolds the rest and answers that guess.",
            "Worksheets: each is one sheet of A4 or US Letter. Print the page of the worksheet, not that of the lesson.",
            "The answer key is a page of its own, to print or to keep. Only this page leads to it. Leave teachers.html and"
                    + " answers.html out when you copy the folder for the class.",
            "Without scripts the rest of a lesson unfolds without a choice. Ask for hands first.",
            "The page of a lesson prints too, with everything unfolded.",
            "No account, no server, no network: copy the folder to a stick or a shared drive and open index.html.",
            "A lesson takes a quarter of an hour. Lessons 1 to 4 stand on their own; the others build on them.");

    private TeachersPage() {}

    static String of() {
        Html html = Frame.begin("For teachers", "index", false);
        html.open("main", "id", "main").leaf("h1", "For teachers");
        Parts.list(html, "ul", TEACHING);
        html.open("p").leaf("a", "Answer key", "href", SitePlan.ANSWERS).closeLine();
        html.open("p").leaf("a", "About this course", "href", SitePlan.INDEX).closeLine();
        html.closeLine();
        return Frame.end(html, false);
    }
}

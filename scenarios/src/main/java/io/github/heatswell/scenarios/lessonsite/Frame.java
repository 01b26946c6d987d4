package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * What all pages of the site have in common.
 *
 * @param lessons the lessons in order
 * @param first the unit system shown first
 */
record Frame(List<Lesson> lessons, UnitSystem first) {

    static final String COURSE = "Why relief valves weep in closed systems";

    private static final String STYLE = "site.css";
    private static final String SCRIPT = "site.js";

    /** A page. */
    String page(String title, Consumer<Html> links, Consumer<Html> content) {
        String units = first.name().toLowerCase(Locale.ROOT);
        Html html = new Html();
        html.open("html", "lang", "en").open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.leaf("title", title.equals(COURSE) ? title : title + " – " + COURSE);
        html.empty("link", "rel", "stylesheet", "href", STYLE);
        html.closeLine();
        html.open("body", "data-units", units).open("main");
        html.open("nav", "aria-label", "Lessons").open("ul");
        links.accept(html);
        html.closeLine().closeLine();
        units(html);
        content.accept(html);
        html.closeLine();
        html.open("script", "src", SCRIPT).closeLine();
        return html.closeLine().closeLine().end();
    }

    private static void units(Html html) {
        html.open("div", "class", "switch", "hidden", "hidden", "role", "group", "aria-label", "Units");
        html.open("span").text("Units:").close();
        html.leaf("button", "bar, °C, litres", "type", "button", "data-units", "si");
        html.leaf("button", "psi, °F, gallons", "type", "button", "data-units", "us");
        html.closeLine();
    }

    /** A link in the list at the top. */
    static void link(Html html, String to, String text) {
        html.open("li").leaf("a", text, "href", to).closeLine();
    }

    /** The page of a lesson. */
    static String file(Lesson lesson) {
        return lesson.id() + ".html";
    }

    /** The sheet to fill in that goes with a lesson. */
    static String worksheet(Lesson lesson) {
        return "worksheet-" + lesson.id() + ".html";
    }
}

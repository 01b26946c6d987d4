package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** What is around every page: its head, the way to the others, and the choice of units. */
final class Frame {

    private Frame() {}

    /** Begins a page up to and with the beginning of its main part. */
    static Html begin(String title, String kind, boolean acts) {
        Html html = new Html();
        html.open("html", "lang", "en").open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light");
        html.leaf("title", title);
        html.empty("link", "rel", "stylesheet", "href", SitePlan.STYLE).closeLine();
        html.open("body", "class", kind);
        html.leaf("a", "Skip to the content", "class", "skip", "href", "#main");
        return html;
    }

    /** Ends a page. */
    static String end(Html html, boolean acts) {
        html.open("footer")
                .leaf(
                        "p",
                        "Made by Heatswell from its own simulation. The houses are invented. Hot water scalds; local code"
                                + " and a licensed professional decide.")
                .closeLine();
        if (acts) {
            html.open("script", "src", SitePlan.SCRIPT).closeLine();
        }
        return html.closeLine().closeLine().end();
    }

    /** The way to the other pages; the contents are folded. */
    static void contents(Html html, SitePlan plan, String current) {
        html.open("header").open("nav", "aria-label", "Course");
        html.open("details", "class", "contents").leaf("summary", "Contents");
        link(html.open("p"), SitePlan.INDEX, "About this course", current);
        html.closeLine().open("ol");
        for (Lesson lesson : plan.lessons()) {
            link(html.open("li"), SitePlan.page(lesson), lesson.title(), current);
            html.closeLine();
        }
        html.closeLine();
        html.closeLine().closeLine().closeLine();
    }

    private static void link(Html html, String page, String text, String current) {
        if (page.equals(current)) {
            html.leaf("a", text, "href", page, "aria-current", "page");
        } else {
            html.leaf("a", text, "href", page);
        }
    }

    /** The choice of units; without a script there is none, and both are shown. */
    static void units(Html html, UnitSystem first) {
        html.open("fieldset", "id", "units", "class", "units", "hidden", "hidden");
        html.leaf("legend", "Units");
        choice(html, "both", "both", true);
        List<UnitSystem> order = List.of(first, new InBoth(first).second());
        for (UnitSystem units : order) {
            boolean si = units == UnitSystem.SI;
            choice(html, InBoth.mark(units), si ? "bar, \u00b0C, L" : "psi, \u00b0F, gal", false);
        }
        html.closeLine();
    }

    private static void choice(Html html, String value, String text, boolean chosen) {
        html.open("label");
        if (chosen) {
            html.empty(
                    "input",
                    "type",
                    "radio",
                    "name",
                    "units",
                    "value",
                    value,
                    "checked",
                    "checked",
                    "autocomplete",
                    "off");
        } else {
            html.empty("input", "type", "radio", "name", "units", "value", value, "autocomplete", "off");
        }
        html.leaf("span", text).closeLine();
    }
}

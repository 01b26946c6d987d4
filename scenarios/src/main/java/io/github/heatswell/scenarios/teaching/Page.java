package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.citation.Citation;
import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page being written: what is around every page, and what several have. Measures stand in both systems of units, such as
 * {@code 7 bar (102 psi)}, marked so that a reader can have either alone.
 */
final class Page {

    /** Longer texts may be broken between lines. */
    private static final int SHORT = 14;

    private static final Pattern LETTER = Pattern.compile("([A-Za-z]+)(?:_([A-Za-z0-9]+))?");
    private static final Map<String, String> GREEK =
            Map.of("alpha", "\u03b1", "beta", "\u03b2", "kappa", "\u03ba", "nu", "\u03bd", "rho", "\u03c1");

    private final Html html = new Html();
    private final LessonSite site;

    /** Begins a page up to and with the beginning of its body. */
    Page(LessonSite site, String kind, String title) {
        this.site = site;
        html.open("html", "lang", "en").open("head");
        html.empty("meta", "charset", "utf-8");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light");
        html.leaf("title", title);
        html.empty("link", "rel", "stylesheet", "href", LessonSite.STYLE).closeLine();
        html.open("body", "class", kind);
        html.leaf("a", say("skip"), "class", "skip", "href", "#main");
    }

    Html html() {
        return html;
    }

    String say(String name, Object... values) {
        return site.course().say(name, values);
    }

    UnitSystem first() {
        return site.first();
    }

    UnitSystem second() {
        return first() == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
    }

    /** The class of what is in a system of units. */
    static String mark(UnitSystem units) {
        return units == UnitSystem.SI ? "si" : "us";
    }

    /** Ends a page. */
    String end() {
        html.open("footer").leaf("p", say("footer")).closeLine();
        html.open("script", "src", LessonSite.SCRIPT).closeLine();
        return html.closeLine().closeLine().end();
    }

    /** The way to the other pages; the contents are folded. */
    void contents(String current) {
        html.open("header").open("nav", "aria-label", say("course"));
        html.open("details", "class", "contents").leaf("summary", say("contents"));
        link(html.open("p"), LessonSite.INDEX, say("about"), current);
        html.closeLine().open("ol");
        for (Lesson lesson : site.course().lessons()) {
            link(html.open("li"), LessonSite.page(lesson), lesson.title(), current);
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
    void unitsChoice() {
        html.open("fieldset", "id", "units", "class", "units", "hidden", "hidden");
        html.leaf("legend", say("units"));
        for (String value : List.of("both", mark(first()), mark(second()))) {
            html.open("label");
            if (value.equals("both")) {
                radio("units", "value", value, "checked", "checked");
            } else {
                radio("units", "value", value);
            }
            html.leaf("span", say("units-" + value)).closeLine();
        }
        html.closeLine();
    }

    void radio(String name, String... attributes) {
        String[] all = new String[attributes.length + 6];
        System.arraycopy(new String[] {"type", "radio", "name", name, "autocomplete", "off"}, 0, all, 0, 6);
        System.arraycopy(attributes, 0, all, 6, attributes.length);
        html.empty("input", all);
    }

    /** Begins a section with a heading. */
    void section(String id) {
        html.open("section", "aria-labelledby", id).leaf("h2", say(id), "id", id);
    }

    /** Cautions in a box, or nothing if there are none. */
    void cautions(String id, List<String> cautions) {
        if (!cautions.isEmpty()) {
            html.open("section", "class", "caution", "aria-labelledby", id);
            html.leaf("h2", say("caution"), "id", id);
            list("ul", cautions);
            html.closeLine();
        }
    }

    /** Says where the balance of a run behind the pages does not close. */
    void reliability() {
        Alarm.open(site.balances(), "this answer").ifPresent(alarm -> {
            html.open("section", "class", "caution");
            html.open("p")
                    .leaf("strong", alarm.level().word())
                    .text(" " + alarm.text().text(UnitSystem.SI));
            html.closeLine().closeLine();
        });
    }

    void list(String element, List<String> texts) {
        html.open(element);
        texts.forEach(text -> html.leaf("li", text));
        html.closeLine();
    }

    /** The sources that somebody has looked into; what was only remembered is for the authors to check. */
    void sources(List<Citation> sources) {
        html.open("ul");
        sources.stream().filter(Page::isChecked).forEach(source -> {
            html.open("li").text(source.text()).leaf("span", standing(source), "class", "quiet");
            html.closeLine();
        });
        html.closeLine();
    }

    static boolean isChecked(Citation source) {
        return source.standing() != Citation.Standing.FROM_MEMORY;
    }

    /** How far a source was checked; what is our own needs no word. */
    String standing(Citation source) {
        return source.standing() == Citation.Standing.GIVEN
                ? ""
                : " " + say(source.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    void measure(Measure measure) {
        String one = glued(measure.text(first()));
        String other = glued(measure.text(second()));
        if (one.equals(other)) {
            html.text(one);
            return;
        }
        html.open("span", "class", mark(first())).text(one).close();
        html.open("span", "class", "both").text(" (").close();
        html.open("span", "class", mark(second())).text(other).close();
        html.open("span", "class", "both").text(")").close();
    }

    private static String glued(String text) {
        return text.length() <= SHORT ? text.replace(' ', '\u00a0') : text;
    }

    void statement(Statement statement) {
        html.text(statement.parts().get(0));
        for (int i = 0; i < statement.measures().size(); i++) {
            measure(statement.measures().get(i));
            html.text(statement.parts().get(i + 1));
        }
    }

    /** A statement in an element of its own. */
    void statement(String element, Statement statement) {
        html.open(element);
        statement(statement);
        html.closeLine();
    }

    /** A formula in plain text, shown with Greek letters, and with what follows an underscore set lower. */
    void formula(String formula) {
        Matcher letter = LETTER.matcher(formula);
        int from = 0;
        while (letter.find()) {
            html.text(signs(formula.substring(from, letter.start())));
            html.text(GREEK.getOrDefault(letter.group(1), letter.group(1)));
            if (letter.group(2) != null) {
                html.open("sub").text(letter.group(2)).close();
            }
            from = letter.end();
        }
        html.text(signs(formula.substring(from)));
    }

    private static String signs(String text) {
        return text.replace("<=", "\u2264").replace(" - ", " \u2212 ");
    }
}

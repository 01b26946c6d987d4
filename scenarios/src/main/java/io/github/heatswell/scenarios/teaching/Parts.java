package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.scenarios.report.OpenBalance;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/** Parts that several pages have. */
final class Parts {

    private Parts() {}

    /** Cautions in a box, or nothing if there are none. */
    static void cautions(Html html, String id, List<String> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        html.open("section", "class", "caution", "aria-labelledby", id);
        html.leaf("h2", "Caution", "id", id);
        list(html, "ul", cautions);
        html.closeLine();
    }

    /** Says where the balance of a run behind the pages does not close. */
    static void reliability(Html html, SitePlan plan) {
        OpenBalance.among(plan.balances()).ifPresent(said -> {
            html.open("section", "class", "caution");
            html.open("p").leaf("strong", OpenBalance.WORD).text(" " + said);
            html.closeLine().closeLine();
        });
    }

    static void list(Html html, String element, List<String> texts) {
        html.open(element);
        texts.forEach(text -> html.leaf("li", text));
        html.closeLine();
    }

    /** The pictures of a lesson in a system of units; on a narrow screen they scroll in their own box. */
    static void pictures(Html html, SolvedLesson lesson, UnitSystem units) {
        for (SolvedLesson.Drawn drawn : lesson.pictures(units)) {
            html.open("figure");
            if (!drawn.label().isEmpty()) {
                html.leaf("figcaption", drawn.label());
            }
            String name = "Picture" + (drawn.label().isEmpty() ? "" : ": " + drawn.label());
            html.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", name);
            html.picture(drawn.svg()).closeLine();
            html.closeLine();
        }
        html.leaf("p", "On a narrow screen the picture scrolls sideways.", "class", "hint");
    }

    static void sources(Html html, List<Citation> sources) {
        html.open("ul");
        for (Citation source : sources) {
            html.open("li").text(source.text()).leaf("span", standing(source), "class", "quiet");
            html.closeLine();
        }
        html.closeLine();
    }

    static String standing(Citation source) {
        return switch (source.standing()) {
            case SEEN -> " (read)";
            case SECOND_HAND -> " (read where others quote it)";
            case FROM_MEMORY -> " (from memory, to be checked before anything depends on it)";
            case GIVEN -> "";
        };
    }
}

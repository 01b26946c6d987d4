package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.units.UnitSystem;

/**
 * Measures in both systems of units, such as {@code 7 bar (101.5 psi)}, marked so that a reader can have either alone.
 *
 * @param first the system that comes first
 */
record InBoth(UnitSystem first) {

    /** Longer texts may be broken between lines. */
    private static final int SHORT = 14;

    UnitSystem second() {
        return first == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI;
    }

    /** The class of what is in a system of units. */
    static String mark(UnitSystem units) {
        return units == UnitSystem.SI ? "si" : "us";
    }

    void measure(Html html, Measure measure) {
        pair(html, measure.text(first), measure.text(second()));
    }

    /** A text in the first system of units and the same in the second. */
    void pair(Html html, String firstText, String secondText) {
        if (firstText.equals(secondText)) {
            html.text(glued(firstText));
            return;
        }
        html.open("span", "class", mark(first)).text(glued(firstText)).close();
        html.open("span", "class", "both").text(" (").close();
        html.open("span", "class", mark(second())).text(glued(secondText)).close();
        html.open("span", "class", "both").text(")").close();
    }

    void statement(Html html, Statement statement) {
        html.text(statement.parts().get(0));
        for (int i = 0; i < statement.measures().size(); i++) {
            measure(html, statement.measures().get(i));
            html.text(statement.parts().get(i + 1));
        }
    }

    private static String glued(String text) {
        return text.length() <= SHORT ? text.replace(' ', '\u00a0') : text;
    }
}

package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.finding.Measure;
import io.github.heatswell.finding.Statement;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.units.UnitSystem;

/** Quantities on a page, in both unit systems: both are there to read, and a switch may hide one. */
final class Quantity {

    private Quantity() {}

    /** A statement with its quantities. */
    static void write(Html html, Statement statement) {
        html.text(statement.parts().get(0));
        for (int i = 0; i < statement.measures().size(); i++) {
            write(html, statement.measures().get(i));
            html.text(statement.parts().get(i + 1));
        }
    }

    /** A quantity. */
    static void write(Html html, Measure measure) {
        String si = measure.text(UnitSystem.SI);
        String us = measure.text(UnitSystem.US);
        if (si.equals(us)) {
            html.text(si);
            return;
        }
        html.open("span", "class", "si").text(si).close();
        html.open("span", "class", "join").text(" (").close();
        html.open("span", "class", "us").text(us).close();
        html.open("span", "class", "join").text(")").close();
    }
}

package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.finding.Measure;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.WorksheetRow;
import io.github.heatswell.scenarios.markup.Html;

/** A sheet to print, with room for a prediction, for readings and for an answer. */
final class WorksheetPage {

    private static final int LINES = 3;

    private WorksheetPage() {}

    static String of(Frame frame, Lesson lesson) {
        return frame.page(
                "Worksheet: " + lesson.title(),
                html -> {
                    Frame.link(html, "index.html", "All lessons");
                    Frame.link(html, Frame.file(lesson), "The lesson");
                },
                html -> content(html, lesson));
    }

    private static void content(Html html, Lesson lesson) {
        html.leaf("h1", lesson.title());
        html.leaf("p", lesson.question());
        html.open("div", "class", "fields");
        for (String field : new String[] {"Name", "Date"}) {
            html.open("div").leaf("span", field, "class", "quiet");
            html.open("span", "class", "blank").closeLine().closeLine();
        }
        html.closeLine();
        html.leaf("h2", "My prediction");
        html.leaf("p", lesson.prediction().question());
        html.open("ul", "class", "ticks");
        for (String option : lesson.prediction().options()) {
            html.open("li").open("label").empty("input", "type", "checkbox");
            html.leaf("span", option).closeLine().closeLine();
        }
        html.closeLine();
        if (!lesson.worksheet().isEmpty()) {
            readings(html, lesson);
        }
        html.leaf("h2", lesson.checkQuestion());
        for (int i = 0; i < LINES; i++) {
            html.open("span", "class", "line").closeLine();
        }
    }

    private static void readings(Html html, Lesson lesson) {
        html.leaf("h2", "My readings");
        html.open("table").leaf("caption", "Read them off the picture, or off your own run");
        html.open("thead").open("tr");
        for (String column : new String[] {"What", "Unit", "My reading"}) {
            html.leaf("th", column, "scope", "col");
        }
        html.closeLine().closeLine().open("tbody");
        for (WorksheetRow row : lesson.worksheet()) {
            html.open("tr").leaf("th", row.label(), "scope", "row");
            html.leaf("td", unit(row.kind()));
            html.open("td")
                    .open("span", "class", "blank")
                    .closeLine()
                    .closeLine()
                    .closeLine();
        }
        html.closeLine().closeLine();
    }

    private static String unit(Measure.Kind kind) {
        return switch (kind) {
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> "bar or psi";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "degrees";
            case VOLUME -> "L or gal";
            case FLOW -> "a minute";
            case POWER -> "kW or Btu/h";
            case MASS -> "kg or lb";
            case LENGTH -> "m or in";
            case MOMENT -> "N m or lb ft";
            case TIME -> "time";
            case SHARE -> "%";
        };
    }
}

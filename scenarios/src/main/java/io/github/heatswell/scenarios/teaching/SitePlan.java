package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Balances;
import java.util.List;

/**
 * The names of the files of a site, and the order of its lessons.
 *
 * @param lessons the lessons in their order
 * @param balances how the balances of the runs behind the pages close
 */
record SitePlan(List<Lesson> lessons, Balances balances) {

    static final String INDEX = "index.html";
    static final String TEACHERS = "teachers.html";
    static final String ANSWERS = "answers.html";
    static final String STYLE = "site.css";
    static final String SCRIPT = "site.js";

    static String page(Lesson lesson) {
        return lesson.id() + ".html";
    }

    static String worksheet(Lesson lesson) {
        return "worksheet-" + lesson.id() + ".html";
    }

    /** The scenario file to try. */
    static String scenario(Lesson lesson) {
        return lesson.id() + ".yaml";
    }
}

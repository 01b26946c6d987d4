package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.lesson.Lesson;
import java.util.List;

/**
 * The names of the files of a course, and their order.
 *
 * @param lessons the lessons in their order
 */
record Course(List<Lesson> lessons, Balances balances) {

    static final String INDEX = "index.html";
    static final String TEACHERS = "teachers.html";
    static final String ANSWERS = "answers.html";
    static final String STYLE = "site.css";
    static final String SCRIPT = "site.js";

    Course {
        lessons = List.copyOf(lessons);
    }

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

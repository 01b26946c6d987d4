package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.lesson.Lesson;

/** The scenario file beside each lesson, to be changed by the reader. */
final class Scenarios {

    private Scenarios() {}

    static String file(Lesson lesson) {
        return lesson.id() + ".yaml";
    }

    static String text(Lesson lesson) {
        return Catalogue.text(lesson.tryIt().scenario());
    }
}

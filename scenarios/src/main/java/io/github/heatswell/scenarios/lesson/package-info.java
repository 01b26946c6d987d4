/**
 * Lessons: why a relief valve weeps in a closed system, one idea at a time, each shown by runs.
 *
 * <p>A {@link io.github.heatswell.scenarios.lesson.Lesson} asks a question, lets the reader predict, runs one to four
 * {@linkplain io.github.heatswell.scenarios.lesson.LessonCase cases}, and says what to notice. Everything numerical it
 * says is taken from the {@link io.github.heatswell.scenarios.lesson.LessonRun}, in measures that can be shown in either
 * system of units; nothing is written down beforehand. {@link io.github.heatswell.scenarios.lesson.Lessons#all()} is a
 * course of them; a teacher builds his own with {@link
 * io.github.heatswell.scenarios.lesson.Lesson#builder(String, String)}.
 *
 * <p>All houses are invented.
 */
package io.github.heatswell.scenarios.lesson;

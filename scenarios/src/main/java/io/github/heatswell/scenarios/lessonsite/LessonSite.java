package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.lesson.Expectation;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Lessons as pages that need no server: an index, a page and a worksheet for each, a page for teachers that leads to
 * the answers, and a scenario file beside each to be changed.
 */
public final class LessonSite {

    private LessonSite() {}

    /**
     * Simulates the lessons, makes sure that what they rely on holds, and makes the pages.
     *
     * @param lessons the lessons in order, with different ids
     * @param first the unit system shown first; the other stands beside it and may be chosen
     * @return the files of the site; index.html is where to begin
     * @throws IllegalStateException if a run does not show what its lesson says; the message names both
     */
    public static List<ResultFile> files(List<Lesson> lessons, UnitSystem first) {
        return files(lessons, new BalanceCount(), first);
    }

    /**
     * Runs the lessons and writes their pages. Where the balance of a run does not close, the pages say so.
     *
     * @param lessons the lessons
     * @param count counts the runs behind the pages
     * @param first the units that come first
     * @return the same files
     */
    public static List<ResultFile> files(List<Lesson> lessons, BalanceCount count, UnitSystem first) {
        List<SolvedLesson> solved = Solver.solve(lessons, count);
        solved.forEach(one -> check(one.run()));
        solved.forEach(one -> count.add(one.run().count().sum()));
        Course course = new Course(lessons, count.sum());
        List<ResultFile> files = new ArrayList<>();
        files.add(page(Course.INDEX, IndexPage.of(course, first)));
        files.add(page(Course.STYLE, own("lessons.css")));
        files.add(page(Course.SCRIPT, own("lessons.js")));
        for (SolvedLesson one : solved) {
            files.add(page(Course.page(one.lesson()), LessonPage.of(course, one, first)));
            files.add(page(Course.worksheet(one.lesson()), WorksheetPage.of(course, one, first)));
            files.add(page(Course.scenario(one.lesson()), TryPart.scenario(one.lesson()))
                    .toBeChanged());
        }
        files.add(page(Course.TEACHERS, TeachersPage.of()));
        files.add(page(Course.ANSWERS, AnswersPage.of(course, solved, first)));
        return List.copyOf(files);
    }

    private static void check(LessonRun run) {
        for (Expectation.Checked expectation : run.checked()) {
            if (!expectation.held()) {
                throw new IllegalStateException("the run of lesson '"
                        + run.lesson().id() + "' does not show what it should: " + expectation.description());
            }
        }
    }

    private static ResultFile page(String name, String text) {
        return ResultFile.ofText(name, out -> out.append(text));
    }

    static String own(String name) {
        try (InputStream in = LessonSite.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

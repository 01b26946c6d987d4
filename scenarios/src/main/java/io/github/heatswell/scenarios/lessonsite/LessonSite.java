package io.github.heatswell.scenarios.lessonsite;

import io.github.heatswell.scenarios.lesson.Expectation;
import io.github.heatswell.scenarios.lesson.Lesson;
import io.github.heatswell.scenarios.lesson.LessonRun;
import io.github.heatswell.scenarios.markup.Html;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Lessons as pages that need no server: an index, a page and a worksheet for each, the answers, and a scenario file beside
 * each to be changed.
 */
public final class LessonSite {

    private LessonSite() {}

    /**
     * Simulates the lessons, makes sure that what they rely on holds, and makes the pages.
     *
     * @param lessons the lessons in order, with different ids
     * @param first the unit system shown first; the other can be switched to
     * @return the files of the site; index.html is where to begin
     * @throws IllegalStateException if a run does not show what its lesson says; the message names both
     */
    public static List<ResultFile> files(List<Lesson> lessons, UnitSystem first) {
        Frame frame = new Frame(lessons, first);
        List<LessonRun> runs = lessons.parallelStream().map(LessonSite::checked).toList();
        List<ResultFile> files = new ArrayList<>();
        files.add(page("index.html", IndexPage.of(frame)));
        files.add(page("site.css", Html.styleSheet() + "\n" + own("lessons.css")));
        files.add(page("site.js", own("lessons.js")));
        files.addAll(
                runs.parallelStream().flatMap(run -> pages(frame, run).stream()).toList());
        files.add(page("answers.html", AnswersPage.of(frame, runs)));
        return List.copyOf(files);
    }

    private static List<ResultFile> pages(Frame frame, LessonRun run) {
        Lesson lesson = run.lesson();
        return List.of(
                page(Frame.file(lesson), LessonPage.of(frame, run, new Pictures(run))),
                page(Frame.worksheet(lesson), WorksheetPage.of(frame, lesson)),
                page(Scenarios.file(lesson), Scenarios.text(lesson)));
    }

    private static LessonRun checked(Lesson lesson) {
        LessonRun run = LessonRun.of(lesson);
        for (Expectation.Checked expectation : run.checked()) {
            if (!expectation.held()) {
                throw new IllegalStateException("the run of lesson '" + lesson.id() + "' does not show what it should: "
                        + expectation.description());
            }
        }
        return run;
    }

    private static ResultFile page(String name, String text) {
        return ResultFile.ofText(name, out -> out.append(text));
    }

    private static String own(String name) {
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

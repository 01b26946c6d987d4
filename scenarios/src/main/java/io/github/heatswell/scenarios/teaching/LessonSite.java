package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * Lessons as pages that need no server: an index, a page and a worksheet for each, a page for teachers that leads to
 * the answers, and a scenario file beside each to be changed.
 */
final class LessonSite {

    private LessonSite() {}

    /** Runs the lessons and makes their pages. Where the balance of a run does not close, the pages say so. */
    static List<ResultFile> files(List<Lesson> lessons, BalanceCount count, UnitSystem first) {
        List<SolvedLesson> solved = Solver.solve(lessons, count);
        solved.forEach(one -> check(one.run()));
        solved.forEach(one -> count.add(one.run().count().sum()));
        SitePlan plan = new SitePlan(lessons, count.sum());
        List<ResultFile> files = new ArrayList<>();
        files.add(page(SitePlan.INDEX, IndexPage.of(plan, first)));
        files.add(page(SitePlan.STYLE, Course.resource("lessons.css")));
        files.add(page(SitePlan.SCRIPT, Course.resource("lessons.js")));
        for (SolvedLesson one : solved) {
            files.add(page(SitePlan.page(one.lesson()), LessonPage.of(plan, one, first)));
            files.add(page(SitePlan.worksheet(one.lesson()), WorksheetPage.of(plan, one, first)));
            files.add(page(SitePlan.scenario(one.lesson()), TryPart.scenario(one.lesson()))
                    .toBeChanged());
        }
        files.add(page(SitePlan.TEACHERS, TeachersPage.of()));
        files.add(page(SitePlan.ANSWERS, AnswersPage.of(plan, solved, first)));
        return List.copyOf(files);
    }

    private static void check(LessonRun run) {
        for (String refuted : run.refuted()) {
            throw new IllegalStateException(
                    "the run of lesson '" + run.lesson().id() + "' does not show what it should: " + refuted);
        }
    }

    private static ResultFile page(String name, String text) {
        return ResultFile.ofText(name, out -> out.append(text));
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.assessment.Measure;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.report.Html;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lessons as pages that need no server: an index, a page and a worksheet for each, a page for teachers that leads to
 * the answers, and a scenario file beside each to be changed.
 *
 * @param course the lessons, and what their pages say
 * @param balances how the balances of the runs behind the pages close
 * @param first the units that come first
 */
record LessonSite(Course course, Balances balances, UnitSystem first) {

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

    private static final Pattern KEPT = Pattern.compile("<(pre|code|svg)\\b.*?</\\1>|<[^>]*>", Pattern.DOTALL);

    /** In the words of the reader; passes over files, commands and pictures, which have words of their own. */
    private String spelled(String page) {
        StringBuilder text = new StringBuilder();
        Matcher kept = KEPT.matcher(page);
        int from = 0;
        while (kept.find()) {
            text.append(first.spelled(page.substring(from, kept.start()))).append(kept.group());
            from = kept.end();
        }
        return text.append(first.spelled(page.substring(from))).toString();
    }

    /** The scenario file to try. */
    static String scenario(Lesson lesson) {
        return lesson.id() + ".yaml";
    }

    /** Runs the lessons and makes their pages. Where the balance of a run does not close, the pages say so. */
    static List<ResultFile> files(Course course, Balances.Count count, UnitSystem first) {
        List<SolvedLesson> solved = SolvedLesson.solve(course.lessons(), count, first);
        solved.forEach(one -> check(one.run()));
        solved.forEach(one -> count.add(one.run().count().sum()));
        return new LessonSite(course, count.sum(), first).files(solved);
    }

    private static void check(LessonRun run) {
        for (String refuted : run.refuted()) {
            throw new IllegalStateException(
                    "the run of lesson '" + run.lesson().id() + "' does not show what it should: " + refuted);
        }
    }

    private List<ResultFile> files(List<SolvedLesson> solved) {
        List<ResultFile> files = new ArrayList<>();
        files.add(file(INDEX, new ProsePage(this, "index").write()));
        files.add(file(STYLE, Course.resource("lessons.css")));
        files.add(file(SCRIPT, Course.resource("lessons.js")));
        for (SolvedLesson one : solved) {
            Lesson lesson = one.lesson();
            files.add(file(page(lesson), new LessonPage(this, one).write()));
            files.add(file(worksheet(lesson), new Worksheet(this, one).write()));
            files.add(file(scenario(lesson), lesson.file(first)).toBeChanged());
        }
        files.add(file(TEACHERS, new ProsePage(this, "teachers").write()));
        files.add(file(ANSWERS, new AnswerKey(this, solved).write()));
        return List.copyOf(files);
    }

    private ResultFile file(String name, String page) {
        String text = name.endsWith(".html") ? spelled(page) : page;
        return ResultFile.ofText(name, out -> out.append(text));
    }

    /** The answer key of all worksheets, on a page of its own: what is right, and what to say to what is not. */
    private static final class AnswerKey {

        private final List<SolvedLesson> solved;
        private final Page page;
        private final Html html;

        AnswerKey(LessonSite site, List<SolvedLesson> solved) {
            this.solved = solved;
            this.page = new Page(site, "answers", site.course().say("key"));
            this.html = page.html();
        }

        String write() {
            page.contents(LessonSite.ANSWERS);
            html.open("main", "id", "main").leaf("h1", page.say("key"));
            page.reliability();
            html.leaf("p", page.say("key-intro"));
            page.unitsChoice();
            for (int i = 0; i < solved.size(); i++) {
                lesson(i + 1, solved.get(i));
            }
            html.closeLine();
            return page.end();
        }

        private void lesson(int number, SolvedLesson one) {
            Lesson lesson = one.lesson();
            html.open("section", "class", "key", "aria-labelledby", "key-" + lesson.id());
            html.leaf("h2", number + ". " + lesson.title(), "id", "key-" + lesson.id());
            question(lesson.prediction().question());
            html.leaf("strong", one.run().right().text()).closeLine();
            html.leaf("p", page.say("key-wrong"), "class", "quiet").open("ul");
            for (Lesson.Option option : lesson.prediction().options()) {
                option.reply().ifPresent(reply -> {
                    html.open("li").text("\u201c" + option.text() + "\u201d ");
                    page.statement(reply.words().in(one.run()));
                    html.closeLine();
                });
            }
            html.closeLine();
            readings(one);
            question(lesson.checkQuestion());
            page.statement(lesson.checkAnswer().words().in(one.run()));
            html.closeLine();
            html.closeLine();
        }

        private void question(String text) {
            html.open("p").leaf("span", text, "class", "quiet").text(" ");
        }

        private void readings(SolvedLesson one) {
            List<Measure> answers = one.run().answers();
            if (!answers.isEmpty()) {
                html.open("table").leaf("caption", page.say("key-readings")).open("tbody");
                for (int i = 0; i < answers.size(); i++) {
                    html.open("tr")
                            .leaf("th", one.lesson().readings().get(i).label(), "scope", "row")
                            .open("td");
                    page.measure(answers.get(i));
                    html.close().closeLine();
                }
                html.closeLine().closeLine();
            }
        }
    }
}

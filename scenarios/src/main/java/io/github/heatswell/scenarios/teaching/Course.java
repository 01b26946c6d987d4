package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lessons in the order in which they are best read. Immutable. */
public final class Course {

    private final List<Lesson> lessons;

    private Course(List<Lesson> lessons) {
        this.lessons = lessons;
    }

    /**
     * The bundled course: why relief valves drip in closed systems.
     *
     * @return its lessons
     */
    public static Course bundled() {
        Map<String, String> texts = new LinkedHashMap<>();
        Fields.of(resource("course.yaml")).texts("lessons", 1).forEach(id -> texts.put(id, resource(id + ".yaml")));
        return of(texts);
    }

    /**
     * A course of one's own. Its lessons may name the cautions and sources of the bundled course.
     *
     * @param texts the text of each lesson by its id, in the order of the course; an id is made of small letters, digits and
     *     hyphens
     * @return the lessons
     * @throws IllegalArgumentException if a text is no lesson; the message names lesson, line and column
     */
    public static Course of(Map<String, String> texts) {
        Fields shared = Fields.of(resource("course.yaml"));
        Map<String, String> cautions = new LinkedHashMap<>();
        shared.named("cautions").forEach((name, node) -> cautions.put(name, Fields.text(node, name)));
        Map<String, Citation> sources = new LinkedHashMap<>();
        shared.named("sources")
                .forEach((name, node) -> sources.put(name, LessonReader.citation(Fields.of(node, name))));
        return new Course(texts.entrySet().stream()
                .map(text -> LessonReader.read(text.getKey(), text.getValue(), cautions, sources))
                .toList());
    }

    /**
     * What the lessons are called.
     *
     * @return their titles, in order
     */
    public List<String> titles() {
        return lessons.stream().map(Lesson::title).toList();
    }

    /**
     * Runs the lessons, makes sure that the runs show what they say, and makes the pages. Where the balance of a run does not
     * close, the pages say so.
     *
     * @param count counts the runs behind the pages
     * @param first the units that come first; the others stand beside them and may be chosen
     * @return the files of a site that needs no server; index.html is where to begin
     * @throws IllegalStateException if a run does not show what its lesson says; the message names both
     */
    public List<ResultFile> pages(BalanceCount count, UnitSystem first) {
        return LessonSite.files(lessons, count, first);
    }

    List<Lesson> lessons() {
        return lessons;
    }

    static String resource(String name) {
        try (InputStream in = Course.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

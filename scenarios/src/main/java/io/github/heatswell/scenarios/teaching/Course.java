package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.document.Node;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Lessons in the order in which they are best read. Immutable. */
public final class Course {

    private final List<Lesson> lessons;
    private final Map<String, String> words;
    private final Map<String, Node> pages;

    private Course(List<Lesson> lessons, Fields shared) {
        this.lessons = lessons;
        this.words = texts(shared, "words");
        this.pages = shared.named("pages");
    }

    /**
     * The bundled course: why relief valves drip in closed systems.
     *
     * @return its lessons
     */
    public static Course bundled() {
        Map<String, String> texts = new LinkedHashMap<>();
        shared().texts("lessons", 1).forEach(id -> texts.put(id, resource(id + ".yaml")));
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
        Fields shared = shared();
        Map<String, String> cautions = texts(shared, "cautions");
        Map<String, Citation> sources = new LinkedHashMap<>();
        shared.named("sources")
                .forEach((name, node) -> sources.put(name, LessonReader.citation(Fields.of(node, name))));
        return of(texts.entrySet().stream()
                .map(text -> LessonReader.read(text.getKey(), text.getValue(), cautions, sources))
                .toList());
    }

    /** A course of lessons that were read before. */
    static Course of(List<Lesson> lessons) {
        return new Course(lessons, shared());
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
    public List<ResultFile> pages(Balances.Count count, UnitSystem first) {
        return LessonSite.files(this, count, first);
    }

    List<Lesson> lessons() {
        return lessons;
    }

    /** Words that pages share, with values in the places of its braces. */
    String say(String name, Object... values) {
        String text = words.get(name);
        if (text == null) {
            throw new IllegalStateException("the course has no words for " + name);
        }
        for (Object value : values) {
            int place = text.indexOf("{}");
            text = text.substring(0, place) + value + text.substring(place + 2);
        }
        return text;
    }

    /** The text of a page of prose. */
    Fields prose(String name) {
        return Fields.of(pages.get(name), name);
    }

    private static Fields shared() {
        return Fields.of(resource("course.yaml"));
    }

    private static Map<String, String> texts(Fields from, String key) {
        return from.named(key).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> Fields.text(entry.getValue(), entry.getKey()),
                        (one, other) -> other,
                        LinkedHashMap::new));
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

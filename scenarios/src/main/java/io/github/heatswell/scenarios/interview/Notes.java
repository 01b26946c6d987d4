package io.github.heatswell.scenarios.interview;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Answers kept in the comments of an unfinished file, one in a line: {@code #: tank.volume = 230 L}. They are read as if
 * they were typed again, so that whatever was changed in the file is checked like any answer.
 */
final class Notes {

    private static final String MARK = "#: ";
    private static final String EQUALS = " = ";

    private final Map<String, String> lines;

    private Notes(Map<String, String> lines) {
        this.lines = lines;
    }

    /** Finds the notes in a text. */
    static Notes in(String text) {
        Map<String, String> lines = new LinkedHashMap<>();
        text.lines()
                .filter(line -> line.startsWith(MARK) && line.contains(EQUALS))
                .map(line -> line.substring(MARK.length()).split(EQUALS, 2))
                .forEach(parts -> lines.put(parts[0].strip(), parts[1].strip()));
        return new Notes(lines);
    }

    /** Notes of answers, as lines of comment. */
    static String of(Answers answers) {
        StringBuilder text = new StringBuilder();
        for (Question question : Questions.after(answers)) {
            answers.to(question).ifPresent(answer -> text.append(line(question.id(), spoken(answer))));
        }
        return text.toString();
    }

    /** An answer in words that are understood as the same answer. */
    private static String spoken(Answers.Answer answer) {
        return answer.known()
                ? (answer.two() ? "two, " : "") + (answer.guessed() ? "maybe " : "") + answer.value()
                : "dk";
    }

    /** A note as a line of comment. */
    static String line(String id, String value) {
        return MARK + id + EQUALS + value + "\n";
    }

    /** What is noted under a name. */
    Optional<String> said(String id) {
        return Optional.ofNullable(lines.get(id));
    }

    boolean isEmpty() {
        return lines.isEmpty();
    }

    int count() {
        return lines.size();
    }

    boolean has(Question question) {
        return lines.containsKey(question.id());
    }

    String line(Question question) {
        return lines.get(question.id());
    }
}

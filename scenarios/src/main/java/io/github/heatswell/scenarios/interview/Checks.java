package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.document.Fault;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/**
 * Shows answers to the reader of files, so that an interview accepts what a file may say and nothing else, in the same
 * words.
 */
final class Checks {

    private final UnitSystem units;

    Checks(UnitSystem units) {
        this.units = units;
    }

    /**
     * What the reader of files says against the answers. That others are still missing is no matter.
     *
     * @param answers answers to any of the questions
     * @param asked the question to which the last answer belongs
     * @return sentences, none if all is well
     */
    List<String> faults(Answers answers, Question asked) {
        try {
            ScenarioReader.read("interview", plain(ScenarioText.of(answers, units)));
            return List.of();
        } catch (InvalidScenarioException e) {
            List<Line> written =
                    new Lines(answers, units).all().stream().filter(Line::given).toList();
            return e.faults().stream()
                    .map(Fault::message)
                    .filter(message -> written.stream().anyMatch(line -> concerns(field(message), line)))
                    .map(message -> sentence(message, asked))
                    .distinct()
                    .toList();
        }
    }

    static String plain(String text) {
        return text.replaceAll("(?m)^(  [^#\\n]*?) \\+- [0-9.]+ [A-Za-z/]+", "$1")
                .replaceAll("(?m)^(  [^#\\n]*?) to [0-9.]+ [A-Za-z/]+", "$1");
    }

    private static boolean concerns(String field, Line line) {
        return field.equals(line.path()) || field.startsWith(line.path() + ".");
    }

    /** The field a message is about, without the places in lists; nothing if it is about none. */
    private static String field(String message) {
        return message.substring(0, Math.max(0, message.indexOf(": "))).replaceAll("\\[\\d+]", "");
    }

    private static String sentence(String message, Question asked) {
        String field = field(message);
        String words = message.substring(message.indexOf(": ") + 2);
        return Questions.all().stream()
                .filter(question -> concerns(field, new Line(question.id(), "", "")))
                .filter(question -> question != asked)
                .findFirst()
                .map(question -> question.label() + ": " + words)
                .orElse(words);
    }
}

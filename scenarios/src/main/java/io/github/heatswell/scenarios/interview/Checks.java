package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Origins;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.ScenarioText.Reach;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Checks answers with the scenario reader, so that an interview accepts exactly what a file may say, with the same
 * messages.
 */
final class Checks {

    /** The entries of the timetable that hold what the mains has at night; see {@link ScenarioText}. */
    private static final Pattern NIGHT_ENTRY = Pattern.compile("supply\\.pressure\\[[01]].*");

    private final UnitSystem units;

    Checks(UnitSystem units) {
        this.units = units;
    }

    /**
     * What the reader of files says against the answers, also where all that is uncertain is as low or as high as a
     * study may take it. Missing answers are ignored.
     *
     * @param answers answers to any of the questions
     * @param asked the question to which the last answer belongs
     * @return sentences, none if all is well
     */
    List<String> faults(Answers answers, Question asked) {
        List<Lines.Line> written = new Lines(answers, units)
                .all().stream().filter(Lines.Line::given).toList();
        for (Reach reach : Reach.values()) {
            List<String> faults = faults(ScenarioText.of(answers, units, reach)).stream()
                    .filter(message -> written.stream().anyMatch(line -> concerns(field(message), line)))
                    .map(message -> sentence(message, asked))
                    .distinct()
                    .toList();
            if (!faults.isEmpty()) {
                return faults;
            }
        }
        return List.of();
    }

    private static List<String> faults(String text) {
        try {
            ScenarioReader.read("interview", text);
            return List.of();
        } catch (InvalidScenarioException e) {
            return e.faults().stream().map(Fault::message).toList();
        }
    }

    private static boolean concerns(String field, Lines.Line line) {
        return field.equals(line.path()) || field.startsWith(line.path() + ".");
    }

    /** The field a message is about, without the places in lists; nothing if it is about none. */
    private static String field(String message) {
        String field = message.substring(0, Math.max(0, message.indexOf(": ")));
        return NIGHT_ENTRY.matcher(field).matches() ? SupplyQuestions.NIGHT : field.replaceAll("\\[\\d+]", "");
    }

    private static String sentence(String message, Question asked) {
        String field = field(message);
        String words = message.substring(message.indexOf(": ") + 2);
        return Questions.all().stream()
                .filter(question -> concerns(field, new Lines.Line(question.id(), "", "", Origins.Kind.GIVEN)))
                .filter(question -> question != asked)
                .findFirst()
                .map(question -> question.label() + ": " + words)
                .orElse(words);
    }
}

package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.teaching.Lesson.Claim;
import java.util.List;

/**
 * A change to a house of the lesson that the reader makes himself.
 *
 * @param house the house before it is changed
 * @param changes what to change
 * @param shows what the changed house shows; expressions call it {@link #NAME}
 */
record TryIt(LessonHouse house, List<Change> changes, Claim shows) {

    static final String NAME = "tried";

    /** The command to type. */
    String command() {
        return house.command(changes);
    }

    /** The house as a file, before anything is changed, named after the lesson. */
    String file(Lesson lesson) {
        Scenario named = house.scenario()
                .with(List.of(
                        Change.of("title=" + shown(lesson.title() + ": " + house.label())),
                        Change.of("question=" + shown(lesson.question())),
                        Change.of("expect=none")));
        return "# An invented house, as the page of the lesson shows it; its numbers are ordinary ones.\n"
                + named.changedText();
    }

    /** A scenario file holds no characters that do not show. */
    private static String shown(String text) {
        return text.replaceAll("\\p{C}", " ").strip();
    }
}

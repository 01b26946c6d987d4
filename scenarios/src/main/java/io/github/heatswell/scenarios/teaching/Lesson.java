package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.citation.Citation;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One idea, shown by runs.
 *
 * @param id a short name in small letters, digits and hyphens
 * @param title its heading
 * @param question what the reader wonders
 * @param cautions what not to touch, and who decides: shown before anything else
 * @param cautionsAfter cautions that would tell the outcome, and so are shown with it
 * @param houses the houses that are compared, one to four
 * @param others further houses that expressions name, among them {@code tried}
 * @param prediction what to predict before looking
 * @param notice what to notice in the runs
 * @param why why it is so, paragraph by paragraph
 * @param formula the formula that matters
 * @param tryIt what to try oneself
 * @param checkQuestion a question to see whether it was understood
 * @param checkAnswer its answer
 * @param sources where the facts come from, and how far that was checked
 * @param expected what else the runs must show
 * @param slider a field to move
 * @param readings what to read off for the worksheet
 */
record Lesson(
        String id,
        String title,
        String question,
        List<String> cautions,
        List<String> cautionsAfter,
        List<LessonHouse> houses,
        Map<String, Scenario> others,
        Prediction prediction,
        List<Claim> notice,
        List<Claim> why,
        Formula formula,
        TryIt tryIt,
        String checkQuestion,
        Claim checkAnswer,
        List<Citation> sources,
        List<Claim> expected,
        Optional<LessonSlider> slider,
        List<Reading> readings) {

    /**
     * A sentence about the runs.
     *
     * @param words the sentence, with places for numbers
     * @param check what must hold for it to be true, where it compares or counts
     */
    record Claim(Template words, Optional<Expression> check) {

        /** Whether the runs bear it out, as far as that is checked. */
        boolean holds(LessonRun run) {
            return check.isEmpty() || check.get().holds(run);
        }
    }

    /** What to predict: a question, and three or four answers to choose from. */
    record Prediction(String question, List<Option> options) {}

    /**
     * An answer to choose.
     *
     * @param text the answer
     * @param when when the runs show it; without that, when they show none of the others
     * @param reply what to tell whoever chose it, unless it is right
     */
    record Option(String text, Optional<Expression> when, Optional<Claim> reply) {}

    /**
     * A formula in plain text.
     *
     * @param text the formula
     * @param symbols what its letters mean, with their units, in order
     * @param source where it comes from
     */
    record Formula(String text, Map<String, Template> symbols, Citation source) {}

    /** A value to read off a picture, and the right one. */
    record Reading(String label, Expression answer) {}

    /** Everything the lesson says of its runs, in the order of the page. */
    List<Claim> claims() {
        return Stream.of(
                        prediction.options().stream().flatMap(option -> option.reply().stream()),
                        notice.stream(),
                        why.stream(),
                        Stream.of(checkAnswer))
                .flatMap(claims -> claims)
                .toList();
    }
}

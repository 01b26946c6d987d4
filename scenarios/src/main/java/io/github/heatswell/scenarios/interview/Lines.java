package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.file.Origin;
import io.github.heatswell.scenarios.interview.Answers.Answer;
import io.github.heatswell.scenarios.interview.Question.Unknown;
import io.github.heatswell.scenarios.interview.ScenarioText.Reach;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a file says, question by question. */
final class Lines {

    /** How many times as far as a reading a guess may be off: our own judgement, no source. */
    private static final double GUESS = 2;

    private final Answers answers;
    private final UnitSystem units;
    private final Reach reach;

    Lines(Answers answers, UnitSystem units) {
        this(answers, units, Reach.AS_WRITTEN);
    }

    Lines(Answers answers, UnitSystem units, Reach reach) {
        this.answers = answers;
        this.units = units;
        this.reach = reach;
    }

    /** One line for every question that was answered and makes sense. */
    List<Line> all() {
        List<Line> lines = new ArrayList<>();
        for (Question question : Questions.after(answers)) {
            of(question).ifPresent(lines::add);
        }
        return lines;
    }

    /** What is said about a question; empty if it was not answered. */
    Optional<Line> of(Question question) {
        return answers.to(question)
                .map(answer -> answer.known() ? known(question, answer) : unknown(question))
                .map(line -> new Line(
                        line.path(), question.kind().reaching(line.value(), reach), line.comment(), line.origin()));
    }

    private Line known(Question question, Answer answer) {
        if (question.id().equals(PlaceQuestion.PLACE) && answer.guessed()) {
            return new Line(question.id(), answer.value(), "as answered; " + PlaceQuestion.TAKEN, Origin.GUESSED);
        }
        String said = answer.guessed() ? "as guessed" : "as answered";
        Origin origin = answer.guessed() ? Origin.GUESSED : Origin.GIVEN;
        if (AnswerKind.Quantity.isRange(answer.value()) && question.kind() instanceof AnswerKind.Quantity) {
            return new Line(question.id(), answer.value(), said + ": anything between these", origin);
        }
        boolean reading = answer.spread() && !answer.value().equals(AnswerKind.Quantity.NONE);
        String deviation = reading ? question.spread().of(answer.value(), answer.guessed() ? GUESS : 1) : "";
        return deviation.isEmpty()
                ? new Line(question.id(), answer.value(), said, origin)
                : new Line(
                        question.id(),
                        answer.value() + " +- " + deviation,
                        said + "; within +- with 95 % probability: "
                                + (answer.guessed()
                                        ? "twice the usual error of a reading"
                                        : units.spelled(question.spread().reason()))
                                + ", common practice, no source",
                        answer.guessed() ? origin : Origin.USUAL_ACCURACY);
    }

    private Line unknown(Question question) {
        Unknown unknown = question.unknown(answers);
        return new Line(question.id(), unknown.in(units), unknown.reason(), Origin.TYPICAL);
    }

    /**
     * What a file says about one question.
     *
     * @param path the field
     * @param value what the file gives, with its uncertainty; empty if the field is left out
     * @param comment what the value rests on
     * @param origin where the value comes from
     */
    record Line(String path, String value, String comment, Origin origin) {

        /** The section of the file, or the field itself where it stands at the top. */
        String section() {
            int dot = path.indexOf('.');
            return dot < 0 ? path : path.substring(0, dot);
        }

        /** The key in its section. */
        String key() {
            return path.substring(path.indexOf('.') + 1);
        }

        boolean given() {
            return !value.isEmpty();
        }
    }
}

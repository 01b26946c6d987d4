package io.github.heatswell.scenarios.interview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All questions, in the order in which they are asked. */
final class Questions {

    private static final List<Question> ALL = Stream.of(
                    List.of(PlaceQuestion.question()),
                    SupplyQuestions.list(),
                    TankQuestions.list(),
                    ReliefQuestions.list(),
                    UseQuestions.list())
            .flatMap(List::stream)
            .toList();

    private Questions() {}

    static List<Question> all() {
        return ALL;
    }

    /** The questions that make sense after these answers, answered or not. */
    static List<Question> after(Answers answers) {
        return ALL.stream().filter(question -> question.appliesAfter(answers)).toList();
    }

    /** The first question that is not answered yet. */
    static Optional<Question> next(Answers answers) {
        return after(answers).stream()
                .filter(question -> !answers.has(question))
                .findFirst();
    }

    static Question named(String id) {
        return ALL.stream()
                .filter(question -> question.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}

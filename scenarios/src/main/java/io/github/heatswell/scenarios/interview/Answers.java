package io.github.heatswell.scenarios.interview;

import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.units.Unit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answers so far, in the order in which they were given. Immutable. */
final class Answers {

    private static final Answers NONE = new Answers(Map.of());

    private final Map<String, Answer> given;

    private Answers(Map<String, Answer> given) {
        this.given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
    }

    static Answers none() {
        return NONE;
    }

    /** These and one more. */
    Answers with(Question question, Answer answer) {
        Map<String, Answer> more = new LinkedHashMap<>(given);
        more.put(question.id(), answer);
        return new Answers(more);
    }

    /** All but the last. */
    Answers withoutLast() {
        List<String> ids = new ArrayList<>(given.keySet());
        Map<String, Answer> fewer = new LinkedHashMap<>(given);
        if (!ids.isEmpty()) {
            fewer.remove(ids.get(ids.size() - 1));
        }
        return new Answers(fewer);
    }

    boolean isEmpty() {
        return given.isEmpty();
    }

    int count() {
        return given.size();
    }

    Optional<Answer> to(Question question) {
        return Optional.ofNullable(given.get(question.id()));
    }

    boolean has(Question question) {
        return given.containsKey(question.id());
    }

    /** The units of all answers, as often as each was used. */
    List<Unit> units() {
        return given.values().stream()
                .flatMap(answer -> QuantityReader.units(answer.value()).stream())
                .toList();
    }

    /** Whether a question got this answer. */
    boolean say(String id, String value) {
        return given.containsKey(id) && given.get(id).value().equals(value);
    }

    /** Whether a question got an answer that is known and not "none". */
    boolean know(String id) {
        return given.containsKey(id)
                && given.get(id).known()
                && !given.get(id).value().equals(AnswerKind.Quantity.NONE);
    }

    /** Whether the answer to a question said that there are two such things. */
    boolean nameTwo(String id) {
        return given.containsKey(id) && given.get(id).two();
    }

    /**
     * One answer.
     *
     * @param value the value as a file writes it, without uncertainty; empty if it is not known
     * @param spread whether the file gives the uncertainty of the reading
     * @param guessed whether it was said roughly, or as a guess; of a place, whether its code was only taken from a state or a country
     * @param two whether it was said that there are two such things
     */
    record Answer(String value, boolean spread, boolean guessed, boolean two) {

        /** Nobody knows. */
        static final Answer UNKNOWN = new Answer("", false, false, false);

        Answer(String value, boolean spread, boolean guessed) {
            this(value, spread, guessed, false);
        }

        boolean known() {
            return !value.isEmpty();
        }

        Answer withoutSpread() {
            return new Answer(value, false, guessed, two);
        }
    }
}

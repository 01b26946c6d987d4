package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.util.List;
import java.util.Optional;

/** Warning that the balance of a run does not close. */
public final class OpenBalance {

    /** The word in front of the sentence. */
    public static final String WORD = Alarm.Level.NOT_RELIABLE.word();

    private OpenBalance() {}

    /**
     * The sentence on an answer that takes many runs.
     *
     * @param balances those of its runs
     * @return the sentence, or empty if all balances close
     */
    public static Optional<String> among(Balances balances) {
        return among(balances, "this answer");
    }

    /** The sentence on a part of an answer that takes many runs; empty if all balances close. */
    static Optional<String> among(Balances balances, String what) {
        return balances.close()
                ? Optional.empty()
                : Optional.of("The balance of " + balances.open() + " of the " + balances.runs() + " runs behind "
                        + what + " does not close. Do not rely on its figures; please report the scenario.");
    }

    /**
     * The same for a terminal, with the word in front and an empty line behind.
     *
     * @param balances those of its runs
     * @return the lines, or an empty text if all balances close
     */
    public static String lines(Balances balances) {
        return among(balances)
                .map(said -> Wrapped.lines(WORD + ": " + said, "", "  ") + "\n")
                .orElse("");
    }

    /** The same for the top of a page; empty if all balances close. */
    static List<AlarmNote> notes(Balances balances) {
        return among(balances).map(said -> new AlarmNote(WORD, said)).stream().toList();
    }

    /** The sentence on the advice beside a run; empty if all its balances close. */
    static List<AlarmNote> ofAdvice(Balances balances) {
        return among(balances, "the check sheet and the sizes").map(said -> new AlarmNote(WORD, said)).stream()
                .toList();
    }
}

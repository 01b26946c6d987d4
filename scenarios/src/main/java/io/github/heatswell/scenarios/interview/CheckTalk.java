package io.github.heatswell.scenarios.interview;

import io.github.heatswell.checksheet.CheckSheet;
import io.github.heatswell.scenarios.interview.Question.Choice;
import io.github.heatswell.scenarios.quantity.Kind;
import io.github.heatswell.scenarios.quantity.QuantityReader;
import io.github.heatswell.scenarios.quantity.QuantityReader.Amount;
import io.github.heatswell.scenarios.wording.Spoken;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Asks for the readings of the check sheet, one by one or in one line. */
final class CheckTalk {

    private static final List<String> MISSED = List.of("-", "no", "dk", "missed", "none", "not taken");
    private static final AnswerKind.Quantity GAUGE =
            AnswerKind.Quantity.of(Kind.PRESSURE, new Choice("4.2 bar", "60 psi"));

    private final Dialogue dialogue;
    private final UnitSystem units;
    private final List<CheckSheet.Reading.Kind> moments;
    private final Map<CheckSheet.Reading.Kind, Double> read = new EnumMap<>(CheckSheet.Reading.Kind.class);

    CheckTalk(Dialogue dialogue, UnitSystem units, List<CheckSheet.Reading.Kind> moments) {
        this.dialogue = dialogue;
        this.units = units;
        this.moments = moments;
    }

    /** How it ended. */
    enum Ending {
        /** With all that was read, possibly nothing. */
        DONE,
        /** The readings are not taken yet. */
        LATER,
        /** The input ended. */
        ENDED
    }

    /** What was read (Pa, gauge). */
    Map<CheckSheet.Reading.Kind, Double> read() {
        return Collections.unmodifiableMap(read);
    }

    /** Asks for all of them. */
    Ending hold() {
        dialogue.blankLine();
        dialogue.say(units.spelled("Then type what the gauge showed, in the order of the sheet, such as " + example()
                + ": one by one, or all in one line with commas between. Type - for one you missed, later to come back once you"
                + " have read it, or skip to go on without."));
        Deque<String> typed = new ArrayDeque<>();
        int wrong = 0;
        for (int i = 0; i < moments.size() && wrong < Interviewer.PATIENCE; ) {
            if (typed.isEmpty()) {
                dialogue.say(moments.get(i).when() + ":", "   " + (i + 1) + " of " + moments.size() + ", ", "   ");
                Optional<String> line = dialogue.hear();
                if (line.isEmpty()) {
                    return Ending.ENDED;
                }
                Arrays.stream(line.get().split("\\s*[,;]\\s+|\\s*;\\s*"))
                        .filter(one -> !one.isBlank())
                        .forEach(typed::add);
                if (typed.isEmpty()) {
                    typed.add("");
                }
            }
            String word = typed.remove();
            String plain = Spoken.of(word).plain().toLowerCase(Locale.ROOT);
            if (plain.equals("later") || Interview.LEAVE.contains(plain)) {
                return Ending.LATER;
            } else if (plain.equals("skip")) {
                return Ending.DONE;
            } else if (plain.equals("back")) {
                i = Math.max(0, i - 1);
                read.remove(moments.get(i));
            } else if (MISSED.contains(plain) || Spoken.of(word).doubt() == Spoken.Doubt.UNKNOWN) {
                i++;
            } else if (take(moments.get(i), word)) {
                i++;
            } else {
                typed.clear();
                wrong++;
            }
        }
        return wrong < Interviewer.PATIENCE ? Ending.DONE : Ending.LATER;
    }

    private String example() {
        return GAUGE.offer(units).replaceFirst(".*such as ", "");
    }

    private boolean take(CheckSheet.Reading.Kind moment, String word) {
        try {
            if (word.isEmpty()) {
                throw new IllegalArgumentException("an empty line is no reading; type - for one you missed");
            }
            Amount<? extends Unit> amount = QuantityReader.read(GAUGE.understand(word, units), Kind.PRESSURE);
            double gauge = amount.unit().toSi(amount.value());
            read.put(moment, gauge);
            return true;
        } catch (IllegalArgumentException refused) {
            dialogue.say("Not accepted: " + refused.getMessage() + ".");
            return false;
        }
    }
}

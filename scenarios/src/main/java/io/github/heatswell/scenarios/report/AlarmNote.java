package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Objects;

/**
 * A note at the top of a report: a hazard that a run met, or a limit that it passed.
 *
 * @param word how bad it is, in a word such as {@code HAZARD}
 * @param text what happened, when, and what it means
 */
record AlarmNote(String word, String text) implements Block {

    AlarmNote {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(text, "text");
    }

    /** Whether it is about the figures, and not about the house. */
    boolean isDoubt() {
        return word.startsWith(Alarm.Level.NOT_RELIABLE.word());
    }

    @Override
    public void show(Renderer renderer) {
        renderer.alarm(this);
    }

    /** The alarms of a house as described, for answers that are not about one run. */
    static List<AlarmNote> of(Scenario scenario, QuantityFormat shown) {
        return notes(ofHouse(scenario), "", shown);
    }

    /** The alarms of a house as described. */
    static List<Alarm> ofHouse(Scenario scenario) {
        return Narrative.alarms(scenario.system(), scenario.doubts());
    }

    /**
     * Alarms as reports have them.
     *
     * @param alarms what to say
     * @param when what follows the word, such as {@code " in the house as it is"}; may be empty
     * @param shown how quantities are written
     */
    static List<AlarmNote> notes(List<Alarm> alarms, String when, QuantityFormat shown) {
        return alarms.stream()
                .map(alarm ->
                        new AlarmNote(alarm.level().word() + when, alarm.text().text(shown)))
                .toList();
    }

    /**
     * Alarms as paragraphs of a terminal.
     *
     * @param alarms what to say
     * @param when what follows the word, such as {@code " in the house as it is"}; may be empty
     */
    static String lines(List<AlarmNote> alarms, String when) {
        StringBuilder text = new StringBuilder();
        alarms.forEach(note -> text.append(
                        Wrapped.lines(Printable.line(note.word() + when + ": " + note.text()), "", "        "))
                .append('\n'));
        return text.toString();
    }

    /** That the balance of some runs behind an answer does not close; nothing if all do. */
    static List<AlarmNote> open(Balances balances, QuantityFormat shown) {
        return notes(Alarm.open(balances, "this answer").stream().toList(), "", shown);
    }
}

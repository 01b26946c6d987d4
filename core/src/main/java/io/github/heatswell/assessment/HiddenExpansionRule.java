package io.github.heatswell.assessment;

import io.github.heatswell.assessment.Finding.Severity;
import io.github.heatswell.assessment.Measure.Kind;
import io.github.heatswell.place.PlaceRule.Topic;
import io.github.heatswell.result.Event;
import io.github.heatswell.system.Leak;
import io.github.heatswell.system.NamedValue;
import io.github.heatswell.system.Supply;
import java.util.function.Consumer;

/** Accidental relief of the expansion that will not last: a leaking check valve, trapped air, a dripping tap. */
final class HiddenExpansionRule implements Rule {

    private static final String WATCH =
            "Watch a gauge through a heat-up after that, since the pressure will climb higher than before.";

    @Override
    public void look(AssessmentContext subject, Consumer<CandidateFinding> found) {
        if (subject.open()) {
            return;
        }
        Supply supply = subject.house.supply();
        if (supply.arrangement() == Supply.Arrangement.CHECK_VALVE && supply.seatLeakage() > 0) {
            Measure flow = new Measure(Kind.FLOW, supply.seatLeakage());
            found.accept(Finding.draft("check-valve-leaks", Severity.CAUTION)
                    .rests(NamedValue.ARRANGEMENT)
                    .says(
                            "The supply check valve lets {} back at a difference of one bar, which hides "
                                    + (opened(subject) ? "part of the expansion." : "the expansion."),
                            flow)
                    .found(flow)
                    .advisesWork("Have the check valve replaced" + provided(subject) + WATCH)
                    .asks("Ask the water company what it requires against water flowing back into its pipes.")
                    .by(subject.by(Topic.EXPANSION_CONTROL, Codes.EXPANSION_CONTROL)));
        }
        double piping = subject.house.trappedAir().orElse(0);
        double tank = subject.house.tank().air().orElse(0);
        if (piping + tank > 0) {
            String where = tank == 0 ? "in the piping" : piping == 0 ? "in the tank" : "in tank and piping";
            found.accept(Finding.draft("trapped-air", Severity.CAUTION)
                    .says(
                            "{} of air " + where + " cushions the expansion until the water has dissolved it.",
                            Measure.volume(piping + tank))
                    .found(Measure.volume(piping + tank))
                    .advises("Do not count on it: "
                            + (subject.soundVessel().isPresent() ? "" : "provide expansion control, then ")
                            + (tank == 0 ? "let the air out. " : "run a hot tap until no air comes. ") + WATCH)
                    .by(Codes.DESCRIPTION));
        }
        double leaked = subject.house.leaks().stream().mapToDouble(Leak::flow).sum();
        if (leaked > 0) {
            Measure flow = new Measure(Kind.FLOW, leaked);
            found.accept(Finding.draft("dripping-hides-expansion", Severity.CAUTION)
                    .says(
                            "A dripping tap or joint, {} in all, releases "
                                    + (opened(subject)
                                            ? "part of the extra water and hides part of the expansion."
                                            : "the extra water and hides the expansion."),
                            flow)
                    .found(flow)
                    .advisesWork("Have the drip stopped" + provided(subject) + WATCH)
                    .by(Codes.DESCRIPTION));
        }
    }

    /** Whether a relief valve showed in the run what the rest does not let away. */
    private static boolean opened(AssessmentContext subject) {
        return subject.run.isPresent()
                && subject.house.reliefValves().stream()
                        .anyMatch(valve ->
                                subject.run.get().openings(valve.name()).anyMatch(Event::openedByPressure));
    }

    /** A vessel that works is expansion control, and is judged by findings of its own. */
    private static String provided(AssessmentContext subject) {
        return subject.soundVessel().isPresent() ? ". " : ", and expansion control provided first. ";
    }
}

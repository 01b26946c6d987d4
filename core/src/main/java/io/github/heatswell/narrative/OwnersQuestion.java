package io.github.heatswell.narrative;

import io.github.heatswell.assessment.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What an owner asks who sees a relief valve drip, or not; a run answers it by its first word. */
enum OwnersQuestion {
    /** It drips while the water heats. */
    EXPANSION("Is it thermal expansion?", "relief-valve-controls-expansion") {
        @Override
        String answer(boolean found, boolean drips) {
            return found
                    ? "Yes, as described: the heated water has nowhere else to go."
                    : drips ? "No: in the house as described something else makes it run." : DRY;
        }
    },
    /** It drips at night. */
    MAINS("Is it the mains pressure?", "supply-opens-relief-valve") {
        @Override
        String answer(boolean found, boolean drips) {
            return found
                    ? "Yes, as described: the supply itself opens the valve."
                    : drips ? "No: the supply as described does not open the valve." : DRY;
        }
    },
    /** It drips all the time. */
    UNDAMAGED("Would an undamaged one drip?", "relief-valve-controls-expansion", "supply-opens-relief-valve") {
        @Override
        String answer(boolean found, boolean drips) {
            return found
                    ? "Yes, but not all the time: read below when it opens."
                    : "No: in the house as described a sound valve stays shut.";
        }
    },
    /** It is dry. */
    DRY_VALVE("Does the simulation agree?", "") {
        @Override
        String answer(boolean found, boolean drips) {
            return drips ? "No: as described, the house drips." : "Yes: as described, the valve stays shut.";
        }
    };

    private static final String DRY =
            "No: the house as described does not drip. Something differs from the description.";

    private static final Set<String> DRIPPING = Set.of(
            "relief-valve-controls-expansion",
            "relief-valve-opened-by-heat",
            "relief-valve-seat-leaks",
            "relief-valve-stuck-open",
            "supply-opens-relief-valve");

    private final String words;
    private final List<String> causes;

    OwnersQuestion(String words, String... causes) {
        this.words = words;
        this.causes = List.of(causes);
    }

    /** The answer to it, by whether its cause was found and whether the valve discharges at all. */
    abstract String answer(boolean found, boolean drips);

    /** The answer of a run to a question; empty if the question is another. */
    static Optional<String> of(String question, List<Finding> found) {
        String asked = question.replaceAll("\\s+", " ");
        return Arrays.stream(values())
                .filter(one -> asked.contains(one.words))
                .findFirst()
                .map(one -> one.answer(
                        found.stream().anyMatch(finding -> one.causes.contains(finding.id())),
                        found.stream().anyMatch(finding -> DRIPPING.contains(finding.id()))));
    }
}

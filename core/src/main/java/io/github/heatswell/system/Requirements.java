package io.github.heatswell.system;

import java.util.ArrayList;
import java.util.List;

/** Collects what is missing or contradictory while a description is being built. */
final class Requirements {

    private final List<Problem> problems = new ArrayList<>();

    /** Notes a field that was never set. */
    Requirements present(String field, Object value) {
        if (value == null) {
            problems.add(new Problem(field, "is missing"));
        }
        return this;
    }

    /** Notes a rule that does not hold; a rule on values that are missing must be given as {@code true}. */
    void rule(boolean holds, String field, String message) {
        if (!holds) {
            problems.add(new Problem(field, message));
        }
    }

    /** Adds the problems that a part found. */
    void absorb(Runnable building) {
        try {
            building.run();
        } catch (InvalidDescriptionException refused) {
            problems.addAll(refused.problems());
        }
    }

    /** Whether a name shows as it is: without line breaks, control characters and others that have no shape. */
    static boolean shows(String text) {
        return text.codePoints().noneMatch(point -> switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE,
                    Character.PRIVATE_USE -> true;
            default -> false;
        });
    }

    /** Whether no problem was noted so far. */
    boolean met() {
        return problems.isEmpty();
    }

    /**
     * Ends the check.
     *
     * @throws InvalidDescriptionException if anything was noted
     */
    void orThrow() {
        if (!met()) {
            throw new InvalidDescriptionException(problems);
        }
    }
}

package io.github.heatswell.system;

import io.github.heatswell.units.Pressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

/** Collects what is missing or contradictory while a description is being built. */
final class Requirements {

    private final List<InvalidDescriptionException.Problem> problems = new ArrayList<>();

    /** Notes a field that was never set. */
    Requirements present(String field, Object value) {
        if (value == null) {
            problems.add(new InvalidDescriptionException.Problem(field, "is missing"));
        }
        return this;
    }

    /** Notes a rule that does not hold; a rule on values that are missing must be given as {@code true}. */
    void rule(boolean holds, String field, String message) {
        if (!holds) {
            problems.add(new InvalidDescriptionException.Problem(field, message));
        }
    }

    /** The same with a message that is put together only where the rule does not hold: houses are built by the thousand. */
    void rule(boolean holds, String field, Supplier<String> message) {
        if (!holds) {
            problems.add(new InvalidDescriptionException.Problem(field, message.get()));
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

    /** Checks the name of a device: 1 to 60 visible characters, not blank. */
    static String name(String value) {
        if (Objects.requireNonNull(value, "name").isBlank() || value.length() > 60 || !shows(value)) {
            throw new IllegalArgumentException("name: must have 1 to 60 visible characters and not be blank");
        }
        return value;
    }

    /** Whether a name has only visible characters: no line breaks, control or other invisible characters. */
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

    /**
     * Two pressures formatted for comparison in a message, with enough digits to show which is higher.
     *
     * @param one the first, in bar with its reference
     * @param other the second
     */
    record Compared(String one, String other) {

        private static final int MIN_DIGITS = 4;
        private static final int MAX_DIGITS = 12;

        static Compared of(Pressure one, Pressure other) {
            int digits = MIN_DIGITS;
            while (digits < MAX_DIGITS
                    && one.value() != other.value()
                    && one.text(digits).equals(other.text(digits))) {
                digits++;
            }
            return new Compared(one.text(digits), other.text(digits));
        }
    }
}

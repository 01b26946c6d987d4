package io.github.heatswell.assessment;

import java.util.List;
import java.util.Objects;

/**
 * A value of a description that nobody has read or measured.
 *
 * @param field the field, such as {@code relief[0].opens}
 * @param taken the value that stands in its place, as its owner would write it
 * @param range what it may be, such as {@code 6 bar to 10 bar}; empty if it is a usual value and no range is given
 * @param ends the lowest and the highest value it may have, as they would be written; empty if nobody knows
 */
public record Doubt(String field, String taken, String range, List<String> ends) {

    /**
     * Checks that everything is there and copies the list.
     *
     * @param field the field, such as {@code relief[0].opens}
     * @param taken the value that stands in its place, as its owner would write it
     * @param range what it may be; empty if it is a usual value and no range is given
     * @param ends the lowest and the highest value it may have, as they would be written; empty if nobody knows
     */
    public Doubt {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(taken, "taken");
        Objects.requireNonNull(range, "range");
        ends = List.copyOf(Objects.requireNonNull(ends, "ends"));
    }

    /** A choice that is made because nobody has looked. */
    static final String NOT_LOOKED_AT = "nobody has looked";

    /**
     * A choice that nobody has looked at.
     *
     * @param field the field, such as {@code supply.arrangement}
     * @param taken what is taken, such as {@code check-valve}
     * @return the doubt
     */
    public static Doubt ofChoice(String field, String taken) {
        return new Doubt(field, taken, NOT_LOOKED_AT, List.of());
    }

    /** The value as a condition names it: {@code the supply pressure is 4.25 bar}. */
    String supposition() {
        return Input.of(field).map(input -> input.words).orElse(field) + " is " + taken;
    }

    /** The value as a sentence names it: {@code the supply pressure, taken as 4.25 bar (3 bar to 5.5 bar)}. */
    String words() {
        String name = Input.of(field).map(input -> input.words).orElse(field);
        if (range.isEmpty()) {
            return name + ", assumed " + taken;
        }
        return name + ", taken as " + taken + (range.equals(NOT_LOOKED_AT) ? "" : " (" + range + ")");
    }
}

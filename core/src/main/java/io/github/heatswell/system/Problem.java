package io.github.heatswell.system;

import java.io.Serializable;
import java.util.Objects;

/**
 * One thing wrong with a description.
 *
 * @param field the field at fault, as scenario files write it, such as {@code reseats}; of a whole system with its
 *     section in front, such as {@code vessel.precharge} or {@code relief[0].opens}
 * @param message the value with its unit, what is wrong with it and what would be allowed
 * @serial exclude
 */
public record Problem(String field, String message) implements Serializable {

    /**
     * Checks that both parts are there.
     *
     * @param field the field at fault, as scenario files write it, such as {@code reseats}; of a whole system with its
     *     section in front, such as {@code vessel.precharge} or {@code relief[0].opens}
     * @param message the value with its unit, what is wrong with it and what would be allowed
     */
    public Problem {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(message, "message");
    }

    /** {@return the field and what is wrong with it, in one line} */
    @Override
    public String toString() {
        return field + ": " + message;
    }
}

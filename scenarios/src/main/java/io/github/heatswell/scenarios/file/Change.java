package io.github.heatswell.scenarios.file;

import java.util.Objects;

/**
 * Another value for a field of a scenario.
 *
 * @param field the field as assumptions and messages name it, such as {@code tank.volume} or {@code relief[0].opens}
 * @param value the value as a file would write it, such as {@code 150 L} or {@code [{ volume: 8 L }]}; {@code none} takes
 *     the field or the section out
 */
public record Change(String field, String value) {

    /** The word that takes a field out. */
    static final String NONE = "none";

    /**
     * Trims both parts.
     *
     * @param field the field as assumptions and messages name it, such as {@code tank.volume} or {@code relief[0].opens}
     * @param value the value as a file would write it, such as {@code 150 L} or {@code [{ volume: 8 L }]}; {@code none}
     *     takes the field or the section out
     */
    public Change {
        field = Objects.requireNonNull(field, "field").strip();
        value = Objects.requireNonNull(value, "value").strip();
    }

    /**
     * Reads a change.
     *
     * @param text such as {@code tank.volume=150 L}
     * @return the change
     * @throws IllegalArgumentException if there is no field or no value
     */
    public static Change of(String text) {
        int equals = text.indexOf('=');
        Change change =
                equals < 0 ? new Change("", "") : new Change(text.substring(0, equals), text.substring(equals + 1));
        if (change.field().isEmpty() || change.value().isEmpty()) {
            throw new IllegalArgumentException("'" + text.strip()
                    + "' is not a change; write a field, = and a value, such as 'tank.volume=150" + " L'");
        }
        return change;
    }

    /** {@return the change as it is written: {@code tank.volume=150 L}} */
    @Override
    public String toString() {
        return field + "=" + value;
    }
}

package io.github.heatswell.scenarios.fault;

import java.io.Serializable;
import java.util.Objects;

/**
 * One fault in a text.
 *
 * @param at where
 * @param message what, in one line
 * @serial exclude
 */
public record Fault(Location at, String message) implements Serializable {

    /**
     * Checks that both parts are there.
     *
     * @param at where
     * @param message what, in one line
     */
    public Fault {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(message, "message");
    }

    /** {@return place and message: {@code 4:18: tank.volume: ...}} */
    @Override
    public String toString() {
        return at + ": " + message;
    }
}

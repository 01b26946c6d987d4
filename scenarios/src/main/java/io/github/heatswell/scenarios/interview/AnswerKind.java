package io.github.heatswell.scenarios.interview;

import io.github.heatswell.units.UnitSystem;

/** What an answer must look like. */
interface AnswerKind {

    /**
     * Puts an answer into the form in which a file gives it.
     *
     * @param line what was typed, not blank
     * @return the value as a file writes it, without any uncertainty
     * @throws IllegalArgumentException if this is no such answer; the message says what to write instead
     */
    String understand(String line);

    /** A value as a file writes it, or the one value out of its spread. */
    default String reaching(String value, Reach reach) {
        return value;
    }

    /** What may be typed, to stand behind "Type": {@code a pressure with its unit, such as 4.2 bar}. */
    String offer(UnitSystem units);
}

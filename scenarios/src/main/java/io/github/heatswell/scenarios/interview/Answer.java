package io.github.heatswell.scenarios.interview;

/**
 * One answer.
 *
 * @param value the value as a file writes it, without uncertainty; empty if it is not known
 * @param spread whether the file gives the uncertainty of the reading
 */
record Answer(String value, boolean spread) {

    /** Nobody knows. */
    static final Answer UNKNOWN = new Answer("", false);

    boolean known() {
        return !value.isEmpty();
    }
}

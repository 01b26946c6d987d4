package io.github.heatswell.system;

/**
 * A while in which the supply is shut off.
 *
 * @param from when it is shut off (s since the start of the run), 0 or more
 * @param to when it is opened again (s since the start of the run), after {@code from}
 */
public record Outage(double from, double to) {

    /**
     * Checks the times.
     *
     * @param from when it is shut off (s since the start of the run), 0 or more
     * @param to when it is opened again (s since the start of the run), after {@code from}
     * @throws IllegalArgumentException if the times do not run forward from the start of the run
     */
    public Outage {
        if (!(from >= 0 && to > from && to < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "shut-off: from " + from + " s to " + to + " s does not run forward from the start of the run");
        }
    }
}

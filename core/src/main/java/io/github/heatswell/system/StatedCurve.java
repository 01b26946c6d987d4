package io.github.heatswell.system;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * A function from outside with what is stated as its derivative. A jump cannot be seen at single points. But by the mean value
 * theorem a function rises over a piece of its range by a slope that it has there; one that jumps, or whose slope is another's,
 * does not.
 *
 * @param value the function
 * @param slope what is stated as its derivative
 */
record StatedCurve(DoubleUnaryOperator value, DoubleUnaryOperator slope) {

    /** A range is looked at in so many pieces, */
    private static final int PIECES = 1_000;
    /** over each of which the mean slope may leave those found at its ends and in its middle by this part (-). */
    private static final double TOLERANCE = 1e-4;

    /**
     * A piece over which function and slope contradict each other.
     *
     * @param from its lower end
     * @param to its upper end
     * @param rise by how much the function rises over it; no number if the function is not defined at an end
     * @param slope the slope stated in its middle
     */
    record Contradiction(double from, double to, double rise, double slope) {}

    /**
     * Finds the first piece of a range over which function and slope contradict each other.
     *
     * @param lowest the lower end of the range
     * @param highest its upper end
     * @param scale a slope that counts as small there
     * @return the piece, or empty if there is none
     */
    Optional<Contradiction> contradiction(double lowest, double highest, double scale) {
        double piece = (highest - lowest) / PIECES;
        double to = lowest;
        for (int i = 1; i <= PIECES; i++) {
            double from = to;
            to = i == PIECES ? highest : lowest + i * piece;
            double atFrom = slope.applyAsDouble(from);
            double atTo = slope.applyAsDouble(to);
            double between = slope.applyAsDouble((from + to) / 2);
            double rise = value.applyAsDouble(to) - value.applyAsDouble(from);
            double least = Math.min(between, Math.min(atFrom, atTo));
            double most = Math.max(between, Math.max(atFrom, atTo));
            double slack = TOLERANCE * (scale + Math.max(Math.abs(least), Math.abs(most)));
            double mean = rise / (to - from);
            if (!(mean >= least - slack && mean <= most + slack)) {
                return Optional.of(new Contradiction(from, to, rise, between));
            }
        }
        return Optional.empty();
    }
}

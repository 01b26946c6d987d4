package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Collects errors and holds both their largest and their root mean square to a budget. */
final class ErrorStatistics {
    private double largest;
    private double sumOfSquares;
    private int count;

    void add(double error) {
        // Math.max keeps a NaN, so one bad value cannot hide.
        largest = Math.max(largest, Math.abs(error));
        sumOfSquares += error * error;
        count++;
    }

    double largest() {
        return largest;
    }

    double rootMeanSquare() {
        return Math.sqrt(sumOfSquares / count);
    }

    void assertWithin(double budgetLargest, double budgetRootMeanSquare, String what) {
        assertAll(
                () -> assertTrue(count > 0, what + ": nothing was compared"),
                () -> assertTrue(largest <= budgetLargest, what + ": largest " + largest + " > " + budgetLargest),
                () -> assertTrue(
                        rootMeanSquare() <= budgetRootMeanSquare,
                        what + ": root mean square " + rootMeanSquare() + " > " + budgetRootMeanSquare));
    }
}

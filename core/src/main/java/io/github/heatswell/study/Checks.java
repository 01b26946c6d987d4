package io.github.heatswell.study;

/** Checks ranges of numbers on entry. NaN is refused too. */
final class Checks {

    private Checks() {}

    /**
     * Checks a number.
     *
     * @throws IllegalArgumentException naming the field and the value
     */
    static void finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(field + ": " + value + " is not a finite number");
        }
    }

    /**
     * Checks a share.
     *
     * @throws IllegalArgumentException if it is outside 0 to 1
     */
    static void share(double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("share: " + value + " is outside the allowed range, 0 to 1");
        }
    }

    /**
     * Checks a whole number.
     *
     * @throws IllegalArgumentException naming the field, the value and the range
     */
    static int within(String field, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(
                    field + ": " + value + " is outside the allowed range, " + low + " to " + high);
        }
        return value;
    }
}

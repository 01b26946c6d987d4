package io.github.heatswell.simulation;

import java.util.function.DoubleSupplier;
import java.util.function.Supplier;

/** A curve from outside, such as a lift curve or a gas law, has no value where the run asks for one. */
final class UndefinedCurveException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private UndefinedCurveException(String message, Throwable cause) {
        super(message, cause);
    }

    /**
     * A finite value of a curve.
     *
     * @param curve gives the value
     * @param asked which curve was asked, and where
     * @throws UndefinedCurveException if it is not finite, or the curve throws an exception
     */
    static double defined(DoubleSupplier curve, Supplier<String> asked) {
        double value;
        try {
            value = curve.getAsDouble();
        } catch (RuntimeException thrown) {
            throw new UndefinedCurveException(asked.get() + " fails: " + thrown, thrown);
        }
        return check(value, Double.isFinite(value), asked, "a finite number");
    }

    /**
     * A value of a curve that keeps its range.
     *
     * @param value the value
     * @param right whether it does
     * @param asked which curve was asked, and where
     * @param needed what is needed
     * @throws UndefinedCurveException if it does not
     */
    static double check(double value, boolean right, Supplier<String> asked, String needed) {
        if (right) {
            return value;
        }
        throw new UndefinedCurveException(asked.get() + " gives " + value + ", where " + needed + " is needed", null);
    }
}

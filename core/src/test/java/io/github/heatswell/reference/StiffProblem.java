package io.github.heatswell.reference;

/**
 * A system of ordinary differential equations {@code y' = f(t, y)} that may be stiff, smooth as long as it is integrated
 * in one piece. Discontinuities belong to {@link Trigger triggers}, not into the equations.
 */
interface StiffProblem {

    /** {@return the number of components of y} */
    int dimension();

    /**
     * How many components the equations depend upon. They come first; what follows are pure integrals over time, which
     * come along without a say in convergence and error.
     *
     * @return the number of leading components, 1 to {@link #dimension()}
     */
    default int coupled() {
        return dimension();
    }

    /**
     * The size below which a component counts as zero: the error of a step is weighed by
     * {@code tolerance * max(|y|, magnitude)}.
     *
     * @param component which component
     * @return its magnitude, above 0, in its own unit
     */
    double magnitude(int component);

    /**
     * Evaluates the equations.
     *
     * @param t the time
     * @param y the components, not to be changed
     * @param rates where the derivatives go
     * @throws ArithmeticException if they have no value there; a shorter step is then tried
     */
    void rates(double t, double[] y, double[] rates);
}

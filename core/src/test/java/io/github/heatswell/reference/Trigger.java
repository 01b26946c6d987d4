package io.github.heatswell.reference;

/** What ends a smooth piece of an integration: a function that is at most zero until the piece must end. */
@FunctionalInterface
interface Trigger {

    /**
     * Evaluates the function.
     *
     * @param t the time
     * @param y the components
     * @return above zero from the moment at which the piece ends
     */
    double value(double t, double[] y);
}

package io.github.heatswell.result;

import java.util.Objects;

/**
 * How a run was integrated.
 *
 * @param method the integration method
 * @param relativeTolerance the relative tolerance of a step (-)
 * @param evaluations how often the equations were evaluated
 * @param steps how many steps were taken
 * @param segments how many times the integration was started, once for each regime or change of mode
 */
public record Numerics(String method, double relativeTolerance, long evaluations, long steps, int segments) {

    /**
     * Checks that the method is there.
     *
     * @param method the integration method
     * @param relativeTolerance the relative tolerance of a step (-)
     * @param evaluations how often the equations were evaluated
     * @param steps how many steps were taken
     * @param segments how many times the integration was started, once for each regime or change of mode
     */
    public Numerics {
        Objects.requireNonNull(method, "method");
    }
}

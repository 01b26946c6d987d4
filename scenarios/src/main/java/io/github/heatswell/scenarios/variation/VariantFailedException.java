package io.github.heatswell.scenarios.variation;

import io.github.heatswell.simulation.SimulationException;

/**
 * The simulation of a variant failed.
 */
public final class VariantFailedException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Which variant. */
    private final String variant;

    /**
     * Creates the exception.
     *
     * @param variant the name of the variant
     * @param cause why it failed
     */
    VariantFailedException(String variant, SimulationException cause) {
        super(cause.getMessage(), cause);
        this.variant = variant;
    }

    /**
     * Which variant failed.
     *
     * @return its name
     */
    public String variant() {
        return variant;
    }
}

package io.github.heatswell.simulation;

/**
 * The equations could not be integrated further. The cause is a bug in the library or a system far outside anything
 * built; physical hazards are not errors and end a run normally.
 */
public final class SimulationException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Time reached (s). */
    private final double time;

    /** The last valid pressure (Pa, absolute). */
    private final double pressureAbsolute;

    /** The last valid water temperature (K). */
    private final double waterTemperature;

    /**
     * Creates the exception.
     *
     * @param message what went wrong
     * @param time time reached (s)
     * @param pressureAbsolute the last valid pressure (Pa, absolute)
     * @param waterTemperature the last valid water temperature (K)
     * @param cause what the integrator threw, or null
     */
    SimulationException(
            String message, double time, double pressureAbsolute, double waterTemperature, Throwable cause) {
        super(
                message + " (at " + time + " s; last valid state: " + pressureAbsolute + " Pa absolute, "
                        + waterTemperature + " K)",
                cause);
        this.time = time;
        this.pressureAbsolute = pressureAbsolute;
        this.waterTemperature = waterTemperature;
    }

    /**
     * Time reached.
     *
     * @return the simulated time (s)
     */
    public double time() {
        return time;
    }

    /**
     * The last valid pressure.
     *
     * @return the pressure (Pa, absolute)
     */
    public double pressureAbsolute() {
        return pressureAbsolute;
    }

    /**
     * The last valid mean water temperature.
     *
     * @return the temperature (K)
     */
    public double waterTemperature() {
        return waterTemperature;
    }
}

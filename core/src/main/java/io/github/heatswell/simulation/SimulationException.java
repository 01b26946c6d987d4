package io.github.heatswell.simulation;

/**
 * The equations could not be integrated further. This is a defect of the library or a system far outside anything
 * built; physical hazards are not errors and end a run normally.
 */
public final class SimulationException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** How far the run had come (s). */
    private final double time;

    /** The last sound pressure (Pa, absolute). */
    private final double pressureAbsolute;

    /** The last sound water temperature (K). */
    private final double waterTemperature;

    /**
     * Creates the exception.
     *
     * @param message what went wrong
     * @param time how far the run had come (s)
     * @param pressureAbsolute the last sound pressure (Pa, absolute)
     * @param waterTemperature the last sound water temperature (K)
     * @param cause what the integrator threw, or null
     */
    SimulationException(
            String message, double time, double pressureAbsolute, double waterTemperature, Throwable cause) {
        super(
                message + " (at " + time + " s; last sound state: " + pressureAbsolute + " Pa absolute, "
                        + waterTemperature + " K)",
                cause);
        this.time = time;
        this.pressureAbsolute = pressureAbsolute;
        this.waterTemperature = waterTemperature;
    }

    /**
     * How far the run had come.
     *
     * @return the simulated time (s)
     */
    public double time() {
        return time;
    }

    /**
     * The last sound pressure.
     *
     * @return the pressure (Pa, absolute)
     */
    public double pressureAbsolute() {
        return pressureAbsolute;
    }

    /**
     * The last sound mean water temperature.
     *
     * @return the temperature (K)
     */
    public double waterTemperature() {
        return waterTemperature;
    }
}

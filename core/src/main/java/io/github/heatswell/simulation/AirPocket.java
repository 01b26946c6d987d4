package io.github.heatswell.simulation;

import io.github.heatswell.water.Saturation;

/**
 * Air under the top of the tank: a fixed amount of ideal gas, at the temperature of the hottest water and saturated with its
 * vapour, so that it takes {@code V = n R T / (p - p_sat(T))}. What it takes up as it warms and boils off, water has to leave.
 * Its pressure is taken to be that at the drain cock, and the heat it holds is left out: a litre at 5 bar holds 6 J/K.
 *
 * <p>Working memory of one run, not thread-safe.
 */
final class AirPocket {

    /** Half the distance (K) of the difference quotient of the vapour pressure. */
    private static final double STEP = 1e-3;
    /** The temperatures (K) between which vapour is known to be. */
    private static final double COLDEST = 273.16;

    private static final double HOTTEST = 450;
    /** More of the highest layer (-) than a run lets it take up, which only trial states of the solver pass. */
    private static final double MAX = 0.95;
    /** Vapour has formed once it takes up more of the highest layer (-) than this. */
    private static final double FULL = 0.9;

    /**
     * Largest share (-) of vapour in the pressure. Nearer to boiling the heat that evaporation takes, which is left out, would
     * decide.
     */
    private static final double MOSTLY_VAPOUR = 0.9;

    /** Amount of air times gas constant (J/K). */
    private final double gas;

    private final double layer;

    /** Volume (m3) as last evaluated. */
    double volume;
    /** Its growth with temperature (m3/K), */
    double byTemperature;
    /** and with pressure (m3/Pa), below zero. */
    double byPressure;

    /**
     * The air of a tank.
     *
     * @param gas its amount times the gas constant (J/K), 0 for none
     * @param layer the shell volume of the highest layer (m3)
     */
    AirPocket(double gas, double layer) {
        this.gas = gas;
        this.layer = layer;
    }

    /** Amount times gas constant (J/K) of air that takes a volume (m3) at a pressure (Pa, absolute) and temperature (K). */
    static double amount(double volume, double pressure, double temperature) {
        return volume * (pressure - vapour(temperature)) / temperature;
    }

    boolean isEmpty() {
        return gas == 0;
    }

    /** Evaluates it at a pressure (Pa, absolute) and the temperature (K) of the hottest water. */
    void evaluate(double p, double temperature) {
        double dry = p - vapour(temperature);
        volume = volumeAt(p, temperature);
        boolean gives = volume < MAX * layer;
        byPressure = gives ? -volume / dry : 0;
        byTemperature = gives ? volume * (1 / temperature + vapourSlope(temperature) / dry) : 0;
    }

    /** Volume (m3) at a pressure (Pa, absolute) and a temperature (K). */
    double volumeAt(double p, double temperature) {
        double dry = p - vapour(temperature);
        double most = MAX * layer;
        return dry * most > gas * temperature ? gas * temperature / dry : most;
    }

    /** What is left (m3) until so much vapour has formed that the air fills the highest layer. */
    double room(double p, double temperature) {
        return FULL * layer - volumeAt(p, temperature);
    }

    /** What is left (Pa) at a pressure (Pa, absolute) and a temperature (K) until it is mostly vapour. */
    double tillVapour(double p, double temperature) {
        return MOSTLY_VAPOUR * p - vapour(temperature);
    }

    /** By how much it gives way (m3/Pa) at a pressure (Pa, absolute) and a temperature (K). */
    double compliance(double p, double temperature) {
        return volumeAt(p, temperature) / Math.max(p - vapour(temperature), 1);
    }

    /** How large a step (Pa) from a pressure (Pa, absolute) is, as a part (-) of what the air alone then bears; 0 without air. */
    double part(double p, double step, double temperature) {
        return isEmpty() ? 0 : Math.abs(step) / Math.max(Math.min(p, p + step) - vapour(temperature), 1);
    }

    /** Vapour pressure (Pa, absolute); of a trial state of the solver that is no number, no number. */
    private static double vapour(double temperature) {
        if (Double.isNaN(temperature)) {
            return Double.NaN;
        }
        return Saturation.pressureAbsolute(Math.max(COLDEST, Math.min(HOTTEST, temperature)));
    }

    private static double vapourSlope(double temperature) {
        return (vapour(temperature + STEP) - vapour(temperature - STEP)) / (2 * STEP);
    }
}

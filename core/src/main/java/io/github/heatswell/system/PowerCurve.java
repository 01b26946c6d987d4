package io.github.heatswell.system;

/**
 * What a heat source gives while its thermostat calls, as a part of its rated input, over time and the temperature of the water
 * around it. Write one for a source that does not give the same all the time, such as a heat pump:
 *
 * <pre>
 *   class HeatPump implements PowerCurve {
 *       public double share(double clock, double temperature) {
 *           return Math.max(0.4, Math.min(1, 1 - 0.012 * (temperature - 288.15)));
 *       }
 *   }
 * </pre>
 *
 * <p>or a solar coil, which gives nothing from six in the evening to six in the morning:
 *
 * <pre>
 *   class SolarCoil implements PowerCurve {
 *       private static final double QUARTER = 21_600;
 *       public double share(double clock, double temperature) {
 *           double sun = Math.sin(Math.PI * (clock / QUARTER - 1) / 2);
 *           return sun &lt;= 0 ? 0 : Math.max(0, Math.min(1, sun - (temperature - 293.15) / 70));
 *       }
 *       public double nextChange(double clock) { return QUARTER * (Math.floor(clock / QUARTER) + 1); }
 *   }
 * </pre>
 *
 * <p>A curve is a pure function that several threads may call at once: what a source gives depends on nothing but the arguments, so it has
 * no hysteresis; switching on and off is the work of its thermostat. It has no jump over the temperature, and none over
 * time but at the moments that {@link #nextChange} names. From the call of its thermostat to its end a run counts the
 * source as on, whatever its curve gives. Rules and formulas use its rated input, which is the most it can give. What a
 * heat pump takes from the mains is not modelled: its input is heat.
 *
 * <p>A scenario file cannot hold a curve: a heater read from one gives the same all the time. Nor does a result in JSON say which
 * curve it was. A heater that is changed keeps it.
 */
public interface PowerCurve {

    /**
     * What the source gives.
     *
     * @param clock the time (s) since the midnight before the run began; it goes on past the next midnight
     * @param temperature the temperature of the water around the source (K)
     * @return the part of its rated input (-), 0 to 1
     */
    double share(double clock, double temperature);

    /**
     * When the curve next jumps or bends over time. A run then begins anew, and needs no small steps to get past.
     *
     * @param clock a time (s) since the midnight before the run began
     * @return the moment (s since that midnight), after the time given; infinite if there is none, as by default
     */
    default double nextChange(double clock) {
        return Double.POSITIVE_INFINITY;
    }
}

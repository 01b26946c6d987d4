package io.github.heatswell.system;

/**
 * How the pressure behind the diaphragm follows the volume and the temperature of the gas. Write one for a vessel that does
 * not behave as a fixed mass of ideal gas, such as one whose diaphragm stretches:
 *
 * <pre>
 *   class StretchingDiaphragm implements GasLaw {
 *       private static final double STIFFNESS = 60_000;
 *       public double pressure(double charge, double share, double warmth) {
 *           return charge * warmth / share + STIFFNESS * (1 - share);
 *       }
 *       public double byShare(double charge, double share, double warmth) {
 *           return -charge * warmth / (share * share) - STIFFNESS;
 *       }
 *       public double byWarmth(double charge, double share, double warmth) { return charge / share; }
 *   }
 * </pre>
 *
 * <p>A law is a pure function that several threads may call at once: the pressure depends on nothing but the arguments, so it has no
 * hysteresis. It is continuous, and its pressure always rises as the gas is compressed and never falls as the gas warms. At the volume of
 * the vessel and the temperature of charging it is the precharge. It is called with shares from the whole vessel down to what the
 * acceptance limit leaves of it, and never below {@link #MIN_SHARE}. The heat that
 * compression sets free warms the gas as if it had the heat capacity of a diatomic ideal gas of that charge.
 *
 * <p>A scenario file cannot hold a law: a vessel read from one has ideal gas. Nor does a result in JSON say which law it was. A
 * vessel that is changed or whose precharge is lost over the years keeps its law, and findings estimate by it. The formulas of a sizing
 * know ideal gas only; the sizing says how much of the difference is due to the law.
 */
public interface GasLaw {

    /** The least share (-) of the vessel's volume for which a law is called, in a vessel without acceptance limit. */
    double MIN_SHARE = 0.01;

    /**
     * Pressure of the gas.
     *
     * @param charge the precharge (Pa, absolute)
     * @param share the volume of the gas, as a share of that of the vessel (-)
     * @param warmth its absolute temperature over that at which the precharge was set (-, a ratio of absolute temperatures)
     * @return the pressure (Pa, absolute)
     */
    double pressure(double charge, double share, double warmth);

    /**
     * How the pressure changes with the volume.
     *
     * @param charge the precharge (Pa, absolute)
     * @param share the volume of the gas, as a share of that of the vessel (-)
     * @param warmth its absolute temperature over that at which the precharge was set (-)
     * @return the derivative of {@link #pressure} by the share (Pa, difference), below 0
     */
    double byShare(double charge, double share, double warmth);

    /**
     * How the pressure changes with the temperature.
     *
     * @param charge the precharge (Pa, absolute)
     * @param share the volume of the gas, as a share of that of the vessel (-)
     * @param warmth its absolute temperature over that at which the precharge was set (-)
     * @return the derivative of {@link #pressure} by the warmth (Pa, difference), 0 or more
     */
    double byWarmth(double charge, double share, double warmth);
}

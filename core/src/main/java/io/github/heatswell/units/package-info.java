/**
 * Units at the edge of the library. The physics computes in SI throughout (Pa, K, m3, kg, s, W, J); people think in bar
 * or psi, litres or gallons. Methods that take a quantity from outside take a number and its unit, so that nothing has
 * to be guessed and a wrong kind of unit does not compile. Exceptions are values that come from the library and go back
 * into it, such as those of a result or a formula, clock times (s since midnight), and the readings of a log, which come as arrays: they
 * are in the SI unit stated
 * in their description.
 *
 * <p>Pressure also needs its reference: {@link io.github.heatswell.units.Pressure} says whether it is meant against the
 * surrounding air (gauge) or against vacuum (absolute).
 *
 * <p>The factors follow from definitions: the inch (25.4 mm), the pound (0.45359237 kg), standard gravity (9.80665
 * m/s2), the US gallon (231 cubic inches) and the International-Table Btu (1055.05585262 J).
 */
package io.github.heatswell.units;

/**
 * Thermodynamic properties of liquid water, for simulating water that is heated while it is shut in.
 *
 * <h2>What is here</h2>
 *
 * <ul>
 *   <li>{@link io.github.heatswell.water.LiquidWater} is what the rest of the library sees: density, expansivity,
 *       compressibility, heat capacity, enthalpy and internal energy as functions of temperature and absolute pressure.
 *   <li>{@link io.github.heatswell.water.GibbsPolynomialWater} is the implementation to simulate with. It was fitted to
 *       the scientific standard IAPWS-95, is closer to it than the industrial standard is, and costs several times
 *       less.
 *   <li>{@link io.github.heatswell.water.If97Region1} is the industrial standard itself, IAPWS-IF97 region 1. It is the
 *       published, independent second formulation to check a result against, and it reaches to 350 &deg;C and 100 MPa.
 *   <li>{@link io.github.heatswell.water.Saturation} is the boiling line, IAPWS-IF97 region 4: where liquid ends.
 *   <li>{@link io.github.heatswell.water.LiquidWater.State} receives all properties of one state at once, without allocation,
 *       for the inner loop of a solver.
 *   <li>{@link io.github.heatswell.water.LiquidWater.ValidityRange} says where a formulation holds.
 * </ul>
 *
 * <h2>Conventions</h2>
 *
 * Everything is in SI units: kelvin, pascal, kilogram, cubic metre, joule. Temperature is ITS-90. Pressure is always
 * absolute, and names say so. Enthalpy has the zero of the IAPWS formulations: internal energy and entropy of the
 * saturated liquid are zero at the triple point, 273.16 K.
 *
 * <h2>Symbols</h2>
 *
 * <table>
 *   <caption>Symbols used in the formulas of this package</caption>
 *   <tr><th>symbol</th><th>meaning</th><th>unit</th></tr>
 *   <tr><td>T, p</td><td>temperature, absolute pressure</td><td>K, Pa</td></tr>
 *   <tr><td>v = 1/&rho;</td><td>specific volume, reciprocal of the density</td><td>m&sup3;/kg</td></tr>
 *   <tr><td>&beta; = (1/v) (&part;v/&part;T)<sub>p</sub></td><td>isobaric expansivity</td><td>1/K</td></tr>
 *   <tr><td>&kappa; = &minus;(1/v) (&part;v/&part;p)<sub>T</sub></td><td>isothermal
 *   compressibility</td><td>1/Pa</td></tr>
 *   <tr><td>h, u = h &minus; p v</td><td>specific enthalpy, specific internal energy</td><td>J/kg</td></tr>
 *   <tr><td>c<sub>p</sub> = (&part;h/&part;T)<sub>p</sub></td><td>isobaric heat capacity</td><td>J/(kg K)</td></tr>
 * </table>
 *
 * <h2>Why one potential</h2>
 *
 * Heating water that has nowhere to go raises its pressure by dp/dT = &beta;/&kappa;, some 10 bar a kelvin at 50
 * &deg;C. A simulation uses &rho; for the mass balance, &beta; and &kappa; for the pressure, h and u for the energy
 * balance. If they came from separate correlations, each good on its own, the balances would drift apart. Here all
 * properties of one formulation are exact derivatives of one Gibbs function g(T, p), so they obey
 *
 * <ul>
 *   <li>v = (&part;g/&part;p)<sub>T</sub> and h = g &minus; T (&part;g/&part;T)<sub>p</sub>,
 *   <li>(&part;h/&part;p)<sub>T</sub> = v (1 &minus; T &beta;), and c<sub>p</sub> = (&part;h/&part;T)<sub>p</sub>,
 *   <li>c<sub>v</sub> = c<sub>p</sub> &minus; T v &beta;&sup2;/&kappa;, should the isochoric heat capacity be needed
 * </ul>
 *
 * <p>up to rounding, whatever the error of the formulation against real water.
 *
 * <h2>Two things that look like mistakes and are not</h2>
 *
 * <ul>
 *   <li>&beta; is negative below the density maximum, which is at 3.98 &deg;C at one atmosphere and 3.90 &deg;C at 5
 *       bar. Very cold water shrinks when warmed. Nothing is clamped.
 *   <li>The formulations return liquid properties below the saturation pressure as well. These are the metastable
 *       states of a liquid that should boil but has not yet; a solver's trial steps visit them. Whether the water
 * really is liquid is for the caller to check, with {@link io.github.heatswell.water.Saturation}.
 * </ul>
 *
 * <h2>Which call to use</h2>
 *
 * The single-property methods and {@link io.github.heatswell.water.LiquidWater#stateAt stateAt} check their arguments
 * and are for set-up, sizing, reports and experiments. {@link io.github.heatswell.water.LiquidWater#evaluate evaluate}
 * fills a {@link io.github.heatswell.water.LiquidWater.State} you keep, neither checks nor throws nor allocates, and is for a
 * solver's right-hand side:
 *
 * <pre>{@code
 * LiquidWater water = GibbsPolynomialWater.instance();
 * double cold = water.density(283.15, 300_000);            // 10 degrees Celsius, 3 bar absolute
 * double hot = water.density(333.15, 300_000);             // 60 degrees Celsius
 * double growth = cold / hot - 1;                          // 0.0168 of the cold volume
 *
 * LiquidWater.State state = new LiquidWater.State();       // once, before the loop
 * water.evaluate(333.15, 300_000, state);
 * double risePerKelvin = state.expansivity() / state.compressibility(); // Pa/K in a rigid container
 * }</pre>
 */
package io.github.heatswell.water;

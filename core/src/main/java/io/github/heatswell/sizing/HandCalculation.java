package io.github.heatswell.sizing;

import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.Limits;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.Unit;
import io.github.heatswell.units.UnitSystem;
import io.github.heatswell.water.GibbsPolynomialWater;
import io.github.heatswell.water.LiquidWater;
import java.util.function.BiFunction;

/**
 * The case that can be calculated by hand: a fully mixed rigid tank, no piping, isothermal gas precharged to the fill
 * pressure.
 *
 * @param tank volume of the tank and of a loop (m3)
 * @param growth relative growth of the tank from cold to hot (-)
 * @param cold temperature of the cold water (K)
 * @param hot temperature it is heated to (K)
 * @param fill pressure at the cold fill (Pa, absolute)
 * @param highest pressure it may rise to (Pa, absolute)
 */
record HandCalculation(double tank, double growth, double cold, double hot, double fill, double highest) {

    private static final QuantityFormat BOTH =
            QuantityFormat.ascii(UnitSystem.SI).inBoth();
    private static final LiquidWater WATER = GibbsPolynomialWater.instance();

    static HandCalculation of(SizingProblem setup) {
        HotWaterSystem house = setup.coldFill().house();
        double cold = house.coldAtStart();
        double hot = setup.coldFill().hotTemperature();
        if (!(hot > cold)) {
            throw new IllegalArgumentException("set-point: must be above the temperature of the cold water");
        }
        rising("supply (absolute)", setup.staticAbsolute(), "the target (absolute)", setup.limit());
        double growth = house.tank().shell().thermalGrowth() * (hot - cold);
        return new HandCalculation(house.hotVolume(), growth, cold, hot, setup.staticAbsolute(), setup.limit());
    }

    VesselFormula.NetExpansion growth(double linearExpansion) {
        return new VesselFormula.NetExpansion(
                tank, 1 / WATER.density(cold, fill), 1 / WATER.density(hot, fill), linearExpansion, hot - cold);
    }

    /**
     * The vessel (m3) by the balance of mass, exact for this case: with p0 the fill pressure,
     * {@code rho_c(p1) V = rho_h(p2) V (1 + g) + rho_c(p2) V0 (1 - p1/p2)}.
     */
    double byMass() {
        double surplus = tank * (WATER.density(cold, fill) - (1 + growth) * WATER.density(hot, highest));
        return surplus / WATER.density(cold, highest) / VesselFormula.acceptanceFactor(fill, highest);
    }

    /** The same (m3) for incompressible water. */
    double incompressible() {
        double ratio = WATER.density(hot, fill) / WATER.density(cold, fill);
        return tank * (1 - (1 + growth) * ratio) / VesselFormula.acceptanceFactor(fill, highest);
    }

    /** The excess hot water (m3), for a relative growth of the tank (-). */
    double hotVolume(double tankGrowth) {
        return tank * (WATER.density(cold, fill) / WATER.density(hot, fill) - 1 - tankGrowth);
    }

    /** The vessel (m3) for the excess hot water. */
    double byHotVolume() {
        return hotVolume(growth) / VesselFormula.acceptanceFactor(fill, highest);
    }

    /**
     * Checks a number of a calculation, in the SI unit; a refusal tells it in a unit that people use.
     *
     * @throws IllegalArgumentException naming the field, the value with its unit and the range
     */
    static void within(String field, double si, Unit told, double low, double high) {
        Limits.between(field, low, high).checkSi(si, told);
    }

    /**
     * Checks a number of a formula.
     *
     * @param words what it is, with its letter
     * @param si the number, in the SI unit
     * @param written how its owner reads it
     * @throws IllegalArgumentException naming it, its value and the range, in both unit systems
     */
    static void applies(
            String words, double si, BiFunction<QuantityFormat, Double, String> written, double low, double high) {
        if (!(si >= low && si <= high)) {
            String given = Double.isFinite(si) ? written.apply(BOTH, si) : Double.toString(si);
            throw new IllegalArgumentException(words + ", " + given + ", is outside the range of the formula, "
                    + written.apply(BOTH, low) + " to " + written.apply(BOTH, high));
        }
    }

    /**
     * Checks that a pressure lies below the highest of a formula.
     *
     * @throws IllegalArgumentException naming both with their values, in both unit systems
     */
    static void below(String words, double gauge, String highest, double highestGauge) {
        if (!(gauge < highestGauge)) {
            throw new IllegalArgumentException(words + ", " + BOTH.pressure(gauge)
                    + ", is not below the highest pressure of the formula, " + highest + ", here "
                    + BOTH.pressure(highestGauge));
        }
    }

    /**
     * Checks that one pressure lies below another.
     *
     * @throws IllegalArgumentException naming both with their values
     */
    static void rising(String low, double lowPascal, String high, double highPascal) {
        if (!(lowPascal < highPascal)) {
            throw new IllegalArgumentException(low + ": " + Limits.quantity(lowPascal / 1e5, PressureUnit.BAR)
                    + " must be below " + high + ", " + Limits.quantity(highPascal / 1e5, PressureUnit.BAR));
        }
    }
}

package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What every formulation of liquid water must pass, whatever its numbers are. They compare
 * a formulation with itself, so each is a regression test in the sense of having no number from outside.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class LiquidWaterContract {
    /** Largest difference left by differentiating numerically: rounding and the cut-off of the five-point rule. */
    private static final double FINITE_DIFFERENCE = 1e-7;

    private final LiquidWater water;
    private final LiquidWater.State state = new LiquidWater.State();

    LiquidWaterContract(LiquidWater water) {
        this.water = water;
    }

    /** Points over the range that every formulation covers, stable and metastable, clear of its edges. */
    static Stream<Arguments> points() {
        return Stream.of(275.15, 277.13, 283.15, 298.15, 323.15, 348.15, 373.15, 398.15, 421.15)
                .flatMap(t -> Stream.of(1e5, 5e5, 12e5, 24e5).map(p -> Arguments.of(t, p)));
    }

    /** Regression: &beta; and &kappa; are the derivatives of the density that the formulation returns. */
    @ParameterizedTest
    @MethodSource("points")
    final void expansivityAndCompressibilityAreDerivativesOfDensity(double t, double p) {
        double density = water.density(t, p);
        double beta = -derivative(x -> water.density(x, p), t, 0.5) / density;
        double kappa = derivative(x -> water.density(t, x), p, 2e4) / density;
        // The expansivity passes through zero, so it is held to a part of its usual size, 5e-4 1/K.
        assertEquals(beta, water.expansivity(t, p), FINITE_DIFFERENCE * 5e-4);
        assertEquals(kappa, water.compressibility(t, p), FINITE_DIFFERENCE * kappa);
    }

    /** Regression: the heat capacity is the derivative of the enthalpy that the formulation returns. */
    @ParameterizedTest
    @MethodSource("points")
    final void heatCapacityIsTheDerivativeOfEnthalpy(double t, double p) {
        double cp = derivative(x -> water.enthalpy(x, p), t, 0.5);
        assertEquals(cp, water.heatCapacity(t, p), FINITE_DIFFERENCE * cp);
    }

    /** Regression: (dh/dp)_T = v (1 - T beta), the Maxwell relation that ties the enthalpy to the density. */
    @ParameterizedTest
    @MethodSource("points")
    final void enthalpyAndDensityComeFromOnePotential(double t, double p) {
        double slope = derivative(x -> water.enthalpy(t, x), p, 2e4);
        double volume = 1 / water.density(t, p);
        assertEquals(volume * (1 - t * water.expansivity(t, p)), slope, FINITE_DIFFERENCE * volume);
    }

    /** Regression: (d beta/dp)_T = -(d kappa/dT)_p, the Maxwell relation between the two derivatives of volume. */
    @ParameterizedTest
    @MethodSource("points")
    final void secondDerivativesOfVolumeDoNotDependOnTheirOrder(double t, double p) {
        double left = derivative(x -> water.expansivity(t, x), p, 2e4);
        double right = -derivative(x -> water.compressibility(x, p), t, 0.5);
        // The common value passes through zero near 46 C; 3e-12 1/(K Pa) is its size elsewhere.
        assertEquals(left, right, FINITE_DIFFERENCE * 3e-12);
    }

    /** Regression: u = h - p v, and the isochoric heat capacity from u agrees with c_p - T v beta^2/kappa. */
    @ParameterizedTest
    @MethodSource("points")
    final void internalEnergyIsConsistentWithBothHeatCapacities(double t, double p) {
        LiquidWater.State at = water.stateAt(t, p);
        assertEquals(at.enthalpy() - p / at.density(), water.internalEnergy(t, p), 0);

        double duDt = derivative(x -> water.internalEnergy(x, p), t, 0.5);
        double duDp = derivative(x -> water.internalEnergy(t, x), p, 2e4);
        double atConstantVolume = duDt + duDp * at.expansivity() / at.compressibility();
        double expected =
                at.heatCapacity() - t * at.expansivity() * at.expansivity() / (at.density() * at.compressibility());
        assertEquals(expected, atConstantVolume, 10 * FINITE_DIFFERENCE * expected); // a difference of large terms
    }

    /** Regression: the two ways in give the same numbers, to the last bit. */
    @ParameterizedTest
    @MethodSource("points")
    final void evaluateAgreesWithTheSinglePropertyMethods(double t, double p) {
        water.evaluate(t, p, state);
        assertAll(
                () -> assertEquals(t, state.temperature(), 0),
                () -> assertEquals(p, state.pressureAbsolute(), 0),
                () -> assertEquals(water.density(t, p), state.density(), 0),
                () -> assertEquals(water.expansivity(t, p), state.expansivity(), 0),
                () -> assertEquals(water.compressibility(t, p), state.compressibility(), 0),
                () -> assertEquals(water.heatCapacity(t, p), state.heatCapacity(), 0),
                () -> assertEquals(water.enthalpy(t, p), state.enthalpy(), 0),
                () -> assertEquals(water.internalEnergy(t, p), state.internalEnergy(), 0));
    }

    /** Regression: an evaluation leaves nothing behind in the scratch object that could change the next one. */
    @Test
    final void resultDoesNotDependOnWhatWasEvaluatedBefore() {
        water.evaluate(300, 3e5, state);
        double first = state.enthalpy();
        water.evaluate(Double.NaN, Double.NaN, state);
        water.evaluate(420, 2e6, state);
        water.evaluate(300, 2e6, state);
        assertEquals(water.enthalpy(300, 2e6), state.enthalpy(), 0);
        water.evaluate(300, 3e5, state);
        assertEquals(first, state.enthalpy(), 0);
    }

    final Stream<Arguments> pointsOutside() {
        LiquidWater.ValidityRange range = water.validity();
        double t = 300;
        double p = 3e5;
        return Stream.of(
                Arguments.of("temperature", "K", Double.NaN, p),
                Arguments.of("temperature", "K", Double.NEGATIVE_INFINITY, p),
                Arguments.of("temperature", "K", Double.POSITIVE_INFINITY, p),
                Arguments.of("temperature", "K", -1.0, p),
                Arguments.of("temperature", "K", 0.0, p),
                Arguments.of("temperature", "K", Math.nextDown(range.lowestTemperature()), p),
                Arguments.of("temperature", "K", Math.nextUp(range.highestTemperature()), p),
                Arguments.of("absolute pressure", "Pa", t, Double.NaN),
                Arguments.of("absolute pressure", "Pa", t, Double.NEGATIVE_INFINITY),
                Arguments.of("absolute pressure", "Pa", t, Double.POSITIVE_INFINITY),
                Arguments.of("absolute pressure", "Pa", t, -1.0),
                Arguments.of("absolute pressure", "Pa", t, 0.0),
                Arguments.of("absolute pressure", "Pa", t, Math.nextDown(range.lowestPressureAbsolute())),
                Arguments.of("absolute pressure", "Pa", t, Math.nextUp(range.highestPressureAbsolute())));
    }

    /** Regression: each checking method refuses each point outside, and says what is wrong in a usable way. */
    @ParameterizedTest
    @MethodSource("pointsOutside")
    final void pointsOutsideAreRefused(String name, String unit, double t, double p) {
        double value = name.equals("temperature") ? t : p;
        String start = name + " is " + value + " " + unit + ", allowed is ";
        List<Runnable> calls = List.of(
                () -> water.density(t, p),
                () -> water.expansivity(t, p),
                () -> water.compressibility(t, p),
                () -> water.heatCapacity(t, p),
                () -> water.enthalpy(t, p),
                () -> water.internalEnergy(t, p),
                () -> water.stateAt(t, p));
        for (Runnable call : calls) {
            String message =
                    assertThrows(IllegalArgumentException.class, call::run).getMessage();
            assertTrue(message.startsWith(start) && message.endsWith(" " + unit), message);
        }
    }

    /** Regression: the limits themselves are answered, and what is promised to be covered is covered. */
    @Test
    final void limitsBelongToTheRange() {
        LiquidWater.ValidityRange range = water.validity();
        for (double t : new double[] {range.lowestTemperature(), range.highestTemperature(), 273.15, 423.15}) {
            for (double p :
                    new double[] {range.lowestPressureAbsolute(), range.highestPressureAbsolute(), 611, 2.5e6}) {
                assertTrue(water.density(t, p) > 0, () -> "density at " + t + " K, " + p + " Pa");
            }
        }
    }

    /** Regression: a solver's stray trial step gets an answer, not an exception, and NaN is passed on. */
    @ParameterizedTest
    @MethodSource("pointsOutside")
    final void evaluateNeverThrows(String name, String unit, double t, double p) {
        water.evaluate(t, p, state);
        if (Double.isNaN(t) || Double.isNaN(p)) {
            assertAll(
                    () -> assertEquals(Double.NaN, state.density()),
                    () -> assertEquals(Double.NaN, state.expansivity()),
                    () -> assertEquals(Double.NaN, state.compressibility()),
                    () -> assertEquals(Double.NaN, state.enthalpy()),
                    () -> assertEquals(Double.NaN, state.heatCapacity()));
        }
    }

    /** Regression: around the range, into stretched and superheated liquid, nothing blows up or changes sign. */
    @Test
    final void trialStepsAroundTheRangeStayOnSmoothGround() {
        for (double t = 263.15; t <= 433.15; t += 5) {
            for (double p = -5e5; p <= 50e5; p += 2.5e5) {
                water.evaluate(t, p, state);
                String where = t + " K, " + p + " Pa";
                assertTrue(state.density() > 900 && state.density() < 1010, where);
                assertTrue(Math.abs(state.expansivity()) < 1.2e-3, where);
                assertTrue(state.compressibility() > 4e-10 && state.compressibility() < 7.5e-10, where);
                assertTrue(state.heatCapacity() > 4000 && state.heatCapacity() < 4500, where);
            }
        }
    }

    /** Regression: the solver's way in allocates nothing. */
    @Test
    final void evaluateAllocatesNothing() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        evaluateMany(1000);
        long before = threads.getCurrentThreadAllocatedBytes();
        evaluateMany(100_000);
        long allocated = threads.getCurrentThreadAllocatedBytes() - before;
        assertTrue(allocated < 10_000, allocated + " bytes in 100000 evaluations"); // the measurement itself costs some
    }

    private void evaluateMany(int times) {
        for (int i = 0; i < times; i++) {
            water.evaluate(280 + 1e-3 * i, 3e5 + i, state);
        }
    }

    /** The five-point rule, exact for polynomials of degree four. */
    private static double derivative(DoubleUnaryOperator f, double at, double step) {
        double near = f.applyAsDouble(at + step) - f.applyAsDouble(at - step);
        double far = f.applyAsDouble(at + 2 * step) - f.applyAsDouble(at - 2 * step);
        return (8 * near - far) / (12 * step);
    }
}

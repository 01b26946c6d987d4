package io.github.heatswell.water;

import static io.github.heatswell.water.Property.COMPRESSIBILITY;
import static io.github.heatswell.water.Property.DENSITY;
import static io.github.heatswell.water.Property.ENTHALPY;
import static io.github.heatswell.water.Property.EXPANSIVITY;
import static io.github.heatswell.water.Property.EXPANSIVITY_RELATIVE;
import static io.github.heatswell.water.Property.HEAT_CAPACITY;
import static io.github.heatswell.water.Property.PRESSURE_RISE_RELATIVE;
import static io.github.heatswell.water.Property.SOUND_SPEED;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The stated accuracy of both formulations, as budgets of largest and root-mean-square error against IAPWS-95. */
class AccuracyTest {
    private static final LiquidWater POLYNOMIAL = GibbsPolynomialWater.instance();
    private static final LiquidWater IF97 = If97Region1.instance();

    /** Budgets are the errors that the class descriptions state, for the polynomial; see its Javadoc. */
    static Stream<Arguments> budgetsOfThePolynomial() {
        return Stream.of(
                Arguments.of(DENSITY, 2.1e-7, 1.1e-7), // stated accuracy
                Arguments.of(EXPANSIVITY, 2.0e-8, 1.2e-8), // stated accuracy
                Arguments.of(
                        EXPANSIVITY_RELATIVE, 1.4e-4, 4.0e-5), // stated accuracy; few points near 10 C raise the rms
                Arguments.of(COMPRESSIBILITY, 2.6e-4, 1.5e-4), // stated accuracy
                Arguments.of(PRESSURE_RISE_RELATIVE, 3.6e-4, 1.6e-4), // stated accuracy
                Arguments.of(HEAT_CAPACITY, 2.6e-5, 1.4e-5), // stated accuracy
                Arguments.of(ENTHALPY, 0.51, 0.36)); // stated accuracy
    }

    /** Validation against IAPWS-95 at the nodes of a table made independently of this project's own program. */
    @ParameterizedTest
    @MethodSource("budgetsOfThePolynomial")
    void polynomialKeepsItsAccuracyAtTheNodes(Property property, double largest, double rootMeanSquare) {
        errors(POLYNOMIAL, Reference.nodes(), property).assertWithin(largest, rootMeanSquare, property.name());
    }

    /** Validation against IAPWS-95 between those nodes and up to 25 bar. */
    @ParameterizedTest
    @MethodSource("budgetsOfThePolynomial")
    void polynomialKeepsItsAccuracyBetweenTheNodesAndTo25Bar(Property property, double largest, double rootMeanSquare) {
        errors(POLYNOMIAL, Reference.stableBetweenNodes(), property)
                .assertWithin(largest, rootMeanSquare, property.name());
    }

    /** Validation against the metastable liquid of IAPWS-95, which a solver's trial steps visit. */
    @ParameterizedTest
    @MethodSource("budgetsOfThePolynomial")
    void polynomialKeepsItsAccuracyBelowSaturation(Property property, double largest, double rootMeanSquare) {
        double widened = 1.15; // stated: rho within 2.3e-7 there instead of 2.1e-7
        double fewPoints = 1.5; // the states crowd at the hot, low-pressure corner, where errors are at their largest
        errors(POLYNOMIAL, Reference.metastable(), property)
                .assertWithin(widened * largest, fewPoints * rootMeanSquare, property.name());
    }

    /** Validation: sound speed, computed from four properties, against the tabulated one. */
    @Test
    void polynomialKeepsTheSoundSpeed() {
        // w^2 = (c_p/c_v)/(rho kappa): half of the 2.6e-4 of kappa, times a ratio of up to 1.13.
        errors(POLYNOMIAL, Reference.nodes(), SOUND_SPEED).assertWithin(1.5e-4, 0.8e-4, "sound speed");
    }

    /** Largest deviations published with the table beside the tests; root mean squares are this project's own. */
    static Stream<Arguments> budgetsOfIf97() {
        return Stream.of(
                Arguments.of(DENSITY, 1.6e-5, 1.0e-5), // deviation of the standard itself: 1.53e-5
                Arguments.of(EXPANSIVITY, 5.6e-7, 3.0e-7), // deviation of the standard itself: 5.5e-7
                Arguments.of(EXPANSIVITY_RELATIVE, 3.0e-3, 1.0e-3), // deviation of the standard itself: 0.29 %
                Arguments.of(COMPRESSIBILITY, 3.6e-3, 2.3e-3), // deviation of the standard itself: 0.354 %
                Arguments.of(HEAT_CAPACITY, 8.2e-4, 4.3e-4), // deviation of the standard itself: 0.081 %
                Arguments.of(ENTHALPY, 73, 40), // deviation of the standard itself: 72 J/kg
                Arguments.of(SOUND_SPEED, 2.0e-3, 1.3e-3)); // deviation of the standard itself: 0.19 %
    }

    /** Validation: IF97 deviates from IAPWS-95 by as much as others find it to, not more. */
    @ParameterizedTest
    @MethodSource("budgetsOfIf97")
    void if97DeviatesFromIapws95AsKnown(Property property, double largest, double rootMeanSquare) {
        errors(IF97, Reference.nodes(), property).assertWithin(largest, rootMeanSquare, property.name());
    }

    /** Validation: the size of the largest density deviation is known to three digits, and is met from below too. */
    @Test
    void if97DensityDeviatesByTheKnownAmount() {
        assertEquals(1.53e-5, errors(IF97, Reference.nodes(), DENSITY).largest(), 0.005e-5); // half of its last digit
    }

    /** Regression: the constants as a second program evaluates them from the same coefficients. */
    @ParameterizedTest
    @MethodSource("frozenStates")
    void polynomialKeepsItsCoefficients(double temperature, double pressureAbsolute, double[] expected) {
        LiquidWater.State state = POLYNOMIAL.stateAt(temperature, pressureAbsolute);
        double rounding = 1e-12; // a dozen operations of 1e-16 each, larger where terms cancel
        assertEquals(expected[0], state.density(), rounding * expected[0]);
        assertEquals(expected[1], state.expansivity(), rounding * 1e-3);
        assertEquals(expected[2], state.compressibility(), rounding * expected[2]);
        assertEquals(expected[3], state.heatCapacity(), rounding * expected[3]);
        assertEquals(expected[4], state.enthalpy(), rounding * 1e5);
    }

    static Stream<Arguments> frozenStates() {
        return Stream.of(
                Arguments.of(283.15, 300000.0, new double[] {
                    999.797545061408, 8.8413713545713e-05, 4.7783319423723e-10, 4194.40472842287, 42313.1573644087
                }),
                Arguments.of(333.15, 600000.0, new double[] {
                    983.413832037632, 0.00052298800737266, 4.4430215991209e-10, 4183.81311415822, 251667.84114116
                }),
                Arguments.of(371.15, 1100000.0, new double[] {
                    960.244369960444, 0.00073819662638113, 4.8528479562703e-10, 4211.1809136174, 411492.024941425
                }),
                Arguments.of(423.15, 2500000.0, new double[] {
                    918.154370241005, 0.001019276046798, 6.1459372429259e-10, 4300.50870472982, 633430.839202533
                }));
    }

    private static ErrorStatistics errors(LiquidWater water, List<Reference> references, Property property) {
        LiquidWater.State state = new LiquidWater.State();
        ErrorStatistics statistics = new ErrorStatistics();
        for (Reference reference : references) {
            if (property.appliesTo(reference)) {
                water.evaluate(reference.temperature(), reference.pressureAbsolute(), state);
                statistics.add(property.error(state, reference));
            }
        }
        return statistics;
    }
}

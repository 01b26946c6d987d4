package io.github.heatswell.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

/** The contract, for the formulation to simulate with; its accuracy is in {@link AccuracyTest}. */
class GibbsPolynomialWaterTest extends LiquidWaterContract {
    GibbsPolynomialWaterTest() {
        super(GibbsPolynomialWater.instance());
    }

    /** Regression: the range is the documented one. */
    @Test
    void rangeIsTheDocumentedOne() {
        assertEquals(
                new LiquidWater.ValidityRange(273.15, 423.15, 611, 2.5e6),
                GibbsPolynomialWater.instance().validity());
    }

    /** Regression: there is one instance, since there is nothing to tell two apart. */
    @Test
    void instanceIsShared() {
        assertSame(GibbsPolynomialWater.instance(), GibbsPolynomialWater.instance());
    }

    /**
     * Validation: at the triple point, the liquid has u = 0 and h = p v = 0.61178 J/kg by convention (IAPWS
     * R6-95(2018), section 5).
     */
    @Test
    void internalEnergyIsZeroAtTheTriplePoint() {
        double statedAccuracy = 0.51; // of the enthalpy, J/kg
        LiquidWater water = GibbsPolynomialWater.instance();
        assertEquals(0, water.internalEnergy(273.16, 611.657), statedAccuracy);
        assertEquals(0.61178, water.enthalpy(273.16, 611.657), statedAccuracy);
    }
}

package io.github.heatswell.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a charge fades. */
class PrechargeLossTest {

    /**
     * Validation, on a weak basis: permeabilities of butyl rubber (0.325 Barrer for nitrogen, 1.30 for oxygen; Polymer
     * Handbook, from memory; 1 Barrer is 3.348e-16 mol m/(m2 s Pa)), a diaphragm of 0.1 m2 and 2 mm, 8 L of air at 3 bar
     * gauge and 20 degC. The rate holds within a factor of three; the constant is this number with two digits.
     */
    @Test
    void theUsualRateIsThatOfAButylDiaphragm() {
        double permeability = (0.79 * 0.325 + 0.21 * 1.30) * 3.348e-16;
        double molesAYear = permeability * 0.1 / 0.002 * 3e5 * 365 * 86_400;
        double moles = 4e5 * 8e-3 / (8.314 * 293.15);
        double gaugeLostAYear = molesAYear / moles * 4e5 / 3e5;
        assertEquals(gaugeLostAYear, PrechargeLoss.USUAL, 0.001); // two digits
        assertTrue(PrechargeLoss.LOW <= gaugeLostAYear / 2.8
                && PrechargeLoss.HIGH >= gaugeLostAYear * 2.8); // a factor of three
    }

    /** Validation: closed form of the law, in and below the range where the vessel holds no cold water. */
    @ParameterizedTest
    @CsvSource({
        // precharge, static, years, left (bar gauge) at 0.1 a year
        "3, 4, 0, 3",
        "3, 4, 5, 1", // even: 0.4 bar a year
        "3, 4, 7.5, 0",
        "3, 4, 20, 0", // and no less
        "4, 4, 2.5, 3",
        "5.436563656918090, 2, 5, 3.297442541400256", // 2 e exp(-0.5), still above the static pressure
        "5.436563656918090, 2, 15, 1", // e-fold in ten years, then 0.2 bar a year for five
    })
    void fadesByItsLaw(double precharge, double staticGauge, double years, double left) {
        PrechargeLoss loss = new PrechargeLoss(0.1);
        assertEquals(left * 1e5, loss.left(precharge * 1e5, staticGauge * 1e5, years), 1e-3); // rounding
        if (left > 0) {
            assertEquals(years, loss.yearsUntil(precharge * 1e5, left * 1e5, staticGauge * 1e5), 1e-9); // rounding
        }
    }

    /** Contract. */
    @Test
    void aTightVesselKeepsItsCharge() {
        assertEquals(3e5, new PrechargeLoss(0).left(3e5, 4e5, 40));
        assertEquals(Double.POSITIVE_INFINITY, new PrechargeLoss(0).yearsUntil(3e5, 2e5, 4e5));
    }

    /** Contract. */
    @Test
    void halfOfTheVesselsFadeMoreSlowlyThanExpected() {
        PrechargeLoss.Range usual = PrechargeLoss.Range.usual();
        assertEquals(PrechargeLoss.LOW, usual.quantile(0).yearly());
        assertEquals(PrechargeLoss.USUAL, usual.quantile(0.5).yearly());
        assertEquals(PrechargeLoss.HIGH, usual.quantile(1).yearly());
        assertEquals(
                Math.sqrt(PrechargeLoss.LOW * PrechargeLoss.USUAL),
                usual.quantile(0.25).yearly(),
                1e-12); // rounding
        PrechargeLoss.Range maybeNone =
                new PrechargeLoss.Range(new PrechargeLoss(0.2), new PrechargeLoss(0), new PrechargeLoss(0.2));
        assertEquals(0.1, maybeNone.quantile(0.25).yearly());
        assertEquals(0.2, maybeNone.quantile(0.9).yearly());
    }

    /** Contract: refusals. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 5.01, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesARateOutsideItsRange(double yearly) {
        String message = assertThrows(IllegalArgumentException.class, () -> new PrechargeLoss(yearly))
                .getMessage();
        assertTrue(message.startsWith("fade in a year: ") && message.endsWith("allowed range, 0 % to 500 %"), message);
    }

    /** Contract: refusals. */
    @Test
    void refusesRatesInAnotherOrder() {
        PrechargeLoss low = new PrechargeLoss(0.1);
        PrechargeLoss high = new PrechargeLoss(0.2);
        assertThrows(IllegalArgumentException.class, () -> new PrechargeLoss.Range(low, high, high));
        assertThrows(IllegalArgumentException.class, () -> new PrechargeLoss.Range(high, low, low));
    }
}

package io.github.heatswell.scenarios.teaching;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.units.TemperatureUnit;
import io.github.heatswell.water.Saturation;
import org.junit.jupiter.api.Test;

/**
 * Validation of the numbers the lessons teach. Values marked IAPWS-95 were worked out from that formulation (Release
 * R6-95) by two independent programs.
 */
class FactsTest {

    private static double celsius(double value) {
        return TemperatureUnit.CELSIUS.toSi(value);
    }

    /** A number in what a lesson tells its readers to notice (SI units). */
    private static double noticed(Lesson lesson, int sentence, int number) {
        return Lessons.run(lesson).notice().get(sentence).measures().get(number).value();
    }

    /** Table at lsbu.ac.uk (Kell 1975 and others): 0.088e-3 at 10 degC and 0.523e-3 at 60 degC, at 1 atm. */
    @Test
    void growthPerKelvinRisesAlmostSixfold() {
        double digitsAndPressure = 1.5e-6; // half a printed digit, and 4 bar more than in the table
        assertEquals(0.088e-3, WaterFacts.expansivity(celsius(10)), digitsAndPressure);
        assertEquals(0.523e-3, WaterFacts.expansivity(celsius(60)), digitsAndPressure);
    }

    /** IAPWS-95 at 3 bar: 1.6795 % and 2.8726 %. */
    @Test
    void growthIsUnderTwoPercentUpToSixtyDegrees() {
        double otherPressure = 1e-5; // the values are for 3 bar, ours for 5 bar
        assertEquals(0.016795, WaterFacts.growth(celsius(10), celsius(60)), otherPressure);
        assertEquals(0.028726, WaterFacts.growth(celsius(10), celsius(80)), otherPressure);
    }

    /** IAPWS-95 at 5 bar: 34.324 mL/min from 4.5 kW at 60 degC, by beta Q/(rho c). */
    @Test
    void anElementPushesOutTwoOrThreeDropsASecond() {
        assertEquals(34.324, WaterFacts.growthFlow(4500, celsius(60)) * 60e6, 34.324e-3); // fit of beta: 0.06 %
    }

    /** IAPWS-95: from 10 degC at 4.5 bar abs to 17.457 bar at 15 degC and 96.638 bar at 30 degC. */
    @Test
    void rigidWallsMakeThePressureShootUp() {
        double compressibility = 2e-3; // IF97 squeezes up to 0.36 % differently
        assertEquals(17.457, WaterFacts.rigidAbsolute(celsius(10), 4.5e5, celsius(15)) / 1e5, 17.457 * compressibility);
        assertEquals(96.638, WaterFacts.rigidAbsolute(celsius(10), 4.5e5, celsius(30)) / 1e5, 96.638 * compressibility);
    }

    /** IAPWS-95 and the thin closed cylinder, 450 mm by 2.2 mm: 17.457 and 7.448 bar abs at 15 degC. */
    @Test
    void theRunsOfTheLessonShowTheSame() {
        assertEquals(12.957, noticed(Lessons.named("steel-copper-plastic"), 0, 2) / 1e5, 0.026); // 0.2 %, kappa
        assertEquals(2.948, noticed(Lessons.named("steel-copper-plastic"), 0, 3) / 1e5, 0.006); // 0.2 %, kappa
    }

    /** IAPWS-95 at 5 bar, steel of 12e-6 1/K: beta equals three times that at 6.24 degC. */
    @Test
    void anIceColdTankLosesPressureUpToSixDegrees() {
        double found = noticed(Lessons.named("pressure-per-degree"), 2, 3);
        assertEquals(6.24, TemperatureUnit.CELSIUS.fromSi(found), 0.1); // other pressure, and samples of 10 s
    }

    /** Handbook arithmetic, 1 - p1/p2 with 4.2 and 6.4 bar against 7 bar, air at 310 m by ISO 2533 of 0.977 bar. */
    @Test
    void theUsableShareFollowsTheFormula() {
        assertEquals(1 - 5.177 / 7.977, noticed(Lessons.named("high-supply-pressure"), 1, 1), 1e-3);
        assertEquals(1 - 7.377 / 7.977, noticed(Lessons.named("high-supply-pressure"), 1, 2), 1e-3);
    }

    /**
     * The formula of the lesson by hand, in the middle of the first three degrees, 11.5 degC: water of 0.107e-3 1/K (the table above,
     * 0.088e-3 at 10 degC and 0.151e-3 at 15 degC) and 0.474e-9 1/Pa; thin closed cylinder of steel, 450 mm by 2.2 mm, 12e-6 1/K,
     * 200 GPa, Poisson's ratio 0.3.
     */
    @Test
    void oneDegreeRaisesThePressureAsTheFormulaSays() {
        double stretch = 450 / 2.2 / 200e9 * (5.0 / 4 - 0.3);
        double expected = (0.107e-3 - 36e-6) / (0.474e-9 + stretch);
        assertEquals(
                expected,
                noticed(Lessons.named("pressure-per-degree"), 0, 2),
                0.03 * expected); // table's digits; pipes
    }

    /** Boyle, by hand: 1.6 bar, air of 0.977 bar, 60 % full: 2.577/0.4 - 0.977 bar. Of 12 L, 1 - 6.977/7.977 is water at 7 bar. */
    @Test
    void theStepsInThePictureOfThePrechargeFollowFromBoyle() {
        Lesson lesson = Lessons.named("the-precharge");
        assertEquals(2.577 / 0.4 - 0.977, noticed(lesson, 3, 0) / 1e5, 5e-3); // height of the vessel, digits of the air
        assertEquals(
                12 * (1 - 6.977 / 7.977), noticed(lesson, 4, 0) * 1e3, 0.03); // the valve lifts a little above 7 bar
    }

    /** Worked out from IAPWS-95: 60 L from 12 to 60 degC grow by 1.0 L, 190 L from 45 to 60 degC by 1.35 L. */
    @Test
    void aMixedTankGrowsMoreThanALayeredOne() {
        assertEquals(1.0, 60 * WaterFacts.growth(celsius(12), celsius(60)), 0.05); // printed digits
        assertEquals(
                1.35,
                190 * WaterFacts.growth(celsius(45), celsius(60)),
                0.01); // hot water counted, as cold it is 0.7 % less
    }

    /** IAPWS-95: 0.979 bar at 99 degC. */
    @Test
    void waterLetOutAtNinetyNineDegreesJustFailsToBoil() {
        assertEquals(0.979, Saturation.pressureAbsolute(celsius(99)) / 1e5, 0.0005); // printed digits
        assertTrue(Saturation.pressureAbsolute(celsius(99)) < 101325);
        assertTrue(Saturation.pressureAbsolute(celsius(101)) > 101325);
    }
}

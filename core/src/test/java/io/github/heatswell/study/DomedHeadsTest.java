package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.heatswell.system.Material;
import io.github.heatswell.system.Shell;
import io.github.heatswell.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far domed heads change the compliance of a tank, which is calculated as that of a plain cylinder. */
class DomedHeadsTest {

    private static final double MODULUS = Material.STEEL.youngsModulus();
    private static final double POISSON = Material.STEEL.poissonRatio();
    private static final double RADIUS = 0.225;
    private static final double WALL = 2.2e-3;
    private static final int RINGS = 20_000;

    /**
     * Validation: a tank three times as high as wide with two ellipsoidal heads as deep as this share of its radius. The work of the
     * pressure, {@code p dV/2}, is the energy in the shell, {@code (N1^2 + N2^2 - 2 nu N1 N2)/(2 E e)} over its surface, with the forces
     * {@code N1 = p r2/2} and {@code N2 = p r2 (1 - r2/(2 r1))} in a membrane of the radii of curvature r1 and r2 (Timoshenko and
     * Woinowsky-Krieger, Theory of Plates and Shells, membrane theory; from memory). Hemispheres have
     * {@code (D/(E e)) 3 (1 - nu)/4}, a closed form. Bending where head and cylinder meet is left out.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.901", "0.5, 1.105", "0.43, 1.248"})
    void domedHeadsAreWithinWhatIsUncertain(double depth, double expected) {
        double volume = 6 * Math.PI * Math.pow(RADIUS, 3);
        double inHeads = 4 * Math.PI / 3 * Math.pow(RADIUS, 3) * depth;
        double cylinder = Shell.cylinder(Material.STEEL, 2e3 * RADIUS, 1e3 * WALL, LengthUnit.MILLIMETRE)
                .compliance();
        double ratio = (2 * headByPressure(depth) + (volume - inHeads) * cylinder) / (volume * cylinder);
        assertEquals(expected, ratio, 1e-3); // printed digits
        assertTrue(Math.abs(ratio - 1) < UncertainHouse.Quantity.TANK_STRETCH.expanded());
        if (depth == 1) {
            double sphere = 2 * RADIUS / (MODULUS * WALL) * 3 * (1 - POISSON) / 4;
            assertEquals(inHeads * sphere, 2 * headByPressure(depth), 1e-6 * inHeads * sphere); // the rings
        }
    }

    /** How much (m3/Pa) one head gives way. */
    private static double headByPressure(double depth) {
        double b = depth * RADIUS;
        double sum = 0;
        for (int i = 0; i < RINGS; i++) {
            double angle = (i + 0.5) / RINGS * Math.PI / 2;
            double arc = Math.hypot(RADIUS * Math.cos(angle), b * Math.sin(angle));
            double alongRadius = Math.pow(arc, 3) / (RADIUS * b);
            double aroundRadius = RADIUS * arc / b;
            double along = aroundRadius / 2;
            double around = aroundRadius * (1 - aroundRadius / (2 * alongRadius));
            double surface = 2 * Math.PI * RADIUS * Math.sin(angle) * arc * Math.PI / 2 / RINGS;
            sum += (along * along + around * around - 2 * POISSON * along * around) * surface;
        }
        return sum / (MODULUS * WALL);
    }
}

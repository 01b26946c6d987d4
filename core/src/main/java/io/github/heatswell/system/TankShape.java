package io.github.heatswell.system;

import static java.lang.Math.PI;

/**
 * A thin-walled tank: a cylinder with two ellipsoidal heads, and a flue through it from crown to crown, all of one thickness.
 *
 * <p>Its stretch is that of membranes (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, chapter 14, from memory): the
 * energy {@code (N1^2 + N2^2 - 2 nu N1 N2)/(2 E e)} over the surface is the work {@code p dV/2} of the pressure. A flue is taken as a
 * closed cylinder under pressure from outside, so that the heads are stressed as without it. Any membrane forces in balance give an
 * upper bound (theorem of least complementary energy); the stay that the flue gives the heads is what is left out. So is bending.
 *
 * @param diameter of the cylinder (m)
 * @param depth of one head (m), 0 for flat ends, which do not give way; at most the radius
 * @param flue diameter of the flue (m), 0 for none
 */
record TankShape(double diameter, double depth, double flue) {

    /** Relative difference (-) of depth and radius below which a head is a hemisphere. */
    private static final double ROUNDING = 1e-6;

    /** What both heads hold (m3). */
    double inHeads() {
        return PI / 3 * diameter * diameter * depth;
    }

    /** Length (m) of the cylinder of a tank of this volume (m3), below 0 if its heads alone hold more. */
    double length(double volume) {
        double passage = PI / 4 * flue * flue;
        return (volume - inHeads() + passage * 2 * depth) / (PI / 4 * diameter * diameter - passage);
    }

    /** From crown to crown (m), of a tank of this volume (m3). */
    double height(double volume) {
        return length(volume) + 2 * depth;
    }

    /** By how much a tank of this volume (m3) grows with pressure, times the wall's thickness and modulus (m4). */
    double stretch(double volume, double poissonRatio) {
        double length = length(volume);
        return closedCylinder(diameter, length, poissonRatio)
                + 2 * head(poissonRatio)
                + closedCylinder(flue, length + 2 * depth, poissonRatio);
    }

    private static double closedCylinder(double across, double length, double poissonRatio) {
        return across * (1.25 - poissonRatio) * PI / 4 * across * across * length;
    }

    /**
     * One head. With its radius a, its depth b and {@code s^2 = b^2 + (a^2 - b^2) u^2}, the forces are {@code N1 = p a s/(2 b)} along and
     * {@code N2 = p (a/b) (s - a^2/(2 s))} around it, the surface is {@code 2 pi a s du} for u from 0 to 1, and the powers of s have
     * integrals in closed form.
     */
    private double head(double poissonRatio) {
        if (!(depth > 0)) {
            return 0;
        }
        double a = diameter / 2;
        double c = Math.sqrt(Math.max(0, a * a - depth * depth));
        double inverse = c > ROUNDING * a ? Math.log((c + a) / depth) / c : 1 / a;
        double first = (a + depth * depth * inverse) / 2;
        double third = (a * a * a + 3 * depth * depth * first) / 4;
        double squares =
                (1.25 - poissonRatio) * third - (1 - poissonRatio / 2) * a * a * first + Math.pow(a, 4) / 4 * inverse;
        return 2 * PI * a * Math.pow(a / depth, 2) * squares;
    }
}

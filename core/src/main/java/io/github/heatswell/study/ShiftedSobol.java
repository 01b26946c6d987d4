package io.github.heatswell.study;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Low-discrepancy points of the unit cube: the Sobol' sequence without its first point, the origin, shifted by a vector
 * derived from the seed (modulo 1, after Cranley and Patterson, 1976). Every point depends on its index alone. Not
 * thread-safe.
 */
final class ShiftedSobol {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1p-53;

    private final SobolSequenceGenerator sequence;
    private final double[] shift;
    private final double[] point;
    private int next = -1;

    ShiftedSobol(int dimension, long seed) {
        sequence = new SobolSequenceGenerator(dimension);
        shift = new double[dimension];
        point = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            shift[i] = (mixed(seed + (i + 1) * GOLDEN) >>> 11) * UNIT;
        }
    }

    /**
     * A point.
     *
     * @param index its number, from 0
     * @return its coordinates, 0 to less than 1; overwritten by the next call
     */
    double[] at(int index) {
        if (index + 1 == next) {
            return point;
        }
        double[] raw = index == next ? sequence.nextVector() : sequence.skipTo(index + 1);
        for (int i = 0; i < point.length; i++) {
            double moved = raw[i] + shift[i];
            point[i] = moved < 1 ? moved : moved - 1;
        }
        next = index + 1;
        return point;
    }

    /** The output function of the generator SplitMix64 (Steele, Lea and Flood, 2014; from memory). */
    private static long mixed(long state) {
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}

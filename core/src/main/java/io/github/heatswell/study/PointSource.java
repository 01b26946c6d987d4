package io.github.heatswell.study;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.hipparchus.random.SobolSequenceGenerator;

/** Gives the input values of every run of the model, from the number of the run alone. Not for several threads. */
interface PointSource {

    /**
     * The values of a run.
     *
     * @param run its number, from 0
     * @return a new array, one value for each input
     */
    double[] values(int run);

    /** One point for each run. */
    static PointSource plain(List<Study.Input> inputs, long seed) {
        ScrambledSobol points = new ScrambledSobol(inputs.size(), seed);
        return run -> {
            double[] point = points.at(run);
            double[] values = new double[point.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = inputs.get(i).distribution().quantile(point[i]);
            }
            return values;
        };
    }

    /**
     * Runs for variance shares: for each pair of independent points A and B, the points A, B, and A with one coordinate
     * at a time taken from B; the number of inputs plus two in sequence.
     */
    static PointSource crossed(List<Study.Input> inputs, long seed) {
        int count = inputs.size();
        ScrambledSobol points = new ScrambledSobol(2 * count, seed);
        return run -> {
            double[] point = points.at(run / (count + 2));
            int kind = run % (count + 2);
            double[] values = new double[count];
            for (int i = 0; i < count; i++) {
                boolean other = kind == 1 || kind == i + 2;
                values[i] = inputs.get(i).distribution().quantile(point[other ? count + i : i]);
            }
            return values;
        };
    }

    /**
     * Low-discrepancy points of the unit cube: the Sobol' sequence without its first point, the origin, each coordinate scrambled
     * as the seed says (nested uniform scrambling after Owen, 1995). A mere shift would leave some pairs of coordinates
     * correlated, by up to 0.7 among the first 64 points. Every point depends on its index alone. Not thread-safe.
     */
    static final class ScrambledSobol {

        private static final long GOLDEN = 0x9E3779B97F4A7C15L;
        private static final double TWO_TO_32 = 0x1p32;

        private final SobolSequenceGenerator sequence;
        private final int[] keys;
        private final double[] point;
        private int next = -1;

        ScrambledSobol(int dimension, long seed) {
            sequence = sequence(dimension);
            keys = new int[dimension];
            point = new double[dimension];
            for (int i = 0; i < dimension; i++) {
                keys[i] = (int) (mixed(seed + (i + 1) * GOLDEN) >>> Integer.SIZE);
            }
        }

        /** The library's own table has 21201 dimensions and two megabytes; it is read from as many as a study may need. */
        private static SobolSequenceGenerator sequence(int dimension) {
            try (InputStream directions = PointSource.class.getResourceAsStream("direction-numbers.txt")) {
                return new SobolSequenceGenerator(dimension, directions);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /**
         * A point.
         *
         * @param index its number, from 0
         * @return its coordinates, above 0 to less than 1; overwritten by the next call
         */
        double[] at(int index) {
            if (index + 1 == next) {
                return point;
            }
            double[] raw = index == next ? sequence.nextVector() : sequence.skipTo(index + 1);
            for (int i = 0; i < point.length; i++) {
                point[i] = scrambled(raw[i], keys[i]);
            }
            next = index + 1;
            return point;
        }

        /**
         * Flips each binary digit by a hash of the digits before it, which the mirrored bits make those below it (Laine and Karras,
         * 2011, with the constants of Burley, 2020; from memory).
         */
        private static double scrambled(double coordinate, int key) {
            int x = Integer.reverse((int) (long) (coordinate * TWO_TO_32));
            x ^= x * 0x3d20adea;
            x += key;
            x *= (key >>> 16) | 1;
            x ^= x * 0x05526c56;
            x ^= x * 0x53a22864;
            return (Integer.toUnsignedLong(Integer.reverse(x)) + 0.5) / TWO_TO_32;
        }

        /** The output function of the generator SplitMix64 (Steele, Lea and Flood, 2014; from memory). */
        private static long mixed(long state) {
            long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
            z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
            return z ^ (z >>> 31);
        }
    }
}

package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rank correlations and variance shares against closed forms. */
class ImportanceTest {

    private static Study study(int inputs, double low, double high, int samples, Study.Model model) {
        Study.Builder builder =
                Study.builder().outputs(List.of("y")).samples(samples).model(model);
        for (int i = 0; i < inputs; i++) {
            builder.input("x" + i, Distribution.between(low, high));
        }
        return builder.build();
    }

    @Test
    void aMonotoneFunctionHasAllRanksAlike() {
        Study rising = study(1, 0, 3, 200, values -> new double[] {Math.exp(5 * values[0])});
        Study falling = study(1, 0, 3, 200, values -> new double[] {-Math.pow(values[0], 3)});

        assertEquals(1, rising.run().importance(0, 0), 1e-12); // rounding
        assertEquals(-1, falling.run().importance(0, 0), 1e-12); // rounding
    }

    /**
     * Validation: of y = x0 + x1 with even spreads from 0 to 1 the rank correlation is 12 E[x0 G(y)] - 3 = 7/10, where G is
     * the share of the triangular sum below y; an input that does nothing has none.
     */
    @Test
    void anInputThatDoesNothingHasNoRankCorrelation() {
        StudyResult result = study(3, 0, 1, 4096, values -> new double[] {values[0] + values[1]})
                .run();

        assertEquals(0.7, result.importance(0, 0), 0.01); // the sample: a random one would err by 0.008
        assertEquals(result.importance(0, 0), result.importance(1, 0), 0.01);
        assertEquals(0, result.importance(2, 0), 0.01);
    }

    /** Validation: ranks 1, 2.5, 2.5, 4 against 1 to 4 correlate with 4.5 / sqrt(4.5 * 5). */
    @Test
    void equalValuesShareTheirRank() {
        double found = StudyResult.Ranks.of(new double[] {1, 2, 2, 9}, 4)
                .correlation(StudyResult.Ranks.of(new double[] {10, 20, 30, 40}, 4));

        assertEquals(4.5 / Math.sqrt(4.5 * 5), found, 1e-15); // rounding
    }

    @Test
    void aConstantHasNoImportance() {
        Study constant = study(2, 0, 1, 64, values -> new double[] {7.3});

        assertEquals(0, constant.run().importance(0, 0));
        assertEquals(0, constant.varianceShares().firstOrder(0, 0));
        assertEquals(0, constant.varianceShares().total(1, 0));
    }

    /** Validation: of a linear function the share of each input is its coefficient squared over the sum of all. */
    @Test
    void aLinearFunctionSharesBySquares() {
        VarianceShares shares = study(
                        3, -2, 5, 2048, values -> new double[] {3 * values[0] - 2 * values[1] + values[2] + 11})
                .varianceShares();

        double[] squares = {9, 4, 1};
        for (int i = 0; i < 3; i++) {
            assertEquals(squares[i] / 14, shares.firstOrder(i, 0), 0.005); // of the sample
            assertEquals(squares[i] / 14, shares.total(i, 0), 0.005); // of the sample
        }
    }

    /**
     * Validation: the function of Ishigami and Homma (1990), sin x0 + 7 sin^2 x1 + 0.1 x2^4 sin x0 on -pi to pi, with
     * its closed forms: V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2, V0 = (1 + b pi^4/5)^2 / 2, V1 = a^2/8,
     * V02 = b^2 pi^8 (1/18 - 1/50).
     */
    @Test
    void theFunctionOfIshigami() {
        double a = 7;
        double b = 0.1;
        double pi4 = Math.pow(Math.PI, 4);
        double variance = a * a / 8 + b * pi4 / 5 + b * b * pi4 * pi4 / 18 + 0.5;
        double first = Math.pow(1 + b * pi4 / 5, 2) / 2 / variance;
        double second = a * a / 8 / variance;
        double together = b * b * pi4 * pi4 * (1 / 18.0 - 1 / 50.0) / variance;

        VarianceShares shares = study(3, -Math.PI, Math.PI, 8192, x -> new double[] {
                    Math.sin(x[0]) + a * Math.pow(Math.sin(x[1]), 2) + b * Math.pow(x[2], 4) * Math.sin(x[0])
                })
                .varianceShares();

        double sampling = 0.01; // 8192 evenly strewn points; a random sample would err by about twice that
        assertEquals(first, shares.firstOrder(0, 0), sampling);
        assertEquals(second, shares.firstOrder(1, 0), sampling);
        assertEquals(0, shares.firstOrder(2, 0), sampling);
        assertEquals(first + together, shares.total(0, 0), sampling);
        assertEquals(second, shares.total(1, 0), sampling);
        assertEquals(together, shares.total(2, 0), sampling);
        assertEquals(8192 * 5, shares.completedRuns());
        assertEquals(8192, shares.samples(0));
    }

    /** Validation: the g-function of Sobol', product of (|4 x - 2| + a) / (1 + a), with V_i = 1 / (3 (1 + a)^2). */
    @Test
    void theProductOfSobol() {
        double[] a = {0, 1, 4.5, 9};
        double product = 1;
        for (double each : a) {
            product *= 1 + partial(each);
        }
        VarianceShares shares = study(4, 0, 1, 8192, x -> {
                    double y = 1;
                    for (int i = 0; i < a.length; i++) {
                        y *= (Math.abs(4 * x[i] - 2) + a[i]) / (1 + a[i]);
                    }
                    return new double[] {y};
                })
                .varianceShares();

        for (int i = 0; i < a.length; i++) {
            double alone = partial(a[i]) / (product - 1);
            double total = partial(a[i]) * product / (1 + partial(a[i])) / (product - 1);
            assertEquals(alone, shares.firstOrder(i, 0), 0.01); // as for the function of Ishigami
            assertEquals(total, shares.total(i, 0), 0.01); // as for the function of Ishigami
        }
    }

    private static double partial(double a) {
        return 1 / (3 * (1 + a) * (1 + a));
    }

    @Test
    void samplesWithAFailedRunCountForNothing() {
        VarianceShares shares = study(2, 0, 1, 1024, x -> {
                    if (x[0] > 0.95) {
                        throw new Study.SampleFailedException("too much");
                    }
                    return new double[] {x[0] + 2 * x[1]};
                })
                .varianceShares();

        assertTrue(shares.failedRuns() > 0);
        assertEquals("too much", shares.firstFailure().orElseThrow());
        // a sample is whole if neither of its two values of x0 is above 0.95
        assertEquals(1024 * 0.95 * 0.95, shares.samples(0), 10);
        // x0 is spread over 0.95 then: shares 0.9025 to 4
        assertEquals(0.9025 / 4.9025, shares.firstOrder(0, 0), 0.01);
    }
}

package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Shares of samples. */
class ShareTest {

    /** Validation: at the limit, so few of n samples have the property with a probability of one in twenty: the binomial law. */
    @Test
    void theLimitIsThatOfTheBinomialLaw() {
        for (int n : new int[] {1, 20, 256}) {
            assertEquals(0.05, Math.pow(1 - new StudyResult.Share(0, n).atMost(), n), 1e-12);
            assertEquals(0.05, Math.pow(new StudyResult.Share(n, n).atLeast(), n), 1e-12);
        }
        double most = new StudyResult.Share(2, 64).atMost();
        double none = Math.pow(1 - most, 64);
        double one = 64 * most * Math.pow(1 - most, 63);
        double two = 64 * 63 / 2.0 * most * most * Math.pow(1 - most, 62);
        assertEquals(0.05, none + one + two, 1e-10);
        assertEquals(1 - most, new StudyResult.Share(62, 64).atLeast(), 1e-12);
        assertEquals(1, new StudyResult.Share(5, 5).atMost(), 0);
        assertTrue(Double.isNaN(new StudyResult.Share(0, 0).atMost()));
        assertTrue(Double.isNaN(new StudyResult.Share(0, 0).atLeast()));
    }
}

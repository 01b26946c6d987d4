package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Shares of samples. */
class ShareTest {

    /** Validation: at the limit, no sample of n has the property with a probability of one in twenty: the binomial law. */
    @Test
    void theLimitIsThatOfTheBinomialLaw() {
        for (int n : new int[] {1, 20, 256}) {
            assertEquals(0.05, Math.pow(1 - new StudyResult.Share(0, n).furthest(), n), 1e-12);
            assertEquals(0.05, Math.pow(new StudyResult.Share(n, n).furthest(), n), 1e-12);
        }
        assertTrue(Double.isNaN(new StudyResult.Share(1, 2).furthest()));
        assertTrue(Double.isNaN(new StudyResult.Share(0, 0).furthest()));
    }
}

package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * Regression: logs made by the library itself from a known cause, read by the diagnosis. More houses are looked at with {@code
 * -Dtest.jvm.options=-Ddiagnosis.cases=200}, and others from another {@code diagnosis.from} on. Of the 70 houses from 0 on, the
 * log could tell the cause in 20, and the cause was right in 19 of them (a small vessel was taken for a low precharge); all 36
 * numbers carried lay inside their 95 % interval, and one house was a misfit.
 */
@Order(1)
class RoundTripTest {

    /** Two houses; a long look takes more. */
    private static final int ORDINARY = 2;

    private static final int CASES = Integer.getInteger("diagnosis.cases", ORDINARY);
    private static final int FROM = Integer.getInteger("diagnosis.from", 19);

    @Test
    void findsTheCauseAndItsNumbers() {
        RoundTrips trips = new RoundTrips(KnownTruth::simulated);
        for (int seed = FROM; seed < FROM + CASES; seed++) {
            trips.add(seed);
        }
        if (CASES > ORDINARY) {
            System.out.println(trips); // a long look is for reading
        }
        assertTrue(trips.keepsItsPromise(), trips::toString);
    }
}

package io.github.heatswell.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/**
 * Regression: logs made by the library itself from a known cause, read by the diagnosis. More houses are looked at with {@code
 * -Dtest.jvm.options=-Ddiagnosis.cases=200}, and others from another {@code diagnosis.from} on. Of the 200 houses from 0 on, the
 * log could tell the cause in 76, and the cause was right in all of them; 121 of 129 carried numbers lay inside their 95 %
 * interval. With the true cause alone fitted to 216 logs (the houses 1000 to 1269 whose cause has numbers) it was 162 of 166;
 * in 8 searches the end was worse than the truth.
 */
@Order(1)
class RoundTripTest {

    /** Four houses, of which the logs of three tell the cause. */
    private static final int ORDINARY = 4;

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

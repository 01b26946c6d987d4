package io.github.heatswell.result;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Regression: how runs are counted whose balance does not close. */
class BalancesTest {

    @Test
    void oneOpenRunAmongManyIsEnough() {
        assertTrue(Balances.NONE.close());
        assertTrue(new Balances(0, 5).close());
        assertFalse(new Balances(0, 5).and(new Balances(1, 1)).close());
        assertEquals(new Balances(3, 12), new Balances(1, 5).and(new Balances(2, 7)));
    }

    @Test
    void noMoreCanBeOpenThanThereAre() {
        assertThrows(IllegalArgumentException.class, () -> new Balances(2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Balances(-1, 1));
    }

    @Test
    void manyThreadsAddToOneCount() {
        Balances.Count count = new Balances.Count();
        IntStream.range(0, 10_000).parallel().forEach(i -> count.add(new Balances(i % 2, 1)));
        assertEquals(new Balances(5_000, 10_000), count.sum());
    }
}

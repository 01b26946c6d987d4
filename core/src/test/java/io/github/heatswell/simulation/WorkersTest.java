package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Contract of the threads that share work. */
class WorkersTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void everyPieceIsDoneOnce(int threads) {
        ConcurrentLinkedQueue<Integer> done = new ConcurrentLinkedQueue<>();
        Workers.of(threads).each(100, done::add);
        int[] each = done.stream().mapToInt(Integer::intValue).sorted().toArray();
        assertArrayEquals(IntStream.range(0, 100).toArray(), each);
        Workers.of(threads).each(0, i -> {
            throw new IllegalStateException("there is none");
        });
    }

    @Test
    void whatComesOfThingsIsInTheirOrder() {
        List<Integer> numbers = IntStream.range(0, 50).boxed().toList();
        assertEquals(numbers.stream().map(i -> 2 * i).toList(), Workers.of(3).map(numbers, i -> 2 * i));
    }

    /** What failed is reported as it was, and no piece is begun after it. */
    @Test
    void aPieceThatFailsEndsTheWork() {
        AtomicInteger begun = new AtomicInteger();
        Workers workers = Workers.of(1);
        IllegalStateException failed = assertThrows(
                IllegalStateException.class,
                () -> workers.each(100, i -> {
                    begun.incrementAndGet();
                    if (i == 3) {
                        throw new IllegalStateException("the fourth");
                    }
                }));
        assertEquals("the fourth", failed.getMessage());
        assertEquals(4, begun.get());
        assertThrows(
                StackOverflowError.class,
                () -> workers.each(2, i -> {
                    throw new StackOverflowError();
                }));
    }

    /** Also if a later one fails sooner. */
    @Test
    void ofSeveralFailuresThatOfTheFirstPieceIsTold() {
        CountDownLatch laterFailed = new CountDownLatch(1);
        IllegalStateException failed = assertThrows(
                IllegalStateException.class,
                () -> Workers.of(2).each(2, i -> {
                    if (i == 1) {
                        laterFailed.countDown();
                    } else {
                        await(laterFailed);
                    }
                    throw new IllegalStateException("piece " + i);
                }));
        assertEquals("piece 0", failed.getMessage());
    }

    @Test
    void anInterruptedCallerGetsItsThreadBack() {
        Thread.currentThread().interrupt();
        assertThrows(
                CancellationException.class, () -> Workers.of(2).each(2, i -> LockSupport.parkNanos(Long.MAX_VALUE)));
        assertTrue(Thread.interrupted(), "the mark stays until it is looked at");
    }

    /** A piece that was begun is finished, and those done are the first ones. */
    @Test
    void anInterruptLetsWhatWasBegunEnd() {
        Thread caller = Thread.currentThread();
        ConcurrentLinkedQueue<Integer> done = new ConcurrentLinkedQueue<>();
        CountDownLatch never = new CountDownLatch(1);
        int count = Workers.of(2).until(() -> never.getCount() == 0, 1_000_000, () -> i -> {
            if (i == 5) {
                caller.interrupt();
            }
            done.add(i);
        });
        assertTrue(Thread.interrupted());
        int[] each = done.stream().mapToInt(Integer::intValue).sorted().toArray();
        assertArrayEquals(IntStream.range(0, count).toArray(), each);
    }

    @Test
    void piecesAreCountedThroughAllTheWork() {
        List<Integer> heard = new ArrayList<>();
        Workers workers = Workers.of(3)
                .telling(
                        (done, total) -> {
                            assertEquals(30, total);
                            heard.add(done);
                        },
                        30);
        workers.each(20, i -> {});
        workers.each(10, i -> {});
        assertEquals(IntStream.rangeClosed(1, 30).boxed().toList(), heard);
    }

    @Test
    void workNeedsSomebodyToDoIt() {
        assertEquals(
                "threads: 0 is outside the allowed range, 1 or more",
                assertThrows(IllegalArgumentException.class, () -> Workers.of(0))
                        .getMessage());
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}

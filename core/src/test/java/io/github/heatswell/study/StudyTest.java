package io.github.heatswell.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Closed forms of what spreads, and the promises of a study. */
class StudyTest {

    /** Three uncertain numbers and two answers; a corner of them has none. */
    private static Study.Builder cornered() {
        return Study.builder()
                .input("a", Distribution.between(0, 1))
                .input("b", Distribution.around(5, 2))
                .input("c", Distribution.between(-1, 3))
                .outputs(List.of("mixture", "product"))
                .samples(500)
                .seed(20260104)
                .model(values -> {
                    if (values[0] > 0.9) {
                        throw new Study.SampleFailedException("a is " + values[0]);
                    }
                    return new double[] {Math.sin(values[0] + values[1]) * values[2], values[1] * values[2]};
                });
    }

    private static Study.Builder evenSum(int samples) {
        return Study.builder()
                .input("one", Distribution.between(0, 1))
                .input("other", Distribution.between(0, 1))
                .outputs(List.of("sum"))
                .samples(samples)
                .model(values -> new double[] {values[0] + values[1]});
    }

    /** Validation: the sum of two even spreads is triangular; below its middle the quantile is sqrt(2 share). */
    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.25, 0.5, 0.75, 0.95})
    void theSumOfTwoEvenSpreadsIsTriangular(double share) {
        StudyResult.Spread sum = evenSum(4096).build().run().spread(0);

        double expected = share <= 0.5 ? Math.sqrt(2 * share) : 2 - Math.sqrt(2 * (1 - share));
        // sharing 4096 points a random sample would miss the share by 0.0078, an evenly strewn one by about (ln n)^2 /
        // n
        double density = Math.min(expected, 2 - expected);
        assertEquals(
                expected,
                sum.quantile(share),
                3 * Math.sqrt(share * (1 - share) / 4096) / density); // 3 standard errors
        assertEquals(1, sum.mean(), 0.001);
        assertEquals(4096, sum.answered());
    }

    @Test
    void theNumberOfThreadsChangesNothing() {
        StudyResult one = cornered().threads(1).build().run();
        StudyResult two = cornered().threads(2).build().run();
        StudyResult five = cornered().threads(5).build().run();

        assertTrue(one.failed() > 0);
        for (StudyResult other : List.of(two, five)) {
            assertEquals(one.failed(), other.failed());
            assertEquals(one.firstFailure(), other.firstFailure());
            for (int output = 0; output < 2; output++) {
                for (int i = 0; i < 500; i++) {
                    assertEquals(
                            Double.doubleToLongBits(one.output(i, output)),
                            Double.doubleToLongBits(other.output(i, output)));
                }
                assertEquals(one.importance(1, output), other.importance(1, output));
            }
        }
    }

    @Test
    void anotherSeedDiffersWithinTheStandardError() {
        StudyResult.Share first = evenSum(1000).seed(1).build().run().spread(0).above(1.5);
        StudyResult.Share second = evenSum(1000).seed(2).build().run().spread(0).above(1.5);

        assertNotEquals(
                evenSum(1000).seed(1).build().run().output(0, 0),
                evenSum(1000).seed(2).build().run().output(0, 0));
        assertEquals(0.125, first.value(), 2 * first.standardError());
        assertEquals(first.value(), second.value(), 3 * first.standardError());
        assertEquals(Math.sqrt(0.125 * 0.875 / 1000), first.standardError(), 5e-4);
    }

    /** Regression: of 64 samples that were only shifted, the second input was said to move what the eighth moves, by 0.61. */
    @Test
    void fewSamplesSayHowFarTheirInputsGoTogether() {
        for (int samples : new int[] {64, 256}) {
            Study.Builder study = Study.builder()
                    .outputs(List.of("eighth"))
                    .model(values -> new double[] {values[7]})
                    .samples(samples);
            for (int i = 0; i < 8; i++) {
                study.input("input " + i, Distribution.between(0, 1));
            }
            StudyResult found = study.build().run();
            double stray = found.strayCorrelation();
            assertTrue(stray > 0 && Math.abs(found.importance(1, 0)) <= stray + 1e-12);
            // twice the standard deviation, 1 / sqrt(n), of one pair of independent samples; the most of 28 pairs is
            // more
            assertTrue(stray < 2 / Math.sqrt(samples), samples + ": " + stray);
        }
    }

    @Test
    void aSampleIsWhatTheModelWasGiven() {
        StudyResult result = evenSum(100).build().run();

        for (int i = 0; i < 100; i++) {
            double[] values = result.input(i);
            assertEquals(result.output(i, 0), values[0] + values[1]);
            assertEquals(values[1], result.inputValues(1)[i]);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void aStoppedStudyKeepsItsFirstSamples(int threads) {
        AtomicInteger asked = new AtomicInteger();
        StudyResult stopped = cornered()
                .threads(threads)
                .stopWhen(() -> asked.incrementAndGet() > 123)
                .build()
                .run();
        StudyResult whole = cornered().build().run();

        assertEquals(500, stopped.planned());
        assertEquals(123, stopped.completed());
        int failed = 0;
        for (int i = 0; i < stopped.completed(); i++) {
            assertEquals(whole.output(i, 0), stopped.output(i, 0));
            failed += Double.isNaN(whole.output(i, 0)) ? 1 : 0;
        }
        assertEquals(failed, stopped.failed());
        assertEquals(whole.firstFailure(), stopped.firstFailure());
        assertThrows(IndexOutOfBoundsException.class, () -> stopped.output(stopped.completed(), 0));
    }

    @Test
    void aStudyStoppedAtOnceIsEmpty() {
        StudyResult result = cornered().stopWhen(() -> true).build().run();

        assertEquals(0, result.completed());
        assertEquals(0, result.importance(0, 0));
        assertTrue(Double.isNaN(result.spread(0).quantile(0.5)));
        assertTrue(result.firstFailure().isEmpty());
    }

    @Test
    void anInterruptStopsTheStudyAndStaysSet() {
        Thread caller = Thread.currentThread();
        StudyResult result = evenSum(100_000)
                .model(values -> {
                    caller.interrupt();
                    return new double[] {values[0]};
                })
                .build()
                .run();

        assertTrue(Thread.interrupted());
        assertTrue(result.completed() <= 100_000);
    }

    @Test
    void progressOnlyGoesForward() {
        List<Integer> news = Collections.synchronizedList(new ArrayList<>());
        evenSum(1000)
                .threads(4)
                .progress((done, total) -> {
                    assertEquals(1000, total);
                    news.add(done);
                })
                .build()
                .run();

        for (int i = 1; i < news.size(); i++) {
            assertTrue(news.get(i) > news.get(i - 1));
        }
        assertEquals(1000, news.get(news.size() - 1));
    }

    @Test
    void failedSamplesAreCountedAndLeftOut() {
        StudyResult result = cornered().build().run();

        assertEquals(50, result.failed(), 3); // a tenth of 500, strewn evenly
        assertEquals(result.completed() - result.failed(), result.spread(0).answered());
        assertFalse(Double.isNaN(result.spread(1).quantile(0.95)));
        int first = 0;
        while (!Double.isNaN(result.output(first, 0))) {
            first++;
        }
        assertEquals("a is " + result.input(first)[0], result.firstFailure().orElseThrow());
    }

    @Test
    void infiniteAnswersFailAndMissingOnesDoNot() {
        StudyResult result = evenSum(100)
                .outputs(List.of("second"))
                .model(values -> new double[] {values[0] > 0.5 ? Double.NaN : 1, values[1] > 0.5 ? 1 / 0.0 : 2})
                .build()
                .run();

        assertEquals(50, result.failed(), 1);
        assertEquals("second became infinite", result.firstFailure().orElseThrow());
        assertEquals(25, result.spread(0).answered(), 3);
        assertEquals(50, result.spread(1).answered(), 1);
    }

    @Test
    void whatTheModelThrowsOtherwiseIsThrownOn() {
        IllegalStateException defect = new IllegalStateException("defect");
        Study throwing = evenSum(100)
                .model(values -> {
                    throw defect;
                })
                .build();
        Study error = evenSum(100)
                .model(values -> {
                    throw new AssertionError("broken");
                })
                .build();
        Study wrong = evenSum(100).model(values -> new double[3]).build();

        assertEquals(defect, assertThrows(IllegalStateException.class, throwing::run));
        assertThrows(AssertionError.class, error::run);
        assertThrows(IllegalStateException.class, wrong::run);
    }

    /** Validation: the quartiles of 1 to 10 by definition 1 are 3, 5 and 8 (printed by R's quantile with type 1; from memory). */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.1, 1", "0.25, 3", "0.5, 5", "0.75, 8", "0.95, 10", "1, 10"})
    void quantilesAreThoseOfDefinitionOne(double share, double expected) {
        double[] values = {4, 9, Double.NaN, 1, 10, 2, 3, 8, 7, 6, 5, 99};

        assertEquals(expected, StudyResult.Spread.of(values, 11).quantile(share));
        double[] peaks = {4, 9, 1, 10, 2, 3, 8, 7, 6, 5};
        assertEquals(expected, SampledPeaks.builder(peaks).build().quantileGauge(share), "headline and table agree");
    }

    @Test
    void nonsenseIsRefused() {
        refused("samples: 15", () -> evenSum(15));
        refused("samples: 1000001", () -> evenSum(1_000_001));
        refused("threads: 0", () -> evenSum(100).threads(0));
        refused(
                "inputs: 0",
                () -> Study.builder()
                        .outputs(List.of("x"))
                        .model(values -> values)
                        .build());
        refused(
                "outputs: there must be at least one",
                () -> Study.builder()
                        .input("a", Distribution.between(0, 1))
                        .model(values -> values)
                        .build());
        refused(
                "outputs: two have the same name: sum, sum",
                () -> evenSum(100).outputs(List.of("sum")).build());
        refused(
                "inputs: two",
                () -> evenSum(100).input("one", Distribution.between(0, 1)).build());
        refused(
                "model: is missing",
                () -> Study.builder()
                        .input("a", Distribution.between(0, 1))
                        .outputs(List.of("x"))
                        .build());
    }

    private static void refused(String message, Executable action) {
        String said = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(said.startsWith(message), said);
    }
}

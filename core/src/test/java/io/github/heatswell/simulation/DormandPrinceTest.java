package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The stepper against solutions in closed form. */
class DormandPrinceTest {

    private static final double[] LOOSE = {1e9, 1e9};

    /** A pendulum of small swings: position and speed are cosine and sine. */
    private static void swing(double time, double[] y, double[] rates) {
        rates[0] = y[1];
        rates[1] = -y[0];
    }

    private static double[] tolerances(double value) {
        return new double[] {value, value};
    }

    private static double errorOfEvenSteps(double length) {
        double end = 2;
        DenseOutput last = new DormandPrince(1e-9, LOOSE, LOOSE, new boolean[2], 2)
                .integrate(DormandPrinceTest::swing, new double[] {1, 0}, end, length, length, step -> true);
        return Math.hypot(last.last()[0] - Math.cos(end), last.last()[1] + Math.sin(end));
    }

    /** Validation: half the step makes a thirty-second of the error, as a method of order five does. */
    @Test
    void isOfOrderFive() {
        double order = Math.log(errorOfEvenSteps(0.1) / errorOfEvenSteps(0.05)) / Math.log(2);
        assertEquals(5, order, 0.15);
    }

    /** Validation: a swing over many periods stays within a few tolerances of the cosine, inside the steps too. */
    @Test
    void keepsToItsTolerance() {
        for (double tolerance : new double[] {1e-5, 1e-8, 1e-11}) {
            new DormandPrince(1e-9, tolerances(tolerance), tolerances(0), new boolean[2], 2)
                    .integrate(DormandPrinceTest::swing, new double[] {1, 0}, 20, 20, -1, step -> {
                        double middle = 0.5 * (step.from() + step.to());
                        double[] inside = new double[2];
                        step.at(middle, inside);
                        assertEquals(Math.cos(step.to()), step.last()[0], 60 * tolerance);
                        assertEquals(Math.cos(middle), inside[0], 60 * tolerance);
                        return true;
                    });
        }
    }

    /** Contract: steps follow each other without a gap, none is longer than allowed, and the last ends at the end. */
    @Test
    void stepsFromStartToEnd() {
        List<Double> times = new ArrayList<>(List.of(0.0));
        new DormandPrince(1e-9, tolerances(1e-6), tolerances(0), new boolean[2], 2)
                .integrate(DormandPrinceTest::swing, new double[] {1, 0}, 10, 0.3, -1, step -> {
                    assertEquals(times.get(times.size() - 1), step.from());
                    assertTrue(step.to() - step.from() <= 0.3 + 1e-12);
                    times.add(step.to());
                    return true;
                });
        assertEquals(10, times.get(times.size() - 1));
    }

    /**
     * Contract: begun with the step that the last time showed to be right, the same way takes no step back. The last step of a fall that
     * slows down is many times as long as the first may be.
     */
    @Test
    void beginsAsItMightHaveBegun() {
        DormandPrince stepper = new DormandPrince(1e-9, tolerances(1e-8), tolerances(0), new boolean[2], 2);
        int[] steps = {0};
        double begin = -1;
        for (int i = 0; i < 3; i++) {
            steps[0] = 0;
            long before = stepper.evaluations();
            stepper.integrate(
                    (time, y, rates) -> {
                        rates[0] = -y[0] * y[0] * y[0];
                        rates[1] = 0;
                    },
                    new double[] {3, 0},
                    1_000,
                    1_000,
                    begin,
                    step -> ++steps[0] > 0);
            begin = stepper.firstStep();
            int stages = 6;
            assertTrue(i == 0 || stepper.evaluations() - before == 1 + stages * steps[0], "a step was refused");
        }
    }

    /**
     * Validation: beside a large quantity with a tight tolerance, the first look at the equations would go as far as a tank that
     * drains, whose closed form is {@code (1 - t/2)^2}, has long been empty. The step was then no number, and the run failed.
     */
    @Test
    void theFirstLookStaysWhereRatesAreNumbers() {
        DenseOutput last = new DormandPrince(1e-9, tolerances(1e-10), tolerances(0), new boolean[2], 2)
                .integrate(
                        (time, y, rates) -> {
                            rates[0] = 0;
                            rates[1] = -Math.sqrt(y[1]);
                        },
                        new double[] {1e5, 1},
                        1,
                        10,
                        -1,
                        step -> true);
        assertEquals(0.25, last.last()[1], 1e-8);
    }

    /** Contract: rates that are no numbers end it at once, at the start or on the way, and so does an end that is none. */
    @Test
    void refusesWhatIsNotFinite() {
        int[] asked = {0};
        for (double from : new double[] {0, 0.3}) {
            assertThrows(
                    ArithmeticException.class,
                    () -> new DormandPrince(1e-9, tolerances(1e-6), tolerances(0), new boolean[2], 2)
                            .integrate(
                                    (time, y, rates) -> {
                                        assertTrue(++asked[0] < 100_000, "it spins");
                                        swing(time, y, rates);
                                        rates[1] = time >= from ? Double.NaN : rates[1];
                                    },
                                    new double[] {1, 0},
                                    1,
                                    1,
                                    -1,
                                    step -> true));
        }
        assertThrows(
                ArithmeticException.class,
                () -> new DormandPrince(1e-9, tolerances(1e-6), tolerances(0), new boolean[2], 2)
                        .integrate(
                                DormandPrinceTest::swing,
                                new double[] {1, 0},
                                Double.NaN,
                                1,
                                -1,
                                step -> step.to() < 100));
    }

    /** Contract: the reader's no ends it, with the state at the end of that step. */
    @Test
    void stopsWhenTheReaderHasEnough() {
        int[] steps = {0};
        DenseOutput last = new DormandPrince(1e-9, tolerances(1e-6), tolerances(0), new boolean[2], 2)
                .integrate(DormandPrinceTest::swing, new double[] {1, 0}, 10, 0.5, -1, step -> ++steps[0] < 3);
        assertEquals(3, steps[0]);
        assertArrayEquals(new double[] {Math.cos(last.to()), -Math.sin(last.to())}, last.last(), 1e-5);
    }

    /** Contract: a first step far too long is refused and made shorter, also where it leads to no numbers at all. */
    @Test
    void shortensAStepThatIsTooLong() {
        DormandPrince.Equations tank = (time, y, rates) -> rates[0] = -Math.sqrt(y[0]);
        DenseOutput last = new DormandPrince(1e-9, new double[] {1e-8}, new double[] {0}, new boolean[1], 1)
                .integrate(tank, new double[] {1}, 1.5, 1.5, 1.5, step -> true);
        assertEquals(Math.pow(1 - 1.5 / 2, 2), last.last()[0], 1e-7);
    }

    /** Contract: a solution that ends before the time given is not followed past its end. */
    @Test
    void givesUpWhereTheShortestStepIsTooLong() {
        DormandPrince stepper = new DormandPrince(1e-9, new double[] {1e-8}, new double[] {1e-8}, new boolean[1], 1);
        DormandPrince.Equations runaway = (time, y, rates) -> rates[0] = y[0] * y[0];
        ArithmeticException stopped = assertThrows(
                ArithmeticException.class, () -> stepper.integrate(runaway, new double[] {1}, 2, 2, -1, step -> true));
        assertTrue(stopped.getMessage().contains("still too long"), stopped.getMessage());
    }

    private static int stepsWith(int still) {
        double[] tolerance = new double[2 + still];
        Arrays.fill(tolerance, 1e-8);
        double[] start = new double[2 + still];
        start[0] = 1;
        int[] steps = {0};
        DormandPrince.Equations swing = (time, y, rates) -> {
            Arrays.fill(rates, 0);
            swing(time, y, rates);
        };
        new DormandPrince(1e-9, tolerance, new double[2 + still], new boolean[2 + still], 2)
                .integrate(swing, start, 20, 20, 0.1, step -> {
                    steps[0]++;
                    return true;
                });
        return steps[0];
    }

    /** Contract: fifty components that are alike hide no more of the others' error than one does. */
    @Test
    void countsWhatIsAlikeOnce() {
        assertEquals(stepsWith(1), stepsWith(50));
    }
}

package io.github.heatswell.reference;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of the integrator that the reference solutions rest on, against problems solved in closed form. */
@Tag("validation")
class StiffIntegratorTest {

    private static final List<Trigger> NONE = List.of();

    /** Equations given as a lambda; every component counts as zero below 1e-3. */
    private record Equations(int dimension, Rates function) implements StiffProblem {
        @Override
        public double magnitude(int component) {
            return 1e-3;
        }

        @Override
        public void rates(double t, double[] y, double[] rates) {
            function.evaluate(t, y, rates);
        }
    }

    private interface Rates {
        void evaluate(double t, double[] y, double[] rates);
    }

    private static double[] solve(Equations equations, double tolerance, double end, double... y) {
        return new StiffIntegrator(equations, tolerance)
                .advance(0, y, end, NONE)
                .y();
    }

    /** The simplifying assumptions B(5) and C(3) of collocation at the Radau points. */
    @Test
    void coefficientsAreThoseOfOrderFive() {
        double[] c = RadauStep.NODES;
        double[][] a = RadauStep.WEIGHTS;
        for (int q = 1; q <= 5; q++) {
            double quadrature = 0;
            for (int j = 0; j < 3; j++) {
                quadrature += a[2][j] * Math.pow(c[j], q - 1);
            }
            assertEquals(1.0 / q, quadrature, 4e-16, "B(" + q + ")");
        }
        for (int q = 1; q <= 3; q++) {
            for (int i = 0; i < 3; i++) {
                double stage = 0;
                for (int j = 0; j < 3; j++) {
                    stage += a[i][j] * Math.pow(c[j], q - 1);
                }
                assertEquals(Math.pow(c[i], q) / q, stage, 4e-16, "C(" + q + ") of stage " + i);
            }
        }
    }

    /** The filter of the error estimate must use an eigenvalue of the inverse of A, or it would not damp what A damps. */
    @Test
    void filterUsesTheRealEigenvalue() {
        double[][] a = RadauStep.WEIGHTS;
        double[][] m = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                m[i][j] = a[i][j] - (i == j ? 1 / RadauStep.GAMMA : 0);
            }
        }
        double determinant = m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
                - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
                + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0]);
        assertEquals(0, determinant, 1e-16);
    }

    /** Rows in need of exchange, and a residual of rounding. */
    @Test
    void eliminationSolvesWithExchanges() {
        double[][] rows = {{0, 2, 1, -1}, {1e-9, 1, 0, 3}, {4, -1, 2, 0}, {1, 1, 1, 1}};
        double[] x = {1, -2, 3, 0.5};
        DenseLu lu = new DenseLu(4);
        double[] b = new double[4];
        for (int i = 0; i < 4; i++) {
            lu.matrix()[i] = rows[i].clone();
            for (int j = 0; j < 4; j++) {
                b[i] += rows[i][j] * x[j];
            }
        }
        lu.factor();
        lu.solve(b);
        assertArrayEquals(x, b, 1e-14);
    }

    /** For y' = lambda y the step multiplies by R(h lambda), which must vanish at minus infinity. */
    @Test
    void oneStepDampsWhatIsInfinitelyStiff() {
        RadauStep step = new RadauStep(new Equations(1, (t, y, f) -> f[0] = -1e12 * y[0]), 1e-6);
        step.beginAt(0, new double[] {1});
        assertTrue(step.attempt(1));
        assertEquals(0, step.end()[0], 1e-9, "R(-1e12) is of the order of 3e-12");
    }

    /** Halving the step of a smooth problem must divide the error by 2^5. */
    @Test
    void fixedStepsConvergeWithOrderFive() {
        double coarse = errorOfFixedSteps(8);
        double fine = errorOfFixedSteps(16);
        assertEquals(5, Math.log(coarse / fine) / Math.log(2), 0.15);
    }

    private static double errorOfFixedSteps(int count) {
        // y' = y cos t, so y = exp(sin t).
        RadauStep step = new RadauStep(new Equations(1, (t, y, f) -> f[0] = y[0] * Math.cos(t)), 1e-13);
        double[] y = {1};
        double h = 2.0 / count;
        for (int i = 0; i < count; i++) {
            step.beginAt(i * h, y);
            assertTrue(step.attempt(h));
            y = step.end();
        }
        return Math.abs(y[0] - Math.exp(Math.sin(2)));
    }

    /**
     * Prothero and Robinson, Math. Comp. 28 (1974) 145: y' = lambda (y - phi(t)) + phi'(t), y = phi whatever lambda.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-1, -1e3, -1e6, -1e9})
    void protheroRobinson(double lambda) {
        DoubleUnaryOperator phi = t -> 2 + Math.sin(t);
        Equations equations =
                new Equations(1, (t, y, f) -> f[0] = lambda * (y[0] - phi.applyAsDouble(t)) + Math.cos(t));
        double[] end = solve(equations, 1e-9, 10, phi.applyAsDouble(0));
        assertEquals(phi.applyAsDouble(10), end[0], 1e-7, "a hundred times the tolerance of a step");
    }

    /** Eigenvalues -1 and -1e6, not aligned with the axes: y = P diag(exp(-t), exp(-1e6 t)) P^-1 y0. */
    @Test
    void linearSystemWithEigenvaluesSixDecadesApart() {
        // With u = y0 + y1 and v = y0 - y1: u' = -u, v' = -1e6 v.
        Equations equations = new Equations(2, (t, y, f) -> {
            double u = y[0] + y[1];
            double v = y[0] - y[1];
            f[0] = (-u - 1e6 * v) / 2;
            f[1] = (-u + 1e6 * v) / 2;
        });
        StiffIntegrator integrator = new StiffIntegrator(equations, 1e-9);
        double[] end = integrator.advance(0, new double[] {3, 1}, 2, NONE).y();
        assertEquals(4 * Math.exp(-2) / 2, end[0], 1e-8);
        assertEquals(4 * Math.exp(-2) / 2, end[1], 1e-8);
        assertTrue(integrator.steps() < 1000, "an explicit method would need a million steps: " + integrator.steps());
    }

    /** The fast part itself, while it decays. */
    @Test
    void fastTransientIsFollowedWhenAskedFor() {
        Equations equations = new Equations(1, (t, y, f) -> f[0] = -1e6 * y[0]);
        double[] end = solve(equations, 1e-9, 3e-6, 1);
        assertEquals(Math.exp(-3), end[0], 1e-8);
    }

    /**
     * Robertson's reaction. At t = 40 the digits printed with the demonstration program of LSODE (A. C. Hindmarsh,
     * ODEPACK, 1983), at t = 1e11 the solution in the test set for IVP solvers (F. Mazzia, C. Magherini, 2008); both
     * from memory, and reproduced here to the digits asserted.
     */
    @Test
    void robertson() {
        StiffProblem equations = new StiffProblem() {
            @Override
            public int dimension() {
                return 3;
            }

            @Override
            public double magnitude(int component) {
                return component == 1 ? 1e-13 : 1e-8;
            }

            @Override
            public void rates(double t, double[] y, double[] f) {
                double first = 0.04 * y[0];
                double second = 3e7 * y[1] * y[1];
                double third = 1e4 * y[1] * y[2];
                f[0] = -first + third;
                f[1] = first - third - second;
                f[2] = second;
            }
        };
        StiffIntegrator integrator = new StiffIntegrator(equations, 1e-10);
        double[] early = integrator.advance(0, new double[] {1, 0, 0}, 40, NONE).y();
        assertEquals(0.7158271, early[0], 1e-7, "printed digits");
        assertEquals(9.185535e-6, early[1], 1e-12, "printed digits");
        assertEquals(0.2841637, early[2], 1e-7, "printed digits");
        double[] late = integrator.advance(40, early, 1e11, NONE).y();
        assertEquals(0.2083340149701255e-7, late[0], 1e-5 * 0.21e-7);
        assertEquals(0.8333360770334713e-13, late[1], 1e-5 * 0.84e-13);
        assertEquals(0.9999999791665050, late[2], 1e-9);
        assertEquals(1, late[0] + late[1] + late[2], 1e-12, "the sum is an invariant, kept but for rounding");
    }

    /** y' = -y falls through 1/e at 1; a stiff companion must not spoil the instant. */
    @Test
    void eventIsLocatedToTheAccuracyOfTheMethod() {
        Equations equations = new Equations(2, (t, y, f) -> {
            f[0] = -y[0];
            f[1] = -1e6 * (y[1] - y[0]) - y[0];
        });
        List<Trigger> triggers = List.of((t, y) -> Math.exp(-1) - y[1], (t, y) -> t - 1.5);
        StiffIntegrator.Arrival arrival =
                new StiffIntegrator(equations, 1e-10).advance(0, new double[] {1, 1}, 10, triggers);
        assertEquals(0, arrival.fired());
        assertEquals(1, arrival.t(), 3e-8, "three times the resolution of the location");
        assertTrue(triggers.get(0).value(arrival.t(), arrival.y()) > 0, "the arrival lies past the event");
    }

    /** The earlier of two events inside one long step wins, whatever their sizes. */
    @Test
    void earlierOfTwoEventsEndsTheAdvance() {
        Equations equations = new Equations(1, (t, y, f) -> f[0] = 1);
        List<Trigger> triggers = List.of((t, y) -> 1e6 * (y[0] - 5), (t, y) -> 1e-6 * (y[0] - 4.999));
        StiffIntegrator.Arrival arrival = new StiffIntegrator(equations, 1e-6).advance(0, new double[1], 10, triggers);
        assertEquals(1, arrival.fired());
        assertEquals(4.999, arrival.t(), 3e-8);
    }

    /** What holds at the start already is reported at once. */
    @Test
    void eventThatHoldsAtTheStartFiresThere() {
        Equations equations = new Equations(1, (t, y, f) -> f[0] = 1);
        StiffIntegrator.Arrival arrival =
                new StiffIntegrator(equations, 1e-6).advance(2, new double[] {3}, 10, List.of((t, y) -> y[0] - 2));
        assertEquals(0, arrival.fired());
        assertEquals(2, arrival.t());
    }

    /**
     * A relay: heating at rate 1 up to 1, cooling at rate -2 down to 0, switched by events; one period lasts 1.5.
     */
    @Test
    void relayKeepsItsPeriod() {
        double t = 0;
        double[] y = {0};
        for (int cycle = 0; cycle < 100; cycle++) {
            StiffIntegrator up = new StiffIntegrator(new Equations(1, (s, x, f) -> f[0] = 1), 1e-8);
            StiffIntegrator.Arrival top = up.advance(t, y, 1e3, List.of((s, x) -> x[0] - 1));
            StiffIntegrator down = new StiffIntegrator(new Equations(1, (s, x, f) -> f[0] = -2), 1e-8);
            StiffIntegrator.Arrival bottom = down.advance(top.t(), top.y(), 1e3, List.of((s, x) -> -x[0]));
            t = bottom.t();
            y = bottom.y();
        }
        // Up to 1e-8 late at the top costs 1.5e-8 of the period, up to 1e-8 late at the bottom 3e-8.
        assertEquals(150, t, 100 * 4.5e-8);
    }

    /** Ten times tighter tolerance: smaller error for more steps. */
    @Test
    void tolerancesAreProportional() {
        Equations oscillator = new Equations(2, (t, y, f) -> {
            f[0] = y[1];
            f[1] = -y[0];
        });
        double previous = 1;
        for (double tolerance = 1e-4; tolerance > 1e-11; tolerance /= 100) {
            double error = Math.abs(solve(oscillator, tolerance, 20, 1, 0)[0] - Math.cos(20));
            assertTrue(error < previous, "error " + error + " at tolerance " + tolerance);
            previous = error;
        }
        assertTrue(previous < 1e-8, "error " + previous);
    }
}

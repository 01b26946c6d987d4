package io.github.heatswell.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;
import org.junit.jupiter.api.Test;

/** The continuous solution against the one that the library derives from the same steps. */
class DenseOutputTest {

    private static final double[] ABSOLUTE = {1e-6, 1e-6};
    private static final double[] RELATIVE = {1e-6, 1e-6};
    private static final double END = 7;

    /** Two quantities that hunt each other, after Lotka and Volterra: nothing about them is straight. */
    private static final class Hunt implements OrdinaryDifferentialEquation {
        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            double[] rates = new double[2];
            hunt(time, y, rates);
            return rates;
        }
    }

    private static void hunt(double time, double[] y, double[] rates) {
        rates[0] = y[0] * (1 - y[1]);
        rates[1] = y[1] * (y[0] - 1) + 0.1 * time;
    }

    private static void hunt(DormandPrince.Reader reader) {
        new DormandPrince(1e-9, ABSOLUTE, RELATIVE, new boolean[2], 2)
                .integrate(DenseOutputTest::hunt, new double[] {1, 0.5}, END, END, -1, reader);
    }

    private static List<double[]> statesOfTheLibrary(double[] parts) {
        List<double[]> states = new ArrayList<>();
        DormandPrince54Integrator integrator = new DormandPrince54Integrator(1e-9, END, ABSOLUTE, RELATIVE);
        integrator.setSafety(DormandPrince.SAFETY);
        integrator.addStepHandler(step -> {
            double from = step.getPreviousState().getTime();
            double length = step.getCurrentState().getTime() - from;
            for (double part : parts) {
                states.add(inside(step, from + part * length));
            }
        });
        integrator.integrate(new Hunt(), new ODEState(0, new double[] {1, 0.5}), END);
        return states;
    }

    private static double[] inside(ODEStateInterpolator step, double time) {
        double[] state = step.getInterpolatedState(time).getPrimaryState();
        double[] rates = step.getInterpolatedState(time).getPrimaryDerivative();
        return new double[] {time, state[0], state[1], rates[0], rates[1]};
    }

    /** Validation: states and rates inside of every step are those of the library's own interpolant, to rounding. */
    @Test
    void agreesWithTheInterpolantOfTheLibrary() {
        double[] parts = {0, 0.1, 0.25, 0.5, 0.7, 0.99, 1};
        List<double[]> expected = statesOfTheLibrary(parts);
        List<double[]> found = new ArrayList<>();
        hunt(curve -> {
            for (double part : parts) {
                double time = curve.from() + part * (curve.to() - curve.from());
                double[] state = new double[2];
                curve.at(time, state);
                found.add(new double[] {time, state[0], state[1], curve.rate(0, time), curve.rate(1, time)});
            }
            return true;
        });

        assertTrue(expected.size() > 5 * parts.length, "several steps");
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < expected.size(); i++) {
            for (int k = 0; k < 5; k++) {
                assertEquals(expected.get(i)[k], found.get(i)[k], 1e-12, "state " + i + ", value " + k);
            }
        }
    }

    /** Contract: a sum of neighbours at several parts of a step is the sum of what single looks give. */
    @Test
    void followsSumsOfNeighbours() {
        double[] parts = {0, 0.3, 0.8};
        hunt(curve -> {
            double[] sums = new double[3];
            curve.fill(0, 1, 2.5, parts, 3, sums);
            for (int i = 0; i < 3; i++) {
                double[] state = new double[2];
                curve.atPart(parts[i], state);
                assertEquals(2.5 * (state[0] + state[1]), sums[i], 1e-12);
            }
            return true;
        });
    }
}

package io.github.heatswell.simulation;

import org.hipparchus.ode.EquationsMapper;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.nonstiff.interpolators.DormandPrince54StateInterpolator;
import org.hipparchus.ode.sampling.AbstractODEStateInterpolator;

/**
 * The library's solver, with its search for events left out: each finished step goes to one reader, who says whether there is
 * to be another. What ends a segment is found by {@link EventLocator} at less cost, and the search would take up a good part of
 * the time of a run even with nothing to look for.
 */
final class StoppableIntegrator extends DormandPrince54Integrator {

    /** Takes the finished steps. */
    interface Reader {

        /**
         * Takes a step.
         *
         * @param start the state at its start, with its rates
         * @param end the state at its end, with its rates
         * @param stages the rates at the stages of the method, valid during the call
         * @return whether the solver is to go on
         */
        boolean read(ODEStateAndDerivative start, ODEStateAndDerivative end, double[][] stages);
    }

    /** The error (of which 1 is allowed) of a step that led out of what can be calculated. */
    private static final double BEYOND_ALL = 1e12;

    /** A step is made this much (-) of what the last one promises: with the library's 0.9 every eighth is refused. */
    private static final double SAFETY = 0.85;

    private static final double[][] NO_STAGES = {};

    private Reader reader = (start, end, stages) -> true;
    private double[][] lastStages = NO_STAGES;
    private double lastStep;
    private double lastError;

    /**
     * A solver.
     *
     * @param shortest the shortest step (s)
     * @param longest the longest step (s)
     * @param absolute absolute tolerance of each component of the state, in its unit
     * @param relative relative tolerance of each component (-)
     */
    StoppableIntegrator(double shortest, double longest, double[] absolute, double[] relative) {
        super(shortest, longest, absolute, relative);
        setSafety(SAFETY);
    }

    /** Sets who takes the steps from now on. */
    void handTo(Reader next) {
        reader = next;
    }

    /** The step (s) that the error of the last one lets expect to be just short enough. */
    double comfortableStep() {
        return lastStep * Math.min(getMaxGrowth(), getSafety() * Math.pow(lastError, -1.0 / getOrder()));
    }

    @Override
    protected double estimateError(double[][] rates, double[] from, double[] to, double step) {
        double error = super.estimateError(rates, from, to, step);
        lastStep = step;
        // a trial far too long can leave everything that can be calculated
        lastError = Double.isNaN(error) ? BEYOND_ALL : error;
        return lastError;
    }

    /** The reader has the stages from here, and the library's interpolant need not have a copy of them. */
    @Override
    protected DormandPrince54StateInterpolator createInterpolator(
            boolean forward,
            double[][] stages,
            ODEStateAndDerivative start,
            ODEStateAndDerivative end,
            EquationsMapper mapper) {
        lastStages = stages;
        return super.createInterpolator(forward, NO_STAGES, start, end, mapper);
    }

    @Override
    protected ODEStateAndDerivative acceptStep(AbstractODEStateInterpolator step, double end) {
        ODEStateAndDerivative last = step.getGlobalCurrentState();
        boolean goOn = reader.read(step.getGlobalPreviousState(), last, lastStages);
        setIsLastStep(!goOn || Math.abs(last.getTime() - end) <= Math.ulp(end));
        return last;
    }
}

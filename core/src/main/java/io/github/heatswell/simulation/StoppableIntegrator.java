package io.github.heatswell.simulation;

import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.AbstractODEStateInterpolator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * The library's solver, with its search for events left out: each finished step goes to one reader, who says whether there is
 * to be another. What ends a segment is found by {@link FirstDue} at less cost, and the search would take up a good part of
 * the time of a run even with nothing to look for.
 */
final class StoppableIntegrator extends DormandPrince54Integrator {

    /** Takes the finished steps. */
    interface Reader {

        /**
         * Takes a step.
         *
         * @param step the solution over the step
         * @return whether the solver is to go on
         */
        boolean read(ODEStateInterpolator step);
    }

    private Reader reader = step -> true;

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
    }

    /** Sets who takes the steps from now on. */
    void handTo(Reader next) {
        reader = next;
    }

    @Override
    protected ODEStateAndDerivative acceptStep(AbstractODEStateInterpolator step, double end) {
        ODEStateAndDerivative last = step.getGlobalCurrentState();
        boolean goOn = reader.read(step);
        setIsLastStep(!goOn || Math.abs(last.getTime() - end) <= Math.ulp(end));
        return last;
    }
}

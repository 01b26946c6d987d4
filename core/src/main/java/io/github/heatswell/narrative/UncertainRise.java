package io.github.heatswell.narrative;

import io.github.heatswell.result.RunSummary;
import java.util.List;

/**
 * Where the pressure of a house without a vessel may lie in its first heat-up, until the relief valve opens: between the softest and
 * the stiffest house within the usual uncertainties of tank, plastic pipe and air
 * ({@link io.github.heatswell.study.UncertainHouse.Quantity}).
 *
 * @param instants in the order of time, from the first rise until the valve of the softest opens or its thermostat switches off; none
 *     where no valve opens by expansion in an undisturbed first heat-up, or where the rise is known well enough
 */
public record UncertainRise(List<Instant> instants) {

    /**
     * Copies the instants.
     *
     * @param instants in the order of time
     */
    public UncertainRise {
        instants = List.copyOf(instants);
    }

    /**
     * A moment of the rise.
     *
     * @param time since the start of the run (s)
     * @param lowest of the softest house (Pa, absolute)
     * @param highest of the stiffest (Pa, absolute), no higher than the pressure at which the relief valve opens
     */
    public record Instant(double time, double lowest, double highest) {}

    /**
     * The uncertain rise of a run.
     *
     * @param run the run
     * @return the rise, possibly without an instant
     */
    public static UncertainRise of(RunSummary run) {
        return new UncertainRise(RiseBand.course(run));
    }

    /** {@return what it is, in a few words} */
    public String label() {
        return "usual uncertainty of the rise";
    }
}

package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.system.ExpansionVessel;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Runs trials with one vessel after another, and counts them. One instance per search and thread. */
final class VesselSearch {

    /** Relative accuracy of a volume, in its logarithm. */
    private static final double ACCURACY = 1e-8;
    /** Accuracy of a pressure (bar): that of the simulation. */
    private static final double PRESSURE_ACCURACY = 1e-8;

    /** How closely (Pa) a run ends at the tank's test pressure. */
    private static final double TEST_PRESSURE_ACCURACY = 100;

    private static final int ORDER = 5;
    private static final int MAX_RUNS = 200;
    /** Lowest supply (Pa, gauge) to suggest: 15 psi, the minimum for a service (UPC 608.1 lineage, seen). */
    private static final double MIN_SUPPLY = 15 * PressureUnit.PSI.factor();

    private final Balances.Count count;

    VesselSearch() {
        this(new Balances.Count());
    }

    /** Adds its runs to those of others. */
    VesselSearch(Balances.Count count) {
        this.count = count;
    }

    Balances balances() {
        return count.sum();
    }

    /** The highest pressure (Pa, absolute) of all trials with a vessel of a volume (m3), or without one for 0. */
    double peak(SizingProblem setup, double volume) {
        Optional<ExpansionVessel> vessel =
                volume == 0 ? Optional.empty() : Optional.of(setup.type().with(volume, setup.precharge()));
        double highest = 0;
        for (HeatUpCase trial : setup.trials()) {
            highest = Math.max(highest, trial.peak(vessel, count).absolute());
        }
        return highest;
    }

    /** The smallest sufficient volume (m3): 0 if none is needed, empty if none suffices. */
    OptionalDouble smallest(SizingProblem setup) {
        if (setup.staticAbsolute() > setup.limit()) {
            return OptionalDouble.empty();
        }
        if (peak(setup, 0) <= setup.limit()) {
            return OptionalDouble.of(0);
        }
        if (setup.staticAbsolute() == setup.limit() || peak(setup, VesselType.MAX_VOLUME) > setup.limit()) {
            return OptionalDouble.empty();
        }
        if (peak(setup, VesselType.MIN_VOLUME) <= setup.limit()) {
            return OptionalDouble.of(VesselType.MIN_VOLUME);
        }
        double logarithm = below(
                x -> peak(setup, Math.exp(x)) - setup.limit(),
                Math.log(VesselType.MIN_VOLUME),
                Math.log(VesselType.MAX_VOLUME));
        return OptionalDouble.of(Math.exp(logarithm));
    }

    /** The highest supply (Pa, gauge) at which a vessel of a volume (m3) is enough for a cold fill; empty if none is. */
    OptionalDouble highestSupply(SizingProblem setup, double volume) {
        double atmosphere = setup.atmosphere();
        double head = setup.coldFill().house().head(setup.type().pattern().height());
        double least = atmosphere + Math.max(MIN_SUPPLY, MIN_SUPPLY + head);
        DoubleUnaryOperator excess =
                p -> peak(setup.withColdFill(trial -> trial.behindCheckValve(p)), volume) - setup.limit();
        if (least >= setup.limit() || excess.applyAsDouble(least) > 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(below(excess, least, setup.limit()) - atmosphere);
    }

    /** Root of a function (Pa) with a sign change, on the side where it is negative or zero. */
    private static double below(DoubleUnaryOperator excess, double low, double high) {
        BracketingNthOrderBrentSolver solver =
                new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, PRESSURE_ACCURACY, ORDER);
        return solver.solve(
                MAX_RUNS, x -> PressureUnit.BAR.fromSi(excess.applyAsDouble(x)), low, high, AllowedSolution.BELOW_SIDE);
    }

    /** A vessel with what a run says about it. */
    SizingResult.Vessel tried(SizingProblem setup, NominalSize size) {
        double peak = peak(setup, size.volume());
        Pressure precharge = setup.precharge();
        double test = setup.coldFill().house().tank().testPressureAbsolute(setup.atmosphere());
        boolean higher = peak >= test - TEST_PRESSURE_ACCURACY;
        return new SizingResult.Vessel(size.volume(), precharge, peak, setup.limit() - peak, higher, size.price());
    }
}

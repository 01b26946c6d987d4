package io.github.heatswell.sizing;

import io.github.heatswell.result.Balances;
import io.github.heatswell.result.Event;
import io.github.heatswell.result.RunSummary;
import io.github.heatswell.simulation.Simulation;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.time.Duration;

/**
 * The highest pressure of a run.
 *
 * @param absolute the pressure (Pa, absolute)
 * @param atLeast whether the run ended there at the test pressure of the tank, so that it would have risen further
 */
record Peak(double absolute, boolean atLeast) {

    /**
     * Runs a house. A peak at the test pressure means only that the vessel is too small; no vessel helps against any
     * other hazard that ends a run.
     *
     * @param count counts the run
     * @throws IllegalArgumentException if the run ends in a hazard other than too much pressure
     */
    static Peak of(HotWaterSystem house, Duration duration, Balances.Count count) {
        RunSummary summary =
                count.add(Simulation.of(house, duration).sampledEvery(duration).stream((time, values, regime) -> {}));
        summary.hazard().ifPresent(Peak::refuse);
        return new Peak(
                summary.extremes().highestPressure().value(), summary.hazard().isPresent());
    }

    private static void refuse(Event hazard) {
        if (hazard.kind() != Event.Kind.TEST_PRESSURE_REACHED) {
            throw new IllegalArgumentException("the run ends early: "
                    + hazard.kind().description() + " after "
                    + QuantityFormat.ascii(UnitSystem.SI).time(hazard.time())
                    + "; a vessel cannot be sized for such a run");
        }
    }
}

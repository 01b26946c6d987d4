package io.github.heatswell.scenarios.file;

import io.github.heatswell.system.ReliefValve;
import io.github.heatswell.units.FlowUnit;
import io.github.heatswell.units.Pressure;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.RatioUnit;

/** What is wrong with a relief valve, while being read. Every number is checked at once, by a valve made for it. */
final class FaultDraft {

    private double stuckLift;
    private Pressure leaksFrom;
    private double leakage;

    /** Puts a fault into a valve. */
    @FunctionalInterface
    interface Fault {
        void into(ReliefValve.Builder valve);
    }

    void stuckOpen(double value, RatioUnit unit) {
        ReliefValve.builder().stuckOpen(value, unit);
        stuckLift = unit.toSi(value);
    }

    void leaksFrom(Pressure value) {
        ReliefValve.builder().leakingSeat(value, 1, FlowUnit.MILLILITRE_PER_MINUTE);
        leaksFrom = value;
    }

    void leakage(double value, FlowUnit unit) {
        ReliefValve.builder().leakingSeat(Pressure.gauge(1, PressureUnit.BAR), value, unit);
        leakage = unit.toSi(value);
    }

    Fault end() {
        if (stuckLift > 0 && leaksFrom != null) {
            throw new DraftException("stuck-open", "has no place beside leaks-from; describe one fault");
        }
        return stuckLift > 0
                ? valve -> valve.stuckOpen(RatioUnit.PERCENT.fromSi(stuckLift), RatioUnit.PERCENT)
                : valve -> valve.leakingSeat(leaksFrom, leakage, FlowUnit.CUBIC_METRE_PER_SECOND);
    }
}

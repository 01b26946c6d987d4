package io.github.heatswell.scenarios.report;

import io.github.heatswell.narrative.SizeAdvice.LowerSupply;
import io.github.heatswell.narrative.SizeAdvice.Setting;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.units.QuantityFormat;
import java.util.Optional;

/**
 * The lower supply pressure to be set before the vessel is charged, in the words of the papers.
 *
 * @param supply what the reducing valve is set to, and where the supply stands then
 * @param atmosphere the pressure of the air there (Pa)
 */
record LoweredSupply(Setting supply, double atmosphere) {

    /** The supply that an answer advises; empty where the present one is to stay. */
    static Optional<LoweredSupply> of(VesselAnswer answer) {
        return answer.lowered()
                .flatMap(at -> answer.supplies().cheapest())
                .map(LowerSupply::supply)
                .map(supply -> new LoweredSupply(
                        supply, answer.scenario().system().site().atmosphere()));
    }

    /** What the valve is to be set to. */
    String valve(QuantityFormat shown) {
        return shown.pressure(supply.valve().gauge(atmosphere));
    }

    /** Whether a reducing valve has to be fitted first. */
    boolean isFitted() {
        return supply.fitted();
    }

    /** Such as {@code the reducing valve set to 50 psi}. */
    String set(QuantityFormat shown) {
        return (supply.fitted() ? "a reducing valve fitted and set to " : "the reducing valve set to ") + valve(shown);
    }

    /** Such as {@code 54.4 psi with no water running}. */
    String standing(QuantityFormat shown) {
        return shown.pressure(supply.standing().gauge(atmosphere)) + " with no water running";
    }
}

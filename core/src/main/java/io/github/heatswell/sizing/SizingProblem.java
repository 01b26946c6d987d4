package io.github.heatswell.sizing;

import io.github.heatswell.units.Pressure;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Sizing problem: which vessel of this type keeps the peak of all these trials within the limit?
 *
 * @param trials what is run, the heat-up from a cold fill first
 * @param type the make and place of the vessel
 * @param rule how it is precharged
 * @param limit the highest peak allowed (Pa, absolute)
 */
record SizingProblem(List<HeatUpCase> trials, VesselType type, VesselSizing.Precharge rule, double limit) {

    HeatUpCase coldFill() {
        return trials.get(0);
    }

    double atmosphere() {
        return coldFill().house().site().atmosphere();
    }

    /** Highest static supply pressure (Pa, absolute). */
    double staticAbsolute() {
        return coldFill().house().supply().staticAbsolute(0, atmosphere());
    }

    /** The precharge that goes with the supply. */
    Pressure precharge() {
        double offset = coldFill().house().head(type.pattern().height());
        return rule.atGauge(staticAbsolute() - atmosphere() - offset);
    }

    /** The same question about the heat-up from a cold fill alone, in a house that is changed. */
    SizingProblem withColdFill(UnaryOperator<HeatUpCase> change) {
        return new SizingProblem(List.of(change.apply(coldFill())), type, rule, limit);
    }

    SizingProblem withType(VesselType other) {
        return new SizingProblem(trials, other, rule, limit);
    }

    SizingProblem withRule(VesselSizing.Precharge other) {
        return new SizingProblem(trials, type, other, limit);
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.HotWaterSystem;
import io.github.heatswell.system.Supply;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;

/**
 * What the printed report of a run adds to it, from runs of its own: how the house is checked with a gauge, and what
 * each vessel on sale would do.
 *
 * @param check how the house is checked
 * @param sizing what each vessel on sale would do in a heat-up from a cold fill; empty where a vessel is no answer
 * @param yardstick how the worst heat-up stands to the limit of a sizing
 * @param balances the runs behind all of it
 */
record Advice(Check check, Optional<SizingResult> sizing, Optional<Yardstick> yardstick, Balances balances) {

    /**
     * Simulates what the advice rests on.
     *
     * @param scenario the house
     * @param found what is known of it: the check is not given where people may be hurt
     * @param shown the units
     */
    static Advice of(Scenario scenario, List<Finding> found, QuantityFormat shown) {
        Balances.Count count = new Balances.Count();
        Check check = Check.of(
                scenario.system(),
                Check.unread(VariedHouse.of(scenario), scenario),
                PageFindings.notBefore(found, shown),
                count,
                shown);
        VesselChoice choice = VesselChoice.of(scenario).build();
        Optional<SizingResult> sizing = sizing(choice, scenario, count);
        Optional<Yardstick> yardstick = choice.yardstick();
        yardstick.map(Yardstick::balances).ifPresent(count::add);
        return new Advice(check, sizing, yardstick, count.sum());
    }

    /** What each vessel on sale would do in a heat-up from a cold fill; empty where a vessel is no answer. */
    static Optional<SizingResult> sizing(VesselChoice choice, Scenario scenario, Balances.Count count) {
        if (scenario.system().supply().arrangement() == Supply.Arrangement.DIRECT) {
            return Optional.empty();
        }
        try {
            SizingResult found = choice.forColdFill();
            count.add(found.balances());
            return Optional.of(found).filter(one -> one.outcome() == SizingResult.Outcome.SIZED);
        } catch (IllegalArgumentException | SimulationException e) {
            return Optional.empty();
        }
    }

    /** That the vessel which is there, or any on sale, would not do at this supply; empty where it would, or none could be sized. */
    Optional<Statement> tooSmall(HotWaterSystem house) {
        return sizing.flatMap(found -> Narrative.tooSmall(found, house));
    }

    /** Simulates it before anything is known but the house itself. */
    static Advice before(Scenario scenario, QuantityFormat shown) {
        return of(scenario, Findings.of(scenario.system(), scenario.doubts()), shown);
    }

    /** The same advice after a run, which may have shown that the house must not be heated. */
    Advice after(List<Finding> found, QuantityFormat shown) {
        return PageFindings.notBefore(found, shown)
                .map(why -> new Advice(Check.refused(why), sizing, yardstick, balances))
                .orElse(this);
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Finding;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.Block.Grid;
import io.github.heatswell.scenarios.spread.VariedHouse;
import io.github.heatswell.units.QuantityFormat;
import java.util.List;
import java.util.Optional;

/**
 * What the printed report of a run adds to it, from runs of its own: how the house is checked with a gauge, and what
 * each vessel on sale would do.
 *
 * @param check how the house is checked
 * @param sizes the vessels on sale, none where a vessel is no answer
 * @param yardstick how the worst heat-up stands to the limit of a sizing
 * @param balances the runs behind all of it
 */
record Advice(Check check, Optional<Grid> sizes, Optional<Yardstick> yardstick, Balances balances) {

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
        Optional<Grid> sizes = PageSizes.of(scenario, count, shown);
        Optional<Yardstick> yardstick = VesselChoice.of(scenario).build().yardstick();
        yardstick.map(Yardstick::balances).ifPresent(count::add);
        return new Advice(check, sizes, yardstick, count.sum());
    }

    /** Simulates it before anything is known but the house itself. */
    static Advice before(Scenario scenario, QuantityFormat shown) {
        return of(scenario, Findings.of(scenario.system(), scenario.doubts()), shown);
    }

    /** The same advice after a run, which may have shown that the house must not be heated. */
    Advice after(List<Finding> found, QuantityFormat shown) {
        return PageFindings.notBefore(found, shown)
                .map(why -> new Advice(Check.refused(why), sizes, yardstick, balances))
                .orElse(this);
    }
}

package io.github.heatswell.scenarios.output;

import io.github.heatswell.plant.Supply;
import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.SizeRow;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import java.util.List;

/** What each vessel on sale would do, as the printed report shows it. */
final class PageSizes {

    private PageSizes() {}

    /** The sizes of a sizing. */
    static List<SizeRow> of(SizingResult sizing, double atmosphere) {
        return sizing.outcome() == SizingResult.Outcome.SIZED
                ? sizing.nominal().stream().map(size -> row(size, atmosphere)).toList()
                : List.of();
    }

    /** The sizes for the heat-up of a house from a cold fill; none where a vessel is no answer. */
    static List<SizeRow> of(Scenario scenario, BalanceCount count) {
        if (scenario.system().supply().arrangement() == Supply.Arrangement.DIRECT) {
            return List.of();
        }
        try {
            SizingResult sizing = VesselChoice.of(scenario).build().forColdFill();
            count.add(sizing.balances());
            return of(sizing, scenario.system().site().atmosphere());
        } catch (IllegalArgumentException | SimulationException e) {
            return List.of();
        }
    }

    private static SizeRow row(SizedVessel size, double atmosphere) {
        return new SizeRow(
                size.volume(),
                size.precharge().gauge(atmosphere),
                size.peakAbsolute() - atmosphere,
                size.margin(),
                size.higher(),
                size.suffices(),
                size.price().map(Money::of).orElse(""));
    }
}

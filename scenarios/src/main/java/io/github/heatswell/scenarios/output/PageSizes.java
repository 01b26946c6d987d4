package io.github.heatswell.scenarios.output;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.choice.SizeCertainty;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.scenarios.choice.VesselChoice;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.SizeRow;
import io.github.heatswell.simulation.SimulationException;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.sizing.SizingResult;
import io.github.heatswell.system.Supply;
import java.util.List;
import java.util.Optional;

/** What each vessel on sale would do, as the printed report shows it. */
final class PageSizes {

    private PageSizes() {}

    /** The sizes of a sizing, and how sure each is as far as it was looked at. */
    static List<SizeRow> of(VesselAnswer answer, double atmosphere) {
        return answer.sizing().outcome() == SizingResult.Outcome.SIZED
                        || answer.recommended().isPresent()
                ? answer.sizing().nominal().stream()
                        .map(size -> row(size, atmosphere, enough(size, answer)))
                        .toList()
                : List.of();
    }

    private static String enough(SizedVessel size, VesselAnswer answer) {
        if (!size.suffices()) {
            return "no";
        }
        Optional<SizeCertainty.Tried> tried = answer.certainty().flatMap(found -> found.at(size.volume()));
        String share = tried.map(
                        one -> ", in " + (one.above().of() - one.above().count()) + " of "
                                + one.above().of() + " houses")
                .orElse("");
        boolean taken = answer.recommended().filter(size::equals).isPresent();
        boolean sure = answer.certainty().isEmpty()
                || answer.recommended()
                        .filter(best -> size.volume() >= best.volume())
                        .isPresent()
                || answer.recommended().isEmpty()
                        && answer.certainty().get().bare().holds();
        return (taken ? "yes, recommended" : sure ? "yes" : "by the best estimates alone") + share;
    }

    /** The sizes for the heat-up of a house from a cold fill; none where a vessel is no answer. */
    static List<SizeRow> of(Scenario scenario, BalanceCount count) {
        if (scenario.system().supply().arrangement() == Supply.Arrangement.DIRECT) {
            return List.of();
        }
        try {
            SizingResult sizing = VesselChoice.of(scenario).build().forColdFill();
            count.add(sizing.balances());
            double atmosphere = scenario.system().site().atmosphere();
            return sizing.outcome() == SizingResult.Outcome.SIZED
                    ? sizing.nominal().stream()
                            .map(size -> row(size, atmosphere, size.suffices() ? "by the best estimates" : "no"))
                            .toList()
                    : List.of();
        } catch (IllegalArgumentException | SimulationException e) {
            return List.of();
        }
    }

    private static SizeRow row(SizedVessel size, double atmosphere, String enough) {
        return new SizeRow(
                size.volume(),
                size.precharge().gauge(atmosphere),
                size.peakAbsolute() - atmosphere,
                size.margin(),
                size.higher(),
                enough,
                size.price().map(Money::of).orElse(""));
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.assessment.Statement;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.MapTable;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.narrative.Yardstick;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Report on a map of peaks.
 */
public final class MapReport {

    private MapReport() {}

    /**
     * The answer.
     *
     * @param scenario whose house it is
     * @param map the peaks
     * @param yardstick how the worst heat-up stands to the limit, and from which precharge on it is kept; empty where there is none
     * @param balances those of all runs behind the answer
     * @return with the files map.csv, map.png, map.svg and report.html
     */
    public static CommandResult answer(
            Scenario scenario, PeakMap map, Optional<Yardstick> yardstick, Balances balances) {
        UnitSystem units = scenario.units();
        Chart chart = Chart.of(map, units).below(AlarmNote.ofHouse(scenario), units);
        return CommandResult.of(
                        shown -> content(scenario, map, remark(yardstick), balances, chart, shown),
                        balances,
                        units,
                        List.of(ResultFile.ofText("map.csv", out -> MapTable.write(map, units, out))),
                        CommandResult.pictures("map", chart))
                .then(NextStep.toSize(scenario.system()));
    }

    /** From which precharge on the limit is kept, where that is known. */
    private static Optional<Statement> remark(Optional<Yardstick> yardstick) {
        return yardstick.flatMap(Yardstick::prechargeThatKeeps);
    }

    private static Document content(
            Scenario scenario,
            PeakMap map,
            Optional<Statement> precharge,
            Balances balances,
            Chart chart,
            QuantityFormat shown) {
        Narrative narrative = Narrative.of(map);
        List<AlarmNote> alarms = Stream.of(
                        AlarmNote.notes(narrative.alarms(), "", shown),
                        AlarmNote.of(scenario, shown),
                        AlarmNote.open(balances, shown))
                .flatMap(List::stream)
                .distinct()
                .toList();
        return Document.of(
                        scenario.title() + ": which volume, which precharge?",
                        scenario.name(),
                        alarms,
                        List.of(
                                Document.answer(
                                        "",
                                        narrative.headline().text(shown) + ".",
                                        Document.withDoubts(
                                                scenario,
                                                shown,
                                                Stream.concat(precharge.stream(), Stream.of(narrative.facts()))
                                                        .map(said -> said.text(shown))
                                                        .toList())),
                                Document.pictures(
                                        List.of(Block.Picture.of(
                                                chart,
                                                "Peak of the worst heat-up over volume and precharge of the vessel, gauge pressure.",
                                                "Map of the peak pressure. " + chart.headline())),
                                        List.of()),
                                PageFindings.section(Findings.of(scenario.system(), scenario.doubts()), shown)
                                        .onPageInAppendix(),
                                PageBasis.of(scenario, false, shown).onPageInAppendix(),
                                PageMethods.ofStudy(balances.runs()).inAppendix()),
                        shown)
                .printedFor(scenario.system())
                .ofNoRun();
    }
}

package io.github.heatswell.scenarios.report;

import io.github.heatswell.assessment.Findings;
import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.MapTable;
import io.github.heatswell.narrative.Narrative;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;
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
     * @param balances those of all runs behind the answer
     * @param units the units of screen, table and picture
     * @return with the files map.csv, map.png, map.svg and report.html
     */
    public static CommandResult answer(Scenario scenario, PeakMap map, Balances balances, UnitSystem units) {
        Chart chart = Chart.of(map, units).below(AlarmNote.ofHouse(scenario), units);
        return CommandResult.of(
                        shown -> content(scenario, map, balances, chart, shown),
                        balances,
                        units,
                        List.of(ResultFile.ofText("map.csv", out -> MapTable.write(map, units, out))),
                        CommandResult.pictures("map", chart))
                .then(NextStep.toSize(scenario.system()));
    }

    private static Document content(
            Scenario scenario, PeakMap map, Balances balances, Chart chart, QuantityFormat shown) {
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
                                                List.of(narrative.facts().text(shown)))),
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

package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.MapTable;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.sizing.PeakMap;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/**
 * A map of peaks, for reading on a terminal of 80 columns.
 */
public final class MapReport {

    private final Scenario scenario;
    private final PeakMap map;
    private final UnitSystem units;

    private MapReport(Scenario scenario, PeakMap map, UnitSystem units) {
        this.scenario = scenario;
        this.map = map;
        this.units = units;
    }

    /**
     * The answer.
     *
     * @param scenario whose house it is
     * @param map the peaks
     * @param units the units of report, table and picture
     * @return with the files map.csv, map.png and map.svg
     */
    public static Answer answer(Scenario scenario, PeakMap map, UnitSystem units) {
        MapReport report = new MapReport(scenario, map, units);
        Chart chart = Chart.of(map, units);
        return Answer.of(
                List.of(
                        ResultFile.ofText("map.csv", out -> MapTable.write(map, units, out)),
                        ResultFile.of("map.png", chart::writePng),
                        ResultFile.ofText("map.svg", chart::writeSvg)),
                new Report(report.said(chart), Hazards.in(scenario), map.balances()));
    }

    private String said(Chart chart) {
        return Alarms.lines(Alarms.of(scenario, QuantityFormat.ascii(units)), "")
                + OpenBalance.lines(map.balances())
                + Wrapped.lines(scenario.title() + ": which volume, which precharge?", "", "") + "\n"
                + Doubtful.lines(scenario)
                + Wrapped.lines(Sentence.of(chart.headline()), "", "");
    }
}

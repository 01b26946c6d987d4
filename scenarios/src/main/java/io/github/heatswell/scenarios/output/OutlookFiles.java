package io.github.heatswell.scenarios.output;

import io.github.heatswell.charts.OutlookChart;
import io.github.heatswell.charts.table.OutlookTable;
import io.github.heatswell.scenarios.outlook.OutlookAnswer;
import io.github.heatswell.scenarios.report.ReportPage;
import io.github.heatswell.units.UnitSystem;
import java.util.List;

/**
 * The files of an outlook.
 */
public final class OutlookFiles {

    private OutlookFiles() {}

    /**
     * The files.
     *
     * @param answer what was found
     * @param units the units of table and picture; the JSON is in SI units always
     * @return outlook.csv, outlook.json, outlook.png, outlook.svg and report.html
     */
    public static List<ResultFile> of(OutlookAnswer answer, UnitSystem units) {
        OutlookChart chart = OutlookChart.of(answer.result(), answer.scenario().system(), units);
        return List.of(
                ResultFile.ofText("outlook.csv", out -> OutlookTable.write(answer.result(), units, out)),
                ResultFile.of("outlook.json", out -> OutlookJson.write(answer, out)),
                ResultFile.of("outlook.png", chart::writePng),
                ResultFile.ofText("outlook.svg", chart::writeSvg),
                ResultFile.ofText("report.html", out -> ReportPage.write(OutlookPage.of(answer, chart, units), out)));
    }
}

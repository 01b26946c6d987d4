package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.NamedRun;
import io.github.heatswell.charts.table.SizeTable;
import io.github.heatswell.narrative.SizeAdvice;
import io.github.heatswell.scenarios.choice.VesselAnswer;
import io.github.heatswell.sizing.SizedVessel;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** The files of a sizing. */
final class SizingFiles {

    private SizingFiles() {}

    static List<ResultFile> of(VesselAnswer answer, SizingPage page, UnitSystem units) {
        double atmosphere = answer.scenario().system().site().atmosphere();
        Chart chart = chart(answer, units);
        List<ResultFile> files = new ArrayList<>(List.of(
                ResultFile.ofText(
                        "sizing.csv",
                        out -> SizeTable.write(answer.sizing(), answer.recommended(), atmosphere, units, out)),
                ResultFile.of("sizing.json", out -> SizingJson.write(answer, out)),
                ResultFile.of("before-after.png", chart::writePng),
                ResultFile.ofText("before-after.svg", chart::writeSvg)));
        if (!answer.sizing().nominal().isEmpty()) {
            Chart sizes = sizes(answer, units);
            files.add(ResultFile.of("sizes.png", sizes::writePng));
            files.add(ResultFile.ofText("sizes.svg", sizes::writeSvg));
        }
        files.add(ResultFile.ofText("report.html", out -> HtmlPage.write(page.content(chart), out)));
        return ResultFile.sideBySide(files);
    }

    /** The peaks over the sizes, with the one to take. */
    static Chart sizes(VesselAnswer answer, UnitSystem units) {
        String why = new SizingWords(answer, QuantityFormat.unicode(units)).why();
        return Chart.of(answer.sizing(), new SizeAdvice(answer.recommended(), why), units);
    }

    /** The run as it is, and with the vessel if one is proposed. */
    private static Chart chart(VesselAnswer answer, UnitSystem units) {
        if (answer.proposed().isEmpty()) {
            return Chart.of(answer.asItIs(), answer.scenario().doubts(), units);
        }
        QuantityFormat shown = QuantityFormat.ascii(units);
        String volume =
                answer.recommended().map(SizedVessel::volume).map(shown::volume).orElseThrow();
        List<NamedRun> runs = new ArrayList<>();
        runs.add(new NamedRun("as it is", answer.asItIs()));
        answer.proposed().ifPresent(run -> runs.add(new NamedRun("with " + volume, run)));
        return Chart.comparing(runs, units);
    }
}

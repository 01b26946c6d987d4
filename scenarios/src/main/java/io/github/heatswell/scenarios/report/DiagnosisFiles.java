package io.github.heatswell.scenarios.report;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.LoggedRuns;
import io.github.heatswell.charts.LoggedRuns.NamedReadings;
import io.github.heatswell.charts.table.ReadingsTable;
import io.github.heatswell.diagnosis.HypothesisFit;
import io.github.heatswell.diagnosis.PressureLog;
import io.github.heatswell.units.QuantityFormat;
import io.github.heatswell.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The files of a diagnosis.
 */
final class DiagnosisFiles {

    private static final int MAX_RUNS = 3;

    private DiagnosisFiles() {}

    /**
     * The files.
     *
     * @param answer what was found
     * @param units the units of table and picture; the JSON is in SI units always
     * @return diagnosis.json and, with a log, readings.csv, readings.png and readings.svg; report.html
     */
    static List<ResultFile> of(DiagnosisAnswer answer, UnitSystem units) {
        List<ResultFile> files = new ArrayList<>();
        files.add(ResultFile.of("diagnosis.json", out -> DiagnosisJson.write(answer, out)));
        Optional<LoggedRuns> runs = logged(answer, units);
        Optional<Chart> drawn = runs.map(logged -> Chart.of(logged, units));
        runs.ifPresent(logged -> {
            Chart chart = drawn.orElseThrow();
            files.add(ResultFile.ofText("readings.csv", out -> ReadingsTable.write(logged, units, out)));
            files.add(ResultFile.of("readings.png", chart::writePng));
            files.add(ResultFile.ofText("readings.svg", chart::writeSvg));
        });
        files.add(ResultFile.ofText("report.html", out -> HtmlPage.write(DiagnosisPage.of(answer, drawn, units), out)));
        return List.copyOf(files);
    }

    private static Optional<LoggedRuns> logged(DiagnosisAnswer answer, UnitSystem units) {
        return answer.log().map(log -> logged(answer, log, units));
    }

    private static LoggedRuns logged(DiagnosisAnswer answer, PressureLog log, UnitSystem units) {
        List<Double> times = new ArrayList<>();
        List<Double> readings = new ArrayList<>();
        for (int i = 0; i < log.count(); i++) {
            times.add(log.time(i));
            readings.add(log.gauge(i));
        }
        List<NamedReadings> runs = answer.result().fits().stream()
                .limit(MAX_RUNS)
                .map(DiagnosisFiles::run)
                .toList();
        String title = new DiagnosisWords(answer, QuantityFormat.ascii(units)).answer();
        return new LoggedRuns(
                title.substring(0, title.length() - 1),
                answer.scenario().title() + ". Above the readings and the likeliest causes, below what each leaves"
                        + " unexplained.",
                times,
                readings,
                runs);
    }

    private static NamedReadings run(HypothesisFit fit) {
        return new NamedReadings(fit.cause().words(), fit.gauge());
    }
}

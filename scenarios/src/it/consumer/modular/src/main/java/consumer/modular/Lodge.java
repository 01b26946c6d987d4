package consumer.modular;

import io.github.heatswell.charts.Chart;
import io.github.heatswell.charts.table.TraceTable;
import io.github.heatswell.assessment.Findings;
import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.fault.Fault;
import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.report.Results;
import io.github.heatswell.scenarios.teaching.Course;
import io.github.heatswell.units.PressureUnit;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs a bundled house and writes all there is to write, by each way that leads there. */
public final class Lodge {

    private Lodge() {}

    /**
     * Writes into a folder, and prints in which modules the classes are, what a wrong file is told, and the peak.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) throws IOException, OutputException {
        Path folder = Path.of(arguments[0]);
        Scenario scenario = Catalogue.read("orchard-lodge");
        RunResult run = scenario.simulation().run();

        Files.createDirectories(folder);
        try (Writer table = Files.newBufferedWriter(folder.resolve("own.csv"));
                OutputStream picture = Files.newOutputStream(folder.resolve("own.png"));
                Writer drawing = Files.newBufferedWriter(folder.resolve("own.svg"))) {
            TraceTable.write(run, UnitSystem.SI, table);
            Chart.of(run, UnitSystem.SI).writePng(picture);
            Chart.of(run, UnitSystem.SI).writeSvg(drawing);
        }
        ResultFolder.at(folder.resolve("results")).write(Results.of(scenario, run, UnitSystem.SI));

        for (Class<?> type : List.of(Lodge.class, Scenario.class, Chart.class, RunResult.class)) {
            System.out.println("module " + type.getModule().getName());
        }
        try {
            ScenarioReader.read("own", "title: [");
        } catch (InvalidScenarioException wrong) {
            Fault fault = wrong.faults().get(0);
            System.out.println("fault in line " + fault.at().line());
        }
        System.out.println("lessons " + Course.bundled().titles().size());
        System.out.println("findings " + !Findings.of(run.summary()).isEmpty());
        double peak = run.gauge(run.extremes().highestPressure().value());
        System.out.println("peak " + Math.round(PressureUnit.BAR.fromSi(peak)) + " bar");
    }
}

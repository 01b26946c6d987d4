package io.github.heatswell.scenarios.example;

import io.github.heatswell.result.RunResult;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.units.PressureUnit;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;

/** Runs a scenario file and prints its highest pressure. */
final class RunAFile {

    private RunAFile() {}

    static void run(Path file, PrintStream out) throws IOException {
        Scenario scenario = ScenarioReader.read(file);
        RunResult result = scenario.simulation().run();
        double peak = result.peak().in(PressureUnit.KILOPASCAL);
        result.hazard().ifPresent(event -> out.println("HAZARD: " + event.kind().description()));
        out.println(scenario.title() + ": " + Math.round(peak) + " kPa at most");
    }
}

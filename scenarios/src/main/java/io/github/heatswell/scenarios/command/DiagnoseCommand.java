package io.github.heatswell.scenarios.command;

import io.github.heatswell.diagnosis.Diagnosis;
import io.github.heatswell.diagnosis.InstalledCheck;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.output.DiagnosisAnswer;
import io.github.heatswell.scenarios.output.DiagnosisFiles;
import io.github.heatswell.scenarios.output.DiagnosisReport;
import io.github.heatswell.scenarios.readings.InvalidReadingsException;
import io.github.heatswell.scenarios.readings.OwnersReadings;
import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell diagnose}: what the readings of a gauge say of a house. */
final class DiagnoseCommand {

    private static final String READINGS = "--readings";
    private static final String FOLDER_ENDING = "-diagnosis";

    private final Batch batch;
    private final ParseResult arguments;
    private final Console console;

    private DiagnoseCommand(Batch batch, ParseResult arguments, Console console) {
        this.batch = batch;
        this.arguments = arguments;
        this.console = console;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command((arguments, console) -> Batch.read(arguments, console)
                .map(batch -> new DiagnoseCommand(batch, arguments, console).run())
                .orElse(ExitStatus.BAD_INPUT));
        spec.addPositional(Specs.scenarios());
        spec.addOption(OptionSpec.builder("-r", READINGS)
                .paramLabel("FILE")
                .required(true)
                .type(List.class)
                .auxiliaryTypes(Path.class)
                .description(
                        "A log of the gauge as CSV, with a time and a pressure in every row and a first line that"
                                + " names the columns with their units; or readings on site in a .yaml file. May be given twice.")
                .build());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.out("Default: heatswell-out/NAME-diagnosis."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Find out from readings why it drips.",
                "Describe the house as it should be; the readings say what it is. Ranks the causes by how well each"
                        + " explains the readings, gives the numbers the readings carry with their intervals, and names"
                        + " the check on site that would settle the rest. Writes into a folder:",
                "  diagnosis.json, report.html and, with a log,",
                "  readings.csv, readings.png, readings.svg",
                "Pressures are gauge readings.");
        return spec;
    }

    private ExitStatus run() {
        if (batch.size() != 1) {
            console.complain("heatswell: diagnose takes one scenario, not " + batch.size());
            return ExitStatus.BAD_INPUT;
        }
        Scenario scenario = batch.scenario(0);
        Optional<OwnersReadings> readings = readings(scenario.system().site().atmosphere());
        if (readings.isEmpty()) {
            return ExitStatus.BAD_INPUT;
        }
        return batch.each(console, index -> report(answer(scenario, readings.get())));
    }

    private Optional<OwnersReadings> readings(double atmosphere) {
        OwnersReadings readings = OwnersReadings.none();
        List<Path> files = arguments.matchedOptionValue(READINGS, List.of());
        for (Path file : files) {
            String name = Printable.line(file.toString());
            try {
                readings = readings.with(file, atmosphere);
            } catch (InvalidReadingsException e) {
                e.getMessage().lines().forEach(line -> console.complain(name + ":" + line));
                return Optional.empty();
            } catch (FileSystemException e) {
                console.complain(name + ": " + (e.getReason() == null ? "cannot be read" : e.getReason()));
                return Optional.empty();
            } catch (IOException | IllegalArgumentException e) {
                console.complain(name + ": " + e.getMessage());
                return Optional.empty();
            }
        }
        if (readings.log().isEmpty() && readings.spots().isEmpty()) {
            console.complain("heatswell: there is no reading in the files");
            return Optional.empty();
        }
        return Optional.of(readings);
    }

    private DiagnosisAnswer answer(Scenario scenario, OwnersReadings readings) {
        Diagnosis.Builder builder =
                Diagnosis.builder(scenario.system()).spots(readings.spots()).threads(Specs.threads(arguments));
        readings.log().ifPresent(builder::log);
        Diagnosis diagnosis = builder.build();
        return new DiagnosisAnswer(
                scenario,
                readings,
                diagnosis.log(),
                diagnosis.run(),
                readings.spots().isEmpty()
                        ? Optional.empty()
                        : Optional.of(InstalledCheck.of(scenario.system(), readings.spots())));
    }

    private ExitStatus report(DiagnosisAnswer answer) {
        List<Path> readings = arguments.matchedOptionValue(READINGS, List.of());
        return Folders.deliver(
                Folders.of(arguments, batch, 0, FOLDER_ENDING).sparing(readings),
                DiagnosisFiles.of(answer, batch.units()),
                batch.name(0),
                console,
                () -> new DiagnosisReport(answer, batch.units()));
    }
}

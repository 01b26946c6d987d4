package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.file.ScenarioReader;
import io.github.heatswell.scenarios.interview.Interview.Outcome.Ending;
import io.github.heatswell.scenarios.interview.ReadingsTalk;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ReadingsSheet;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.units.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** {@code heatswell readings}: takes readings from paper, line by line. */
final class ReadingsCommand implements CliCommand {

    private static final String SHEET = "--sheet";
    private static final Path DEFAULT_FILE = Path.of("my-readings.txt");

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(OptionSpec.builder("-o", Specs.OUT)
                .paramLabel("FILE.txt")
                .type(Path.class)
                .description("File for the readings; if it already has some, typing continues after them. Default: "
                        + DEFAULT_FILE + ".")
                .build());
        spec.addOption(OptionSpec.builder(SHEET)
                .paramLabel("FILE.html")
                .type(Path.class)
                .description("Write a blank sheet to print and take to the gauge, and ask nothing.")
                .build());
        spec.addOption(Specs.units(
                "Units of sheet and examples: si (bar, degC, L), us (psi, degF, gal) or kpa (si with kPa). Default: those of "
                        + InterviewCommand.DEFAULT_FILE + ", if it is here; else si."));
        Specs.describe(
                spec,
                "Type in gauge readings from paper, and learn how to take them.",
                "Takes them as written, one per line or pasted: a time, a pressure, and what",
                "you saw, such as 6:45 am 61 psi heater came on, or 18:45 4,2 bar tropft. Says at",
                "once how each line was understood, or why it was not. Writes a list that",
                "heatswell diagnose reads. Type done after the last line, back to remove one,",
                "? for how to take readings, or quit to continue another time.");
    }

    @Override
    public ExitStatus execute(Request request) {
        Path sheet = request.option(SHEET, null);
        return sheet == null ? hold(request) : print(sheet, units(request), request.console());
    }

    /** Those asked for, or of the house beside which the readings are taken. */
    private static UnitSystem units(Request request) {
        return request.asked().orElseGet(() -> {
            try {
                return ScenarioReader.read(InterviewCommand.DEFAULT_FILE).units();
            } catch (IOException | InvalidScenarioException none) {
                return UnitSystem.SI;
            }
        });
    }

    private static ExitStatus print(Path sheet, UnitSystem units, Console console) {
        Path whole = sheet.toAbsolutePath();
        Path folder = whole.getParent();
        Path name = whole.getFileName();
        if (folder == null
                || name == null
                || !sheet.toString().toLowerCase(Locale.ROOT).endsWith(".html")) {
            console.complain(sheet + ": the name of a sheet ends in .html, such as readings.html");
            return ExitStatus.BAD_INPUT;
        }
        try {
            ResultFolder.at(folder).write(List.of(ReadingsSheet.page(name.toString(), units)));
        } catch (OutputException e) {
            console.complain(sheet + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        console.print("Written: " + sheet + ". Print it, and type what you wrote on it with heatswell readings.\n");
        return ExitStatus.RAN;
    }

    private static ExitStatus hold(Request request) {
        Path file = request.out().orElse(DEFAULT_FILE);
        Console console = request.console();
        try {
            Ending ending = ReadingsTalk.hold(file, units(request), console.in(), console.out());
            return switch (ending) {
                case FINISHED -> {
                    console.print(NextLine.of(
                            "diagnose", InterviewCommand.DEFAULT_FILE.toString(), "--readings", file.toString()));
                    yield ExitStatus.RAN;
                }
                case LEFT -> ExitStatus.RAN;
                case ENDED -> {
                    console.complain("heatswell: the input ended before there were three readings");
                    yield ExitStatus.BAD_INPUT;
                }
                case OBSTRUCTED -> {
                    console.complain(file + ": contains something other than readings; choose another --out");
                    yield ExitStatus.BAD_INPUT;
                }
            };
        } catch (OutputException e) {
            console.complain(file + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
    }
}

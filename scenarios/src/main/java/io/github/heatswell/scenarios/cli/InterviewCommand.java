package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.interview.Interview;
import io.github.heatswell.scenarios.interview.Interview.Outcome;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.wording.Printable;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** {@code heatswell interview}: asks the owner of a house, writes the scenario file and runs it. */
final class InterviewCommand implements CliCommand {

    static final String RESULTS = "--results";
    static final Path DEFAULT_FILE = Path.of("my-house.yaml");

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(house("File for the answers. An existing file is replaced only if you agree."));
        spec.addOption(Specs.folder("Default: heatswell-out/NAME.", "-r", RESULTS));
        spec.addOption(Specs.units(
                "Units of examples, usual ranges and report: si (bar, degC, L), us (psi, degF, gal) or kpa (si with kPa)."
                        + " Default: those of the place, or si. Answers may use any unit."));
        Specs.describe(
                spec,
                "Answer questions about your house, then simulate it.",
                "Asks one plain question at a time. Labels, a gauge and a thermometer answer",
                "them. Writes a scenario file with a comment on every line, and runs it as",
                "heatswell run does. Whatever you don't know becomes a typical range.",
                "",
                "Type the answers, or pipe them in, one per line:",
                "  4.2 bar   any unit of scenario files; without one, that of the example",
                "  dk        I don't know",
                "  ?         tell me how to find out",
                "  back      return to the previous question",
                "  quit      leave; answers are kept in my-house.partial.yaml, and the next",
                "            interview offers to continue from there",
                "",
                "Leaving with quit exits with status 0; input that ends midway, with 2. Answers",
                "are kept either way.");
    }

    /** The option for the file of a house. */
    static OptionSpec house(String description) {
        return OptionSpec.builder("-o", Specs.OUT)
                .paramLabel("FILE.yaml")
                .type(Path.class)
                .converters(Specs.by(InterviewCommand::file))
                .description(description + " Default: " + DEFAULT_FILE + ".")
                .build();
    }

    @Override
    public ExitStatus execute(Request request) {
        Path file = request.out().orElse(DEFAULT_FILE);
        Console console = request.console();
        try {
            Outcome outcome = Interview.hold(file, request.asked(), console.in(), console.out());
            return switch (outcome.ending()) {
                case FINISHED ->
                    Runner.one(
                            new RunCommand(),
                            request,
                            outcome.file(),
                            Optional.ofNullable(request.option(RESULTS, (Path) null)));
                case LEFT -> ExitStatus.RAN;
                case ENDED -> {
                    console.complain("heatswell: the input ended before the last question");
                    yield ExitStatus.BAD_INPUT;
                }
                case OBSTRUCTED -> {
                    console.complain(outcome.file()
                            + ": an unfinished interview would be saved under this name, but it belongs to"
                            + " another file; rename that file, or choose another --out");
                    yield ExitStatus.BAD_INPUT;
                }
            };
        } catch (OutputException e) {
            console.complain(file + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
    }

    private static Path file(String text) {
        try {
            Path file = Path.of(text);
            if (Interview.suits(file)) {
                return file;
            }
        } catch (InvalidPathException e) {
            throw new TypeConversionException(Printable.quote(text) + " is not a valid file name on this system");
        }
        throw new TypeConversionException(Printable.quote(text) + " does not end in .yaml or .yml");
    }
}

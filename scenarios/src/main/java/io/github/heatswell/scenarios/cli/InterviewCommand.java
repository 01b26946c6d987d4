package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.interview.Interview;
import io.github.heatswell.scenarios.interview.Outcome;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.wording.Printable;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.TypeConversionException;

/** {@code heatswell interview}: asks the owner of a house, writes the scenario file and runs it. */
final class InterviewCommand implements Question {

    private static final String RESULTS = "--results";
    private static final Path DEFAULT_FILE = Path.of("my-house.yaml");

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(OptionSpec.builder("-o", Specs.OUT)
                .paramLabel("FILE.yaml")
                .type(Path.class)
                .converters(InterviewCommand::file)
                .description("File for the answers. One that exists is replaced only if you say so. Default: "
                        + DEFAULT_FILE + ".")
                .build());
        spec.addOption(Specs.folder("Default: heatswell-out/NAME.", "-r", RESULTS));
        spec.addOption(Specs.units("Units of examples, usual ranges and report: si (bar, degC, L; the default) or us"
                + " (psi, degF, gal). Answers may have any."));
        Specs.describe(
                spec,
                "Answer questions about your house, and see what it does.",
                "Asks one plain question at a time: what stands on labels, and what a gauge and",
                "a thermometer show. Writes a scenario file with a comment on every line, and",
                "runs it as heatswell run does. What you do not know becomes a usual range.",
                "",
                "Answers come from the terminal, or one a line from a pipe:",
                "  4.2 bar   any unit known to scenario files; a bare number is asked again",
                "  dk        do not know",
                "  ?         how to find out",
                "  back      the question before",
                "  quit      leave; the answers are kept in my-house.partial.yaml, and the",
                "            next interview offers to go on from there",
                "",
                "Leaving with quit is status 0; input that ends midway is status 2. The answers",
                "are kept either way.");
    }

    @Override
    public ExitStatus ask(Request request) {
        Path file = request.out().orElse(DEFAULT_FILE);
        Console console = request.console();
        try {
            Outcome outcome = Interview.hold(file, request.units(), console.in(), console.out());
            return switch (outcome.ending()) {
                case FINISHED ->
                    Runner.one(
                            new RunCommand(),
                            request,
                            outcome.file(),
                            Optional.ofNullable(request.option(RESULTS, (Path) null)));
                case LEFT -> ExitStatus.RAN;
                case ENDED -> {
                    console.complain("heatswell: the answers ended before the last question");
                    yield ExitStatus.BAD_INPUT;
                }
                case OBSTRUCTED -> {
                    console.complain(outcome.file() + ": this is where an unfinished interview would be kept, but"
                            + " another file has the name; rename it, or give another --out");
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
            throw new TypeConversionException(Printable.quote(text) + " cannot be the name of a file here");
        }
        throw new TypeConversionException(Printable.quote(text) + " does not end in .yaml or .yml");
    }
}

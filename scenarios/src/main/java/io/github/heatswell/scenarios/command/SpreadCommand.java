package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.output.SpreadFiles;
import io.github.heatswell.scenarios.output.SpreadReport;
import io.github.heatswell.scenarios.spread.HouseSpread;
import io.github.heatswell.scenarios.spread.SpreadAnswer;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell spread}: simulates many houses that differ in what is known only so well. */
final class SpreadCommand {

    private static final String SAMPLES = "--samples";
    private static final String SEED = "--seed";
    private static final String FOLDER_ENDING = "-spread";
    private static final int USUAL_SAMPLES = 1024;
    private static final int MIN_SAMPLES = 16;
    private static final int MAX_SAMPLES = 1_000_000;

    private final Batch batch;
    private final ParseResult arguments;
    private final Console console;

    private SpreadCommand(Batch batch, ParseResult arguments, Console console) {
        this.batch = batch;
        this.arguments = arguments;
        this.console = console;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command(SpreadCommand::run);
        spec.addPositional(Specs.scenarios());
        spec.addOption(OptionSpec.builder("-n", SAMPLES)
                .paramLabel("NUMBER")
                .type(Integer.class)
                .description("How many houses to simulate, 16 to 1000000. Default: 1024.")
                .build());
        spec.addOption(OptionSpec.builder(SEED)
                .paramLabel("NUMBER")
                .type(Long.class)
                .description("Where the random numbers begin: the same seed gives the same answer. Default: 1.")
                .build());
        spec.addOption(Specs.threads());
        spec.addOption(
                Specs.out("Default: heatswell-out/NAME-spread. With several scenarios: DIR/NAME-spread for each."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Say how far the answer may be off.",
                "Simulates many houses that differ in the uncertain values of the scenario (such as '4.2 bar +- 0.2 bar'"
                        + " or '4 bar to 4.6 bar'), or, where it has none, in how well such values are usually known. Says"
                        + " in how many of them a relief valve gives off water, how the peaks are spread, and which value"
                        + " matters most. Interrupted, it writes what it has. Writes into a folder:",
                "  spread.csv, samples.csv, spread.json, spread.png, spread.svg",
                "Pressures are gauge readings.");
        return spec;
    }

    private static ExitStatus run(ParseResult arguments, Console console) {
        int samples = arguments.matchedOptionValue(SAMPLES, USUAL_SAMPLES);
        if (samples < MIN_SAMPLES || samples > MAX_SAMPLES) {
            console.complain("heatswell: --samples: " + samples + " is outside the allowed range, 16 to 1000000");
            return ExitStatus.BAD_INPUT;
        }
        Optional<Batch> batch = Batch.read(arguments, console);
        return batch.map(read -> new SpreadCommand(read, arguments, console).run())
                .orElse(ExitStatus.BAD_INPUT);
    }

    private ExitStatus run() {
        try (Interruption interruption = new Interruption()) {
            return batch.each(
                    console, index -> interruption.getAsBoolean() ? ExitStatus.RAN : run(index, interruption));
        }
    }

    private ExitStatus run(int index, Interruption interruption) {
        ResultFolder folder = Folders.of(arguments, batch, index, FOLDER_ENDING).awaited();
        // An interruption ends the work early; what is there then can be written only because writing began before.
        try (ResultFolder.Reserved reserved = folder.reserve()) {
            return run(index, interruption, reserved);
        } catch (OutputException e) {
            console.complain(batch.name(index) + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
    }

    private ExitStatus run(int index, Interruption interruption, ResultFolder.Reserved reserved) {
        SpreadAnswer answer = answer(index, interruption);
        if (answer.peak().answered() == 0) {
            console.complain(batch.name(index) + ": " + noSample(answer));
            return ExitStatus.BAD_INPUT;
        }
        Folders.between(index, console);
        return Folders.deliver(
                reserved,
                SpreadFiles.of(answer, batch.units()),
                batch.name(index),
                console,
                () -> new SpreadReport(answer, batch.units()));
    }

    private SpreadAnswer answer(int index, Interruption interruption) {
        try (ProgressLine progress = ProgressLine.shownTo(console)) {
            return HouseSpread.of(batch.scenario(index))
                    .samples(arguments.matchedOptionValue(SAMPLES, USUAL_SAMPLES))
                    .seed(arguments.matchedOptionValue(SEED, 1L))
                    .threads(Specs.threads(arguments))
                    .stopWhen(interruption)
                    .progress(progress)
                    .build()
                    .answer();
        }
    }

    private static String noSample(SpreadAnswer answer) {
        return answer.result().completed() == 0
                ? "interrupted before the first sample was done; nothing was written"
                : "no sample makes sense: " + answer.result().firstFailure().orElse("");
    }
}

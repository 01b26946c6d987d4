package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.ComparisonReport;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.output.Results;
import io.github.heatswell.scenarios.variation.VariantRuns;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell compare}: simulates scenarios and shows them in one picture and one table. */
final class CompareCommand {

    private static final String NAME = "compare";
    private static final String FOLDER = "comparison";
    /** More curves than this cannot be told apart in one picture. */
    private static final int MOST = 6;

    private final Variants variants;
    private final UnitSystem units;
    private final Console console;
    private final Path out;

    private CompareCommand(Variants variants, UnitSystem units, Console console, Path out) {
        this.variants = variants;
        this.units = units;
        this.console = console;
        this.out = out;
    }

    static CommandSpec spec() {
        CommandSpec spec = Specs.command(CompareCommand::run);
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.out("Default: heatswell-out/comparison."));
        spec.addOption(Specs.set());
        spec.addOption(Specs.vary());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.units());
        spec.addOption(Specs.sample());
        Specs.describe(
                spec,
                "Simulate two to six scenarios, or up to 60 variants, side by side.",
                "Prints one table and draws the pressures over one another. Writes into a folder:",
                "  comparison.csv, comparison.png, comparison.svg, report.html",
                "and with --vary also variations.csv.",
                "Of more than six runs, the picture shows those of the lowest and the highest peak, and four evenly"
                        + " between. Pressures are gauge readings.");
        return spec;
    }

    private static ExitStatus run(ParseResult arguments, Console console) {
        Optional<Batch> batch = Batch.unchanged(arguments, console);
        Optional<Variants> variants = batch.flatMap(read -> Variants.of(read, arguments, MOST, console));
        if (variants.isEmpty()) {
            return ExitStatus.BAD_INPUT;
        }
        Path out = arguments.matchedOptionValue(Specs.OUT, null);
        CompareCommand command = new CompareCommand(variants.get(), batch.get().units(), console, out);
        return Batch.attempt(NAME, console, () -> command.run(Specs.threads(arguments)));
    }

    private ExitStatus run(int threads) {
        VariantRuns runs = VariantRuns.of(variants.all(), threads);
        ResultFolder folder =
                out == null ? ResultFolder.inside(Path.of(Specs.DEFAULT_OUT), FOLDER) : ResultFolder.at(out);
        List<ResultFile> files = Results.comparing(variants.fields(), runs, units);
        return Folders.deliver(folder, files, NAME, console, () -> new ComparisonReport(runs, units));
    }
}

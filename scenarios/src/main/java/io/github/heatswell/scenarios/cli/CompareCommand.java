package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.ComparisonReport;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.variation.VariantRuns;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell compare}: simulates scenarios and shows them in one picture and one table. */
final class CompareCommand implements CliCommand {

    private static final String NAME = "compare";
    private static final String FOLDER = "comparison";
    /** More curves than this cannot be told apart in one picture. */
    private static final int MAX_COMPARED = 6;

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(Specs.scenarios());
        spec.addOption(Specs.out("Default: heatswell-out/comparison."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.vary());
        spec.addOption(Specs.threads());
        spec.addOption(Specs.units());
        spec.addOption(Specs.sample());
        Specs.describe(
                spec,
                "Simulate two to six scenarios, or up to 60 variants, side by side.",
                "Prints one table and draws all pressures in one chart. Writes to a folder:",
                "  comparison.csv, comparison.png, comparison.svg, report.html",
                "and with --vary also variations.csv.",
                "Of more than six runs, the chart shows those with the lowest and the highest peak, and four spaced"
                        + " evenly between. Pressures are gauge pressures.");
    }

    @Override
    public ExitStatus execute(Request request) {
        return Batch.unchanged(request)
                .flatMap(batch -> Variants.of(batch, request, MAX_COMPARED))
                .map(variants -> Runner.attempt(NAME, request.console(), () -> compare(variants, request)))
                .orElse(ExitStatus.BAD_INPUT);
    }

    /** The step about the run that may hurt somebody, else about that of the step, with the values it was varied by. */
    private static String next(NextStep step, Variants variants, VariantRuns runs, Request request) {
        List<String> words = request.words();
        int about = runs.firstHazard().orElse(step.about());
        List<String> values = variants.all().get(about).values();
        List<Change> changes = IntStream.range(0, values.size())
                .mapToObj(i -> new Change(variants.fields().get(i), values.get(i)))
                .toList();
        int each = variants.all().size() / words.size();
        return NextLine.of(new NextStep(step.command(), changes), words.get(about / each), request);
    }

    private static ExitStatus compare(Variants variants, Request request) {
        VariantRuns runs = VariantRuns.of(variants.all(), request.threads());
        ResultFolder folder = request.out()
                .map(ResultFolder::at)
                .orElseGet(() -> ResultFolder.inside(Path.of(Specs.DEFAULT_OUT), FOLDER));
        CommandResult answer = ComparisonReport.answer(variants.fields(), runs, variants.units());
        return Runner.deliver(answer, folder, NAME, request.console(), step -> next(step, variants, runs, request));
    }
}

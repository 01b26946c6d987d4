package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.catalogue.Catalogue;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code heatswell show}: prints a bundled scenario, to start one's own from. */
final class ShowCommand implements CliCommand {

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("NAME")
                .arity("1")
                .required(true)
                .index("0")
                .type(String.class)
                .description("The name of a bundled scenario.")
                .build());
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        Specs.describe(
                spec,
                "Print a bundled scenario as a start for your own.",
                "With --set, prints the changed scenario without the original's comments.");
        spec.usageMessage().exitCodeListHeading("").exitCodeList(null);
    }

    @Override
    public ExitStatus execute(Request request) {
        String name = request.arguments().matchedPositionalValue(0, "");
        if (!Catalogue.names().contains(name)) {
            request.console()
                    .complain("heatswell: no scenario called " + Printable.quote(name) + " is bundled"
                            + Nearest.to(name, Catalogue.names())
                                    .map(near -> "; did you mean " + near + "?")
                                    .orElse("; for their names, run: heatswell list"));
            return ExitStatus.BAD_INPUT;
        }
        List<Change> changes = request.changes();
        if (changes.isEmpty()) {
            request.console().print(Catalogue.text(name) + next(name, request));
            return ExitStatus.RAN;
        }
        Optional<Scenario> changed = Batch.scenario(name, changes, request.console());
        changed.ifPresent(scenario -> request.console().print(scenario.changedText() + next(name, request)));
        return changed.isPresent() ? ExitStatus.RAN : ExitStatus.BAD_INPUT;
    }

    /** As a comment of the file that is printed. */
    private static String next(String name, Request request) {
        return NextLine.of(NextStep.to("run"), name, request).replaceFirst("Next: ", "# Next: ");
    }
}

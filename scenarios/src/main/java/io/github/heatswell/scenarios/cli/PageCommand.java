package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.LivePage;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.wording.Printable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code heatswell page}: writes a house as one file that simulates it in a browser. */
final class PageCommand implements CliCommand {

    private static final String HOUSE = "orchard-lodge";

    @Override
    public void describe(CommandSpec spec) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("SCENARIO")
                .arity("0..1")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("A scenario file or the name of a bundled scenario. Default: orchard-lodge.")
                .build());
        spec.addOption(Specs.file("Default: NAME.html, here."));
        spec.addOption(Specs.place());
        spec.addOption(Specs.set());
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Write a house as one page that simulates it in a browser.",
                "The page works offline, on a phone too: change the vessel, the precharge, the supply or the thermostat and"
                        + " watch the pressure, the relief valve and the gauge. Send it to anybody as it is.");
    }

    @Override
    public ExitStatus execute(Request request) {
        return Runner.attempt("page", request.console(), () -> write(request));
    }

    private static ExitStatus write(Request request) {
        Optional<LivePage> page = LivePage.bundled();
        if (page.isEmpty()) {
            request.console()
                    .complain(
                            "page: this quick build left it out. Build it with: mvn -Pquick -Dheatswell.page.phase=process-classes -Dmaven.test.skip=true package");
            return ExitStatus.NOT_WRITTEN;
        }
        String word = request.words().isEmpty() ? HOUSE : request.words().get(0);
        // the page takes its units from the text it holds
        List<Change> changes = new ArrayList<>(request.changes());
        request.asked()
                .ifPresent(units -> changes.add(new Change("units", units.name().toLowerCase(Locale.ROOT))));
        Optional<Scenario> house = Batch.scenario(word, changes, request.console());
        if (house.isEmpty()) {
            return ExitStatus.BAD_INPUT;
        }
        Path out = request.out().orElse(Path.of(house.get().name() + ".html")).toAbsolutePath();
        Path name = out.getFileName();
        Path folder = out.getParent();
        if (name == null || folder == null) {
            request.console().complain("--out: " + Printable.quote(out.toString()) + " is a folder; name a file");
            return ExitStatus.BAD_INPUT;
        }
        return write(page.get().of(name.toString(), house.get()), folder, request.console());
    }

    private static ExitStatus write(ResultFile page, Path folder, Console console) {
        try {
            ResultFolder.at(folder).write(List.of(page));
        } catch (OutputException e) {
            console.complain("page: " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        console.print("The page is written to "
                + Printable.line(folder.resolve(page.name()).toString()) + "; open it in a browser.\n");
        return ExitStatus.RAN;
    }
}

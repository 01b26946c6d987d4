package io.github.heatswell.scenarios.cli;

import io.github.heatswell.narrative.Alarm;
import io.github.heatswell.result.Balances;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.ResultFile;
import io.github.heatswell.scenarios.report.ResultFolder;
import io.github.heatswell.scenarios.teaching.Course;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** {@code heatswell lessons}: writes the lessons as a site that needs no server. */
final class LessonsCommand implements CliCommand {

    private static final String FOLDER = "heatswell-lessons";

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Specs.out("Default: heatswell-lessons."));
        spec.addOption(
                Specs.units("Units that the pages show first: si (bar, degC, L; default) or us (psi, degF, gal)."));
        Specs.describe(
                spec,
                "Write the lessons, for class or home study.",
                "Simulates the houses in the lessons and writes pages that work offline: an index, a page and a"
                        + " worksheet for each lesson, the answers, and scenario files to modify. Start with"
                        + " index.html.");
    }

    @Override
    public ExitStatus execute(Request request) {
        return Runner.attempt("lessons", request.console(), () -> write(request));
    }

    private static ExitStatus write(Request request) {
        Console console = request.console();
        ResultFolder folder = ResultFolder.at(request.out().orElse(Path.of(FOLDER)));
        Balances.Count count = new Balances.Count();
        Course course = Course.bundled();
        List<ResultFile> files = course.pages(count, request.units().isMetric() ? UnitSystem.SI : UnitSystem.US);
        List<String> kept;
        try {
            kept = folder.write(files);
        } catch (OutputException e) {
            console.complain(e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        Alarm.open(count.sum(), "this answer")
                .ifPresent(alarm -> console.print(
                        Wrapped.lines(alarm.level().word() + ": " + alarm.text().text(UnitSystem.SI), "", "  ")
                                + "\n"));
        console.print(course.titles().size() + " lessons written to "
                + Printable.line(folder.path().toString()) + "; open index.html there.\n");
        if (!kept.isEmpty()) {
            console.print(Wrapped.lines(
                    "Kept because you edited them; delete them to get fresh copies: " + String.join(", ", kept) + ".",
                    "",
                    ""));
        }
        files.stream()
                .map(ResultFile::name)
                .filter(name -> name.endsWith(".yaml"))
                .findFirst()
                .ifPresent(name -> console.print(
                        NextLine.of("run", folder.path().resolve(name).toString())));
        return count.sum().close() ? ExitStatus.RAN : ExitStatus.OPEN_BALANCE;
    }
}

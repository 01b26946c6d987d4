package io.github.heatswell.scenarios.command;

import io.github.heatswell.result.BalanceCount;
import io.github.heatswell.scenarios.lesson.Lessons;
import io.github.heatswell.scenarios.lessonsite.LessonSite;
import io.github.heatswell.scenarios.output.OpenBalance;
import io.github.heatswell.scenarios.output.OutputException;
import io.github.heatswell.scenarios.output.ResultFile;
import io.github.heatswell.scenarios.output.ResultFolder;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import io.github.heatswell.units.UnitSystem;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** {@code heatswell lessons}: writes the lessons as a site that needs no server. */
final class LessonsCommand {

    private static final String FOLDER = "heatswell-lessons";

    private LessonsCommand() {}

    static CommandSpec spec() {
        CommandSpec spec =
                Specs.command((arguments, console) -> Batch.attempt("lessons", console, () -> run(arguments, console)));
        spec.addOption(Specs.out("Default: heatswell-lessons."));
        spec.addOption(Specs.units());
        Specs.describe(
                spec,
                "Write the lessons for class and for home.",
                "Simulates the houses of the lessons and writes pages that need no server and no network: an index, a page"
                        + " and a worksheet for each lesson, the answers, and scenario files to change. Begin with"
                        + " index.html.");
        return spec;
    }

    private static ExitStatus run(ParseResult arguments, Console console) {
        UnitSystem units = arguments.matchedOptionValue(Specs.UNITS, UnitSystem.SI);
        ResultFolder folder = ResultFolder.at(arguments.matchedOptionValue(Specs.OUT, Path.of(FOLDER)));
        BalanceCount count = new BalanceCount();
        List<ResultFile> files = LessonSite.files(Lessons.all(), count, units);
        List<String> kept;
        try {
            kept = folder.write(files);
        } catch (OutputException e) {
            console.complain(e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
        console.print(OpenBalance.lines(count.sum()));
        console.print(Lessons.all().size() + " lessons written into "
                + Printable.line(folder.path().toString()) + "; open index.html there.\n");
        if (!kept.isEmpty()) {
            console.print(Wrapped.lines(
                    "Kept as you changed them; remove them to get them anew: " + String.join(", ", kept) + ".",
                    "",
                    ""));
        }
        return count.sum().close() ? ExitStatus.RAN : ExitStatus.OPEN_BALANCE;
    }
}

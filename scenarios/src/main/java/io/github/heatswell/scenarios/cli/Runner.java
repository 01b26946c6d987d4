package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.FileTransaction;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.OutputException;
import io.github.heatswell.scenarios.report.Report;
import io.github.heatswell.scenarios.report.ResultFolder;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** Asks a command about each scenario of a command line, and delivers the answers one by one: files first, then the report. */
final class Runner {

    private static final int WIDTH = 79;

    private final ScenarioCommand command;
    private final Request request;
    private final Batch batch;
    private final Optional<Path> out;
    private final Console console;
    private boolean interrupted;

    private Runner(ScenarioCommand command, Request request, Batch batch, Optional<Path> out) {
        this.command = command;
        this.request = request;
        this.batch = batch;
        this.out = out;
        this.console = request.console();
    }

    /** Asks about the scenarios on the command line; all are read before the first is asked about. */
    static ExitStatus each(ScenarioCommand command, Request request) {
        return Batch.read(request)
                .map(batch -> new Runner(command, request, batch, request.out()).each())
                .orElse(ExitStatus.BAD_INPUT);
    }

    /** Asks about one file; without a folder the results go where they usually do. */
    static ExitStatus one(ScenarioCommand command, Request request, Path file, Optional<Path> out) {
        return Batch.read(file, request)
                .map(batch -> new Runner(command, request, batch, out).each())
                .orElse(ExitStatus.BAD_INPUT);
    }

    private ExitStatus each() {
        try {
            command.check(batch.size(), request);
        } catch (NoAnswerException e) {
            console.complain(e.getMessage());
            return ExitStatus.BAD_INPUT;
        }
        ExitStatus status = ExitStatus.RAN;
        for (int i = 0; i < batch.size() && !interrupted; i++) {
            int index = i;
            status = status.and(attempt(batch.name(i), console, () -> execute(index)));
        }
        return status;
    }

    /** Does something that writes everything or nothing, and says so if it fails. */
    static ExitStatus attempt(String who, Console console, Supplier<ExitStatus> work) {
        try {
            return work.get();
        } catch (RuntimeException | Error e) {
            console.complain(who + ": " + ErrorMessages.failed(e));
            return ExitStatus.FAILED;
        }
    }

    private ExitStatus execute(int index) {
        String name = batch.name(index);
        ResultFolder folder = command.folder(folder(name), request);
        if (!command.reserves()) {
            return answer(index, request, answer -> deliver(answer, folder, name, console, next(index)));
        }
        try (FileTransaction reserved = folder.awaited().reserve()) {
            ExitStatus status = answer(
                    index,
                    request.until(reserved::isInterrupted),
                    answer -> deliver(answer, reserved, name, console, next(index)));
            interrupted = reserved.isInterrupted();
            return status;
        } catch (OutputException e) {
            console.complain(name + ": " + e.getMessage());
            return ExitStatus.NOT_WRITTEN;
        }
    }

    private ExitStatus answer(int index, Request request, Function<CommandResult, ExitStatus> delivery) {
        CommandResult answer;
        try {
            answer = command.answer(batch.scenario(index), request.about(batch.name(index)));
        } catch (NoAnswerException e) {
            console.print(e.hazards());
            console.complain(e.getMessage());
            command.otherwise(batch.scenario(index))
                    .ifPresent(step -> console.complain(next(index).apply(step).strip()));
            return e.hazards().isEmpty() ? ExitStatus.BAD_INPUT : ExitStatus.HAZARD;
        }
        if (index > 0) {
            console.print("\n" + "-".repeat(WIDTH) + "\n\n");
        }
        return delivery.apply(answer);
    }

    /** How the next command is written about the same house; where a guide leads, not at all. */
    private Function<NextStep, String> next(int index) {
        return step -> {
            console.led().ifPresent(guide -> guide.accept(step));
            return console.led().isPresent() ? "" : NextLine.of(step, batch.word(index), request);
        };
    }

    private ResultFolder folder(String name) {
        return out.filter(path -> batch.size() == 1)
                .map(ResultFolder::at)
                .orElseGet(() ->
                        ResultFolder.inside(out.orElse(Path.of(Specs.DEFAULT_OUT)), name + command.folderEnding()));
    }

    /**
     * Writes the files of an answer and shows its report, which is complete before the first file gets its name: where anything
     * fails before, nothing is written. A complaint is made if nothing can be written; the report is shown all the same.
     *
     * @param answer what is delivered
     * @param folder where to
     * @param who whose files they are, for complaints
     * @param console takes the report and complaints
     * @param next writes the last line, from what comes next
     */
    static ExitStatus deliver(
            CommandResult answer, ResultFolder folder, String who, Console console, Function<NextStep, String> next) {
        try (FileTransaction reserved = folder.reserve()) {
            return deliver(answer, reserved, who, console, next);
        } catch (OutputException e) {
            return refused(answer, e, who, console, next);
        }
    }

    private static ExitStatus deliver(
            CommandResult answer,
            FileTransaction folder,
            String who,
            Console console,
            Function<NextStep, String> next) {
        StringBuilder text = new StringBuilder();
        ExitStatus[] found = {ExitStatus.RAN};
        try {
            folder.write(answer.files(), () -> {
                Report report = answer.report().get();
                text.append(report.text(folder.path(), answer.files()));
                report.next().map(next).ifPresent(text::append);
                found[0] = ExitStatus.of(report);
            });
        } catch (OutputException e) {
            return refused(answer, e, who, console, next);
        }
        try {
            console.print(text.toString());
        } catch (RuntimeException | Error e) {
            console.complain(who + ": the results are complete in " + folder.path()
                    + ", but the report could not be shown: " + ErrorMessages.unexpected(e));
            return ExitStatus.FAILED;
        }
        return found[0];
    }

    private static ExitStatus refused(
            CommandResult answer,
            OutputException failure,
            String who,
            Console console,
            Function<NextStep, String> next) {
        console.complain(who + ": " + failure.getMessage());
        Report unwritten = answer.report().get();
        console.print(unwritten.text() + unwritten.next().map(next).orElse(""));
        return ExitStatus.NOT_WRITTEN.and(ExitStatus.of(unwritten));
    }
}

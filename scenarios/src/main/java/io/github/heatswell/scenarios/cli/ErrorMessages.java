package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.file.InvalidScenarioException;
import io.github.heatswell.scenarios.variation.VariantRuns.VariantFailedException;
import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.simulation.SimulationException;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Error messages of commands: one line that also states what was written. */
final class ErrorMessages {

    private static final String NOTHING_WRITTEN = "nothing was written: ";
    private static final String NO_MEMORY = "out of memory; give Java more, for example HEATSWELL_JAVA_OPTS=-Xmx1g";
    private static final String NO_MORE = "heatswell: out of memory; the cause of the failure could not be reported\n";
    private static final int MAX_CAUSES = 20;
    private static final int MAX_FAULTS = 50;

    private ErrorMessages() {}

    /** Reports an invalid command line. */
    static int badCommandLine(ParameterException failure, String[] arguments) {
        CommandLine line = failure.getCommandLine();
        String name = line.getCommandSpec().qualifiedName();
        Console console = Console.silent(line.getOut(), line.getErr());
        console.complain("heatswell: " + wrong(failure) + "\nTry: " + name + " --help");
        return ExitStatus.BAD_INPUT.code();
    }

    private static String wrong(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            CommandLine line = failure.getCommandLine();
            Collection<String> known = unmatched.isUnknownOption()
                    ? line.getCommandSpec().optionsMap().keySet()
                    : line.getSubcommands().keySet();
            if (known.isEmpty()) {
                return Printable.quote(word) + " is one argument too many";
            }
            String what = unmatched.isUnknownOption() ? "option" : "command";
            return "there is no " + what + " " + Printable.quote(word) + Nearest.hint(word, known);
        }
        return failure.getMessage();
    }

    /** The faults of a file as lines, limited in number. */
    static String faults(InvalidScenarioException failure) {
        List<String> lines = failure.getMessage().lines().toList();
        return lines.size() <= MAX_FAULTS
                ? failure.getMessage()
                : String.join("\n", lines.subList(0, MAX_FAULTS)) + "\n... and " + (lines.size() - MAX_FAULTS)
                        + " more";
    }

    /**
     * A failure that ended the work on one scenario before anything was written.
     *
     * @param failure what was thrown
     * @return one line
     */
    static String failed(Throwable failure) {
        if (isOutOfMemory(failure)) {
            return NOTHING_WRITTEN + NO_MEMORY;
        }
        if (failure instanceof VariantFailedException variant) {
            return NOTHING_WRITTEN + "the simulation of " + Printable.line(variant.variant())
                    + " failed; please report this: " + Printable.line(variant.getMessage());
        }
        if (failure instanceof SimulationException) {
            return NOTHING_WRITTEN + "the simulation failed; please report this: "
                    + Printable.line(failure.getMessage());
        }
        return NOTHING_WRITTEN + unexpected(failure);
    }

    private static boolean isOutOfMemory(Throwable failure) {
        Throwable cause = failure;
        for (int i = 0; i < MAX_CAUSES && cause != null; i++) {
            if (cause instanceof OutOfMemoryError) {
                return true;
            }
            cause = cause.getCause();
        }
        return false;
    }

    /** A bug of the program in one line, with what its developers need to find it. */
    static String unexpected(Throwable failure) {
        StackTraceElement[] trace = failure.getStackTrace();
        String where = trace.length == 0 ? "" : " at " + trace[0].getClassName() + ":" + trace[0].getLineNumber();
        return "this is a bug in Heatswell; please report it: "
                + failure.getClass().getSimpleName() + where + ", "
                + Printable.line(Objects.requireNonNullElse(failure.getMessage(), "no message"));
    }

    /** Last resort: reports a failure outside any command's own handling. */
    static int failed(CommandLine line, Throwable failure) {
        try {
            String said = isOutOfMemory(failure) ? NO_MEMORY : unexpected(failure);
            Console.silent(line.getOut(), line.getErr()).complain("heatswell: " + said);
        } catch (RuntimeException | Error e) {
            line.getErr().print(NO_MORE);
            line.getErr().flush();
        }
        return ExitStatus.FAILED.code();
    }
}

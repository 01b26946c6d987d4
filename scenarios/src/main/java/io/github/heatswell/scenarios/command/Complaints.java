package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.wording.Nearest;
import io.github.heatswell.scenarios.wording.Printable;
import java.util.Collection;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is said when a command cannot do its work. */
final class Complaints {

    private Complaints() {}

    /** A command line that makes no sense. */
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

    /** A fault of the program in one line, since its user can do nothing with more, with what its makers need to find it. */
    static String unexpected(Throwable failure) {
        StackTraceElement[] trace = failure.getStackTrace();
        String where = trace.length == 0 ? "" : " at " + trace[0].getClassName() + ":" + trace[0].getLineNumber();
        return "this is a fault of Heatswell, please report it: "
                + failure.getClass().getSimpleName() + where + ", "
                + Printable.line(Objects.requireNonNullElse(failure.getMessage(), "without a message"));
    }
}

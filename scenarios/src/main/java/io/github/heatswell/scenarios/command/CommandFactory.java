package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.Version;
import java.io.PrintWriter;
import java.io.Reader;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Puts the command line together.
 */
public final class CommandFactory {

    private static final int WIDTH = 80;

    private CommandFactory() {}

    /**
     * The command {@code heatswell} where nobody answers questions.
     *
     * @param out takes reports, questions and help
     * @param err takes complaints
     * @return the command line, ready to execute
     */
    public static CommandLine heatswell(PrintWriter out, PrintWriter err) {
        return heatswell(out, err, Reader.nullReader());
    }

    /**
     * The command {@code heatswell} with everything below it.
     *
     * @param out takes reports, questions and help
     * @param err takes complaints
     * @param in gives the answers to questions; stays open
     * @return the command line, ready to execute
     */
    public static CommandLine heatswell(PrintWriter out, PrintWriter err, Reader in) {
        CommandSpec top = Specs.command(CommandFactory::withoutCommand);
        top.name("heatswell").version("heatswell " + Version.number());
        top.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("Print the version and exit.")
                .build());
        Specs.describe(
                top,
                "Simulate the pressure in a closed domestic hot-water system, minute by minute.",
                "Shows what a check valve, a relief valve or an expansion vessel does to it.");
        top.usageMessage()
                .footer(
                        "",
                        "To begin:",
                        "  heatswell list",
                        "  heatswell run orchard-lodge",
                        "For a house of your own, answer questions about it:",
                        "  heatswell interview",
                        "or start from a bundled one:",
                        "  heatswell show orchard-lodge > mine.yaml",
                        "  heatswell run mine.yaml");
        top.addSubcommand("run", RunCommand.spec());
        top.addSubcommand("compare", CompareCommand.spec());
        top.addSubcommand("size", SizeCommand.spec());
        top.addSubcommand("map", MapCommand.spec());
        top.addSubcommand("spread", SpreadCommand.spec());
        top.addSubcommand("interview", InterviewCommand.spec());
        top.addSubcommand("diagnose", DiagnoseCommand.spec());
        top.addSubcommand("outlook", OutlookCommand.spec());
        top.addSubcommand("lessons", LessonsCommand.spec());
        top.addSubcommand("list", ListCommand.spec());
        top.addSubcommand("show", ShowCommand.spec());
        return new Guarded(top)
                .setOut(out)
                .setErr(err)
                .setExpandAtFiles(false)
                .setUsageHelpWidth(WIDTH)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setExecutionStrategy(arguments -> execute(arguments, in))
                .setParameterExceptionHandler(ErrorMessages::badCommandLine);
    }

    private static int execute(ParseResult arguments, Reader in) {
        Integer helped = CommandLine.executeHelpRequest(arguments);
        if (helped != null) {
            return helped;
        }
        ParseResult innermost = arguments.hasSubcommand() ? arguments.subcommand() : arguments;
        CommandLine line = innermost.commandSpec().commandLine();
        Action action = (Action) innermost.commandSpec().userObject();
        Console console = new Console(line.getOut(), line.getErr(), in);
        try {
            return action.run(innermost, console).code();
        } catch (RuntimeException | Error e) {
            return ErrorMessages.failed(line, e);
        }
    }

    /** A command line that answers whatever fails below it in one line. */
    private static final class Guarded extends CommandLine {
        Guarded(CommandSpec spec) {
            super(spec);
        }

        @Override
        public int execute(String... arguments) {
            try {
                return super.execute(arguments);
            } catch (RuntimeException | Error e) {
                return ErrorMessages.failed(this, e);
            }
        }
    }

    private static ExitStatus withoutCommand(ParseResult arguments, Console console) {
        arguments.commandSpec().commandLine().usage(console.err());
        return ExitStatus.BAD_INPUT;
    }
}

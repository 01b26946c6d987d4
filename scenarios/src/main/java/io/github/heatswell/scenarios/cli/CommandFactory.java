package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.Version;
import java.io.PrintWriter;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * Builds the command line.
 */
public final class CommandFactory {

    private static final int WIDTH = 80;

    private static final List<String> NAMES =
            Arrays.stream(Name.values()).map(Name::word).toList();

    private CommandFactory() {}

    /**
     * The command {@code heatswell} without interactive input.
     *
     * @param out takes reports, questions and help
     * @param err takes complaints
     * @return the command line, ready to execute
     */
    public static CommandLine heatswell(PrintWriter out, PrintWriter err) {
        return heatswell(out, err, Reader.nullReader());
    }

    /**
     * The command {@code heatswell}. Only the subcommand named in the arguments is created.
     *
     * @param out takes reports, questions and help
     * @param err takes complaints
     * @param in gives the answers to questions; stays open
     * @return the command line, ready to execute
     */
    public static CommandLine heatswell(PrintWriter out, PrintWriter err, Reader in) {
        return new Lazy(Specs.command(new NoCommand()), new Console(out, err, in, Optional.empty()));
    }

    /** The same where a guide leads: it takes what comes next, and no command says it. */
    static CommandLine led(Console console, Consumer<NextStep> next) {
        return new Lazy(
                Specs.command(new NoCommand()),
                new Console(console.out(), console.err(), console.in(), Optional.of(next)));
    }

    /**
     * The commands.
     *
     * @return their names, in the order of the help text
     */
    public static List<String> names() {
        return List.copyOf(NAMES);
    }

    /** The commands in the order of the help text, each named as its constant; the compiler asks for the class of each. */
    private enum Name {
        GUIDE,
        RUN,
        COMPARE,
        SIZE,
        MAP,
        SPREAD,
        INTERVIEW,
        READINGS,
        DIAGNOSE,
        OUTLOOK,
        RULES,
        PAGE,
        LESSONS,
        LIST,
        SHOW;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        CliCommand command() {
            return switch (this) {
                case GUIDE -> new GuideCommand();
                case RUN -> new RunCommand();
                case COMPARE -> new CompareCommand();
                case SIZE -> new SizeCommand();
                case MAP -> new MapCommand();
                case SPREAD -> new SpreadCommand();
                case INTERVIEW -> new InterviewCommand();
                case READINGS -> new ReadingsCommand();
                case DIAGNOSE -> new DiagnoseCommand();
                case OUTLOOK -> new OutlookCommand();
                case RULES -> new RulesCommand();
                case PAGE -> new PageCommand();
                case LESSONS -> new LessonsCommand();
                case LIST -> new ListCommand();
                case SHOW -> new ShowCommand();
            };
        }
    }

    /** The command line without a command. */
    private static final class NoCommand implements CliCommand {

        @Override
        public void describe(CommandSpec spec) {
            spec.name("heatswell").version("heatswell " + Version.number());
            spec.addOption(OptionSpec.builder("-V", "--version")
                    .versionHelp(true)
                    .description("Print the version and exit.")
                    .build());
            Specs.describe(
                    spec,
                    "Simulate the pressure in a closed domestic hot-water system, minute by minute.",
                    "See how a check valve, a relief valve or an expansion vessel changes it.");
            spec.usageMessage()
                    .footer(
                            "",
                            "To begin:",
                            "  heatswell list",
                            "  heatswell run orchard-lodge",
                            "For your own house, go through the whole job, or just describe the house:",
                            "  heatswell guide",
                            "  heatswell interview",
                            "or start from a bundled one:",
                            "  heatswell show orchard-lodge > mine.yaml",
                            "  heatswell run mine.yaml");
        }

        @Override
        public ExitStatus execute(Request request) {
            request.arguments()
                    .commandSpec()
                    .commandLine()
                    .usage(request.console().err());
            return ExitStatus.BAD_INPUT;
        }
    }

    /** A command line that creates only the subcommands it needs, and reports any failure in one line. */
    private static final class Lazy extends CommandLine {

        private final Console console;

        Lazy(CommandSpec spec, Console console) {
            super(spec);
            this.console = console;
            setOut(console.out()).setErr(console.err());
        }

        @Override
        public int execute(String... typed) {
            try {
                String[] arguments = asOption(typed);
                List<Name> all = List.of(Name.values());
                int named = arguments.length > 0 ? NAMES.indexOf(arguments[0]) : -1;
                prepare(named < 0 ? all : List.of(all.get(named)));
                return super.execute(arguments);
            } catch (RuntimeException | Error e) {
                return ErrorMessages.failed(this, e);
            }
        }

        /** {@code help size} means {@code size --help}. */
        private static String[] asOption(String... typed) {
            boolean help = typed.length > 0 && typed[0].equals("help");
            return !help ? typed : typed.length > 1 ? new String[] {typed[1], "--help"} : new String[] {"--help"};
        }

        /** Creates subcommands; settings apply only to those that exist when they are set. */
        private void prepare(List<Name> needed) {
            NAMES.forEach(getCommandSpec()::removeSubcommand);
            needed.forEach(name -> addSubcommand(name.word(), Specs.command(name.command())));
            setOut(console.out());
            setErr(console.err());
            setExpandAtFiles(false);
            setUsageHelpWidth(WIDTH);
            setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
            setExecutionStrategy(this::run);
            setParameterExceptionHandler(ErrorMessages::badCommandLine);
        }

        private int run(ParseResult arguments) {
            Integer helped = executeHelpRequest(arguments);
            if (helped != null) {
                return helped;
            }
            ParseResult innermost = arguments.hasSubcommand() ? arguments.subcommand() : arguments;
            CommandLine line = innermost.commandSpec().commandLine();
            CliCommand command = (CliCommand) innermost.commandSpec().userObject();
            try {
                return command.execute(new Request(
                                innermost, new Console(line.getOut(), line.getErr(), console.in(), console.led())))
                        .code();
            } catch (RuntimeException | Error e) {
                return ErrorMessages.failed(line, e);
            }
        }
    }
}

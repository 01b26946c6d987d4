package io.github.heatswell.scenarios.cli;

import picocli.CommandLine.Model.CommandSpec;

/** A command. A new one needs a class and its name in {@link CommandFactory}. */
interface CliCommand {

    /**
     * Says what stands on the command line, and in the help.
     *
     * @param spec the command
     */
    void describe(CommandSpec spec);

    /**
     * Does what was asked, and shows the answer.
     *
     * @param request the parsed command line
     */
    ExitStatus execute(Request request);
}

package io.github.heatswell.scenarios.cli;

import picocli.CommandLine.Model.CommandSpec;

/** A command. A new one needs a class and its name in {@link CommandFactory}. */
interface Question {

    /**
     * Says what stands on the command line, and in the help.
     *
     * @param spec the command
     */
    void describe(CommandSpec spec);

    /**
     * Finds the answer and shows it.
     *
     * @param request the parsed command line
     */
    ExitStatus ask(Request request);
}

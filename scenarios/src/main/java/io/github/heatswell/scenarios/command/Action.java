package io.github.heatswell.scenarios.command;

import picocli.CommandLine.ParseResult;

/** What a command does. */
@FunctionalInterface
interface Action {

    /**
     * Does it.
     *
     * @param arguments what stood on the command line
     * @param console takes reports and complaints
     */
    ExitStatus run(ParseResult arguments, Console console);
}

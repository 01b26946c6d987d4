package io.github.heatswell.scenarios.cli;

import io.github.heatswell.scenarios.cli.Request.NoAnswerException;
import io.github.heatswell.scenarios.file.Scenario;
import io.github.heatswell.scenarios.report.CommandResult;
import io.github.heatswell.scenarios.report.NextStep;
import io.github.heatswell.scenarios.report.ResultFolder;
import java.util.Optional;

/** A command that runs on one scenario at a time. */
interface ScenarioCommand extends CliCommand {

    /** What the name of the folder with the files ends in. */
    String folderEnding();

    /**
     * Answers. Everything is computed here: what is left to do is to write and to print.
     *
     * @param scenario the scenario
     * @param request the parsed command line
     * @throws NoAnswerException if the command makes no sense for this scenario
     */
    CommandResult answer(Scenario scenario, Request request) throws NoAnswerException;

    /**
     * Refuses a command line that makes no sense.
     *
     * @param scenarios how many scenarios it names
     * @param request the command line
     * @throws NoAnswerException says why
     */
    default void check(int scenarios, Request request) throws NoAnswerException {}

    /** The folder as this command writes into it. */
    default ResultFolder folder(ResultFolder folder, Request request) {
        return folder;
    }

    /** The command to use instead where this one has no answer for a house; empty if none would help. */
    default Optional<NextStep> otherwise(Scenario scenario) {
        return Optional.empty();
    }

    /** Whether the folder is taken before the work begins, so that what is done when the user interrupts can be written. */
    default boolean reserves() {
        return false;
    }

    @Override
    default ExitStatus execute(Request request) {
        return Runner.each(this, request);
    }
}

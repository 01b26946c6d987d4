package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.output.ResultFolder;
import java.nio.file.Path;
import picocli.CommandLine.ParseResult;

/** Where the results of each scenario of a command line go. */
final class Folders {

    private Folders() {}

    /**
     * The folder of one scenario.
     *
     * @param arguments the command line
     * @param batch its scenarios
     * @param index which of them
     * @param ending what the name of the folder ends in
     */
    static ResultFolder of(ParseResult arguments, Batch batch, int index, String ending) {
        Path out = arguments.matchedOptionValue(Specs.OUT, null);
        if (out != null && batch.size() == 1) {
            return ResultFolder.at(out);
        }
        return ResultFolder.inside(out == null ? Path.of(Specs.DEFAULT_OUT) : out, batch.name(index) + ending);
    }
}

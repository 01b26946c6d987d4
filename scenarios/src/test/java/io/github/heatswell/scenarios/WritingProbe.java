package io.github.heatswell.scenarios;

import io.github.heatswell.scenarios.cli.EveryCommand;
import io.github.heatswell.scenarios.cli.Outcome;
import java.nio.file.Path;

/** Executes every command that writes, in a Java machine that a test has put under hard conditions. */
final class WritingProbe {

    private WritingProbe() {}

    /** Takes the folder to write into and the readings, and prints a line for each command. */
    public static void main(String[] arguments) {
        Parent.outlivedByNone();
        System.setProperty("java.awt.headless", "true");
        EveryCommand.lines(Path.of(arguments[0]), Path.of(arguments[1])).forEach((name, line) -> {
            Outcome outcome = EveryCommand.execute(line);
            System.out.println(
                    name + "|" + outcome.status() + "|" + outcome.err().strip().replace('\n', '|'));
        });
    }
}

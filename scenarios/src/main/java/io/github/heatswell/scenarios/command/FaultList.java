package io.github.heatswell.scenarios.command;

import io.github.heatswell.scenarios.file.InvalidScenarioException;
import java.util.List;

/** The faults of a file as lines; a file that is wrong throughout does not flood the screen. */
final class FaultList {

    private static final int MOST = 50;

    private FaultList() {}

    static String of(InvalidScenarioException failure) {
        List<String> lines = failure.getMessage().lines().toList();
        return lines.size() <= MOST
                ? failure.getMessage()
                : String.join("\n", lines.subList(0, MOST)) + "\n... and " + (lines.size() - MOST) + " more";
    }
}

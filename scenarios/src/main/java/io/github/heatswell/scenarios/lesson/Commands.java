package io.github.heatswell.scenarios.lesson;

import io.github.heatswell.scenarios.file.Change;
import java.util.List;

/** Commands as a reader types them. */
final class Commands {

    private Commands() {}

    /** The command that runs a bundled scenario with changes. */
    static String run(String scenario, List<Change> changes) {
        StringBuilder command = new StringBuilder("heatswell run ").append(scenario);
        for (Change change : changes) {
            command.append(" --set \"").append(change).append('"');
        }
        return command.toString();
    }
}

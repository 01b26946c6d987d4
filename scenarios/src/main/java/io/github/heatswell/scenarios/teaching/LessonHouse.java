package io.github.heatswell.scenarios.teaching;

import io.github.heatswell.result.Channel;
import io.github.heatswell.scenarios.file.Change;
import io.github.heatswell.scenarios.file.Scenario;
import java.util.List;

/**
 * A bundled house, changed as a lesson needs it.
 *
 * @param name how expressions call it
 * @param label how readers are told of it
 * @param scenario the house
 * @param channel what its picture is about
 */
record LessonHouse(String name, String label, Scenario scenario, Channel channel) {

    /** The command that runs it, with further changes in place of its own to the same fields. */
    String command(List<Change> further) {
        List<String> fields = further.stream().map(Change::field).toList();
        StringBuilder command = new StringBuilder("heatswell run ").append(scenario.name());
        scenario.changes().stream()
                .filter(change -> !fields.contains(change.field()))
                .forEach(change -> append(command, change));
        further.forEach(change -> append(command, change));
        return command.toString();
    }

    private static void append(StringBuilder command, Change change) {
        command.append(" --set \"").append(change).append('"');
    }
}

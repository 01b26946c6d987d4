package io.github.heatswell.scenarios.file;

import io.github.heatswell.scenarios.document.Node.Mapping;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a scenario comes from.
 *
 * @param source the file or name its text came from, for messages
 * @param text its text, empty if a program made it
 * @param tree what the text says; has no entries if a program made the scenario
 * @param changes what was changed, in order
 */
record Origin(String source, String text, Mapping tree, List<Change> changes) {

    Origin {
        changes = List.copyOf(changes);
    }

    /** The same with more changes. */
    Origin changed(List<Change> more) {
        List<Change> all = new ArrayList<>(changes);
        all.addAll(more);
        return new Origin(source, text, tree, all);
    }
}

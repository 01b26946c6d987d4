package io.github.heatswell.scenarios.output;

import java.nio.file.Path;
import java.util.UUID;

/** Names for files that are not to stay. */
final class TemporaryName {

    private TemporaryName() {}

    /** A name nobody else uses, in the folder of a file; short, whatever the file is called. */
    static Path beside(Path file) {
        return file.resolveSibling(".heatswell-" + UUID.randomUUID() + ".tmp");
    }
}

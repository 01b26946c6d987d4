package io.github.heatswell.scenarios.output;

import io.github.heatswell.scenarios.wording.Printable;
import io.github.heatswell.scenarios.wording.Wrapped;
import java.nio.file.Path;
import java.util.List;

/** The lines of a report that say where the files are. */
final class WrittenFiles {

    private WrittenFiles() {}

    static String line(Path folder, List<ResultFile> files) {
        String names = String.join(", ", files.stream().map(ResultFile::name).toList());
        return "\nWritten into " + Printable.line(folder.toString()) + ":\n" + Wrapped.lines(names, "  ", "  ");
    }
}

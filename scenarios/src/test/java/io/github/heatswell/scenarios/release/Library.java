package io.github.heatswell.scenarios.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What others get along with a module, as Maven resolved it for this build. */
record Library(String group, String artifact, String version, Path jar) {

    private static final Pattern LINE =
            Pattern.compile("\\s+([^:\\s]+):([^:\\s]+):jar:([^:\\s]+):(compile|runtime):(.+?\\.jar)(?: -- module .*)?");

    /** Reads the list that {@code dependency:list} wrote; a line that is none of a library's is refused. */
    static List<Library> listedIn(Path file) throws IOException {
        List<Library> libraries = new ArrayList<>();
        for (String line : Files.readAllLines(file)) {
            Matcher library = LINE.matcher(line);
            if (library.matches()) {
                libraries.add(
                        new Library(library.group(1), library.group(2), library.group(3), Path.of(library.group(5))));
            } else if (line.contains(":") && !line.startsWith("The following files")) {
                throw new IllegalStateException(file + " has a line of an unknown kind: " + line);
            }
        }
        return libraries;
    }

    /** Whether it is a part of this project. */
    boolean own() {
        return group.equals("io.github.heatswell");
    }

    /** Group, artifact and version, as in a build file. */
    String coordinates() {
        return group + ":" + artifact + ":" + version;
    }
}

package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/** A folder that is made with those above it, and taken away again if it was made in vain. */
final class NewFolder {

    private final Path folder;
    private Path firstMade;

    NewFolder(Path folder) {
        this.folder = folder;
    }

    /** Makes what is missing of the folder. */
    void make() throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        firstMade = firstMissing();
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new OutputException(inTheWay(Path.of(e.getFile())), e);
        }
    }

    private static String inTheWay(Path path) {
        return Files.isSymbolicLink(path) && !Files.exists(path)
                ? path + " is a link that leads nowhere; results need a folder there"
                : path + " is a file; results need a folder there";
    }

    /** The highest folder on the way that does not exist yet. */
    private Path firstMissing() {
        Path missing = null;
        for (Path part = folder.toAbsolutePath();
                part != null && !Files.exists(part, LinkOption.NOFOLLOW_LINKS);
                part = part.getParent()) {
            missing = part;
        }
        return missing;
    }

    /** Takes away the folders made, from the innermost up to the first one made, as long as they are empty. */
    void takeAway() {
        for (Path part = folder.toAbsolutePath();
                firstMade != null && part != null && part.startsWith(firstMade);
                part = part.getParent()) {
            try {
                Files.deleteIfExists(part);
            } catch (IOException e) {
                return;
            }
        }
    }
}

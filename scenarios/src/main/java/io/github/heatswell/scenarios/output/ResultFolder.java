package io.github.heatswell.scenarios.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;

/**
 * A folder that results are written into, all of them or none.
 */
public final class ResultFolder {

    private final Path folder;
    private final Path boundary;

    private ResultFolder(Path folder, Path boundary) {
        this.folder = folder;
        this.boundary = boundary;
    }

    /**
     * The folder the user named; made when it is written into.
     *
     * @param folder the folder
     * @return the place for results
     */
    public static ResultFolder at(Path folder) {
        return new ResultFolder(folder, folder);
    }

    /**
     * A folder inside the one the user named.
     *
     * @param parent the folder the user named
     * @param name the name of the folder inside, a single ordinary name
     * @return the place for results; nothing is written outside the parent, not even through a link
     */
    public static ResultFolder inside(Path parent, String name) {
        return new ResultFolder(parent.resolve(name), parent);
    }

    /**
     * Where the folder is.
     *
     * @return the path as it was given
     */
    public Path path() {
        return folder;
    }

    /**
     * Writes files into the folder; files of the same names are replaced. If one of them cannot be written, none is, and
     * the folder is left as it was.
     *
     * @param files the files
     * @throws OutputException if the folder cannot be made or a file cannot be written; the message says which and why
     */
    public void write(List<ResultFile> files) throws OutputException {
        Path firstMade = firstMissing();
        boolean complete = false;
        try (PendingFiles pending = new PendingFiles(folder)) {

            makeFolder();
            stayInside();

            for (ResultFile file : files) {
                pending.write(file);
            }
            pending.publish();
            complete = true;
        } catch (IOException | UncheckedIOException e) {
            throw Reasons.cannotWrite(folder, e);
        } finally {
            if (!complete && firstMade != null) {
                removeEmpty(firstMade);
            }
        }
    }

    private void makeFolder() throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new OutputException(e.getFile() + " is a file; results need a folder there", e);
        }
    }

    private void stayInside() throws IOException {
        if (!folder.toRealPath().startsWith(boundary.toRealPath())) {
            throw new OutputException(
                    folder + " is a link that leads out of " + boundary + "; nothing is written there", null);
        }
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

    /** Takes away the folders made in vain, from the innermost up to the first one made. */
    private void removeEmpty(Path firstMade) {
        for (Path part = folder.toAbsolutePath(); part != null && part.startsWith(firstMade); part = part.getParent()) {
            try {
                Files.deleteIfExists(part);
            } catch (IOException e) {
                return;
            }
        }
    }
}

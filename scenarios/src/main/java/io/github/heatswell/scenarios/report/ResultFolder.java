package io.github.heatswell.scenarios.report;

import io.github.heatswell.scenarios.wording.Printable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A folder that results are written into, all of them or none.
 */
public final class ResultFolder {

    /** How long (s) an interruption waits for files that are worth it. */
    private static final long MAX_WAIT = 30;

    private final Path folder;
    private final Path boundary;
    private final List<Path> spared;
    private final long patience;

    private ResultFolder(Path folder, Path boundary, List<Path> spared, long patience) {
        this.folder = folder;
        this.boundary = boundary;
        this.spared = List.copyOf(spared);
        this.patience = patience;
    }

    /**
     * The folder the user named; made when it is written into.
     *
     * @param folder the folder
     * @return the place for results
     */
    public static ResultFolder at(Path folder) {
        Objects.requireNonNull(folder, "folder");
        return new ResultFolder(folder, folder, List.of(), 0);
    }

    /**
     * A folder inside the one the user named.
     *
     * @param parent the folder the user named
     * @param name the name of the folder inside, a single ordinary name
     * @return the place for results; nothing is written outside the parent, not even through a link
     * @throws IllegalArgumentException if the name would lead out of the parent or cannot be one here
     */
    public static ResultFolder inside(Path parent, String name) {
        Objects.requireNonNull(parent, "parent");
        ResultFile.requirePlain(name, "folder");
        return new ResultFolder(parent.resolve(name), parent, List.of(), 0);
    }

    /**
     * The same folder, where files of these are never replaced: whoever reads readings from a folder may well want the
     * results there too, and must not lose the readings.
     *
     * @param inputs files that may have the name of one of the results
     * @return the place for results
     */
    public ResultFolder sparing(List<Path> inputs) {
        return new ResultFolder(folder, boundary, inputs, patience);
    }

    /**
     * The same folder, where an interruption of the program waits, up to half a minute, until the files are written.
     *
     * @return the place for results
     */
    public ResultFolder awaited() {
        return new ResultFolder(folder, boundary, spared, MAX_WAIT);
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
     * Writes files into the folder; files of the same names are replaced, links by files. If one of them cannot be written,
     * or the program is interrupted before, none is, and the folder is left as it was.
     *
     * @param files the files
     * @return the names of those that {@link ResultFile#toBeChanged were changed} since and are kept as they are
     * @throws IllegalArgumentException if two files have the same name; nothing is written then
     * @throws OutputException if the folder cannot be made or a file cannot be written; the message says which and why
     */
    public List<String> write(List<ResultFile> files) throws OutputException {
        refuseObstacles(files);
        try (FileTransaction transaction = reserve()) {
            return transaction.write(files, () -> {});
        }
    }

    /**
     * Makes sure, before long work, that its results can be written: nobody else writes into the folder meanwhile, and the
     * end of the program waits for them if they are {@link #awaited}.
     *
     * @return the folder, to be closed; nothing is left of it if that happens before anything is written
     * @throws OutputException if the folder cannot be made, another program writes there, or this one is being ended
     */
    public FileTransaction reserve() throws OutputException {
        return FileTransaction.begin(this);
    }

    /** How long (s) the end of the program waits for the files, before it removes them. */
    long patience() {
        return patience;
    }

    /** Nothing is written outside the folder the user named, whatever links say. */
    void refuseIfAstray() throws IOException {
        if (!folder.toRealPath().startsWith(boundary.toRealPath())) {
            throw new OutputException(
                    folder + " is a link that leads out of " + boundary + "; nothing is written there", null);
        }
    }

    /** What can be known beforehand is said beforehand: a long run writes while it goes. */
    void refuseObstacles(List<ResultFile> files) throws OutputException {
        Set<String> names = new HashSet<>();
        for (ResultFile file : Objects.requireNonNull(files, "files")) {
            if (!names.add(file.name())) {
                throw new IllegalArgumentException("files: two have the name " + Printable.quote(file.name())
                        + "; every file of a folder needs its own");
            }
            Path target = folder.resolve(file.name());
            if (Files.isDirectory(target)) {
                throw new OutputException(target + " is a folder; a file of results belongs there", null);
            }
            for (Path input : spared) {
                if (isSame(target, input)) {
                    throw new OutputException(
                            target + " is what this command reads, and results of that name would replace it;"
                                    + " give another folder",
                            null);
                }
            }
        }
    }

    private static boolean isSame(Path target, Path input) {
        try {
            return Files.isSameFile(target, input);
        } catch (IOException e) {
            // One of them does not exist, so nothing can be lost.
            return false;
        }
    }
}

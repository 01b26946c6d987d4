package io.github.heatswell.scenarios.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The folder inside a folder of results in which one program at a time prepares its files. The system releases its lock
 * even if the program is killed, so that the next program can tell what is left over from what is in use.
 */
final class WorkFolder {

    /** What the folder is called. */
    static final String NAME = ".heatswell-unfinished";

    private static final String LOCK = "lock";
    private static final int MAX_TRIES = 10;

    private final Path folder;
    /** The highest folder on the way that was made for it; null if it was there. */
    private final Path made;

    private final FileChannel lock;

    private WorkFolder(Path folder, Path made, FileChannel lock) {
        this.folder = folder;
        this.made = made;
        this.lock = lock;
    }

    /**
     * Takes the work folder of a folder, whether it is new or was left over.
     *
     * @param folder the folder of results; made with those above it if it is missing
     * @param boundary the folder it must lie in, whatever links say
     * @throws OutputException if another program holds it, or the folder cannot be made or is not where it should be
     */
    static WorkFolder take(Path folder, Path boundary) throws IOException {
        Path made = firstMissing(folder);
        FileChannel lock = null;
        try {
            makeFolders(folder);
            if (!folder.toRealPath().startsWith(boundary.toRealPath())) {
                throw new OutputException(
                        folder + " is a link that leads out of " + boundary + "; nothing is written there", null);
            }
            lock = lock(folder);
            return new WorkFolder(folder, made, lock);
        } finally {
            if (lock == null) {
                takeAway(folder, made);
            }
        }
    }

    /** The highest folder on the way that does not exist yet; null if all do. */
    private static Path firstMissing(Path folder) {
        Path missing = null;
        for (Path part = folder.toAbsolutePath();
                part != null && !Files.exists(part, LinkOption.NOFOLLOW_LINKS);
                part = part.getParent()) {
            missing = part;
        }
        return missing;
    }

    private static void makeFolders(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            Path inTheWay = Path.of(e.getFile());
            boolean astray = Files.isSymbolicLink(inTheWay) && !Files.exists(inTheWay);
            throw new OutputException(
                    inTheWay + (astray ? " is a link that leads nowhere" : " is a file")
                            + "; results need a folder there",
                    e);
        }
    }

    /** Takes away the folders made, from the innermost up to the first one made, as long as they are empty. */
    private static void takeAway(Path folder, Path made) {
        for (Path part = folder.toAbsolutePath(); made != null && part.startsWith(made); part = part.getParent()) {
            if (!delete(part)) {
                return;
            }
        }
    }

    private static FileChannel lock(Path folder) throws IOException {
        Path path = folder.resolve(NAME);
        for (int i = 0; i < MAX_TRIES; i++) {
            try {
                makeFolder(path);
                FileChannel lock = lockFile(path.resolve(LOCK));
                if (lock != null) {
                    return lock;
                }
            } catch (NoSuchFileException e) {
                // Another program has just finished and taken the folder away.
                continue;
            }
        }
        throw new OutputException(
                "another Heatswell is writing into " + folder + "; nothing was written there, try again", null);
    }

    private static void makeFolder(Path path) throws IOException {
        try {
            Files.createDirectory(path);
        } catch (FileAlreadyExistsException e) {
            if (Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS) || Files.isSymbolicLink(path)) {
                throw new OutputException(path + " is in the way; Heatswell prepares its files there", e);
            }
        }
    }

    /** The locked file; null if another program holds it or took it away meanwhile. */
    private static FileChannel lockFile(Path file) throws IOException {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            FileChannel.open(file, StandardOpenOption.WRITE, StandardOpenOption.CREATE, LinkOption.NOFOLLOW_LINKS)
                    .close();
        }
        // Read before it is opened: what is locked is then what still has the name afterwards.
        Object before = key(file);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        boolean mine = false;
        try {
            mine = tryLock(channel) && Objects.equals(before, key(file));
            return mine ? channel : null;
        } finally {
            if (!mine) {
                channel.close();
            }
        }
    }

    private static boolean tryLock(FileChannel channel) {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            // This file system has no locks, so nobody can hold one.
            return true;
        }
    }

    private static Object key(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS)
                .fileKey();
    }

    /** A folder inside. */
    Path inside(String name) {
        return folder.resolve(NAME).resolve(name);
    }

    /** Makes a folder inside if it is missing. */
    Path make(String name) throws IOException {
        makeFolder(inside(name));
        return inside(name);
    }

    /** The names of the files of a folder inside; none if there is no such folder. */
    List<String> files(String name) throws IOException {
        if (!Files.isDirectory(inside(name), LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(inside(name))) {
            return files.map(file -> inside(name).relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    /** Takes a folder inside away, with its files. What cannot be deleted stays; it does no harm. */
    void clear(String name) {
        try {
            files(name).forEach(file -> delete(inside(name).resolve(file)));
        } catch (IOException e) {
            return;
        }
        delete(inside(name));
    }

    /** Gives the folder up. It goes away if it is empty. */
    void release() {
        delete(inside(LOCK));
        delete(folder.resolve(NAME));
        try {
            lock.close();
        } catch (IOException e) {
            // The system releases it at the end of the program.
            return;
        }
    }

    /** Takes away the folders that were made for it, as far as they are empty. */
    void takeAway() {
        takeAway(folder, made);
    }

    /** What cannot be deleted takes room, and the next run tries again. */
    private static boolean delete(Path path) {
        try {
            Files.deleteIfExists(path);
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}

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

    /** The folder inside with files that are being written. */
    static final String NEW = "new";

    /** The same folder once all of them are complete. */
    static final String READY = "ready";

    /** Where the files of their names move to. */
    static final String OLD = "old";

    private static final String LOCK = "lock";
    private static final int MAX_TRIES = 10;

    private final Path folder;
    /** The highest folder on the way that was made for it; null if it was there. */
    private final Path made;

    private FileChannel lock;

    private WorkFolder(Path folder) {
        this.folder = folder;
        this.made = firstMissing(folder.toAbsolutePath());
    }

    /** Takes the work folder of a place, whether it is new or was left over; refused if another program holds it. */
    static WorkFolder take(ResultFolder place) throws IOException {
        WorkFolder work = new WorkFolder(place.path());
        try {
            makeFolders(place.path());
            place.refuseIfAstray();
            work.lock = lock(place.path());
            return work;
        } finally {
            if (work.lock == null) {
                work.takeAway();
            }
        }
    }

    private static Path firstMissing(Path folder) {
        Path missing = null;
        for (Path part = folder; part != null && !Files.exists(part, LinkOption.NOFOLLOW_LINKS); ) {
            missing = part;
            part = part.getParent();
        }
        return missing;
    }

    private static void makeFolders(Path folder) throws IOException {
        try {
            // A link to a folder is one, which createDirectories denies.
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
        } catch (FileAlreadyExistsException e) {
            boolean isLost = Files.isSymbolicLink(Path.of(e.getFile())) && !Files.exists(Path.of(e.getFile()));
            throw new OutputException(
                    e.getFile() + (isLost ? " is a link that leads nowhere" : " is a file")
                            + "; results need a folder there",
                    e);
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
            if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS) && Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
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
        Path within = inside(name);
        try (Stream<Path> files = Files.list(within)) {
            return files.map(file -> within.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    /** Takes the folders inside away, with their files. What cannot be deleted stays; it does no harm. */
    void clear() {
        for (String name : List.of(NEW, READY, OLD)) {
            try {
                files(name).forEach(file -> delete(inside(name).resolve(file)));
                delete(inside(name));
            } catch (IOException e) {
                continue;
            }
        }
    }

    /** Gives the folder up. It goes away if it is empty, with the folders made for it from the innermost up. */
    void release() {
        delete(inside(LOCK));
        delete(folder.resolve(NAME));
        takeAway();
        try {
            lock.close();
        } catch (IOException e) {
            // The system releases it at the end of the program.
            return;
        }
    }

    private void takeAway() {
        Path part = folder.toAbsolutePath();
        while (made != null && part.startsWith(made) && delete(part)) {
            part = part.getParent();
        }
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

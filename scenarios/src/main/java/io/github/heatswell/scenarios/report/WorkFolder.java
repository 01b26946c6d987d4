package io.github.heatswell.scenarios.report;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
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
    /** The folders on the way that have to be made for it, innermost first. */
    private final List<Path> missing;

    private FileChannel lock;

    private WorkFolder(Path results) {
        this.folder = results.resolve(NAME);
        this.missing = Stream.iterate(
                        results.toAbsolutePath(),
                        part -> part != null && !Files.exists(part, NOFOLLOW_LINKS),
                        Path::getParent)
                .toList();
    }

    /** Takes the work folder of a place, whether it is new or was left over; refused if another program holds it. */
    static WorkFolder take(ResultFolder place) throws IOException {
        WorkFolder work = new WorkFolder(place.path());
        try {
            makeFolders(place.path());
            place.refuseIfAstray();
            for (int i = 0; i < MAX_TRIES && work.lock == null; i++) {
                work.lock = work.tryLock();
            }
            if (work.lock == null) {
                throw new OutputException(
                        "another Heatswell is writing into " + place.path() + "; nothing was written there, try again",
                        null);
            }
            return work;
        } finally {
            if (work.lock == null) {
                work.missing.forEach(WorkFolder::delete);
            }
        }
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

    private static Path makeFolder(Path path) throws IOException {
        try {
            return Files.createDirectory(path);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(path, NOFOLLOW_LINKS) && Files.exists(path, NOFOLLOW_LINKS)) {
                throw new OutputException(path + " is in the way; Heatswell prepares its files there", e);
            }
            return path;
        }
    }

    /** The locked file; null if another program holds it, made it or took it away meanwhile. */
    private FileChannel tryLock() throws IOException {
        FileChannel channel = null;
        boolean mine = false;
        try {
            Path file = makeFolder(folder).resolve(LOCK);
            if (!Files.exists(file, NOFOLLOW_LINKS)) {
                Files.createFile(file);
            }
            // Read before it is opened: what is locked is then what still has the name afterwards.
            Object before = key(file);
            channel = FileChannel.open(file, WRITE, NOFOLLOW_LINKS);
            mine = isLocked(channel) && Objects.equals(before, key(file));
        } catch (NoSuchFileException | FileAlreadyExistsException e) {
            return null;
        } finally {
            if (channel != null && !mine) {
                channel.close();
            }
        }
        return mine ? channel : null;
    }

    private static boolean isLocked(FileChannel channel) {
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
        return Files.readAttributes(file, BasicFileAttributes.class, NOFOLLOW_LINKS)
                .fileKey();
    }

    /** A folder inside. */
    Path inside(String name) {
        return folder.resolve(name);
    }

    /** Makes a folder inside if it is missing. */
    Path make(String name) throws IOException {
        return makeFolder(inside(name));
    }

    /** The names of the files of a folder inside; none if there is no such folder. */
    List<String> files(String name) throws IOException {
        if (!Files.isDirectory(inside(name), NOFOLLOW_LINKS)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(inside(name))) {
            return files.map(file -> inside(name).relativize(file).toString())
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
        delete(folder);
        missing.forEach(WorkFolder::delete);
        try {
            lock.close();
        } catch (IOException e) {
            // The system releases it at the end of the program.
            return;
        }
    }

    /** What cannot be deleted takes room, and the next run tries again. */
    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            return;
        }
    }
}
